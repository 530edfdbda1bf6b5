using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Follows the core of a load's slowest mould, lengthens the last hold where it needs that, and says where the top is too short.</summary>
internal sealed class CoreLag
{
    // Memory: closer than this the spread between moulds, and of a kiln's floor, is larger.
    private const double UsualDegrees = 20;

    // At the top: the holds of the published schedules bring the slow case within it, and they are known to burn out.
    private const double UsualDegreesAtTop = 25;

    // The core is looked for in steps of five minutes.
    private const double StepMinutes = 5;

    // Between two points of the course: fine enough for a chart.
    private const double CourseMinutes = 30;

    private readonly double toleranceDegrees;
    private readonly double topToleranceDegrees;
    private readonly FlaskPlan slowest;
    private readonly double cools;
    private readonly CoreTrace slowMould;
    private readonly CoreTrace fastMould;

    /// <summary>Finds the slowest mould of a load.</summary>
    /// <param name="flasks">Its flasks.</param>
    /// <param name="schedule">The schedule they run.</param>
    /// <param name="cools">How fast the kiln cools, in degrees Celsius per hour.</param>
    /// <param name="tolerance">How near a core must be to the kiln; missing where the shop has not said.</param>
    public CoreLag(IEnumerable<FlaskPlan> flasks, BurnoutSchedule schedule, double cools, TemperatureDelta? tolerance)
    {
        this.cools = cools;
        (toleranceDegrees, topToleranceDegrees) = tolerance is { } own ? (own.DegreesCelsius, own.DegreesCelsius) : (UsualDegrees, UsualDegreesAtTop);
        slowest = flasks.MinBy(Fading)!;
        slowMould = Mould(MouldCase.Slow, Temperature.FromDegreesCelsius(schedule.Stages.Min(s => s.Target.DegreesCelsius)));
        fastMould = Mould(MouldCase.Fast, schedule.Top);
    }

    /// <summary>The slow core before a schedule, at the temperature of loading.</summary>
    /// <param name="schedule">The schedule.</param>
    public CoreTrace Slow(BurnoutSchedule schedule) => Loaded(slowMould, schedule);

    /// <summary>The same in the fast case.</summary>
    /// <param name="schedule">The schedule.</param>
    public CoreTrace Fast(BurnoutSchedule schedule) => Loaded(fastMould, schedule);

    /// <summary>The schedule with its last hold as long as the slowest core needs; never shorter than it was.</summary>
    /// <param name="schedule">The schedule, ending at the flask temperature.</param>
    /// <param name="findings">Takes what is found.</param>
    public BurnoutSchedule WithCoreReady(BurnoutSchedule schedule, FindingList findings)
    {
        var last = schedule.Stages[^1];
        if (schedule.Stages.Count < 2 || last.Target >= schedule.Top)
        {
            return schedule;
        }

        var trace = Slow(schedule);
        var stages = KilnProgram.Of(schedule, cools);
        foreach (var stage in stages.SkipLast(1))
        {
            trace.Run(stage);
        }

        CompareTop(schedule, findings);
        trace.Go(last.Target, stages[^1].Way);
        var needed = HoldOf(trace);
        if (needed <= last.Hold)
        {
            return schedule;
        }

        findings.Add(Catalogue.LastHoldLengthened.At(
            new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Hold), schedule.Name, findings.Units.Temperature.Say(last.Target), Say.Hours(needed), Say.Hours(last.Hold), slowest.Letter, findings.Units.Temperature.SayDegrees(toleranceDegrees)));
        return new BurnoutSchedule(schedule.Name, schedule.LoadAt, [.. schedule.Stages.SkipLast(1), last with { Hold = needed }]);
    }

    /// <summary>How long a kiln must hold until a core has followed it.</summary>
    /// <param name="trace">The core.</param>
    public Duration HoldOf(CoreTrace trace) => trace.HoldUntilWithin(toleranceDegrees);

    /// <summary>How the slowest core follows the kiln.</summary>
    /// <param name="schedule">The schedule.</param>
    public LoadHeat Follow(BurnoutSchedule schedule)
    {
        var (slow, fast) = (Slow(schedule), Fast(schedule));
        var after = 0.0;
        var (ends, there) = (new List<CoreSpan>(), new List<CoreArrival>());
        var course = new List<KilnMoment>();
        Note();
        foreach (var stage in KilnProgram.Of(schedule, cools))
        {
            Move(stage.WayUp.Minutes, stage.From, stage.Target);
            there.Add(new CoreArrival(Arrives(slow, stage), Arrives(fast, stage)));
            Move((stage.Takes - stage.WayUp).Minutes, stage.Target, stage.Target);
            ends.Add(Span());
        }

        return new LoadHeat { Flask = slowest.Letter, StageEnds = ends, Arrivals = there, ToleranceDegrees = toleranceDegrees, InTheOpen = Open(schedule.Stages[^1].Target), Course = course };

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
                    new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Hold), schedule.Name, findings.Units.Temperature.Say(schedule.Top), slowest.Letter,
                    findings.Units.Temperature.Say(slow.Core), findings.Units.Temperature.Say(fast.Core), Say.Hours(slow.HoldUntilWithin(topToleranceDegrees))));
            }

            return;
        }
    }

    private static CoreTrace Loaded(CoreTrace mould, BurnoutSchedule schedule)
    {
        var trace = mould.Copy();
        trace.Go(schedule.LoadAt ?? BurnoutSchedule.ColdKiln, Duration.Zero);
        return trace;
    }

    private CoreTrace Mould(MouldCase mould, Temperature film) =>
        new(slowest.Size.InsideDiameter!.Value, slowest.Size.Height!.Value, mould, film, BurnoutSchedule.ColdKiln);

    // How fast the last of a difference fades where the face has the kiln's temperature: the first roots are 2.405 and a quarter turn.
    private static double Fading(FlaskPlan flask)
    {
        var (side, end) = (2.405 / (flask.Size.InsideDiameter!.Value.Millimeters / 2), Math.PI / 2 / (flask.Size.Height!.Value.Millimeters / 2));
        return (side * side) + (end * end);
    }
}
