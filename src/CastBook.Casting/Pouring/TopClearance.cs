using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Pouring;

/// <summary>The investment that must stand above the tree, so that the metal does not break through.</summary>
/// <remarks>
/// <para><b>Formula.</b> Vacuum: the larger of 12 mm and d/4. Spin: 12 mm. Gravity: as vacuum.</para>
/// <para><b>Symbols.</b> d: inside diameter of the flask.</para>
/// <para><b>Valid for</b> gypsum-bonded investment. A break-through under vacuum puts metal into the pump.</para>
/// <para><b>Source.</b> A published working rule of a quarter inch for each inch of diameter; 12 mm is common
/// practice. By gravity alone no rule is known; that of vacuum is on the safe side, as the mould bears less: the weight of 200 mm of
/// bronze presses with 17 kPa, a vacuum with up to 101 kPa more.</para>
/// </remarks>
public static class TopClearance
{
    /// <summary>Never less than this: 12 mm. Common practice.</summary>
    public static Length Least { get; } = Length.FromMillimeters(12);

    /// <summary>Computes the clearance.</summary>
    /// <param name="method">How the metal is driven.</param>
    /// <param name="insideDiameter">Inside diameter of the flask; more than zero.</param>
    /// <returns>The clearance above the highest point of the tree.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="insideDiameter"/> is zero or negative, or the method is not a known one.
    /// </exception>
    public static Length Compute(CastingMethod method, Length insideDiameter)
    {
        Require.Positive(insideDiameter);

        return method switch
        {
            CastingMethod.VacuumPerforated or CastingMethod.VacuumSolid or CastingMethod.Gravity => UnitMath.Max(Least, insideDiameter / 4),
            CastingMethod.Spin => Least,
            _ => throw new ArgumentOutOfRangeException(nameof(method), method, "The method must be vacuum, spin or gravity."),
        };
    }
}
