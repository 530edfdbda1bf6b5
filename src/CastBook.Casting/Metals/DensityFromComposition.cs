using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>The density of an alloy from what it is made of, where nobody has measured it.</summary>
/// <remarks>
/// <para><b>Formula.</b> 1/ρ = Σ w(i)/ρ(i): the volumes of the elements add up. The parts are first brought
/// to a sum of one.</para>
/// <para><b>Symbols.</b> w(i): share by mass of an element; ρ(i): its density as a solid.</para>
/// <para><b>Valid for</b> silver, gold and copper among themselves (within 1 % of measurement) and for
/// platinum and palladium with ruthenium and iridium (within 0.5 %). With zinc, tin, silicon or cobalt the
/// rule reads 1 to 6 % low; other elements have not been compared. Those come out as not reliable.</para>
/// <para><b>Source.</b> Additive specific volumes; worked examples and measured densities from published
/// tables, compared in the tests.</para>
/// </remarks>
public static class DensityFromComposition
{
    private static readonly HashSet<string> Compared = ["Ag", "Au", "Cu", "Pt", "Pd", "Ru", "Ir"];

    /// <summary>Applies the mixing rule.</summary>
    /// <param name="composition">What the alloy is made of.</param>
    /// <returns>The density, with a word on whether it can be relied on.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="composition"/> is missing.</exception>
    public static DensityEstimate Compute(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);

        var perMille = 0.0;
        var specificVolume = 0.0;   // ml per 1000 g
        var reliable = true;
        foreach (var (symbol, share) in composition.Parts)
        {
            // A composition holds only symbols that the table of elements knows.
            _ = Elements.TryGet(symbol, out var element);
            perMille += share;
            specificVolume += share / element!.Density.GramsPerCubicCentimeter;
            reliable &= Compared.Contains(symbol);
        }

        return new DensityEstimate(Density.FromGramsPerCubicCentimeter(perMille / specificVolume), reliable);
    }
}
