using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Patterns;

/// <summary>The mass of metal that fills the space a burnt-out pattern leaves.</summary>
/// <remarks>
/// <para><b>Formula.</b> m(metal) = V × ρ(alloy), with V = m(pattern) / ρ(pattern).</para>
/// <para><b>Symbols.</b> V: volume of the pattern; ρ(alloy): solid alloy at room temperature; ρ(pattern):
/// solid pattern material at room temperature.</para>
/// <para><b>Valid for</b> solid patterns without stones. Makes no allowance for tree, button or melt loss;
/// see <see cref="Trees.Charge"/>. Reads about 3 % above the finished casting, because the metal shrinks
/// as it cools; for a charge that is the safe side.</para>
/// <para><b>Source.</b> Equal volumes, from the definition of density: BIPM, <i>The International
/// System of Units (SI)</i>, 9th ed., 2019, Table 5.</para>
/// </remarks>
public static class MetalForPattern
{
    /// <summary>Computes the metal for a pattern of known volume.</summary>
    /// <param name="pattern">Volume of the pattern; zero or more.</param>
    /// <param name="alloy">Density of the solid alloy; more than zero.</param>
    /// <returns>The mass of metal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="pattern"/> is negative, or <paramref name="alloy"/> is zero or negative.
    /// </exception>
    public static Mass Compute(Volume pattern, Density alloy)
    {
        Require.NotNegative(pattern);
        Require.Positive(alloy);

        return pattern * alloy;
    }

    /// <summary>Computes the metal for a pattern of known mass.</summary>
    /// <param name="pattern">The pattern as weighed; zero or more.</param>
    /// <param name="patternDensity">Density of the pattern material; more than zero.</param>
    /// <param name="alloyDensity">Density of the solid alloy; more than zero.</param>
    /// <returns>The mass of metal, in the unit of <paramref name="pattern"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="pattern"/> is negative, or a density is zero or negative.
    /// </exception>
    public static Mass Compute(Mass pattern, Density patternDensity, Density alloyDensity)
    {
        Require.NotNegative(pattern);
        Require.Positive(patternDensity);
        Require.Positive(alloyDensity);

        return pattern * (alloyDensity / patternDensity);
    }
}
