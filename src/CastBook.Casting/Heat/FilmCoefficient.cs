namespace CastBook.Casting.Heat;

/// <summary>How well heat passes between a kiln and the face of a mould, radiation as if it were convection.</summary>
/// <remarks>
/// <para><b>Formula.</b> h = convection + 4 ε σ T³.</para>
/// <para><b>Symbols.</b> ε: emissivity of kiln and mould, 0.9; σ: Stefan–Boltzmann constant; T: absolute temperature.</para>
/// <para><b>Valid for</b> differences of temperature that are small beside T; larger ones pass more.</para>
/// <para><b>Source.</b> Textbooks of heat transfer; convection of still air 2 to 25 W/(m² K), published range.</para>
/// </remarks>
internal static class FilmCoefficient
{
    private const double Emissivity = 0.9;
    private const double StefanBoltzmann = 5.670374419e-8;
    private const double KelvinAtZero = 273.15;

    /// <summary>Radiation alone, in W/(m² K).</summary>
    /// <param name="celsius">Temperature in °C.</param>
    public static double Radiation(double celsius)
    {
        var kelvin = celsius + KelvinAtZero;
        return 4 * Emissivity * StefanBoltzmann * kelvin * kelvin * kelvin;
    }

    /// <summary>Radiation alone to surroundings that are much cooler, in W/(m² K).</summary>
    /// <param name="celsius">Temperature of the face in °C.</param>
    /// <param name="around">Temperature of the surroundings in °C.</param>
    public static double RadiationTo(double celsius, double around)
    {
        var (face, room) = (celsius + KelvinAtZero, around + KelvinAtZero);
        return Emissivity * StefanBoltzmann * ((face * face) + (room * room)) * (face + room);
    }
}
