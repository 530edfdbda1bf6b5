using CastBook.Casting.Burnout;
using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

/// <summary>The night as it goes on from what was really done.</summary>
public sealed class RunningNightTests
{
    private static readonly ClockQuestion Evening = new(new DateTimeOffset(2026, 11, 25, 20, 0, 0, TimeSpan.Zero), IsPour: false, TimeZoneInfo.Utc);

    private static Shop Kilned => Wrenmoor.Shop with
    {
        Kilns = [new Kiln { Name = "Front kiln", Shape = KilnShape.Square, InsideWidth = Wrenmoor.Mm(300), CoolsDegreesPerHour = 100 }],
        Settings = Wrenmoor.Answered,
    };

    // By hand, as planned from 20:00: weighed 20:05, mixed 20:09, filled 20:11, clean 20:17:30; set until 22:11; base off 22:14, loaded
    // 22:24; stages of 2, 2 and 3 h to 00:24, 02:24 and 05:24; fallen and held by 08:19; poured 08:29, quenched from 08:44.
    private static NightPlan Plan(string? now, params (string Step, string Hour)[] done) => NightPlanner.Plan(Wrenmoor.Night(Kilned, Wrenmoor.Ring()) with
    {
        Clock = Evening,
        Done = new DoneHours([.. done.Select(d => new DoneStep(d.Step, Typed(d.Hour)))], now is null ? null : Typed(now)),
    });

    private static TypedHour Typed(string hour) => hour.Length > 5
        ? new TypedHour(DateOnly.Parse(hour[..10], null), TimeOnly.Parse(hour[11..], null))
        : new TypedHour(null, TimeOnly.Parse(hour, null));

    private static string Hour(NightPlan plan, ClockStepKind kind, int which = 0) =>
        ClockWords.DayAndHour(plan.Clock!.Shown(plan.Clock.Steps.Where(s => s.Kind == kind).ElementAt(which).Begins)!.Value);

    [Fact]
    public void Plan_NothingTyped_IsThePlan() =>
        Plan(null).Clock!.Steps.Select(Told).ShouldBe(NightPlanner.Plan(Wrenmoor.Night(Kilned, Wrenmoor.Ring()) with { Clock = Evening }).Clock!.Steps.Select(Told));

    [Fact]
    public void Plan_FirstStepDoneLate_MovesAllTheRestAndSaysSo()
    {
        var plan = Plan(null, ("Weigh out mix 1", "22:40"));

        Hour(plan, ClockStepKind.Weigh).ShouldBe("Wed 25 Nov, 22:35");
        Hour(plan, ClockStepKind.Mix).ShouldBe("Wed 25 Nov, 22:40");
        Hour(plan, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 10:54");
        plan.Clock!.Steps.Count(s => s.IsDone).ShouldBe(1);
        plan.The("night-runs-late").Text().ShouldBe(
            "By the hours typed on the Clock sheet the night runs 2 h 35 later than planned: the next pour is now at Thu 26 Nov, 10:54. "
            + "Nothing to do: all that is not done has moved with it, and nothing was shortened.");
    }

    [Fact]
    public void Plan_ItIsLateAndNothingIsDone_NothingBeginsBeforeNow()
    {
        var plan = Plan("22:40");

        Hour(plan, ClockStepKind.Weigh).ShouldBe("Wed 25 Nov, 22:40");
        Hour(plan, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 10:59");
    }

    // The kiln reached 700 °C twice for two hours each; the second time ended half an hour late, and the first is as it was.
    [Theory]
    [InlineData(3, 2)]
    [InlineData(5, 4)]
    public void Plan_OneOfTwoStagesSaidAlikeIsTyped_IsThatOne(int typed, int before)
    {
        (double Celsius, double Hours)[] stages = [(150, 2), (370, 1), (700, 2), (600, 1), (700, 2), (540, 1)];
        var shop = Kilned with
        {
            Schedules = [new ShopSchedule { Name = "own", Stages = [.. stages.Select(s => new BurnoutStage(Wrenmoor.Celsius(s.Celsius), null, Duration.FromHours(s.Hours)))] }],
        };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring()) with { Clock = Evening };
        var planned = NightPlanner.Plan(night).Clock!;
        var late = planned.Shown(Kiln(planned)[typed - 1].Ends)!.Value.AddMinutes(30);

        var clock = NightPlanner.Plan(night with
        {
            Done = new DoneHours([new DoneStep($"Kiln of load 1 to 700 °C, held 2 h (stage {typed} of 6)", new TypedHour(DateOnly.FromDateTime(late), TimeOnly.FromDateTime(late)))], null),
        }).Clock!;

        clock.Shown(Kiln(clock)[typed - 1].Ends).ShouldBe(late);
        Kiln(clock).Count(s => s.IsDone).ShouldBe(typed);
        clock.Shown(Kiln(clock)[before - 1].Ends).ShouldBe(planned.Shown(Kiln(planned)[before - 1].Ends));
        clock.Shown(Kiln(clock)[^1].Ends).ShouldBe(planned.Shown(Kiln(planned)[^1].Ends)!.Value.AddMinutes(30));

        static List<ClockStep> Kiln(NightClock clock) => [.. clock.Steps.Where(s => s.Kind is ClockStepKind.Stage or ClockStepKind.Fall)];
    }

    // Half an hour late at the first mix: tonight's work moves with it, and mixes that wait for their late load keep their hour.
    [Fact]
    public void Plan_LateBesideMixesThatWait_LeavesThemTheirHour()
    {
        var shop = Kilned with
        {
            Kilns = [Kilned.Kilns[0] with { InsideWidth = Wrenmoor.Mm(200) }],
            FlaskSizes = [Wrenmoor.Small with { Owned = 7 }],
            Settings = Wrenmoor.Answered with { MixingBowl = Volume.FromLiters(1.2) },
        };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring(7) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } }) with { Clock = Evening };
        var planned = NightPlanner.Plan(night);
        var waiting = planned.Clock!.Steps.Last(s => s.Kind == ClockStepKind.Weigh);
        (waiting.Begins.Hours, waiting.Mix).ShouldBe((planned.Clock.Steps.Single(s => s.Kind == ClockStepKind.Weigh && s.Mix == 7).Begins.Hours, 7));

        var late = NightPlanner.Plan(night with { Done = new DoneHours([new DoneStep("Weigh out mix 1", Typed("20:35"))], null) });

        var moved = late.Clock!.Steps.Last(s => s.Kind == ClockStepKind.Weigh);
        late.Clock.Shown(moved.Begins).ShouldBe(planned.Clock.Shown(waiting.Begins));
        late.Clock.Shown(late.Clock.PourOf("A")!.Begins).ShouldBe(planned.Clock.Shown(planned.Clock.PourOf("A")!.Begins)!.Value.AddMinutes(30));
    }

    // Base off at 22:44 instead of 22:14, and it is 23:00: loaded until 23:10, and the kiln goes on from there.
    [Fact]
    public void Plan_ItIsLateInTheMiddle_KilnFollowsItsLoading()
    {
        var plan = Plan("23:00", ("Base off, rim cleaned, letter scratched in: A", "22:44"));

        Hour(plan, ClockStepKind.LoadKiln).ShouldBe("Wed 25 Nov, 23:00");
        Hour(plan, ClockStepKind.Stage).ShouldBe("Wed 25 Nov, 23:10");
        Hour(plan, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 09:05");
        plan.Clock!.Steps.Where(s => s.IsDone).Select(s => s.Kind).ShouldBe(
            [ClockStepKind.Weigh, ClockStepKind.Mix, ClockStepKind.BowlVacuum, ClockStepKind.Fill, ClockStepKind.FlaskVacuum, ClockStepKind.CleanUp, ClockStepKind.Set, ClockStepKind.BaseOff], ignoreOrder: true);
    }

    // Weighed at 20:05 and filled at 20:31: its vacuum ends 27.5 min after the powder went in.
    [Fact]
    public void Plan_MixFilledLate_OutlivedItsWorkingTime()
    {
        Plan(null, ("Weigh out mix 1", "20:05"), ("Fill A", "20:31")).The("mix-outlived").Text().ShouldBe(
            "By the hours typed on the Clock sheet mix 1 was worked for 28 min from the first powder in the water; its working time is 9.5 min. "
            + "Investment that was moved while it set is weak, and gives fins, bubbles and cracks. "
            + "Wash the flasks A out and invest them again where their pieces must not fail; else pour them last and look at the moulds first.");
        Plan(null, ("Weigh out mix 1", "20:05"), ("Fill A", "20:12")).Ids().ShouldNotContain("mix-outlived");
    }

    // Taken up at 21:28; what is not done yet still waits for the whole set.
    [Fact]
    public void Plan_MouldsTakenUpEarly_SaysSoAndLoadsNoneBeforeItsSet()
    {
        var plan = Plan(null, ("Base off, rim cleaned, letter scratched in: A", "21:31"));

        plan.The("taken-up-too-early").Text().ShouldBe(
            "By the hours typed on the Clock sheet the moulds A were taken up after 1 h 17 of set; they need at least 2 h. "
            + "A green mould cracks when it is moved, and steam bursts it in the kiln. "
            + "Put them down again until 22:11 where the kiln is not on yet; else look for cracks, and dry them longer at the first hold.");
        Hour(plan, ClockStepKind.LoadKiln).ShouldBe("Wed 25 Nov, 22:11");
    }

    [Fact]
    public void Plan_StageEndedLate_IsAnInterruptedBurnoutUntilSomebodyLooks()
    {
        var plan = Plan(null, ("Kiln of load 1 to 149 °C, held 2 h", "01:24"));

        plan.The("burnout-interrupted").Text().ShouldStartWith(
            "By the hours typed on the Clock sheet \"Kiln of load 1 to 149 °C, held 2 h\" took 3 h instead of 2 h. "
            + "If the kiln was off meanwhile, the moulds cooled, may have cracked, and carbon is not burnt out. If it was off, begin the burnout again");
        plan.The("burnout-interrupted").Severity.ShouldBe(Planning.Findings.Severity.Check);
        Hour(plan, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 09:19");
    }

    [Fact]
    public void Plan_StageEndedEarly_HoldIsMissing()
    {
        Plan(null, ("Kiln of load 1 to 149 °C, held 2 h", "23:24")).The("stage-too-short").Text().ShouldBe(
            "By the hours typed on the Clock sheet \"Kiln of load 1 to 149 °C, held 2 h\" ended after 1 h instead of 2 h. "
            + "A hold that is cut short leaves water or carbon in the mould, which gives gas and rough castings. "
            + "Set the kiln back to that stage, hold it 1 h longer, and type the new hour beside it.");
    }

    // Begun at 07:19, an hour before the end of the last hold.
    [Fact]
    public void Plan_PouredAndQuenchedEarly_SaysBoth()
    {
        var plan = Plan(null, ("Pour A, flask at 540 °C", "07:29"), ("Quench A, and only when the button shows no red in shade", "07:35"));

        plan.The("poured-too-early").Text().ShouldBe(
            "By the hours typed on the Clock sheet flask A was poured 1 h before the kiln had fallen to its temperature and held there. "
            + "The mould was hotter than asked, which gives rough surfaces, gas and large grain. "
            + "Look at these castings first; have the next flask wait until 08:19.");
        plan.The("quenched-too-early").Text().ShouldBe(
            "By the hours typed on the Clock sheet flask A was quenched 3 min after its pour; its alloy asks for 15 min. "
            + "Metal that is quenched too hot cracks, and the steam spits. "
            + "Look for cracks; wait with the next one until the button shows no red in shade.");
    }

    [Fact]
    public void Plan_OrderCannotBe_SaysWhichTwo()
    {
        Plan(null, ("Weigh out mix 1", "2026-11-25 21:00"), ("Fill A", "2026-11-25 20:30")).The("done-out-of-order").Text().ShouldBe(
            "By the hours typed on the Clock sheet \"Fill A\" was done at 20:30, before \"Weigh out mix 1\", which comes first and was done at 21:00. "
            + "The rest of the night is counted from these hours. Correct one of them, and type the day with it where it is past midnight.");
    }

    [Fact]
    public void Plan_HoursAndNoStart_AsksForIt()
    {
        var night = Wrenmoor.Night(Kilned, Wrenmoor.Ring()) with { Done = new DoneHours([new DoneStep("Fill A", Typed("20:30"))], null) };

        NightPlanner.Plan(night).The("done-hours-without-start").Text().ShouldBe(
            "Hours are typed under \"Done at\" on the Clock sheet, but nothing says from when the night is counted. "
            + "Without it an hour has no day, so these hours move nothing. Type \"Start at\" on the Shop sheet, such as 2026-11-25 20:00.");
    }

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // Any night, broken off after any of its steps, each of them up to forty minutes late.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_AnyNightUnderWay_KeepsHandsSetAndHoldsOfWhatIsNotDone(int seed)
    {
        var random = new Random(seed);
        var invented = ClockPropertyTests.Invent(seed);
        var planned = NightPlanner.Plan(invented).Clock!;
        var typed = planned.Steps.Where(s => s.Kind is not (ClockStepKind.BowlVacuum or ClockStepKind.FlaskVacuum or ClockStepKind.CleanUp)).OrderBy(s => s.Ends.Minutes).ToList();
        var late = 0.0;
        var done = new List<DoneStep>();
        foreach (var step in typed.Take(random.Next(1, typed.Count)))
        {
            late += random.Next(3) == 0 ? random.Next(40) : 0;
            var at = planned.Shown(step.Ends + Duration.FromMinutes(late))!.Value;
            done.Add(new DoneStep(ClockWords.Of(step), new TypedHour(DateOnly.FromDateTime(at), TimeOnly.FromDateTime(at))));
        }

        var clock = NightPlanner.Plan(invented with { Done = new DoneHours(done, null) }).Clock!;

        var open = clock.Steps.Where(s => !s.IsDone).ToList();
        var now = clock.Steps.Where(s => s.IsDone && done.Any(d => d.Step == ClockWords.Of(s))).Max(s => s.Ends.Minutes);
        open.Where(s => s.Hands && s.Begins.Minutes < now - 1e-6).ShouldBeEmpty();
        ClockPropertyTests.HandsAreSingle(clock with { Steps = open });
        open.Where(s => s.Kind is ClockStepKind.Stage or ClockStepKind.Fall && s.Takes.Minutes < s.Hold!.Value.Minutes - 1e-6).ShouldBeEmpty();
        ClockPropertyTests.KilnsHoldOneLoad(clock);
        foreach (var loading in open.Where(s => s.Kind == ClockStepKind.LoadKiln))
        {
            var filled = clock.Steps.Where(s => s.Kind == ClockStepKind.FlaskVacuum && s.Flasks.Any(loading.Flasks.Contains)).Max(s => s.Begins.Minutes);
            loading.Begins.Minutes.ShouldBeGreaterThanOrEqualTo(filled + invented.Shop.Investments[0].SetAtLeast!.Value.Minutes - 1e-6);
        }

        foreach (var pour in open.Where(s => s.Kind == ClockStepKind.Pour))
        {
            clock.Steps.Where(s => s.Load == pour.Load && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall && s.Begins.Minutes < pour.Begins.Minutes)
                .ShouldAllBe(s => s.Ends.Minutes <= pour.Begins.Minutes + 1e-6);
        }
    }

    // The kilns of two loads are switched on at different hours; the line of one is not that of the other.
    [Fact]
    public void Plan_OneOfTwoKilnsIsOn_TheOtherIsNot()
    {
        var shop = Kilned with
        {
            Kilns = [new Kiln { Name = "one", InsideDiameter = Wrenmoor.Mm(130), CoolsDegreesPerHour = 100 }, new Kiln { Name = "two", InsideDiameter = Wrenmoor.Mm(130), CoolsDegreesPerHour = 100 }],
            Schedules = [new ShopSchedule
            {
                Name = "own",
                LoadAt = Wrenmoor.Celsius(150),
                Stages = [new CastBook.Casting.Burnout.BurnoutStage(Wrenmoor.Celsius(732), 200, Duration.FromHours(3)), new CastBook.Casting.Burnout.BurnoutStage(Wrenmoor.Celsius(540), null, Duration.FromHours(1))],
            }],
        };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring(2) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } }) with { Clock = Evening };
        var on = NightPlanner.Plan(night).Clock!.Steps.Where(s => s.Kind == ClockStepKind.KilnOn).ToList();
        on.Select(s => ClockWords.Of(s)).ShouldBe(["Kiln of load 1 on, to 150 °C", "Kiln of load 2 on, to 150 °C"], ignoreOrder: true);

        var clock = NightPlanner.Plan(night with { Done = new DoneHours([new DoneStep("Kiln of load 1 on, to 150 °C", Typed("21:30"))], null) }).Clock!;

        clock.Steps.Where(s => s.Kind == ClockStepKind.KilnOn && s.IsDone).Select(s => s.Load).ShouldBe([1]);
    }

    // Any night, forwards or back from its pour, with every step typed as done when it was planned to be: nothing moves.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_DoneAsPlanned_IsTheSameNight(int seed)
    {
        var invented = ClockPropertyTests.Invent(seed);
        var planned = NightPlanner.Plan(invented).Clock!;
        var typed = planned.Steps.Where(s => s.Hands).OrderBy(s => s.Ends.Minutes).ToList();
        var done = typed.Take(new Random(seed).Next(1, typed.Count)).Select(s => new DoneStep(ClockWords.Of(s), Typed($"{planned.Shown(s.Ends)!.Value:yyyy-MM-dd HH:mm}"))).ToList();

        var clock = NightPlanner.Plan(invented with { Done = new DoneHours(done, null) }).Clock!;

        clock.Steps.Count.ShouldBe(planned.Steps.Count);
        foreach (var step in planned.Steps)
        {
            var again = clock.Steps.First(s => ClockWords.Of(s) == ClockWords.Of(step) && s.Load == step.Load && s.Mix == step.Mix);
            Math.Abs((clock.Start!.Value.AddMinutes(again.Begins.Minutes) - planned.Start!.Value.AddMinutes(step.Begins.Minutes)).TotalMinutes).ShouldBeLessThan(1, ClockWords.Of(step));
        }
    }

    private static (string Words, double Begins, double Takes, bool IsDone) Told(ClockStep step) => (ClockWords.Of(step), step.Begins.Minutes, step.Takes.Minutes, step.IsDone);
}
