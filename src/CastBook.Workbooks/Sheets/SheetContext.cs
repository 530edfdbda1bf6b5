using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;

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
    public string PlanKind => Plan.Bound.ProvedFewestLoads is { } fewest ? PlanWorthWords.ThenKind(Kind, fewest) : Kind;

    private string Kind => Plan.Flasks.Count == 0
        ? PlanWorthWords.NoFlask
        : Plan.SearchStopped ? SummaryWords.SearchStopped(Plan.Bound.LeastFlasks, Plan.Flasks.Count)
        : Plan.Bound is { ProvedFewest: true, ProvedLeastInvestment: true } ? PlanWorthWords.ProvedBoth
        : Plan.Bound.ProvedLeastInvestment ? PlanWorthWords.ProvedLeastInvestment
        : Plan.Bound.ProvedFewest ? PlanWorthWords.ProvedFewest : SummaryWords.NoFewer(Plan.Bound.LeastFlasks, Plan.Flasks.Count);

    /// <summary>What the plan is worth, and what that does not say; nothing where no flask is planned.</summary>
    public string? Worth
    {
        get
        {
            var (count, least) = (Plan.Flasks.Count, Plan.Bound.LeastFlasks);
            var proof = Plan.Bound.ProvedFewest ? WithInvestment(PlanWorthWords.NoneTakesFewer)
                : Plan.Bound.ProvedLeastInvestment ? PlanWorthWords.NoneFillsLess
                : count > least ? PlanWorthWords.AtMostTooMany(least, count - least)
                : PlanWorthWords.NotEverythingFound;
            proof = Plan.Bound.ProvedFewestLoads is { } fewest ? PlanWorthWords.ThenLoads(proof, fewest) : proof;
            return count == 0 ? null : PlanWorthWords.Worth(count, proof);
        }
    }

    private string WithInvestment(string proof) => Plan.Bound.ProvedLeastInvestment ? PlanWorthWords.NorLessInvestment(proof)
        : Plan.Bound.InvestmentOver is { } over ? PlanWorthWords.AtMostLessInvestment(proof, Units.Water.Say(over))
        : proof;
}
