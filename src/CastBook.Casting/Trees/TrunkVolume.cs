using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The volume of the main sprue, before the tree is built and weighed.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = π/4 × d² × l.</para>
/// <para><b>Symbols.</b> d: diameter of the trunk; l: its length from the base.</para>
/// <para><b>Valid for</b> a straight round trunk. A weighed tree replaces it; see <see cref="WeighedTree"/>.</para>
/// <para><b>Source.</b> Volume of a cylinder, exact.</para>
/// </remarks>
public static class TrunkVolume
{
    /// <summary>Computes the volume.</summary>
    /// <param name="diameter">Diameter of the trunk; zero or more.</param>
    /// <param name="length">Length of the trunk; zero or more.</param>
    /// <returns>The volume of the trunk.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative.</exception>
    public static Volume Compute(Length diameter, Length length)
    {
        Require.NotNegative(diameter);
        Require.NotNegative(length);

        return Cylinder.Of(diameter, length);
    }
}
