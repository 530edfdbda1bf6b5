using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Sheets;

/// <summary>What the sheets that CastBook owns are made from.</summary>
/// <param name="BookName">The book's name without its extension.</param>
/// <param name="Reading">The book as read.</param>
/// <param name="Plan">The night as answered.</param>
/// <param name="Findings">Everything found, reading and writing included, repeats folded.</param>
internal sealed record SheetContext(string BookName, BookReading Reading, NightPlan Plan, IReadOnlyList<Finding> Findings)
{
    /// <summary>Where each subject stands.</summary>
    public CellMap Cells => Reading.Cells;

    /// <summary>What kind of plan it is, for the titles.</summary>
    public string PlanKind => Plan.Flasks.Count == 0
        ? "no flask planned"
        : Plan.Bound.ProvedLeastInvestment ? "proved fewest flasks and least investment"
        : Plan.Bound.ProvedFewest ? "proved fewest flasks" : $"no plan needs fewer than {Plan.Bound.LeastFlasks}";
}
