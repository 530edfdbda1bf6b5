namespace CastBook.Casting.Heat;

/// <summary>Adds up the terms of a heat series, as many as the time needs.</summary>
internal static class HeatSeries
{
    /// <summary>Terms that fade below e⁻³⁰ change no digit that is kept.</summary>
    private const double Faded = 30;

    /// <summary>More terms are asked for only by times too short for any to matter.</summary>
    private const int MostTerms = 100;

    /// <summary>Adds amplitude × exp(−root² Fo) until the terms have faded.</summary>
    public static double Sum(double fourier, Func<int, double> root, Func<double, double> amplitude)
    {
        var sum = 0.0;
        for (var number = 0; number < MostTerms; number++)
        {
            var z = root(number);
            var fading = z * z * fourier;
            if (number > 0 && fading > Faded)
            {
                break;
            }

            sum += amplitude(z) * Math.Exp(-fading);
        }

        return sum;
    }
}
