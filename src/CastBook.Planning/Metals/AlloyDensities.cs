using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Words;

namespace CastBook.Planning.Metals;

/// <summary>Looks whether an alloy can have the density that is given for it.</summary>
internal static class AlloyDensities
{
    // Where the rule of mixing is known to be off it is off by less than half of this.
    private const double FarFromItsParts = 0.2;

    // No alloy that is cast here is lighter than aluminium or heavier than osmium.
    private const double LeastGramsPerMl = 2.6;
    private const double MostGramsPerMl = 22.6;

    /// <summary>Why an alloy cannot have its density; nothing where it can, or has none.</summary>
    /// <param name="alloy">The alloy.</param>
    public static string? WhyNot(Alloy alloy)
    {
        if (alloy.Density is not { } density)
        {
            return null;
        }

        if (alloy.Composition is { } parts)
        {
            var mixed = DensityFromComposition.Compute(parts).Density;
            return Math.Abs((density / mixed) - 1) > FarFromItsParts ? MetalFindingWords.CompositionMakes(Say.Dense(mixed)) : null;
        }

        return density.GramsPerCubicCentimeter is < LeastGramsPerMl or > MostGramsPerMl
            ? MetalFindingWords.AlloysRun(Say.Plain(LeastGramsPerMl), Say.Plain(MostGramsPerMl))
            : null;
    }
}
