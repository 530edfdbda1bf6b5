using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>The night hour by hour.</summary>
public sealed record NightClock
{
    /// <summary>The steps, in the order in which they begin.</summary>
    public required IReadOnlyList<ClockStep> Steps { get; init; }

    /// <summary>The kiln loads, in the order in which they are loaded.</summary>
    public required IReadOnlyList<KilnLoad> Loads { get; init; }

    /// <summary>What the kiln really did with one of the loads; missing where no log was given.</summary>
    public LoggedBurnout? Logged { get; init; }

    /// <summary>When the first step begins; missing while nobody has said an hour, and then only durations are known.</summary>
    public DateTimeOffset? Start { get; init; }

    /// <summary>The zone in which the shop's clocks run.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.Utc;

    /// <summary>How long the night takes, from its first step to its last.</summary>
    public Duration Takes => Steps.Count == 0 ? Duration.Zero : Duration.FromMinutes(Steps.Max(s => s.Ends.Minutes));

    /// <summary>The step in which a flask is poured; missing where it is not poured.</summary>
    /// <param name="flask">The flask's letter.</param>
    public ClockStep? PourOf(string flask) => Of(ClockStepKind.Pour, flask);

    /// <summary>The step in which a flask is quenched; missing where it is not.</summary>
    /// <param name="flask">The flask's letter.</param>
    public ClockStep? QuenchOf(string flask) => Of(ClockStepKind.Quench, flask);

    /// <summary>What the shop's clocks show at a time of the night; missing while no hour is known.</summary>
    /// <param name="after">The time, from the first step on.</param>
    /// <returns>The hour to the nearest minute.</returns>
    public DateTime? Shown(Duration after)
    {
        if (Start is not { } start)
        {
            return null;
        }

        var minutes = Math.Round(TimeSpan.FromTicks(start.UtcTicks).TotalMinutes + after.Minutes, MidpointRounding.AwayFromZero);
        return TimeZoneInfo.ConvertTime(new DateTimeOffset(TimeSpan.FromMinutes(minutes).Ticks, TimeSpan.Zero), Zone).DateTime;
    }

    private ClockStep? Of(ClockStepKind kind, string flask) => Steps.FirstOrDefault(s => s.Kind == kind && s.Flasks.Contains(flask));
}
