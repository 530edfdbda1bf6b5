using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>A stage as the kiln runs it.</summary>
/// <param name="From">Kiln temperature at its begin.</param>
/// <param name="Target">Kiln temperature it goes to.</param>
/// <param name="Way">How long the kiln takes to get there.</param>
/// <param name="Hold">How long it holds, counted from arrival; where the way is inside the hold, from the stage's begin.</param>
/// <param name="WayInHold">Whether the way is inside the hold, as printed schedules count.</param>
public sealed record ProgramStage(Temperature From, Temperature Target, Duration Way, Duration Hold, bool WayInHold)
{
    /// <summary>How fast the kiln is taken to rise where a schedule gives no rate, in degrees Celsius per hour: an electric kiln of a small shop with flasks in it, from memory. Only the estimate of the core goes by it.</summary>
    public const double UsualRiseDegreesPerHour = 300;

    /// <summary>How long the kiln is on its way, also where that is inside the hold: then at the usual rise, at most the hold.</summary>
    public Duration WayUp => WayInHold
        ? Duration.FromHours(Math.Min(Hold.Hours, Math.Abs(Target.DegreesCelsius - From.DegreesCelsius) / UsualRiseDegreesPerHour))
        : Way;

    /// <summary>The whole stage.</summary>
    public Duration Takes => WayInHold ? Hold : Way + Hold;
}
