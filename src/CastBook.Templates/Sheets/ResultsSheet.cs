using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>What came out of the flasks, a line a piece or a tree.</summary>
internal static class ResultsSheet
{
    public const string Name = "Results";

    public static SheetSpec Spec { get; } = new(Name, ResultsWords.Purpose, [.. What(), .. How(), .. Outcome()]) { IsList = true };

    private static ShopColumn[] What() =>
    [
        new("Piece", 27, ColumnKind.Words, ResultsWords.Piece) { Needed = true },
        new("Poured on", 13, ColumnKind.Day, ResultsWords.PouredOn) { Format = Formats.Day, Needed = true },
        new("Flask", 8, ColumnKind.Words, ResultsWords.Flask),
        new("Alloy", 20, ColumnKind.Words, ResultsWords.Alloy) { Choices = Choices.From(ResultWordsSheet.Name, "B"), Needed = true },
        new("Material", 20, ColumnKind.Words, ResultsWords.Material) { Choices = Choices.From(ResultWordsSheet.Name, "C") },
    ];

    private static ShopColumn[] How() =>
    [
        new("Washed (min)", 9, ColumnKind.Number, ResultsWords.Washed),
        new("Cured (min)", 8, ColumnKind.Number, ResultsWords.Cured),
        new("Schedule", 22, ColumnKind.Words, ResultsWords.Schedule),
        new("Metal temp (°C)", 11, ColumnKind.Number, ResultsWords.MetalTemp) { Format = Formats.Whole },
        new("Flask temp (°C)", 11, ColumnKind.Number, ResultsWords.FlaskTemp) { Format = Formats.Whole },
    ];

    private static ShopColumn[] Outcome() =>
    [
        new("Poured", 9, ColumnKind.Number, ResultsWords.Poured) { Format = Formats.Whole },
        new("Good", 7, ColumnKind.Number, ResultsWords.Good) { Format = Formats.Whole, Needed = true },
        new("Fault", 19, ColumnKind.Words, ResultsWords.Fault) { Choices = Choices.From(ResultWordsSheet.Name), Needed = true },
        new("Remarks", 36, ColumnKind.Words, ResultsWords.Remarks) { Wraps = true },
    ];
}
