using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Heat;

/// <summary>How much a mould has lost when it stands outside the kiln before it is poured.</summary>
/// <remarks>
/// <para><b>Formula.</b> lost = (T − room) × (erfc ξ − exp(h x / k + h² α t / k²) erfc(ξ + h √(α t) / k)), with ξ = x / (2 √(α t)) and
/// h = convection + ε σ (T² + room²)(T + room).</para>
/// <para><b>Symbols.</b> T: the mould, as it leaves the kiln; x: depth below its face; t: time in the open; k: conductivity;
/// α: diffusivity; h: film coefficient; ε: emissivity, 0.9; room: 20 °C; temperatures in h are absolute.</para>
/// <para><b>Valid for</b> the first ten minutes, in which nothing has come from the other side of a small flask; flat faces, so that a round one loses a little
/// more; the steel of the flask, which delays it, is left out. h is that of the first moment and errs towards too much.</para>
/// <para><b>Source.</b> Textbooks of heat transfer: the thick wall with convection at its face. Properties as in
/// <see cref="CoreTrace"/>: the published slow and fast cases.</para>
/// </remarks>
public static class OpenMould
{
    private const double RoomCelsius = 20;

    // By then the cold has come some 30 mm deep in the fast case, to the middle of the smallest flasks.
    private const double LongestMinutes = 10;

    /// <summary>What is lost at a depth.</summary>
    /// <param name="mould">The mould as it leaves the kiln.</param>
    /// <param name="depth">Depth below its face; zero or more.</param>
    /// <param name="time">Time in the open; more than zero, and ten minutes at most.</param>
    /// <param name="mouldCase">Which end of the range.</param>
    /// <returns>By how much it is cooler there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative, or the time is outside these limits.</exception>
    public static TemperatureDelta Lost(Temperature mould, Length depth, Duration time, MouldCase mouldCase)
    {
        Require.NotNegative(depth);
        Require.Positive(time.Seconds, nameof(time));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(time.Minutes, LongestMinutes, nameof(time));
        var (conductivityWmK, diffusivityMm2S, convectionWm2K) = MouldProperties.Of(mouldCase);
        var film = convectionWm2K + FilmCoefficient.RadiationTo(mould.DegreesCelsius, RoomCelsius);
        var reachMm = Math.Sqrt(diffusivityMm2S * time.Seconds);
        var depths = depth.Millimeters / (2 * reachMm);
        var (perDepth, perReach) = (film * depth.Millimeters / 1000 / conductivityWmK, film * reachMm / 1000 / conductivityWmK);
        var share = ErrorFunction.Complement(depths) - (Math.Exp(perDepth + (perReach * perReach)) * ErrorFunction.Complement(depths + perReach));
        return TemperatureDelta.FromDegreesCelsius((mould.DegreesCelsius - RoomCelsius) * share);
    }
}
