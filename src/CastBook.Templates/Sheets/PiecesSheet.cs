using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The list of pieces to cast.</summary>
internal static class PiecesSheet
{
    public const string Name = "Pieces";

    public static SheetSpec Spec { get; } = new(Name, PiecesWords.Purpose, [.. What(), .. Sizes(), .. Handling()]) { IsList = true };

    private static ShopColumn[] What() =>
    [
        new("Piece", 25, ColumnKind.Words, PiecesWords.Piece) { Needed = true },
        new("Qty", 6, ColumnKind.Number, PiecesWords.Qty) { Format = Formats.Whole, Needed = true },
        new("Pattern weight (g)", 9, ColumnKind.Number, PiecesWords.PatternWeight) { Format = Formats.Hundredths, Needed = true },
        new("Pattern volume (ml)", 9.5, ColumnKind.Number, PiecesWords.PatternVolume) { Format = Formats.Hundredths },
        new("Material", 16, ColumnKind.Words, PiecesWords.Material) { Choices = Choices.From(MaterialsSheet.Name) },
        new("Alloy", 15.5, ColumnKind.Words, PiecesWords.Alloy) { Choices = Choices.From(AlloysSheet.Name), Needed = true },
    ];

    private static ShopColumn[] Sizes() =>
    [
        new("Shape", 8, ColumnKind.Words, PiecesWords.Shape) { Choices = Choices.Of("ring", "other") },
        new("Length (mm)", 7.5, ColumnKind.Number, PiecesWords.Length) { Format = Formats.Tenths },
        new("Width (mm)", 7.5, ColumnKind.Number, PiecesWords.Width) { Format = Formats.Tenths },
        new("Thickness (mm)", 10, ColumnKind.Number, PiecesWords.Thickness) { Format = Formats.Tenths },
        new("Finest section (mm)", 8.5, ColumnKind.Number, PiecesWords.FinestSection) { Format = Formats.Tenths },
        new("Heaviest section (mm)", 9.5, ColumnKind.Number, PiecesWords.HeaviestSection) { Format = Formats.Tenths },
        new("Gates", 7, ColumnKind.Number, PiecesWords.Gates) { Format = Formats.Whole },
        new("Gate diameter (mm)", 9.5, ColumnKind.Number, PiecesWords.GateDiameter) { Format = Formats.Tenths },
        new("Gate length (mm)", 7.5, ColumnKind.Number, PiecesWords.GateLength) { Format = Formats.Tenths },
        new("Stones in", 8, ColumnKind.Words, PiecesWords.StonesIn) { Choices = Choices.Of("yes") },
        new("Per tree", 15, ColumnKind.Either, PiecesWords.PerTree),
    ];

    private static ShopColumn[] Handling() =>
    [
        new("Printed at (°C)", 9, ColumnKind.Number, PiecesWords.PrintedAt) { Format = Formats.Whole },
        new("Washed (min)", 8.5, ColumnKind.Either, PiecesWords.Washed),
        new("Cured (min)", 7.5, ColumnKind.Number, PiecesWords.Cured),
        new("Due", 12.5, ColumnKind.Day, PiecesWords.Due) { Format = Formats.Day },
        new("Night", 10, ColumnKind.Words, PiecesWords.Night),
        new("Keep in flask", 8.5, ColumnKind.Words, PiecesWords.KeepInFlask),
        new("Leave out", 8, ColumnKind.Words, PiecesWords.LeaveOut) { Choices = Choices.Of("yes") },
    ];
}
