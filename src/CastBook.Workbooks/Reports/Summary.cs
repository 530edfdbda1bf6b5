using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Reports;

/// <summary>The answer in a few lines for a terminal: counts first, then what stops.</summary>
public static class Summary
{
    private const int MostStops = 12;

    /// <summary>The lines.</summary>
    /// <param name="bookName">The book's file name.</param>
    /// <param name="result">What filling answered.</param>
    public static IReadOnlyList<string> Lines(string bookName, FillResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var (plan, units) = (result.Plan, result.Night.Shop.Settings.Units);
        var lines = new List<string> { First(bookName, result) };
        if (plan.Flasks.Count > 0)
        {
            lines.Add(Flasks(plan));
            lines.AddRange(Change(plan, units.Water));
        }

        if (plan.Metal.Any(m => m.PiecesIfFinished is not null))
        {
            lines.AddRange(plan.Metal.Select(m => Metal(m, units.Metal)));
        }
        else if (plan.Metal.Count > 0)
        {
            lines.Add(string.Join(", ", plan.Metal.Select(m => Metal(m, units.Metal))));
        }

        if (plan.Flasks.Count > 0)
        {
            lines.Add(Investment(plan, units));
        }

        lines.AddRange(Stops(result));
        return lines;
    }

    /// <summary>The first line, and what stops.</summary>
    /// <param name="bookName">The book's file name.</param>
    /// <param name="result">What filling answered.</param>
    public static IReadOnlyList<string> Brief(string bookName, FillResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [First(bookName, result), .. Stops(result)];
    }

    private static string First(string bookName, FillResult result) => $"{bookName}: {RowCounts.Of(result.Plan, result.Findings)}";

    private static string Flasks(NightPlan plan)
    {
        var pieces = plan.Flasks.Sum(f => f.Pieces.Sum(p => p.Quantity));
        var worth = plan.SearchStopped ? SummaryWords.SearchStopped(plan.Bound.LeastFlasks, plan.Flasks.Count)
            : plan.Bound.ProvedFewest ? SummaryWords.ProvedFewest : SummaryWords.NoFewer(plan.Bound.LeastFlasks, plan.Flasks.Count);
        return SummaryWords.Flasks(pieces, plan.Flasks.Count, worth);
    }

    private static IEnumerable<string> Change(NightPlan plan, WrittenVolume unit)
    {
        if (plan.Change is { } change)
        {
            var said = change.IsKept ? SummaryWords.NothingMoves(change.Words(unit))
                : change.IsForced ? change.Words(unit) : SummaryWords.Moved(change.Words(unit));
            yield return change.Left is { } left ? SummaryWords.LeftAsItStands(said, left.Words(unit)) : said;
        }
    }

    private static string Metal(MetalPlan metal, WrittenMass unit)
    {
        var needed = metal.Charges is { } charges ? unit.Say(charges) : MetalWords.Pieces(metal, unit);
        var stock = MetalWords.Stock(metal) switch
        {
            null => "",
            { } have when metal.Buy is { Grams: > 0 } buy => SummaryWords.HaveAndBuy(unit.Say(have), unit.Say(buy)),
            { } have => SummaryWords.Have(unit.Say(have)),
        };
        return $"{metal.Alloy} {needed}{stock}";
    }

    private static string Investment(NightPlan plan, ShopUnits units)
    {
        var alone = plan.Flasks.Where(f => f.Mix is null).ToList();
        var powder = plan.Mixes.Sum(m => m.Powder.Grams) + alone.Sum(f => f.Powder?.Grams ?? 0);
        var water = plan.Mixes.Sum(m => m.Water.Milliliters) + alone.Sum(f => f.Water?.Milliliters ?? 0);
        var mixed = plan.Mixes.Count == 0 && alone.TrueForAll(f => f.Powder is null) ? SummaryWords.PowderIsOpen
            : SummaryWords.Mixed(units.Powder.Say(Mass.FromGrams(powder)), units.Water.Say(Volume.FromMilliliters(water)));
        if (plan.Mixes.Count > 0)
        {
            mixed += SummaryWords.InMixes(plan.Mixes.Count);
        }

        var longest = plan.Flasks.Where(f => f.Burnout is not null).Select(f => f.Burnout!.Value).DefaultIfEmpty(Duration.Zero).Max();
        return longest > Duration.Zero ? SummaryWords.LongestBurnout(mixed, Say.Hours(longest)) : mixed;
    }

    private static IEnumerable<string> Stops(FillResult result)
    {
        var stops = result.Findings.Zip(result.Places).Where(f => f.First.Severity == Severity.Stop).ToList();
        foreach (var (finding, place) in stops.Take(MostStops))
        {
            yield return $"{MarkRules.WordOf(finding.Severity)}  {place.Text}  {finding.Seen} {finding.Remedy}".TrimEnd();
        }

        if (stops.Count > MostStops)
        {
            yield return SummaryWords.MoreStops(stops.Count - MostStops);
        }
    }
}
