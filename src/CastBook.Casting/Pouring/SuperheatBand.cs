using UnitsNet;

namespace CastBook.Casting.Pouring;

/// <summary>How far above its liquidus an alloy is poured.</summary>
/// <remarks>
/// <para><b>Valid for</b> silver and the carat golds. Bronzes are poured over a wider band, which is not known
/// here, and so is that of metal poured by gravity alone.</para>
/// <para><b>Source.</b> A published supplier table: vacuum 100 to 200 °F, spin 50 to 125 °F over the melt, and
/// less for plain pieces.</para>
/// </remarks>
public static class SuperheatBand
{
    private static readonly (TemperatureDelta Least, TemperatureDelta Most) Vacuum = Fahrenheit(100, 200);
    private static readonly (TemperatureDelta Least, TemperatureDelta Most) Spin = Fahrenheit(50, 125);

    /// <summary>The band for a way of casting.</summary>
    /// <param name="method">How the metal is driven.</param>
    /// <returns>The least and the most that the metal is hotter than its liquidus.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is neither vacuum nor spin.</exception>
    public static (TemperatureDelta Least, TemperatureDelta Most) For(CastingMethod method) => method switch
    {
        CastingMethod.VacuumPerforated or CastingMethod.VacuumSolid => Vacuum,
        CastingMethod.Spin => Spin,
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "The method must be vacuum or spin."),
    };

    private static (TemperatureDelta Least, TemperatureDelta Most) Fahrenheit(double least, double most) =>
        (TemperatureDelta.FromDegreesFahrenheit(least), TemperatureDelta.FromDegreesFahrenheit(most));
}
