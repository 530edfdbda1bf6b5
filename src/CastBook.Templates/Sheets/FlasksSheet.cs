namespace CastBook.Templates.Sheets;

/// <summary>The flask sizes that the shop owns.</summary>
internal static class FlasksSheet
{
    public const string Name = "Flasks";

    public static SheetSpec Spec { get; } = new(Name, "The flask sizes you own, a line a size.", [.. Size(), .. Tree()]);

    private static ShopColumn[] Size() =>
    [
        new("Size", 13, CellKind.Words, "The name you know it by, such as 75 × 100.") { Needed = true },
        new("Inside diameter (mm)", 11, CellKind.Number, "Measured inside: nominal sizes are often outside.") { Format = Formats.Tenths, Needed = true },
        new("Height (mm)", 11.5, CellKind.Number, "Height of the flask.") { Format = Formats.Tenths, Needed = true },
        new("Owned", 9, CellKind.Number, "How many you have. Nothing is planned into a flask that nobody owns.") { Format = Formats.Whole, Needed = true },
        new("Method", 19, CellKind.Words, "How this size is cast. Empty: the method of the Shop sheet.") { Choices = SettingsSheet.Methods },
        new("Holds (ml)", 10, CellKind.Number, "Inside volume measured with water. It wins over diameter and height.") { Format = Formats.Whole },
        new("Powder (g)", 10, CellKind.Number, "Powder by your own chart. It wins over the computed weight.") { Format = Formats.Whole },
        new("Water (ml)", 10, CellKind.Number, "Water by your own chart.") { Format = Formats.Whole },
    ];

    private static ShopColumn[] Tree() =>
    [
        new("Sprue diameter (mm)", 11, CellKind.Number, "Diameter of the trunk that pieces hang on.") { Format = Formats.Tenths, Needed = true },
        new("Base height (mm)", 10, CellKind.Number, "From the flask's rim to where the first gate may stand on the trunk.") { Format = Formats.Tenths, Needed = true },
        new("Cup (ml)", 9, CellKind.Number, "Volume of the pouring cup that the sprue base forms. The button must fit in it.") { Format = Formats.Tenths },
        new("Above tree (mm)", 10, CellKind.Number, "Investment left above the tree. Empty: the usual clearance for the method, never under 12 mm.")
            { Format = Formats.Tenths },
        new("To wall (mm)", 10, CellKind.Number, "Investment left between pieces and wall. Empty: the usual clearance.") { Format = Formats.Tenths },
        new("Per tree", 9, CellKind.Number, "How many pieces of unknown size a tree of this size takes. Used where a line has neither sizes nor its own Per tree.") { Format = Formats.Whole },
    ];
}
