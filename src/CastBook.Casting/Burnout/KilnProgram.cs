using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>A burnout schedule as one kiln runs it: rises by the schedule's rates, falls no faster than the kiln cools.</summary>
/// <remarks>
/// <para><b>Formula.</b> Way of a rise = ΔT / rate; without a rate it is inside the hold. Way of a fall = |ΔT| / the slower
/// of rate and cooling, always before the hold.</para>
/// <para><b>Symbols.</b> ΔT: from the target before, or the temperature at loading, to the stage's target.</para>
/// <para><b>Valid for</b> kilns that are strong enough for the rates asked. A fall is never counted inside a hold, for the
/// hold at flask temperature would then end before the mould has that temperature.</para>
/// <para><b>Source.</b> Printed schedules count ways up inside their holds; that a kiln takes hours for the fall is
/// common practice.</para>
/// </remarks>
public static class KilnProgram
{
    /// <summary>The stages as the kiln runs them.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="coolsDegreesPerHour">How fast the kiln cools; more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coolsDegreesPerHour"/> is not more than zero.</exception>
    public static IReadOnlyList<ProgramStage> Of(BurnoutSchedule schedule, double coolsDegreesPerHour)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        Require.Positive(coolsDegreesPerHour);
        var stages = new List<ProgramStage>();
        var from = schedule.LoadAt ?? BurnoutSchedule.ColdKiln;
        foreach (var stage in schedule.Stages)
        {
            var rise = stage.Target.DegreesCelsius - from.DegreesCelsius;
            var falls = rise < 0;
            var rate = falls ? Math.Min(stage.RateDegreesPerHour ?? coolsDegreesPerHour, coolsDegreesPerHour) : stage.RateDegreesPerHour;
            var way = rate is { } known ? Duration.FromHours(Math.Abs(rise) / known) : Duration.Zero;
            stages.Add(new ProgramStage(from, stage.Target, way, stage.Hold, rate is null));
            from = stage.Target;
        }

        return stages;
    }

    /// <summary>A schedule with its last stage at a flask temperature; one that does not come down from its top gets the stage.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="flask">Flask temperature at casting.</param>
    /// <param name="hold">How long to hold there where the schedule has no such stage.</param>
    public static BurnoutSchedule PouringAt(BurnoutSchedule schedule, Temperature flask, Duration hold)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        return schedule.Stages[^1].Target < schedule.Top
            ? schedule.EndingAt(flask)
            : new BurnoutSchedule(schedule.Name, schedule.LoadAt, [.. schedule.Stages, new BurnoutStage(flask, null, hold)]);
    }
}
