using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>Finds the class of a flask.</summary>
/// <remarks>
/// <para><b>Valid for</b> round flasks. Both measures must fit: a wide low flask goes by its diameter, a
/// narrow tall one by its height.</para>
/// <para><b>Source.</b> The published schedules name flasks of 2½ × 2½, 3½ × 4 and 4 × 8 in; the limits are
/// those sizes with a little room.</para>
/// </remarks>
public static class FlaskClasses
{
    // Room for the dust of a conversion from inches, so that a flask at the limit stays within it.
    private const double DustMm = 1e-6;

    private static readonly (FlaskClass Class, double DiameterMm, double HeightMm)[] Limits =
    [
        (FlaskClass.Small, 65, 65),
        (FlaskClass.Medium, 90, 105),
        (FlaskClass.Large, 105, 205),
    ];

    /// <summary>The smallest class that takes the flask.</summary>
    /// <param name="insideDiameter">Inside diameter; more than zero.</param>
    /// <param name="height">Height; more than zero.</param>
    /// <returns>The class, or missing when the flask is larger than any published schedule covers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is zero or negative.</exception>
    public static FlaskClass? Of(Length insideDiameter, Length height)
    {
        Require.Positive(insideDiameter);
        Require.Positive(height);

        foreach (var limit in Limits)
        {
            if (insideDiameter.Millimeters <= limit.DiameterMm + DustMm && height.Millimeters <= limit.HeightMm + DustMm)
            {
                return limit.Class;
            }
        }

        return null;
    }
}
