using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The crucibles that the shop owns.</summary>
internal static class CruciblesSheet
{
    public const string Name = "Crucibles";

    public static SheetSpec Spec { get; } = new(Name, CruciblesWords.Purpose,
    [
        new("Crucible", 22, ColumnKind.Words, CruciblesWords.Crucible) { Needed = true },
        new("Holds (ml)", 11, ColumnKind.Number, CruciblesWords.Holds) { Format = Formats.Tenths, Needed = true },
        new("Rated (g)", 11, ColumnKind.Number, CruciblesWords.Rated) { Format = Formats.Whole },
        new("Rated for", 18, ColumnKind.Words, CruciblesWords.RatedFor) { Choices = Choices.From(AlloysSheet.Name) },
        new("Alloys", 30, ColumnKind.Words, CruciblesWords.Alloys),
        new("Made of", 14, ColumnKind.Words, CruciblesWords.MadeOf) { Choices = Choices.Of("graphite", "clay-graphite", "silica", "ceramic") },
        new("Owned", 9, ColumnKind.Number, CruciblesWords.Owned) { Format = Formats.Whole },
    ]);
}
