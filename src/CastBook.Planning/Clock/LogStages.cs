using CastBook.Casting.Burnout;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Finds the stages of a programme in a kiln's log, by temperature: the hours of the plan play no part.</summary>
/// <remarks>
/// A rise is reached with the first reading near its target. A fall is reached with the first one after the kiln has been at
/// the target before for the last time, so that a kiln that was off and came back has not fallen. A stage is held while
/// readings are near its target; time away from it does not count.
/// </remarks>
internal sealed class LogStages
{
    // Memory: controllers swing by so much, and a logger's own sensor stands elsewhere.
    private const double NearDegrees = 10;

    // Hours are logged to some minutes.
    private const double SlackMinutes = 5;

    private readonly double[] celsius;
    private readonly double[] minutes;
    private readonly List<BurnoutStage> stages;

    /// <summary>Takes a log and a programme.</summary>
    /// <param name="log">The log.</param>
    /// <param name="schedule">The programme.</param>
    /// <param name="cools">How fast the kiln cools, in degrees Celsius per hour.</param>
    public LogStages(KilnLog log, BurnoutSchedule schedule, double cools)
    {
        celsius = [.. log.Readings.Select(r => r.Kiln.DegreesCelsius)];
        minutes = [.. log.Readings.Select(r => r.After.Minutes)];
        Program = KilnProgram.Of(schedule, cools);
        stages = [.. schedule.Stages];
        Load(schedule.LoadAt ?? BurnoutSchedule.ColdKiln);
    }

    /// <summary>The programme.</summary>
    public IReadOnlyList<ProgramStage> Program { get; }

    /// <summary>The reading with which the burnout begins.</summary>
    public int Begin { get; private set; }

    /// <summary>The reading with which each stage is left; missing where it was not reached.</summary>
    public List<int?> Left { get; } = [];

    /// <summary>The stages, without their cores.</summary>
    public List<LoggedStage> Find()
    {
        var found = new List<LoggedStage>();
        var from = Begin;
        for (var i = 0; i < stages.Count; i++)
        {
            var reached = Reached(i, from);
            if (reached is not { } first)
            {
                found.Add(Missed(i, from));
                Left.Add(null);
                continue;
            }

            var end = i + 1 < stages.Count ? Reached(i + 1, first) ?? (Rises(i + 1) ? Hottest(first) : celsius.Length - 1) : celsius.Length - 1;
            var left = LastNear(i, first, end);
            found.Add(Held(i, from, first, left));
            Left.Add(left);
            from = left;
        }

        return found;
    }

    private bool Rises(int stage) => Program[stage].Target > Program[stage].From;

    private double Target(int stage) => stages[stage].Target.DegreesCelsius;

    private bool IsNear(int stage, int reading) => Math.Abs(celsius[reading] - Target(stage)) <= NearDegrees;

    // A kiln that stood idle and cold before it was loaded is no part of the burnout.
    private void Load(Temperature at)
    {
        var first = Reached(0, 0) ?? celsius.Length - 1;
        for (var i = 0; i <= first; i++)
        {
            if (celsius[i] <= at.DegreesCelsius + NearDegrees)
            {
                Begin = i;
            }
        }

        // Loaded into a hot kiln, it begins with the log.
        Begin = Begin == first ? 0 : Begin;
    }

    private int? Reached(int stage, int from)
    {
        var rises = stage == 0 ? Target(stage) >= celsius[from] - NearDegrees : Rises(stage) || Math.Abs(Target(stage) - Program[stage].From.DegreesCelsius) <= NearDegrees;
        var begin = rises ? from : LastNearOrHottest(stage - 1, from);
        if (!rises && celsius[begin] <= Target(stage) + NearDegrees)
        {
            return null;
        }

        for (var i = begin; i < celsius.Length; i++)
        {
            if (rises ? celsius[i] >= Target(stage) - NearDegrees : celsius[i] <= Target(stage) + NearDegrees)
            {
                return i;
            }
        }

        return null;
    }

    private int LastNearOrHottest(int stage, int from)
    {
        var last = stage < 0 ? from : LastNear(stage, from, celsius.Length - 1);
        return stage >= 0 && IsNear(stage, last) ? last : Hottest(from);
    }

    private int LastNear(int stage, int from, int until)
    {
        for (var i = until; i > from; i--)
        {
            if (IsNear(stage, i))
            {
                return i;
            }
        }

        return from;
    }

    // The last reading that is as hot as any, but for the swing of the controller.
    private int Hottest(int from)
    {
        var hottest = celsius[from..].Max();
        return Array.FindLastIndex(celsius, t => t >= hottest - NearDegrees);
    }

    private LoggedStage Held(int stage, int from, int first, int left)
    {
        var held = Program[stage].WayInHold ? minutes[first] - minutes[from] : 0;
        for (var i = first + 1; i <= left; i++)
        {
            held += Counts(stage, i - 1) && Counts(stage, i) ? minutes[i] - minutes[i - 1] : 0;
        }

        var asked = stages[stage].Hold.Minutes;
        var outcome = held >= asked - SlackMinutes ? StageOutcome.Held : left == celsius.Length - 1 ? StageOutcome.NotInLog : StageOutcome.TooShort;
        return new LoggedStage(stage + 1, stages[stage].Target, stages[stage].Hold, outcome, Duration.FromMinutes(held), stages[stage].Target, null);
    }

    // On the way up hotter is no less of a hold; at the temperature of casting it is none.
    private bool Counts(int stage, int reading) => IsNear(stage, reading) || (Rises(stage) && celsius[reading] > Target(stage));

    private LoggedStage Missed(int stage, int from)
    {
        var nearest = celsius[from..].MinBy(t => Math.Abs(t - Target(stage)));
        var last = celsius[^1];
        var isUnderWay = Math.Abs(last - nearest) <= NearDegrees;
        return new LoggedStage(
            stage + 1, stages[stage].Target, stages[stage].Hold, isUnderWay ? StageOutcome.NotInLog : StageOutcome.NotReached,
            Duration.Zero, Temperature.FromDegreesCelsius(nearest), null);
    }
}
