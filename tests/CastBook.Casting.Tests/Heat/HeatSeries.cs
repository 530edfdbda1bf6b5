using CastBook.Casting.Heat;

namespace CastBook.Casting.Tests.Heat;

/// <summary>
/// What is left of one step of temperature, as textbooks write it: the sum of a series over the roots. It knows nothing of grids
/// and steps of time, and the trace of a mould's core is compared with it.
/// </summary>
internal static class HeatSeries
{
    // Terms that fade below e⁻³⁰ change no digit that is kept.
    private const double Faded = 30;

    // More terms are asked for only by times too short for any to matter.
    private const int MostTerms = 100;

    /// <summary>The share that is left in a wall: θ = Σ C exp(−ζ² Fo) cos(ζ x).</summary>
    public static double Wall(double biot, double fourier, double place) =>
        Sum(fourier, number => WallCooling.Eigenvalue(number, biot), root => WallCooling.Weight(root) * Math.Cos(root * place));

    /// <summary>The share that is left in a long cylinder: θ = Σ C exp(−ζ² Fo) J₀(ζ x).</summary>
    public static double Cylinder(double biot, double fourier, double place) =>
        Sum(fourier, number => CylinderCooling.Eigenvalue(number, biot), root => CylinderCooling.Weight(root) * Bessel.J0(root * place));

    private static double Sum(double fourier, Func<int, double> root, Func<double, double> amplitude)
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
