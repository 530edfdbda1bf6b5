using CastBook.Casting.Burnout;

namespace CastBook.Planning.Explaining;

/// <summary>The hours of a burnout, way by way and hold by hold.</summary>
internal static class StageHours
{
    /// <summary>The same of stages as a kiln runs them.</summary>
    /// <param name="stages">The stages.</param>
    public static IEnumerable<string> Of(IEnumerable<ProgramStage> stages) =>
        stages.SelectMany(s => s.WayInHold || s.Way.Hours < 0.0005 ? [Figures.Hours(s.Hold.Hours)] : (string[])[Figures.Hours(s.Way.Hours), Figures.Hours(s.Hold.Hours)]);

    /// <summary>Such as <c>1.083 h</c>, <c>1.5 h</c>; they add up to the schedule's whole.</summary>
    /// <param name="schedule">The schedule.</param>
    public static IEnumerable<string> Of(BurnoutSchedule schedule)
    {
        // Each way is what the schedule up to there takes less what it takes without it: no second reckoning of ways.
        var before = 0.0;
        for (var i = 0; i < schedule.Stages.Count; i++)
        {
            var until = new BurnoutSchedule(schedule.Name, schedule.LoadAt, [.. schedule.Stages.Take(i + 1)]).Total.Hours;
            var hold = schedule.Stages[i].Hold.Hours;
            var way = until - before - hold;
            if (way > 0.0005)
            {
                yield return Figures.Hours(way);
            }

            yield return Figures.Hours(hold);
            before = until;
        }
    }
}
