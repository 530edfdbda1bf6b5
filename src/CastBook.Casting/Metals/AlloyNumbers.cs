using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>Short spellings for the tables of alloys.</summary>
internal static class AlloyNumbers
{
    /// <summary>A density in g/cm³.</summary>
    public static Density Gcc(double gramsPerCubicCentimeter) => Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimeter);

    /// <summary>A temperature in °C.</summary>
    public static Temperature Celsius(double degreesCelsius) => Temperature.FromDegreesCelsius(degreesCelsius);

    /// <summary>A time in minutes.</summary>
    public static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);

    /// <summary>The density by the mixing rule, for compositions where the rule is reliable.</summary>
    /// <exception cref="InvalidOperationException">The rule is not reliable for this composition.</exception>
    public static Density ByRule(Composition composition)
    {
        var estimate = DensityFromComposition.Compute(composition);
        return estimate.Reliable
            ? estimate.Density
            : throw new InvalidOperationException("The mixing rule is not reliable for this composition.");
    }
}
