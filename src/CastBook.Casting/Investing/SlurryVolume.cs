using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>What powder and water fill together.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = m(powder) / ρ(powder) + V(water).</para>
/// <para><b>Symbols.</b> ρ(powder): the grains, not the heap.</para>
/// <para><b>Valid for</b> a mix before its air rises; under vacuum it stands much higher for a while.</para>
/// <para><b>Source.</b> Volumes add up.</para>
/// </remarks>
public static class SlurryVolume
{
    /// <summary>Computes the volume.</summary>
    /// <param name="powder">Powder; zero or more.</param>
    /// <param name="water">Water; zero or more.</param>
    /// <param name="powderDensity">Density of the grains; more than zero.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass or volume is negative, or the density is not more than zero.</exception>
    public static Volume Compute(Mass powder, Volume water, Density powderDensity)
    {
        Require.NotNegative(powder);
        Require.NotNegative(water);
        Require.Positive(powderDensity);

        return (powder / powderDensity) + water;
    }
}
