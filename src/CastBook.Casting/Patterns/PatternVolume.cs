using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Patterns;

/// <summary>The volume of a pattern, from its mass.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = m / ρ.</para>
/// <para><b>Symbols.</b> m: pattern as weighed; ρ: solid pattern material at room temperature.</para>
/// <para><b>Valid for</b> solid patterns of one material, without stones. Cured resin for 1.00 g/cm³ instead
/// of 1.15 reads 15 % too large.</para>
/// <para><b>Source.</b> The definition of density: BIPM, <i>The International System of Units (SI)</i>,
/// 9th ed., 2019, Table 5.</para>
/// </remarks>
public static class PatternVolume
{
    /// <summary>Computes the volume.</summary>
    /// <param name="pattern">The pattern as weighed; zero or more.</param>
    /// <param name="material">Density of its material; more than zero.</param>
    /// <returns>The volume of the pattern, which the metal will fill.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="pattern"/> is negative, or <paramref name="material"/> is zero or negative.
    /// </exception>
    public static Volume Compute(Mass pattern, Density material)
    {
        Require.NotNegative(pattern);
        Require.Positive(material);

        return pattern / material;
    }
}
