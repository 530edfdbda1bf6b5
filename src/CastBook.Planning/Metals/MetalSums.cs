using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Adds up the night's metal by alloy and compares it with the stock.</summary>
internal static class MetalSums
{
    /// <summary>A line for each alloy of which something is known, in the order of the list.</summary>
    /// <param name="asked">The rows that are asked for.</param>
    /// <param name="flasks">The flasks.</param>
    /// <param name="findings">Takes what is found.</param>
    public static IReadOnlyList<MetalPlan> Of(
        IReadOnlyList<PieceMetal> asked, IReadOnlyList<FlaskPlan> flasks, FindingList findings)
    {
        var plans = new List<MetalPlan>();
        var open = new Dictionary<string, string>(StringComparer.Ordinal);
        var groups = asked
            .Where(m => !string.IsNullOrWhiteSpace(m.Piece.Alloy))
            .GroupBy(m => m.Alloy.Known?.Name ?? OpenName(m.Piece.Alloy!, open), StringComparer.Ordinal);
        foreach (var group in groups)
        {
            var known = group.First().Alloy.Known;
            var plan = Pieces(known?.Name ?? group.First().Piece.Alloy!.Trim(), [.. group]);
            plan = Stock(plan, known, flasks);
            if (plan is { Pieces: null, PiecesLeast: null, PiecesMost: null, Charges: null, Fresh: null, Remelt: null })
            {
                continue;
            }

            plans.Add(plan);
            Compare(plan, findings);
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

    private static MetalPlan Stock(MetalPlan plan, KnownAlloy? known, IReadOnlyList<FlaskPlan> flasks)
    {
        var open = flasks.Where(f => f.Alloy == plan.Alloy && f.State < FlaskState.Poured).ToList();
        var poured = flasks.Any(f => f.Alloy == plan.Alloy && f.State == FlaskState.Poured);
        Mass? charges = open.Count > 0 || poured ? open.Aggregate(Mass.Zero, (sum, f) => sum + f.Charge) : null;
        var (fresh, remelt) = (known?.Row?.Fresh, known?.Row?.Remelt);
        Mass? stock = fresh is null && remelt is null ? null : (fresh ?? Mass.Zero) + (remelt ?? Mass.Zero);
        return plan with
        {
            Charges = charges,
            Fresh = fresh,
            Remelt = remelt,
            Buy = charges - stock is { } lacking ? UnitMath.Max(Mass.Zero, lacking) : null,
        };
    }

    private static void Compare(MetalPlan plan, FindingList findings)
    {
        if (plan is { Fresh: null, Remelt: null })
        {
            return;
        }

        var have = (plan.Fresh ?? Mass.Zero) + (plan.Remelt ?? Mass.Zero);
        var least = plan.Pieces ?? plan.PiecesIfFinished ?? plan.PiecesLeast;
        if ((plan.Charges ?? least) is { } needed && needed > have)
        {
            var what = plan.Charges is not null ? "" : plan.Pieces is not null ? " for the pieces alone" : " at least for the pieces alone";
            findings.Add(Catalogue.MetalShort.At(
                new Subject(SubjectKind.Alloy, plan.Alloy, ShopField.Fresh),
                plan.Alloy, Say.Grams(needed), what, Say.Grams(have), Say.Grams(needed - have)));
        }
    }
}
