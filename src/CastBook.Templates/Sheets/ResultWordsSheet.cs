using CastBook.Templates.Starters;
using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The words that a log of results offers: faults by how they look, and the shop's own names.</summary>
internal static class ResultWordsSheet
{
    public const string Name = "Words";

    private static readonly string[] Alloys = [Examples.Silver, Examples.Bronze, Examples.Gold];

    private static readonly string[] Materials = [Examples.Resin, Examples.Wax];

    public static SheetSpec Spec { get; } = new(Name, ResultChoiceWords.Purpose,
    [
        new("Fault", 22, ColumnKind.Words, ResultChoiceWords.Fault),
        new("Alloy", 26, ColumnKind.Words, ResultChoiceWords.Alloy),
        new("Material", 26, ColumnKind.Words, ResultChoiceWords.Material),
    ]);

    /// <summary>The lines of the sheet.</summary>
    /// <param name="withExamples">Whether example names stand beside the faults.</param>
    public static IReadOnlyList<IReadOnlyList<object?>> Rows(bool withExamples) =>
    [
        .. ResultChoiceWords.Faults.Select((fault, i) => (IReadOnlyList<object?>)
            [fault, withExamples ? Alloys.ElementAtOrDefault(i) : null, withExamples ? Materials.ElementAtOrDefault(i) : null]),
    ];
}
