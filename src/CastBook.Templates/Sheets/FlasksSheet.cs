using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The flask sizes that the shop owns.</summary>
internal static class FlasksSheet
{
    public const string Name = "Flasks";

    public static SheetSpec Spec { get; } = new(Name, FlasksWords.Purpose, [.. Size(), .. Tree()]);

    private static ShopColumn[] Size() =>
    [
        new("Size", 13, ColumnKind.Words, FlasksWords.Size) { Needed = true },
        new("Inside diameter (mm)", 11, ColumnKind.Number, FlasksWords.InsideDiameter) { Format = Formats.Tenths, Needed = true },
        new("Height (mm)", 11.5, ColumnKind.Number, FlasksWords.Height) { Format = Formats.Tenths, Needed = true },
        new("Owned", 9, ColumnKind.Number, FlasksWords.Owned) { Format = Formats.Whole, Needed = true },
        new("Method", 19, ColumnKind.Words, FlasksWords.Method) { Choices = SettingsSheet.Methods },
        new("Holds (ml)", 10, ColumnKind.Number, FlasksWords.Holds) { Format = Formats.Whole },
        new("Powder (g)", 10, ColumnKind.Number, FlasksWords.Powder) { Format = Formats.Whole },
        new("Water (ml)", 10, ColumnKind.Number, FlasksWords.Water) { Format = Formats.Whole },
    ];

    private static ShopColumn[] Tree() =>
    [
        new("Sprue diameter (mm)", 11, ColumnKind.Number, FlasksWords.SprueDiameter) { Format = Formats.Tenths, Needed = true },
        new("Base height (mm)", 10, ColumnKind.Number, FlasksWords.BaseHeight) { Format = Formats.Tenths, Needed = true },
        new("Cup (ml)", 9, ColumnKind.Number, FlasksWords.Cup) { Format = Formats.Tenths },
        new("Above tree (mm)", 10, ColumnKind.Number, FlasksWords.AboveTree) { Format = Formats.Tenths },
        new("To wall (mm)", 10, ColumnKind.Number, FlasksWords.ToWall) { Format = Formats.Tenths },
        new("Per tree", 9, ColumnKind.Number, FlasksWords.PerTree) { Format = Formats.Whole },
    ];
}
