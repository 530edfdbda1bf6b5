using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Mixes that are made one after the other: all of a night, or those of one kiln load.</summary>
/// <param name="Steps">Their steps, counted from the part's begin.</param>
internal sealed record MixingPart(IReadOnlyList<ClockStep> Steps) : NightPart(Steps)
{
    /// <summary>When the last mould is filled, in minutes.</summary>
    public double Filled { get; } = Steps.LastOrDefault(s => s.Kind == ClockStepKind.FlaskVacuum)?.Begins.Minutes ?? 0;

    /// <summary>The mixes of loads whose moulds would stand for longer than they keep, by load; a mix that fills moulds of other loads too cannot wait.</summary>
    /// <param name="night">The night with all mixes made in one go.</param>
    /// <param name="loads">The loads that may wait.</param>
    /// <param name="keep">How long moulds keep.</param>
    public Dictionary<int, MixingPart> LateOnes(TimedNight night, IEnumerable<KilnLoad> loads, Duration keep)
    {
        var late = new Dictionary<int, MixingPart>();
        foreach (var load in loads)
        {
            var own = Steps.Where(s => s.Mix is not null && s.Flasks.Any(load.Flasks.Contains)).ToList();
            if (own.Count > 0 && own.TrueForAll(s => s.Flasks.All(load.Flasks.Contains))
                && night.Steps.Any(s => s.Kind == ClockStepKind.Set && s.Load == load.Number && s.Takes > keep))
            {
                late[load.Number] = Chained(own);
            }
        }

        return late;
    }

    /// <summary>What is left when some of the mixes wait.</summary>
    /// <param name="late">The mixes that wait.</param>
    public MixingPart Without(IEnumerable<MixingPart> late)
    {
        var waiting = late.SelectMany(l => l.Steps).Select(s => s.Mix).ToHashSet();
        return Chained(Steps.Where(s => s.Mix is null || !waiting.Contains(s.Mix)));
    }

    /// <summary>The mixes of a night that wait: what comes after a pause.</summary>
    /// <param name="night">The night as planned.</param>
    public static HashSet<int> LateIn(TimedNight night)
    {
        var late = new HashSet<int>();
        ClockStep? before = null;
        foreach (var step in night.Steps.Where(s => s.Load is null))
        {
            if (step.Mix is { } mix && (late.Count > 0 || IsLate(before, step)))
            {
                late.Add(mix);
            }

            before = step;
        }

        return late;
    }

    /// <summary>Whether a step of mixing waits for its hour.</summary>
    /// <param name="before">The one before it.</param>
    /// <param name="step">The step.</param>
    public static bool IsLate(ClockStep? before, ClockStep step) => before is not null && step.Begins.Minutes > before.Ends.Minutes + 1;

    private static MixingPart Chained(IEnumerable<ClockStep> steps)
    {
        var chained = new List<ClockStep>();
        foreach (var step in steps)
        {
            chained.Add(step with { Begins = chained.Count == 0 ? Duration.Zero : chained[^1].Ends });
        }

        return new MixingPart(chained);
    }
}
