using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Lays a kiln's log over the programme of a load: which hold was not reached, by how much, and what the core then saw.</summary>
public static class KilnLogCheck
{
    // Memory: less than this is the swing of a controller, or a door opened for a look.
    private const double FallDegrees = 30;
    private const double BackDegrees = 10;
    private const double HotDegrees = 20;
    private static readonly Duration Gap = Duration.FromMinutes(20);

    /// <summary>Compares a log with a load's programme.</summary>
    /// <param name="load">The load.</param>
    /// <param name="log">The log.</param>
    /// <param name="scale">The scale in which findings say temperatures; degrees Celsius where none is given.</param>
    public static LoggedBurnout Compare(KilnLoad load, KilnLog log, WrittenTemperature? scale = null)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(log);
        var course = new LogStages(log, load.Schedule, load.CoolsDegreesPerHour);
        var stages = course.Find();
        var cores = Cores(load, log, course.Begin);
        for (var i = 0; i < stages.Count; i++)
        {
            var at = course.Left[i] ?? (stages[i].Outcome == StageOutcome.NotReached ? Nearest(log, stages[i].Nearest, course.Begin) : null);
            stages[i] = stages[i] with { Core = at is { } reading ? cores[reading] : null };
        }

        var (findings, unit) = (new List<Finding>(), scale ?? WrittenTemperature.Celsius);
        foreach (var stage in stages)
        {
            Say(stage, load, unit, findings);
        }

        LookAtFalls(log, course, load, unit, findings);
        LookAtTop(log, load, unit, findings);
        LookAtGaps(log, findings);
        if (log.WithoutUnit is { } heading)
        {
            findings.Add(Catalogue.UnitAssumed.At(
                Subject.Book, ClockFindingWords.OfLog(heading), WrittenTemperature.Celsius.Name, ClockFindingWords.TemperatureIn(WrittenTemperature.Fahrenheit.Name)));
        }

        var begin = log.Readings[course.Begin].After;
        return new LoggedBurnout
        {
            Load = load,
            Stages = stages,
            Course = [.. log.Readings.Skip(course.Begin).Select((r, i) => new KilnMoment(r.After - begin, r.Kiln, cores[course.Begin + i]))],
            Findings = findings,
        };
    }

    private static CoreSpan[] Cores(KilnLoad load, KilnLog log, int begin)
    {
        var (slow, fast) = (load.Core!.Slow(load.Schedule), load.Core.Fast(load.Schedule));
        var cores = new CoreSpan[log.Readings.Count];
        for (var i = 0; i < cores.Length; i++)
        {
            if (i >= begin)
            {
                var way = i == begin ? Duration.Zero : log.Readings[i].After - log.Readings[i - 1].After;
                slow.Go(log.Readings[i].Kiln, way);
                fast.Go(log.Readings[i].Kiln, way);
            }

            cores[i] = new CoreSpan(slow.Core, fast.Core);
        }

        return cores;
    }

    private static int? Nearest(KilnLog log, Temperature nearest, int begin)
    {
        for (var i = log.Readings.Count - 1; i >= begin; i--)
        {
            if (Math.Abs(log.Readings[i].Kiln.DegreesCelsius - nearest.DegreesCelsius) < 0.01)
            {
                return i;
            }
        }

        return null;
    }

    private static void Say(LoggedStage stage, KilnLoad load, WrittenTemperature unit, List<Finding> findings)
    {
        var number = Findings.Say.Count(stage.Number);
        var target = unit.Say(stage.Target);
        var core = stage.Core is { } span ? Findings.Say.Together([unit.Say(Lower(span)), unit.Say(Higher(span))]) : "";
        if (stage.Outcome == StageOutcome.TooShort)
        {
            findings.Add(Catalogue.LogHoldShort.At(
                Subject.Book, number, target, Findings.Say.Hours(stage.Held), Findings.Say.Hours(stage.Asked), load.Heat.Flask, core, Findings.Say.Hours(stage.Missing)));
        }
        else if (stage.Outcome == StageOutcome.NotReached)
        {
            var by = Math.Abs(stage.Target.DegreesCelsius - stage.Nearest.DegreesCelsius);
            findings.Add(Catalogue.LogStageNotReached.At(
                Subject.Book, number, target, unit.Say(stage.Nearest), unit.SayDegrees(by), load.Heat.Flask, core, Findings.Say.Hours(stage.Asked)));
        }
    }

    private static Temperature Lower(CoreSpan core) => core.Slow < core.Fast ? core.Slow : core.Fast;

    private static Temperature Higher(CoreSpan core) => core.Slow < core.Fast ? core.Fast : core.Slow;

    // Until the kiln leaves its top it has no reason to fall; a hot kiln does when cold moulds go in.
    private static void LookAtFalls(KilnLog log, LogStages course, KilnLoad load, WrittenTemperature unit, List<Finding> findings)
    {
        var top = load.Schedule.Stages.Index().MaxBy(s => s.Item.Target.DegreesCelsius).Index;
        var until = course.Left[top] ?? 0;
        var first = load.IsLoadedCold ? double.NegativeInfinity : load.Schedule.Stages[0].Target.DegreesCelsius + BackDegrees;
        var (highest, lowest, fell) = (double.NegativeInfinity, 0.0, -1);
        for (var i = course.Begin; i <= until; i++)
        {
            var now = log.Readings[i].Kiln.DegreesCelsius;
            if (fell < 0 && highest > first && now < highest - FallDegrees)
            {
                (fell, lowest) = (i, now);
            }

            lowest = Math.Min(lowest, now);
            if (fell >= 0 && now >= highest - BackDegrees)
            {
                var (from, back) = (log.Readings[fell].After, log.Readings[i].After);
                findings.Add(Catalogue.LogKilnFell.At(
                    Subject.Book, log.When(from), unit.Say(highest), unit.Say(lowest), Findings.Say.Hours(back - from)));
                fell = -1;
            }

            highest = Math.Max(highest, now);
        }
    }

    private static void LookAtTop(KilnLog log, KilnLoad load, WrittenTemperature unit, List<Finding> findings)
    {
        var hottest = log.Readings.MaxBy(r => r.Kiln.DegreesCelsius);
        if (hottest.Kiln.DegreesCelsius > load.Schedule.Top.DegreesCelsius + HotDegrees)
        {
            findings.Add(Catalogue.LogOverTop.At(
                Subject.Book, unit.Say(hottest.Kiln), log.When(hottest.After), unit.Say(load.Schedule.Top)));
        }
    }

    private static void LookAtGaps(KilnLog log, List<Finding> findings)
    {
        for (var i = 1; i < log.Readings.Count; i++)
        {
            var gap = log.Readings[i].After - log.Readings[i - 1].After;
            if (gap > Gap)
            {
                findings.Add(Catalogue.LogHasGap.At(Subject.Book, Findings.Say.Hours(gap), log.When(log.Readings[i - 1].After)));
            }
        }
    }
}
