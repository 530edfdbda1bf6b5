namespace CastBook.Templates.Sheets;

/// <summary>What came out of the flasks, a line a piece or a tree.</summary>
internal static class ResultsSheet
{
    public const string Name = "Results";

    public static SheetSpec Spec { get; } = new(Name, "What came out of the flasks, a line a piece or a tree.", [.. What(), .. How(), .. Outcome()]) { IsList = true };

    private static ShopColumn[] What() =>
    [
        new("Piece", 27, CellKind.Words, "The piece's name or job number, or tree where the whole tree is meant.") { Needed = true },
        new("Poured on", 13, CellKind.Day, "The day it was poured, such as 4 Dec 2026.") { Format = Formats.Day, Needed = true },
        new("Flask", 8, CellKind.Words, "The letter on the mould."),
        new("Alloy", 20, CellKind.Words, "The metal, as you call it elsewhere.") { Choices = Choices.From(ResultWordsSheet.Name, "B"), Needed = true },
        new("Material", 20, CellKind.Words, "What the pattern was made of.") { Choices = Choices.From(ResultWordsSheet.Name, "C") },
    ];

    private static ShopColumn[] How() =>
    [
        new("Washed (min)", 9, CellKind.Number, "Time in the wash, all baths together."),
        new("Cured (min)", 8, CellKind.Number, "Cure of each side."),
        new("Schedule", 22, CellKind.Words, "The burnout that was run, by the name you know it by."),
        new("Metal temp (°C)", 11, CellKind.Number, "The temperature it was really poured at.") { Format = Formats.Whole },
        new("Flask temp (°C)", 11, CellKind.Number, "The temperature that the flask really had.") { Format = Formats.Whole },
    ];

    private static ShopColumn[] Outcome() =>
    [
        new("Poured", 9, CellKind.Number, "How many were poured.") { Format = Formats.Whole },
        new("Good", 7, CellKind.Number, "How many of them came out well.") { Format = Formats.Whole, Needed = true },
        new("Fault", 19, CellKind.Words, "The worst that was wrong, as it looks. none where nothing was.") { Choices = Choices.From(ResultWordsSheet.Name), Needed = true },
        new("Remarks", 36, CellKind.Words, "Where on the piece or the tree, and what you would do otherwise.") { Wraps = true },
    ];
}
