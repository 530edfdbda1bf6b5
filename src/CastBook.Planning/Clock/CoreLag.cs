using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Follows the cores of a load's moulds, lengthens the last hold where those poured first need that, and says where the top is too short.</summary>
internal sealed class CoreLag
{
    /// <summary>How near the core must be to the kiln before a pour where the shop does not say, in degrees Celsius.</summary>
    /// <remarks>Memory: closer than this the spread between moulds, and of a kiln's floor, is larger.</remarks>
    public const double UsualDegrees = 20;

    // At the top: the holds of the published schedules bring the slow case within it, and they are known to burn out.
    private const double UsualDegreesAtTop = 25;

    // The core is looked for in steps of five minutes.
    private const double StepMinutes = 5;

    // Between two points of the course: fine enough for a chart.
    private const double CourseMinutes = 30;

    private readonly double toleranceDegrees;
    private readonly double topToleranceDegrees;
    private readonly double cools;

    // The slowest first.
    private readonly List<LoadMould> moulds;

    /// <summary>Sorts the moulds of a load by their size.</summary>
    /// <param name="flasks">Its flasks.</param>
    /// <param name="schedule">The schedule they run.</param>
    /// <param name="cools">How fast the kiln cools, in degrees Celsius per hour.</param>
    /// <param name="tolerance">How near a core must be to the kiln; missing where the shop has not said.</param>
    public CoreLag(IEnumerable<FlaskPlan> flasks, BurnoutSchedule schedule, double cools, TemperatureDelta? tolerance)
    {
        this.cools = cools;
        (toleranceDegrees, topToleranceDegrees) = tolerance is { } own ? (own.DegreesCelsius, own.DegreesCelsius) : (UsualDegrees, UsualDegreesAtTop);
        moulds = [.. flasks.GroupBy(f => (f.Size.InsideDiameter!.Value.Millimeters, f.Size.Height!.Value.Millimeters))
            .Select(g => LoadMould.Of([.. g], schedule)).OrderByDescending(m => m.Slow.TimeConstant.Minutes)];
    }

    /// <summary>The slowest mould's core in its slow case before a schedule, at the temperature of loading.</summary>
    /// <param name="schedule">The schedule.</param>
    public CoreTrace Slow(BurnoutSchedule schedule) => LoadMould.Loaded(moulds[0].Slow, schedule);

    /// <summary>The same in the fast case.</summary>
    /// <param name="schedule">The schedule.</param>
    public CoreTrace Fast(BurnoutSchedule schedule) => LoadMould.Loaded(moulds[0].Fast, schedule);

    /// <summary>All cores in their slow case before a schedule, at the temperature of loading.</summary>
    /// <param name="schedule">The schedule.</param>
    public LoadCores Cores(BurnoutSchedule schedule) => new([.. moulds.Select(m => (m.Flasks, LoadMould.Loaded(m.Slow, schedule)))], toleranceDegrees);

    /// <summary>The schedule with its last hold as long as the cores of the moulds poured first need; never shorter than it was.</summary>
    /// <param name="schedule">The schedule, ending at the flask temperature.</param>
    /// <param name="first">The moulds poured first, by letter.</param>
    /// <param name="findings">Takes what is found.</param>
    public BurnoutSchedule WithCoreReady(BurnoutSchedule schedule, IReadOnlyList<string> first, FindingList findings)
    {
        var last = schedule.Stages[^1];
        if (schedule.Stages.Count < 2 || last.Target >= schedule.Top)
        {
            return schedule;
        }

        var cores = Cores(schedule);
        var stages = KilnProgram.Of(schedule, cools);
        foreach (var stage in stages.SkipLast(1))
        {
            cores.Run(stage);
        }

        CompareTop(schedule, findings);
        cores.Go(last.Target, stages[^1].Way);
        var (needed, slowest) = cores.HoldOf(first);
        if (needed <= last.Hold)
        {
            return schedule;
        }

        findings.Add(Catalogue.LastHoldLengthened.At(
            new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Hold), schedule.Name, findings.Units.Temperature.Say(last.Target),
            Say.Hours(needed), Say.Hours(last.Hold), slowest, findings.Units.Temperature.SayDegrees(toleranceDegrees)));
        return new BurnoutSchedule(schedule.Name, schedule.LoadAt, [.. schedule.Stages.SkipLast(1), last with { Hold = needed }]);
    }

    /// <summary>How the cores follow the kiln.</summary>
    /// <param name="schedule">The schedule.</param>
    public LoadHeat Follow(BurnoutSchedule schedule)
    {
        var course = new List<KilnMoment>();
        return new LoadHeat
        {
            Moulds = moulds.ConvertAll(m => Follow(m, schedule, m == moulds[0] ? course : [])),
            ToleranceDegrees = toleranceDegrees,
            InTheOpen = Open(schedule.Stages[^1].Target),
            Course = course,
        };
    }

    private MouldHeat Follow(LoadMould mould, BurnoutSchedule schedule, List<KilnMoment> course)
    {
        var (slow, fast) = (LoadMould.Loaded(mould.Slow, schedule), LoadMould.Loaded(mould.Fast, schedule));
        var after = 0.0;
        var (ends, there) = (new List<CoreSpan>(), new List<CoreArrival>());
        Note();
        foreach (var stage in KilnProgram.Of(schedule, cools))
        {
            Move(stage.WayUp.Minutes, stage.From, stage.Target);
            there.Add(new CoreArrival(Arrives(slow, stage), Arrives(fast, stage)));
            Move((stage.Takes - stage.WayUp).Minutes, stage.Target, stage.Target);
            ends.Add(Span());
        }

        return new MouldHeat(mould.Size, mould.Flasks, ends, there);

        void Move(double minutes, Temperature from, Temperature to)
        {
            var parts = (int)Math.Ceiling((minutes - 1e-6) / CourseMinutes);
            for (var i = 1; i <= parts; i++)
            {
                var (celsius, way) = (from.DegreesCelsius + ((to.DegreesCelsius - from.DegreesCelsius) * i / parts), Duration.FromMinutes(minutes / parts));
                slow.Go(Temperature.FromDegreesCelsius(celsius), way);
                fast.Go(Temperature.FromDegreesCelsius(celsius), way);
                after += way.Minutes;
                Note();
            }
        }

        void Note() => course.Add(new KilnMoment(Duration.FromMinutes(after), slow.Kiln, Span()));

        CoreSpan Span() => new(slow.Core, fast.Core);
    }

    private static OpenLoss Open(Temperature mould)
    {
        var depth = WallClearance.Usual;
        return new OpenLoss(depth, Lost(MouldCase.Slow), Lost(MouldCase.Fast));

        TemperatureDelta Lost(MouldCase mouldCase) => OpenMould.Lost(mould, depth, Duration.FromMinutes(1), mouldCase);
    }

    // From the stage's begin until the core is near the kiln; nothing where it is not before the stage ends.
    private Duration? Arrives(CoreTrace core, ProgramStage stage)
    {
        var minutes = (stage.WayUp + core.HoldUntilWithin(toleranceDegrees)).Minutes;
        return minutes <= stage.Takes.Minutes ? Duration.FromMinutes(Math.Min(Math.Ceiling(minutes / StepMinutes) * StepMinutes, stage.Takes.Minutes)) : null;
    }

    // The top is what burns the carbon out; the shop or its maker has the last word on how long.
    private void CompareTop(BurnoutSchedule schedule, FindingList findings)
    {
        var (slow, fast) = (Slow(schedule), Fast(schedule));
        foreach (var stage in KilnProgram.Of(schedule, cools))
        {
            slow.Run(stage);
            fast.Run(stage);
            if (stage.Target < schedule.Top)
            {
                continue;
            }

            if (schedule.Top.DegreesCelsius - slow.Core.DegreesCelsius > topToleranceDegrees)
            {
                findings.Add(Catalogue.CoreBehindAtTop.At(
                    new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Hold), schedule.Name, findings.Units.Temperature.Say(schedule.Top), moulds[0].Flasks[0],
                    findings.Units.Temperature.Say(slow.Core), findings.Units.Temperature.Say(fast.Core), Say.Hours(slow.HoldUntilWithin(topToleranceDegrees))));
            }

            return;
        }
    }
}
