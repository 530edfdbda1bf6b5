using System.Runtime.CompilerServices;

namespace CastBook.Casting.Heat;

/// <summary>The Bessel functions of the first kind that heat in a cylinder follows.</summary>
/// <remarks>
/// <para><b>Formula.</b> J₀(x) = mean of cos(x sin t), J₁(x) = mean of cos(t − x sin t), over t from 0 to 2π.</para>
/// <para><b>Symbols.</b> x: the argument; t: an angle.</para>
/// <para><b>Valid for</b> any finite x. The mean of evenly spaced angles is off by Bessel functions of an order as high as their
/// number, which is nothing as soon as the number is well above x.</para>
/// <para><b>Source.</b> Bessel's integral.</para>
/// </remarks>
internal static class Bessel
{
    /// <summary>The function of order nought.</summary>
    public static double J0(double x) => MeanOfCosines(0, x);

    /// <summary>The function of order one.</summary>
    public static double J1(double x) => MeanOfCosines(1, x);

    // Run a few thousand times once: waiting until it is found to be hot would cost more than the sums.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double MeanOfCosines(int order, double x)
    {
        var angles = 40 + (2 * (int)Math.Ceiling(Math.Abs(x)));
        var sum = 0.0;
        for (var i = 0; i < angles; i++)
        {
            var angle = 2 * Math.PI * i / angles;
            sum += Math.Cos((order * angle) - (x * Math.Sin(angle)));
        }

        return sum / angles;
    }
}
