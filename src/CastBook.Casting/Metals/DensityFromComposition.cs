using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>The density of an alloy from what it is made of, where nobody has measured it.</summary>
/// <remarks>
/// <para><b>Formula.</b> 1/ρ = Σ w(i)/ρ(i): the volumes of the elements add up. The parts are first brought
/// to a sum of one.</para>
/// <para><b>Symbols.</b> w(i): share by mass of an element; ρ(i): its density as a solid.</para>
/// <para><b>Valid for</b> silver, gold and copper among themselves (within 1 % of measurement), and for
/// platinum, palladium, ruthenium and iridium among themselves (within 0.5 %). With zinc, tin, silicon, cobalt, aluminium or
/// indium the rule reads low by as much as the table here says; other elements, and the two groups mixed, have not been
/// compared.</para>
/// <para><b>Source.</b> Additive specific volumes; worked examples and measured densities from published
/// tables, compared in the tests.</para>
/// </remarks>
public static class DensityFromComposition
{
    private static readonly HashSet<string> JewelleryMetals = ["Ag", "Au", "Cu"];
    private static readonly HashSet<string> PlatinumMetals = ["Pt", "Pd", "Ru", "Ir"];

    // The most that the rule was found low, in percent rounded up: brasses 1.4 to 2.5; bronzes 0.1 to 1.1; silicon bronzes 3.4
    // to 5.9; platinum with cobalt 3.7; aluminium bronzes 4.6 to 5.6; a dental gold with indium 3.6. Published densities, in the tests.
    private static readonly (string Symbol, double Percent)[] FoundLow =
        [("Zn", 3), ("Sn", 2), ("Si", 6), ("Co", 4), ("Al", 6), ("In", 4)];

    /// <summary>Applies the mixing rule.</summary>
    /// <param name="composition">What the alloy is made of.</param>
    /// <returns>The density, with a word on whether it can be relied on.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="composition"/> is missing.</exception>
    public static DensityEstimate Compute(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);

        var perMille = 0.0;
        var specificVolume = 0.0;   // ml per 1000 g
        var lowByPercent = 0.0;
        var doubtful = new List<string>();
        var trusted = composition.IsOfPlatinumMetals ? PlatinumMetals : JewelleryMetals;
        foreach (var (symbol, share) in composition.Parts)
        {
            // A composition holds only symbols that the table of elements knows.
            _ = Elements.TryGet(symbol, out var element);
            perMille += share;
            specificVolume += share / element!.Density.GramsPerCubicCentimeter;
            if (!trusted.Contains(symbol))
            {
                doubtful.Add(symbol);
                lowByPercent = Math.Max(lowByPercent, FoundLowBy(symbol));
            }
        }

        return new DensityEstimate(
            Density.FromGramsPerCubicCentimeter(perMille / specificVolume),
            doubtful,
            doubtful.Count > 0 && double.IsFinite(lowByPercent) ? Ratio.FromPercent(lowByPercent) : null);
    }

    private static double FoundLowBy(string symbol)
    {
        foreach (var found in FoundLow)
        {
            if (found.Symbol == symbol)
            {
                return found.Percent;
            }
        }

        return double.PositiveInfinity;
    }
}
