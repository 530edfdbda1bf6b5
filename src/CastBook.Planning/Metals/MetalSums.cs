using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
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
        Night night, IReadOnlyList<PieceMetal> asked, IReadOnlyList<FlaskPlan> flasks, FindingList findings)
    {
        var plans = new List<MetalPlan>();
        var open = new Dictionary<string, string>(StringComparer.Ordinal);
        var alloys = asked.Select(m => m.Alloy.Known).OfType<KnownAlloy>().DistinctBy(a => a.Name, StringComparer.Ordinal).ToDictionary(a => a.Name, StringComparer.Ordinal);
        var melts = new MeltPortions(night, flasks, alloys, findings);
        var groups = asked
            .Where(m => !string.IsNullOrWhiteSpace(m.Piece.Alloy))
            .GroupBy(m => m.Alloy.Known?.Name ?? OpenName(m.Piece.Alloy!, open), StringComparer.Ordinal);
        foreach (var group in groups)
        {
            var known = group.First().Alloy.Known;
            var plan = Pieces(known?.Name ?? group.First().Piece.Alloy!.Trim(), [.. group]);
            plan = Stock(plan, known, flasks, melts);
            if (plan is { Pieces: null, PiecesLeast: null, PiecesMost: null, Charges: null, Fresh: null, Remelt: null })
            {
                continue;
            }

            plans.Add(plan);
            if (plan.Charges is not null || !group.Any(m => night.Waiting.ContainsKey(m.Piece.Id)))
            {
                Compare(plan, findings);
            }
        }

        return plans;
    }

    private static string OpenName(string written, Dictionary<string, string> known)
    {
        if (!known.TryGetValue(written, out var name))
        {
            known[written] = name = "? " + AlloyWords.Key(written);
        }

        return name;
    }

    private static MetalPlan Pieces(string name, List<PieceMetal> rows)
    {
        var exact = Sum(rows, m => m.Each);
        if (exact is not null)
        {
            return new MetalPlan { Alloy = name, Pieces = exact };
        }

        // What is not known at all counts nothing for the least and leaves the most open.
        var least = rows.Aggregate(Mass.Zero, (sum, m) => sum + ((m.Least ?? Mass.Zero) * (m.Piece.Quantity ?? 0)));
        return new MetalPlan
        {
            Alloy = name,
            PiecesLeast = least > Mass.Zero ? least : null,
            PiecesMost = Sum(rows, m => m.Most),
            PiecesIfFinished = rows.Exists(m => m.WantsMeaning) ? Sum(rows, m => m.WantsMeaning ? m.Piece.Weight : m.Each) : null,
        };
    }

    private static Mass? Sum(List<PieceMetal> rows, Func<PieceMetal, Mass?> each) =>
        rows.Aggregate((Mass?)Mass.Zero, (sum, m) => sum + (each(m) * m.Piece.Quantity));

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
            var what = plan.Pieces is not null ? " for the pieces alone" : " at least for the pieces alone";
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
        return (letters.Count == 1 ? "flask " : "flasks ") + Say.Together(letters);
    }
}
