namespace CastBook.Templates.Sheets;

/// <summary>The list of pieces to cast.</summary>
internal static class PiecesSheet
{
    public const string Name = "Pieces";

    public static SheetSpec Spec { get; } = new(Name, "What is to be cast, a line a piece.", [.. What(), .. Sizes(), .. Handling()]) { IsList = true };

    private static ShopColumn[] What() =>
    [
        new("Piece", 25, CellKind.Words, "The piece's name or job number, as you call it.") { Needed = true },
        new("Qty", 6, CellKind.Number, "How many to cast, a whole number.") { Format = Formats.Whole, Needed = true },
        new("Pattern weight (g)", 9, CellKind.Number,
            "Weight of one pattern as it goes on the tree: printed and cured or waxed, supports off, without sprue. Or give its volume.")
            { Format = Formats.Hundredths, Needed = true },
        new("Pattern volume (ml)", 9.5, CellKind.Number, "Volume of one pattern, as the drawing program gives it. It wins over the weight.")
            { Format = Formats.Hundredths },
        new("Material", 16, CellKind.Words, "What the pattern is made of: a name of the Materials sheet. Empty: the material of the Shop sheet.")
            { Choices = Choices.From(MaterialsSheet.Name) },
        new("Alloy", 15.5, CellKind.Words, "The metal to cast it in: a name of the Alloys sheet.")
            { Choices = Choices.From(AlloysSheet.Name), Needed = true },
    ];

    private static ShopColumn[] Sizes() =>
    [
        new("Shape", 8, CellKind.Words, "ring: length is the outer diameter and width the band. other: length, width and thickness.")
            { Choices = Choices.Of("ring", "other") },
        new("Length (mm)", 7.5, CellKind.Number, "From the gate outwards; for a ring its outer diameter.") { Format = Formats.Tenths },
        new("Width (mm)", 7.5, CellKind.Number, "Across the piece; for a ring the width of the band.") { Format = Formats.Tenths },
        new("Thickness (mm)", 10, CellKind.Number, "The third size. Empty: taken as wide as the width.") { Format = Formats.Tenths },
        new("Finest section (mm)", 8.5, CellKind.Number, "The thinnest place that must fill. It decides the flask temperature.") { Format = Formats.Tenths },
        new("Heaviest section (mm)", 9.5, CellKind.Number, "The thickest place. It decides the flask temperature.") { Format = Formats.Tenths },
        new("Gates", 7, CellKind.Number, "How many gates the piece hangs on. Empty: one.") { Format = Formats.Whole },
        new("Gate diameter (mm)", 9.5, CellKind.Number, "Diameter of one gate. Empty: the gate of the Shop sheet.") { Format = Formats.Tenths },
        new("Gate length (mm)", 7.5, CellKind.Number, "Length of one gate. Empty: the gate of the Shop sheet.") { Format = Formats.Tenths },
        new("Stones in", 8, CellKind.Words, "yes where stones are set in the pattern.") { Choices = Choices.Of("yes") },
        new("Per tree", 15, CellKind.Either,
            "Where sizes are unknown: how many fit on a tree. 12 for any flask, or a flask size and a number: 75 × 100: 12; 90 × 125: 20."),
    ];

    private static ShopColumn[] Handling() =>
    [
        new("Printed at (°C)", 9, CellKind.Number, "Temperature of the resin while printing.") { Format = Formats.Whole },
        new("Washed (min)", 8.5, CellKind.Either, "Time in the wash; of several baths each, such as 1.5 + 1.5."),
        new("Cured (min)", 7.5, CellKind.Number, "Cure of each side."),
        new("Due", 12.5, CellKind.Day, "The day it must be ready, such as 4 Dec 2026.") { Format = Formats.Day },
        new("Night", 10, CellKind.Words,
            "Which casting night the line belongs to, in your own words. Empty everywhere: all lines are for tonight."),
        new("Keep in flask", 8.5, CellKind.Words, "A flask letter: pieces with the same letter go into the same flask."),
        new("Leave out", 8, CellKind.Words, "yes to leave the line out tonight.") { Choices = Choices.Of("yes") },
    ];
}
