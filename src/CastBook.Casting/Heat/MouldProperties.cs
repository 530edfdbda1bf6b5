namespace CastBook.Casting.Heat;

/// <summary>What heat meets in a mould: both ends of what is published.</summary>
/// <remarks>
/// <para><b>Source.</b> Slow: pure gypsum as measured, 0.3004 W/(m K) and 0.1923 mm²/s; fast: gypsum plaster, 0.48 W/(m K) and
/// 0.397 mm²/s, both published; convection 5 and 25 W/(m² K), published range.</para>
/// </remarks>
internal static class MouldProperties
{
    /// <summary>Conductivity, diffusivity, and convection at the face.</summary>
    public static (double ConductivityWmK, double DiffusivityMm2S, double ConvectionWm2K) Of(MouldCase mould) =>
        mould == MouldCase.Slow ? (0.3004, 0.1923, 5.0) : (0.48, 0.397, 25.0);
}
