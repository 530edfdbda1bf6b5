using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Adds up the night's metal by alloy and compares it with the stock.</summary>
internal static class MetalSums
{
    /// <summary>A line for each alloy of which something is known, in the order of the list.</summary>
    /// <param name="night">The night.</param>
    /// <param name="asked">The rows that are asked for.</param>
    /// <param name="flasks">The flasks.</param>
    /// <param name="findings">Takes what is found.</param>
    public static IReadOnlyList<MetalPlan> Of(
        Night night, IEnumerable<PieceMetal> asked, IReadOnlyList<FlaskPlan> flasks, FindingList findings)
    {
        var plans = new List<MetalPlan>();
        var sums = Sums(night, asked);
        var alloys = sums.Select(s => s.Known).OfType<KnownAlloy>().ToDictionary(a => a.Name, StringComparer.Ordinal);
        var melts = new MeltPortions(night, flasks, alloys, findings);
        foreach (var sum in sums)
        {
            var plan = Stock(sum.Plan, sum.Known, flasks, melts);
            if (plan is { Pieces: null, PiecesLeast: null, PiecesMost: null, Charges: null, Fresh: null, Remelt: null })
            {
                continue;
            }

            plans.Add(plan);
            if (plan.Charges is not null || !sum.SomeWait)
            {
                Compare(plan, findings);
            }
        }

        return plans;
    }

    private static List<AlloySum> Sums(Night night, IEnumerable<PieceMetal> asked)
    {
        var sums = new List<AlloySum>();
        var byName = new Dictionary<string, AlloySum>(StringComparer.Ordinal);
        var open = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var row in asked)
        {
            if (string.IsNullOrWhiteSpace(row.Piece.Alloy))
            {
                continue;
            }

            var name = row.Alloy.Known?.Name ?? OpenName(row.Piece.Alloy, open);
            if (!byName.TryGetValue(name, out var sum))
            {
                byName[name] = sum = new AlloySum(row);
                sums.Add(sum);
            }

            sum.Add(row, night.Waiting.ContainsKey(row.Piece.Id));
        }

        return sums;
    }

    private static string OpenName(string written, Dictionary<string, string> known)
    {
        if (!known.TryGetValue(written, out var name))
        {
            known[written] = name = "? " + AlloyWords.Key(written);
        }

        return name;
    }

    private static MetalPlan Stock(MetalPlan plan, KnownAlloy? known, IReadOnlyList<FlaskPlan> flasks, MeltPortions melts)
    {
        var open = flasks.Where(f => f.Alloy == plan.Alloy && f.State < FlaskState.Poured).ToList();
        var poured = flasks.Any(f => f.Alloy == plan.Alloy && f.State == FlaskState.Poured);
        Mass? charges = open.Count > 0 || poured ? open.Aggregate(Mass.Zero, (sum, f) => sum + f.Charge) : null;
        var (fresh, remelt) = (known?.Row?.Fresh, known?.Row?.Remelt);
        var inStock = fresh is not null || remelt is not null;
        return plan with
        {
            Charges = charges,
            Fresh = fresh,
            Remelt = remelt,
            Buy = inStock && charges is not null ? melts.ToBuy(open, fresh ?? Mass.Zero, remelt ?? Mass.Zero) : null,
            FreshAtLeast = melts.FreshAtLeast,
            Portions = melts.Of(open),
        };
    }

    private static void Compare(MetalPlan plan, FindingList findings)
    {
        if (plan is { Fresh: null, Remelt: null })
        {
            return;
        }

        var subject = new Subject(SubjectKind.Alloy, plan.Alloy, ShopField.Fresh);
        var have = (plan.Fresh ?? Mass.Zero) + (plan.Remelt ?? Mass.Zero);
        if (plan is { Charges: { } charges, Buy: { } buy })
        {
            if (buy > Mass.Zero)
            {
                Lacking(plan, subject, charges, have, buy, findings);
            }
        }
        else if ((plan.Pieces ?? plan.PiecesIfFinished ?? plan.PiecesLeast) is { } needed && needed > have)
        {
            var what = plan.Pieces is not null ? MetalFindingWords.ForPiecesAlone : MetalFindingWords.AtLeastForPiecesAlone;
            findings.Add(Catalogue.MetalShort.At(subject, plan.Alloy, findings.Units.Metal.Say(needed), what, findings.Units.Metal.Say(have), findings.Units.Metal.Say(needed - have)));
        }
    }

    private static void Lacking(MetalPlan plan, Subject subject, Mass charges, Mass have, Mass buy, FindingList findings)
    {
        var enough = plan.Portions.Where(p => p.Fresh is not null).ToList();
        if (enough.Count == plan.Portions.Count)
        {
            var metals = enough.SelectMany(p => p.MadeUp).Select(p => p.Metal).Distinct(StringComparer.Ordinal).ToList();
            findings.Add(Catalogue.MetalMadeUp.At(subject, plan.Alloy, findings.Units.Metal.Say(charges), findings.Units.Metal.Say(have), findings.Units.Metal.Say(buy), Say.Together(metals)));
            return;
        }

        findings.Add(buy - (charges - have) > MeltPortions.Dust
            ? Catalogue.FreshMetalShort.At(
                subject, plan.Alloy, findings.Units.Metal.Say(charges), findings.Units.Metal.Say(plan.Fresh ?? Mass.Zero), findings.Units.Metal.Say(plan.Remelt ?? Mass.Zero),
                Say.Percent(plan.FreshAtLeast!.Value), findings.Units.Metal.Say(buy))
            : Catalogue.MetalShort.At(subject, plan.Alloy, findings.Units.Metal.Say(charges), "", findings.Units.Metal.Say(have), findings.Units.Metal.Say(buy)));
        if (enough.Count > 0)
        {
            findings.Add(Catalogue.FlasksToPourFirst.At(subject, plan.Alloy, Letters(enough), Letters(plan.Portions.Except(enough))));
        }
    }

    private static string Letters(IEnumerable<MeltPortion> portions)
    {
        var letters = portions.Select(p => p.Flask).ToList();
        return CountWords.Flasks(letters.Count, Say.Together(letters));
    }
}
