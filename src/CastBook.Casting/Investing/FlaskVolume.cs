using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>The inside volume of a flask.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = π/4 × d² × h.</para>
/// <para><b>Symbols.</b> d: inside diameter; h: inside height.</para>
/// <para><b>Valid for</b> straight round flasks. Names of sizes often give the outside: walls of 3 mm then
/// cost 12 to 18 % of the volume.</para>
/// <para><b>Source.</b> Volume of a cylinder, exact.</para>
/// </remarks>
public static class FlaskVolume
{
    /// <summary>Computes the volume.</summary>
    /// <param name="insideDiameter">Inside diameter; zero or more.</param>
    /// <param name="height">Inside height; zero or more.</param>
    /// <returns>The inside volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative.</exception>
    public static Volume Compute(Length insideDiameter, Length height)
    {
        Require.NotNegative(insideDiameter);
        Require.NotNegative(height);

        return Cylinder.Of(insideDiameter, height);
    }
}
