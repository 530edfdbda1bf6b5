using CastBook.Templates.Starters;

namespace CastBook.Templates.Sheets;

/// <summary>The words that a log of results offers: faults by how they look, and the shop's own names.</summary>
internal static class ResultWordsSheet
{
    public const string Name = "Words";

    private static readonly string[] Faults =
    [
        "none", "not filled", "porous", "shrunk", "grit inside", "fins", "rough skin", "bubbles on skin", "ash or residue", "cracked", "bent", "other",
    ];

    private static readonly string[] Alloys = [Examples.Silver, Examples.Bronze, Examples.Gold];

    private static readonly string[] Materials = [Examples.Resin, Examples.Wax];

    public static SheetSpec Spec { get; } = new(Name, "The words that the drop-down lists offer. Change them as you like.",
    [
        new("Fault", 22, CellKind.Words, "A fault as it looks, in your own words. Keep none for what came out well."),
        new("Alloy", 26, CellKind.Words, "An alloy that you cast."),
        new("Material", 26, CellKind.Words, "A material that your patterns are made of."),
    ]);

    /// <summary>The lines of the sheet.</summary>
    /// <param name="withExamples">Whether example names stand beside the faults.</param>
    public static IReadOnlyList<IReadOnlyList<object?>> Rows(bool withExamples) =>
    [
        .. Faults.Select((fault, i) => (IReadOnlyList<object?>)
            [fault, withExamples ? Alloys.ElementAtOrDefault(i) : null, withExamples ? Materials.ElementAtOrDefault(i) : null]),
    ];
}
