using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

/// <summary>A kiln's log laid over the programme of its load.</summary>
public sealed class KilnLogCheckTests
{
    private static readonly DateTime Begins = new(2026, 11, 25, 22, 24, 0, DateTimeKind.Unspecified);

    // 149 °C for 2 h, 371 for 2 h, 732 for 3 h with their ways inside them, then down to 540 and held an hour.
    private static readonly KilnLoad Load = NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with
        {
            Kilns = [new Kiln { Name = "Front kiln", Shape = KilnShape.Square, InsideWidth = Wrenmoor.Mm(300), CoolsDegreesPerHour = 100 }],
            Settings = Wrenmoor.Answered,
        },
        Wrenmoor.Ring())).Clock!.Loads[0];

    // Straight lines between points in minutes and degrees, read every five minutes.
    private static KilnLog Log(params (double Minutes, double Celsius)[] points)
    {
        var readings = new List<KilnReading>();
        for (var i = 1; i < points.Length; i++)
        {
            var (from, to) = (points[i - 1], points[i]);
            for (var at = from.Minutes; at < to.Minutes || (i == points.Length - 1 && at <= to.Minutes); at += 5)
            {
                readings.Add(new KilnReading(Duration.FromMinutes(at), Temperature.FromDegreesCelsius(from.Celsius + ((to.Celsius - from.Celsius) * (at - from.Minutes) / (to.Minutes - from.Minutes)))));
            }
        }

        return new KilnLog(readings, Begins);
    }

    private static KilnLog AsAsked => Log((0, 20), (30, 149), (120, 149), (165, 371), (240, 371), (315, 732), (420, 732), (535, 540), (600, 540));

    private static string Text(Planning.Findings.Finding finding) => string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(s => s.Length > 0));

    [Fact]
    public void Compare_BurnoutRanAsAsked_FindsNothing()
    {
        var burnout = KilnLogCheck.Compare(Load, AsAsked);

        burnout.Findings.ShouldBeEmpty();
        burnout.Stages.Select(s => s.Outcome).ShouldAllBe(o => o == StageOutcome.Held);
        burnout.Stages.Select(s => s.Target.DegreesCelsius).ShouldBe([149, 371, 732, 540], 1);
    }

    [Fact]
    public void Plan_WithALog_HasItsFindingsAndItsCourse()
    {
        var night = Wrenmoor.Night(Wrenmoor.Ring()) with { Log = Log((0, 20), (30, 149), (120, 149), (165, 371), (240, 371), (315, 732), (360, 732), (475, 540), (540, 540)) };

        var plan = NightPlanner.Plan(night);

        plan.Ids().ShouldContain("log-hold-short");
        var course = plan.Clock!.Logged!.Course;
        course[0].ShouldBe(new KilnMoment(Duration.FromMinutes(0), Temperature.FromDegreesCelsius(20), new CoreSpan(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20))));
        course[^1].After.Minutes.ShouldBe(540, 1e-9);
        course.Max(m => m.Kiln.DegreesCelsius).ShouldBe(732, 1e-9);
    }

    // Two loads, and a night without hours: the log may be of either.
    [Fact]
    public void Plan_LogOfOneOfTwoLoads_AsksWhich()
    {
        var night = Wrenmoor.Night(
            Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { KilnLoads = [["A"], ["B"]] } },
            Wrenmoor.Ring(2) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } }) with
        { Log = AsAsked };

        var plan = NightPlanner.Plan(night);

        plan.Clock!.Logged.ShouldBeNull();
        plan.The("log-of-no-load").Text().ShouldBe(
            "This night has 2 kiln loads, and nothing says which one the log is of. It was not laid over the plan. Flasks that are marked as in the kiln or poured are in no load. "
            + "Give the log times with their day and the night its hours, or name the load with castbook kiln-log and --load 1.");
    }

    // The core driven by the log is the core of the plan where the kiln did what was planned.
    [Fact]
    public void Compare_LogOfThePlanItself_HasThePlannedCore()
    {
        var log = new KilnLog([.. Load.Heat.Course.Select(m => new KilnReading(m.After, m.Kiln))], Begins);

        var burnout = KilnLogCheck.Compare(Load, log);

        burnout.Findings.Where(f => f.Id != "log-has-gap").ShouldBeEmpty();
        foreach (var (stage, planned) in burnout.Stages.Zip(Load.Heat.StageEnds))
        {
            stage.Core!.Value.Slow.DegreesCelsius.ShouldBe(planned.Slow.DegreesCelsius, 6);
            stage.Core.Value.Fast.DegreesCelsius.ShouldBe(planned.Fast.DegreesCelsius, 6);
        }
    }

    [Theory]
    [InlineData("PV", "\"PV\" of the kiln's log")]
    [InlineData("", "the kiln's log")]
    public void Compare_LogWithoutUnit_IsSaidToBeReadInCelsius(string heading, string where)
    {
        var log = new KilnLog([.. Load.Heat.Course.Select(m => new KilnReading(m.After, m.Kiln))], Begins) { WithoutUnit = heading };

        Text(KilnLogCheck.Compare(Load, log).Findings.Single(f => f.Id == "unit-assumed")).ShouldBe(
            $"No unit stands in {where}; read in °C. If that is wrong, write the unit in the heading, such as Temperature (°F).");
    }

    // At the second stage from 165 to 185 min instead of 240.
    [Fact]
    public void Compare_HoldCutShort_SaysByHowMuchAndWhatTheCoreSaw()
    {
        var burnout = KilnLogCheck.Compare(Load, Log((0, 20), (30, 149), (120, 149), (165, 371), (185, 371), (260, 732), (365, 732), (480, 540), (545, 540)));

        var stage = burnout.Stages[1];
        stage.Outcome.ShouldBe(StageOutcome.TooShort);
        stage.Missing.Minutes.ShouldBeInRange(50, 60);
        var core = stage.Core!.Value;
        core.Slow.DegreesCelsius.ShouldBeLessThan(Load.Heat.StageEnds[1].Slow.DegreesCelsius);
        Text(burnout.Findings.Single()).ShouldBe(
            $"By its log the kiln held stage 2, 371 °C, for {Hours(stage.Held)} instead of 2 h; the core of flask A had then by estimate between {core.Slow.DegreesCelsius:0} °C and {core.Fast.DegreesCelsius:0} °C. "
            + "A hold that is cut short leaves water or carbon in the mould, which gives gas and rough castings. "
            + $"While the moulds are in the kiln, hold it there {Hours(stage.Missing)} longer before it goes on; else look at these castings first.");
    }

    [Fact]
    public void Compare_TopNotReached_SaysHowFarAway()
    {
        var burnout = KilnLogCheck.Compare(Load, Log((0, 20), (30, 149), (120, 149), (165, 371), (240, 371), (315, 690), (420, 690), (510, 540), (575, 540)));

        burnout.Stages.Select(s => s.Outcome).ShouldBe([StageOutcome.Held, StageOutcome.Held, StageOutcome.NotReached, StageOutcome.Held]);
        burnout.Findings.Single().Id.ShouldBe("log-stage-not-reached");
        var core = burnout.Stages[2].Core!.Value;
        Text(burnout.Findings[0]).ShouldBe(
            $"By its log the kiln did not reach stage 3, 732 °C: it came to 690 °C, 42 °C away; the core of flask A had then by estimate between {core.Slow.DegreesCelsius:0} °C and {core.Fast.DegreesCelsius:0} °C. "
            + "What that stage is for did not happen: water, wax or carbon is still in the mould, or it is not at its casting temperature. "
            + $"While the moulds are in the kiln, bring it to 732 °C and hold it there {Hours(Load.Schedule.Stages[2].Hold)}; if it cannot, look at its elements and sensor.");
    }

    // 42 °C are 76 °F, 732 °C 1,350 °F.
    [Fact]
    public void Compare_InFahrenheit_SaysTheSameInIt()
    {
        var burnout = KilnLogCheck.Compare(
            Load, Log((0, 20), (30, 149), (120, 149), (165, 371), (240, 371), (315, 690), (420, 690), (510, 540), (575, 540)), WrittenTemperature.Fahrenheit);

        burnout.Findings[0].Seen.ShouldStartWith("By its log the kiln did not reach stage 3, 1,350 °F: it came to 1,274 °F, 76 °F away; the core of flask A had then by estimate between ");
        burnout.Findings[0].Seen.ShouldNotContain("°C");
        burnout.Findings[0].Remedy.ShouldStartWith("While the moulds are in the kiln, bring it to 1,350 °F and hold it there");
    }

    // Off from 340 min on: down to 500, back at 732 from 450 on. That is no fall to the flask's temperature.
    [Fact]
    public void Compare_KilnWasOff_IsInterrupted()
    {
        var burnout = KilnLogCheck.Compare(Load, Log((0, 20), (30, 149), (120, 149), (165, 371), (240, 371), (315, 732), (340, 732), (400, 500), (450, 732), (530, 732), (645, 540), (710, 540)));

        burnout.Findings.Single(f => f.Id == "log-kiln-fell").Seen.ShouldBe("By its log the kiln fell at Thu 26 Nov, 04:14 from 732 °C to 500 °C and was back after 1 h 40.");
        burnout.Stages[3].Outcome.ShouldBe(StageOutcome.Held);
    }

    [Fact]
    public void Compare_LogEndsOnItsWay_LeavesTheRestOpen()
    {
        var burnout = KilnLogCheck.Compare(Load, Log((0, 20), (30, 149), (120, 149), (165, 371), (190, 371)));

        burnout.Stages.Select(s => s.Outcome).ShouldBe([StageOutcome.Held, StageOutcome.NotInLog, StageOutcome.NotInLog, StageOutcome.NotInLog]);
        burnout.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Compare_KilnStoodColdBefore_DoesNotCount()
    {
        var burnout = KilnLogCheck.Compare(Load, Log((0, 20), (300, 20), (330, 149), (350, 149), (395, 371), (470, 371), (545, 732), (650, 732), (765, 540), (830, 540)));

        burnout.Stages[0].Outcome.ShouldBe(StageOutcome.TooShort);
        burnout.Stages[0].Missing.Minutes.ShouldBeInRange(60, 75);
    }

    [Fact]
    public void Compare_TooHotAndAGap_SaysBoth()
    {
        var log = Log((0, 20), (30, 149), (120, 149), (165, 371), (240, 371), (315, 765), (420, 732), (535, 540), (600, 540));
        var holed = log with { Readings = [.. log.Readings.Where(r => r.After.Minutes is < 60 or > 100)] };

        KilnLogCheck.Compare(Load, holed).Findings.Select(f => f.Seen).ShouldBe(
        [
            "By its log the kiln had 765 °C at Thu 26 Nov, 03:39; the schedule goes no higher than 732 °C.",
            "The log has no reading for 0 h 50, from Wed 25 Nov, 23:19 on; a straight line was taken.",
        ]);
    }

    private static string Hours(Duration duration) => $"{Math.Floor(Math.Round(duration.Minutes) / 60):0} h" + (Math.Round(duration.Minutes) % 60 == 0 ? "" : $" {Math.Round(duration.Minutes) % 60:00}");
}
