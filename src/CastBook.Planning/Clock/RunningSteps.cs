using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Follows steps from what was done: those are fixed, the rest comes after them and keeps its length.</summary>
/// <remarks>
/// A step without an hour that stands before one with an hour was done too, at the latest when that one began; but a mix only
/// where a mix after it was done, or something with one of its moulds. What is not done waits for hands, and for the hour it is.
/// </remarks>
/// <param name="done">What was done.</param>
/// <param name="night">The night so far.</param>
/// <param name="set">The least set, in minutes.</param>
internal sealed class RunningSteps(DoneTimes done, TimedNight night, double set)
{
    /// <summary>The mixing; it was done where a load is under way.</summary>
    /// <param name="planned">All steps as planned.</param>
    public List<ClockStep> Mixing(IReadOnlyList<ClockStep> planned)
    {
        var steps = new List<ClockStep>();
        var at = planned.Count == 0 || done.Of(planned[0]) is not null ? double.NegativeInfinity : planned[0].Begins.Minutes;
        for (var i = 0; i < planned.Count && planned[i].Load is null; i++)
        {
            steps.Add(Follow(planned, i, i > 0 && MixingPart.IsLate(planned[i - 1], planned[i]) ? Math.Max(at, planned[i].Begins.Minutes) : at));
            at = steps[^1].Ends.Minutes;
        }

        return steps;
    }

    /// <summary>A load of which something was done.</summary>
    /// <param name="planned">Its steps as planned, in their order.</param>
    /// <param name="filled">When the last mould was filled.</param>
    /// <param name="kilnFree">When the kiln is free of the load before.</param>
    public List<ClockStep> Load(IReadOnlyList<ClockStep> planned, double filled, double kilnFree)
    {
        var setEnds = planned.FirstOrDefault(s => s.Kind == ClockStepKind.Set) is { } moulds && done.Of(moulds) is { } taken ? taken : filled + set;
        var course = new LoadCourse(setEnds, Math.Max(filled + set, kilnFree), planned);
        for (var i = 0; i < planned.Count; i++)
        {
            if (planned[i].Kind != ClockStepKind.Set)
            {
                course.Add(Follow(planned, i, course.Ready(planned[i])));
            }
        }

        if (planned.FirstOrDefault(s => s.Kind == ClockStepKind.Set) is { } setting)
        {
            var ends = done.Of(setting) ?? course.TakenUp;
            course.Steps.Insert(0, Timed(setting, Math.Min(filled, ends), ends, isDone: done.Of(setting) is not null || course.Steps.Any(s => s.IsDone && s.Kind != ClockStepKind.KilnOn)));
        }

        return course.Steps;
    }

    private ClockStep Follow(IReadOnlyList<ClockStep> planned, int place, double ready)
    {
        var step = planned[place];
        var takes = step.Takes.Minutes;
        if (done.Of(step) is { } ended)
        {
            // It may have been done before it should.
            var begun = !step.Hands ? Math.Min(ready, ended) : ready > ended ? ended - takes : Math.Max(ready, ended - takes);
            return Timed(step, begun, ended, isDone: true);
        }

        // A controller's timer ends at its hour, however late the kiln was loaded.
        var ends = step.Kind == ClockStepKind.Timer ? Math.Max(ready, step.Ends.Minutes) : ready + takes;
        if (LatestEnd(planned, place) is { } latest)
        {
            return Timed(step, Math.Min(ready, latest), Math.Min(ends, latest), isDone: true);
        }

        if (!step.Hands)
        {
            return Timed(step, ready, ends, isDone: false);
        }

        var begins = night.FreeFrom(Math.Max(ready, done.Now), takes);
        return Timed(step, begins, begins + takes, isDone: false);
    }

    // Nothing follows from a quench for the kiln, which runs beside it.
    private double? LatestEnd(IReadOnlyList<ClockStep> planned, int place)
    {
        double? latest = null;
        foreach (var later in planned.Skip(place + 1))
        {
            if (done.Of(later) is { } ended && Proves(planned, later, planned[place]) && (planned[place].Hands || later.Kind is not (ClockStepKind.Quench or ClockStepKind.CoolAlone)))
            {
                var begun = later.Hands ? ended - later.Takes.Minutes : ended;
                latest = latest is { } known && known < begun ? known : begun;
            }
        }

        return latest;
    }

    // A mix of a late load may be made when another load is poured.
    private static bool Proves(IReadOnlyList<ClockStep> planned, ClockStep later, ClockStep step) => step.Load is not null || later.Load is null
        || planned.Any(s => s.Kind == ClockStepKind.LoadKiln && s.Load == later.Load && s.Flasks.Any(step.Flasks.Contains));

    private static ClockStep Timed(ClockStep step, double begins, double ends, bool isDone) => step with
    {
        Begins = Duration.FromMinutes(begins),
        Takes = Duration.FromMinutes(ends - begins),
        IsDone = isDone,
    };
}
