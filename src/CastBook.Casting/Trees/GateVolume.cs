using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The volume of the gates of a piece, before the tree is built and weighed.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = n × π/4 × d² × l.</para>
/// <para><b>Symbols.</b> n: number of gates; d: their diameter; l: their length.</para>
/// <para><b>Valid for</b> straight round gates, all alike, that are not part of the weighed pattern.</para>
/// <para><b>Source.</b> Volume of a cylinder, exact.</para>
/// </remarks>
public static class GateVolume
{
    /// <summary>Computes the volume of all gates together.</summary>
    /// <param name="count">How many gates; zero or more.</param>
    /// <param name="diameter">Diameter of one gate; zero or more.</param>
    /// <param name="length">Length of one gate; zero or more.</param>
    /// <returns>The volume of the gates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count or a length is negative.</exception>
    public static Volume Compute(int count, Length diameter, Length length)
    {
        Require.NotNegative(count);
        Require.NotNegative(diameter);
        Require.NotNegative(length);

        return count * Cylinder.Of(diameter, length);
    }
}
