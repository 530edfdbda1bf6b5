using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Patterns;

/// <summary>The density of a pattern material, learnt from a weighed solid test cube.</summary>
/// <remarks>
/// <para><b>Formula.</b> ρ = m / a³, or m / V where the volume was measured.</para>
/// <para><b>Symbols.</b> m: the cube as weighed; a: its edge as measured, not as drawn; V: what it displaces.</para>
/// <para><b>Valid for</b> solid cubes without hollows, washed and cured like the patterns. An edge that is read
/// 1 % wrong makes the density 3 % wrong, so that 20 mm want to be read to a tenth.</para>
/// <para><b>Source.</b> The definition of density.</para>
/// </remarks>
public static class TestCube
{
    /// <summary>The density by edge.</summary>
    /// <param name="mass">The cube as weighed; more than zero.</param>
    /// <param name="edge">Its edge; more than zero.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is zero or negative.</exception>
    public static Density Compute(Mass mass, Length edge)
    {
        Require.Positive(mass);
        Require.Positive(edge);

        return mass / (edge * edge * edge);
    }

    /// <summary>The density by measured volume.</summary>
    /// <param name="mass">The body as weighed; more than zero.</param>
    /// <param name="volume">What it displaces; more than zero.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is zero or negative.</exception>
    public static Density Compute(Mass mass, Volume volume)
    {
        Require.Positive(mass);
        Require.Positive(volume.Milliliters, nameof(volume));

        return mass / volume;
    }
}
