using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Sheets;

/// <summary>What the sheets that CastBook owns are made from.</summary>
/// <param name="BookName">The book's name without its extension.</param>
/// <param name="Reading">The book as read.</param>
/// <param name="Plan">The night as answered.</param>
/// <param name="Findings">Everything found, reading and writing included, repeats folded.</param>
internal sealed record SheetContext(string BookName, BookReading Reading, NightPlan Plan, IReadOnlyList<Finding> Findings)
{
    /// <summary>The units in which the shop wants its answers.</summary>
    public ShopUnits Units { get; } = Reading.Night.Shop.Settings.Units;

    /// <summary>Where each subject stands.</summary>
    public CellMap Cells => Reading.Cells;

    /// <summary>What kind of plan it is, for the titles.</summary>
    public string PlanKind => Plan.Flasks.Count == 0
        ? "no flask planned"
        : Plan.SearchStopped ? $"search stopped, the best so far; no plan needs fewer than {Plan.Bound.LeastFlasks}"
        : Plan.Bound is { ProvedFewest: true, ProvedLeastInvestment: true } ? "proved fewest flasks and least investment"
        : Plan.Bound.ProvedLeastInvestment ? "proved least investment"
        : Plan.Bound.ProvedFewest ? "proved fewest flasks" : $"no plan needs fewer than {Plan.Bound.LeastFlasks}";

    /// <summary>What the plan is worth, and what that does not say; nothing where no flask is planned.</summary>
    public string? Worth
    {
        get
        {
            var (count, least) = (Plan.Flasks.Count, Plan.Bound.LeastFlasks);
            var flasks = count == 1 ? "1 flask" : string.Create(CultureInfo.InvariantCulture, $"{count} flasks");
            var proof = Plan.Bound.ProvedFewest ? "proved: no plan takes fewer" + Investment
                : Plan.Bound.ProvedLeastInvestment ? "proved: no plan fills less investment"
                : count > least ? string.Create(CultureInfo.InvariantCulture, $"no plan takes fewer than {least}, so at most {count - least} too many")
                : "not everything found room";
            return count == 0 ? null : $"{flasks}; {proof}. That holds for trees in columns, with each piece hung the way it is drawn.";
        }
    }

    private string Investment => Plan.Bound.ProvedLeastInvestment ? ", nor less investment"
        : Plan.Bound.InvestmentOver is { } over ? $", and none of as many fills more than {Units.Water.Say(over)} less"
        : "";
}
