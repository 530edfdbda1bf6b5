using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

/// <summary>What holds for the clock of every night, tried on invented ones.</summary>
public sealed class ClockPropertyTests
{
    private const double Dust = 1e-6;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_AnyNight_KeepsHandsSetHoldsAndFlasks(int seed)
    {
        var night = Invent(seed);

        var plan = NightPlanner.Plan(night);

        var clock = plan.Clock.ShouldNotBeNull();
        HandsAreSingle(clock);
        MixesAreOverInTime(clock, night, plan);
        SetIsWhole(clock, night);
        NoMouldStandsLongUnsaid(plan);
        HoldsAreWhole(clock);
        LoadsAskNoLessThanTheirFlasks(plan);
        EveryFlaskIsPouredOnceOrSaid(plan);
        PoursComeWhenTheirKilnIsReady(plan);
        KilnsHoldOneLoad(clock);
        clock.Steps.Select(s => ClockWords.Of(s)).ShouldBeUnique("a line of the clock is known again by its words");
        CoresHaveFollowed(plan, night.Shop.Settings.CoreTolerance?.DegreesCelsius ?? 20);
        StepsOutsideAreSaid(plan, night);
    }

    // People are there at any hour; some steps take two, some loads are the shop's own, and some nights are those of a clock change.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_BackFromItsPour_IsTheSameNight(int seed)
    {
        var night = Forward(Invent(seed));
        night = night with { Shop = night.Shop with { Settings = night.Shop.Settings with { AtWorkFrom = null, SecondFrom = null, ClosedOn = [] } } };
        var forward = NightPlanner.Plan(night).Clock!;

        var backward = NightPlanner.Plan(BackFrom(night, forward)).Clock!;

        backward.Steps.Select(s => (ClockWords.Of(s), backward.Shown(s.Begins))).ShouldBe(forward.Steps.Select(s => (ClockWords.Of(s), forward.Shown(s.Begins))), ignoreOrder: true);
    }

    // With hours of work the plan back from a pour chooses its own waits: no more falls outside, and where nothing did no wait is longer.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_BackFromItsPourWithHours_IsNoWorse(int seed)
    {
        var night = Forward(Invent(seed));
        var forward = NightPlanner.Plan(night).Clock!;

        var backward = NightPlanner.Plan(BackFrom(night, forward)).Clock!;

        Math.Abs((FirstPour(backward) - FirstPour(forward)).TotalMinutes).ShouldBeLessThan(Dust);
        backward.Steps.Count(s => s.IsOutside).ShouldBeLessThanOrEqualTo(forward.Steps.Count(s => s.IsOutside));
        (backward.Start!.Value.AddMinutes(Dust) >= forward.Start!.Value || forward.Steps.Any(s => s.IsOutside)).ShouldBeTrue();
    }

    private static Night Forward(Night night) => night with { Clock = night.Clock! with { IsPour = false } };

    private static Night BackFrom(Night night, NightClock forward) => night with { Clock = night.Clock! with { At = FirstPour(forward), IsPour = true } };

    private static DateTimeOffset FirstPour(NightClock clock) =>
        clock.Start!.Value.AddMinutes(clock.Steps.First(s => s is { Kind: ClockStepKind.Pour, Load: 1 }).Begins.Minutes);

    internal static void HandsAreSingle(NightClock clock)
    {
        var hands = clock.Steps.Where(s => s.Hands).OrderBy(s => s.Begins.Minutes).ThenBy(s => s.Ends.Minutes).ToList();
        for (var i = 1; i < hands.Count; i++)
        {
            hands[i].Begins.Minutes.ShouldBeGreaterThanOrEqualTo(hands[i - 1].Ends.Minutes - Dust, $"{ClockWords.Of(hands[i])} and {ClockWords.Of(hands[i - 1])}");
        }
    }

    private static void SetIsWhole(NightClock clock, Night night)
    {
        foreach (var step in clock.Steps.Where(s => s.Kind is ClockStepKind.BaseOff or ClockStepKind.Steam or ClockStepKind.LoadKiln))
        {
            var filled = clock.Steps.Where(s => s.Kind == ClockStepKind.Fill && s.Flasks.Any(step.Flasks.Contains)).Max(s => s.Ends.Minutes);
            step.Begins.Minutes.ShouldBeGreaterThanOrEqualTo(filled + night.Shop.Investments[0].SetAtLeast!.Value.Minutes - Dust);
        }
    }

    // From the first powder in the water until the flasks rest, less than the powder's working time with the margin before gloss-off; no step of another thing between.
    internal static void MixesAreOverInTime(NightClock clock, Night night, NightPlan plan)
    {
        var worked = night.Shop.Investments[0].WorkingTime!.Value.Minutes - 1.5;
        foreach (var mix in plan.Mixes)
        {
            var steps = clock.Steps.Where(s => s.Mix == mix.Number && s.Kind is ClockStepKind.Mix or ClockStepKind.BowlVacuum or ClockStepKind.Fill or ClockStepKind.FlaskVacuum).ToList();
            steps.Count.ShouldBe(4);
            (steps[^1].Ends - steps[0].Begins).Minutes.ShouldBeLessThanOrEqualTo(worked + Dust);
            for (var i = 1; i < steps.Count; i++)
            {
                steps[i].Begins.Minutes.ShouldBe(steps[i - 1].Ends.Minutes, Dust);
            }
        }
    }

    // An open mould dries after a day: its mix waits, or it is said.
    private static void NoMouldStandsLongUnsaid(NightPlan plan)
    {
        if (plan.Clock!.Steps.Any(s => s.Kind == ClockStepKind.Set && s.Takes.Hours > 24))
        {
            plan.Ids().ShouldContain("moulds-stand-long");
        }
    }

    private static void HoldsAreWhole(NightClock clock)
    {
        foreach (var load in clock.Loads)
        {
            var run = clock.Steps.Where(s => s.Load == load.Number && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).Take(load.Schedule.Stages.Count).ToList();
            var from = (load.Schedule.LoadAt ?? BurnoutSchedule.ColdKiln).DegreesCelsius;
            foreach (var (step, stage) in run.Zip(load.Schedule.Stages))
            {
                // A way with a rate and any fall come before the hold.
                var rise = stage.Target.DegreesCelsius - from;
                var rate = rise < 0 ? Math.Min(stage.RateDegreesPerHour ?? load.CoolsDegreesPerHour, load.CoolsDegreesPerHour) : stage.RateDegreesPerHour;
                step.Takes.Minutes.ShouldBeGreaterThanOrEqualTo(stage.Hold.Minutes + (rate is { } known ? Math.Abs(rise) / known * 60 : 0) - Dust);
                from = stage.Target.DegreesCelsius;
            }

            for (var i = 1; i < run.Count; i++)
            {
                run[i].Begins.Minutes.ShouldBe(run[i - 1].Ends.Minutes, Dust);
            }
        }
    }

    // A load runs the holds of each of its flasks' own schedules, down to the last stage, and longer ones where another flask asks for them.
    private static void LoadsAskNoLessThanTheirFlasks(NightPlan plan)
    {
        foreach (var load in plan.Clock!.Loads)
        {
            foreach (var flask in plan.Flasks.Where(f => load.Flasks.Contains(f.Letter)))
            {
                load.Schedule.Stages.Sum(s => s.Hold.Minutes).ShouldBeGreaterThanOrEqualTo(flask.Program!.Stages.Sum(s => s.Hold.Minutes) - Dust);
            }
        }
    }

    private static void EveryFlaskIsPouredOnceOrSaid(NightPlan plan)
    {
        var poured = plan.Clock!.Steps.Where(s => s.Kind == ClockStepKind.Pour).SelectMany(s => s.Flasks).ToList();
        poured.ShouldBeUnique();
        var said = plan.Findings.Where(f => f.Id is "flask-over-kiln" or "schedule-missing").SelectMany(f => f.Subjects).Where(s => s.Kind == SubjectKind.Flask).Select(s => s.Key);
        poured.Concat(said).Order(StringComparer.Ordinal).ShouldBe(plan.Flasks.Select(f => f.Letter).Order(StringComparer.Ordinal));
    }

    // The kiln has gone to the temperature of the flask, or of one no more than 10 °C hotter, before it is poured.
    private static void PoursComeWhenTheirKilnIsReady(NightPlan plan)
    {
        foreach (var pour in plan.Clock!.Steps.Where(s => s.Kind == ClockStepKind.Pour && s.Target is not null))
        {
            var kiln = plan.Clock.Steps.Last(s => s.Load == pour.Load && s.Kind is ClockStepKind.Fall && s.Begins < pour.Begins);
            kiln.Ends.Minutes.ShouldBeLessThanOrEqualTo(pour.Begins.Minutes + Dust);
            var lowered = plan.Clock.Steps.FirstOrDefault(s => s.Load == pour.Load && s.Kind is ClockStepKind.Fall && s.Begins > kiln.Begins);
            (lowered?.Begins.Minutes ?? double.PositiveInfinity).ShouldBeGreaterThanOrEqualTo(pour.Ends.Minutes - Dust, "the kiln is not lowered before the flask is out");
            (kiln.Target!.Value.DegreesCelsius - pour.Target!.Value.DegreesCelsius).ShouldBeInRange(0, 10);
        }
    }

    // A kiln is empty, and down to what its next load begins with, before that is loaded.
    internal static void KilnsHoldOneLoad(NightClock clock)
    {
        foreach (var loads in clock.Loads.GroupBy(l => l.Kiln))
        {
            foreach (var (load, next) in loads.Zip(loads.Skip(1)))
            {
                var emptied = clock.Steps.Where(s => s.Kind == ClockStepKind.Pour && s.Load == load.Number).Max(s => s.Ends.Minutes);
                var last = load.Pours.LastOrDefault(p => p.Temperature is not null)?.Temperature ?? load.Schedule.Stages[^1].Target;
                var fall = Math.Max(0, last.DegreesCelsius - (next.Schedule.LoadAt ?? next.Schedule.Stages[0].Target).DegreesCelsius);
                var loaded = clock.Steps.Single(s => s.Kind == ClockStepKind.LoadKiln && s.Load == next.Number);
                (loaded.IsDone ? double.PositiveInfinity : loaded.Begins.Minutes).ShouldBeGreaterThanOrEqualTo(emptied + (60 * fall / load.CoolsDegreesPerHour) - Dust);
            }
        }
    }

    // Each mould's core, driven along the kiln's steps to the moment of its pour.
    private static void CoresHaveFollowed(NightPlan plan, double toleranceDegrees)
    {
        foreach (var load in plan.Clock!.Loads)
        {
            var programme = KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour);
            var steps = plan.Clock.Steps.Where(s => s.Load == load.Number && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).ToList();
            foreach (var pour in plan.Clock.Steps.Where(s => s is { Kind: ClockStepKind.Pour, Target: not null } && s.Load == load.Number))
            {
                var size = plan.Flasks.Single(f => f.Letter == pour.Flasks[0]).Size;
                var coolest = Wrenmoor.Celsius(load.Schedule.Stages.Min(s => s.Target.DegreesCelsius));
                var core = new CoreTrace(size.InsideDiameter!.Value, size.Height!.Value, MouldCase.Slow, coolest, load.Schedule.LoadAt ?? BurnoutSchedule.ColdKiln);
                programme.ToList().ForEach(core.Run);
                var at = steps[programme.Count - 1].Ends;
                foreach (var fall in steps.Skip(programme.Count).Where(s => s.Begins < pour.Begins))
                {
                    core.Hold(fall.Begins - at);
                    core.Go(fall.Target!.Value, fall.Arrives!.Value);
                    core.Hold(fall.Takes - fall.Arrives.Value);
                    at = fall.Ends;
                }

                core.Hold(pour.Begins - at);
                Math.Abs(core.Core.DegreesCelsius - core.Kiln.DegreesCelsius).ShouldBeLessThanOrEqualTo(toleranceDegrees + Dust, ClockWords.Of(pour));
            }
        }
    }

    // Minute by minute: whoever a step takes is there, or it is marked and there is a finding.
    private static void StepsOutsideAreSaid(NightPlan plan, Night night)
    {
        var (clock, settings) = (plan.Clock!, night.Shop.Settings);
        foreach (var step in clock.Steps)
        {
            var minutes = Enumerable.Range(0, (int)Math.Max(1, Math.Floor(step.Takes.Minutes))).Select(i => clock.Shown(step.Begins + Duration.FromMinutes(i + 0.5))!.Value);
            var isMissing = (step.Hands || settings.StayWith.Contains(step.Kind)) && minutes.Any(m =>
                IsAway(m, settings.AtWorkFrom, settings.AtWorkUntil) || (settings.TwoPeopleFor.Contains(step.Kind) && IsAway(m, settings.SecondFrom, settings.SecondUntil)));
            (step.IsOutside || !isMissing).ShouldBeTrue(ClockWords.Of(step));
        }

        plan.Ids().Contains("steps-outside-hours").ShouldBe(clock.Steps.Any(s => s.IsOutside));

        // Hours that run past midnight belong to the day on which they begin.
        bool IsAway(DateTime at, TimeOnly? from, TimeOnly? until)
        {
            var (begin, end) = from is { } f && until is { } u && f != u ? (f, u) : (TimeOnly.MinValue, TimeOnly.MinValue);
            var hour = TimeOnly.FromDateTime(at);
            return (begin != end && !hour.IsBetween(begin, end)) || settings.ClosedOn.Contains((begin > end && hour < end ? at.AddDays(-1) : at).DayOfWeek);
        }
    }

    internal static Night Invent(int seed)
    {
        var random = new Random(seed);
        var silver = Wrenmoor.Silver.Alloy with { FlaskTemperatureOrdinary = Wrenmoor.Celsius(random.Next(450, 650)) };
        var shop = Wrenmoor.Shop with
        {
            Alloys = [Wrenmoor.Silver with { Alloy = silver }, Wrenmoor.Bronze],
            Kilns = [.. Enumerable.Range(1, random.Next(1, 3)).Select(i => Kiln(i, random))],
            FlaskSizes = [Wrenmoor.Small with { Owned = 4 }, Wrenmoor.Size("60 × 60", 60, 60, 3)],
            Settings = Wrenmoor.Answered with
            {
                AtWorkFrom = random.Next(2) == 0 ? new TimeOnly(random.Next(0, 24), 0) : null,
                AtWorkUntil = new TimeOnly(random.Next(0, 24), 30),
                SteamDewax = Duration.FromMinutes(random.Next(2) * 30),
                PouringTakes = Duration.FromMinutes(random.Next(1, 20)),
                MixingBowl = Volume.FromLiters(random.Next(1, 8)),
                TwoPeopleFor = random.Next(3) == 0 ? [ClockStepKind.Pour] : [],
                SecondFrom = new TimeOnly(8, 0),
                SecondUntil = new TimeOnly(18, 0),
                StayWith = random.Next(4) == 0 ? [ClockStepKind.Steam] : [],
                ClosedOn = random.Next(3) == 0 ? [DayOfWeek.Thursday] : [],
                CoreTolerance = random.Next(2) == 0 ? TemperatureDelta.FromDegreesCelsius(random.Next(5, 40)) : null,
                KilnLoads = random.Next(4) == 0 ? [["B"], ["A", "C"]] : [],
            },
            Schedules = random.Next(2) == 0 ? [] : [new ShopSchedule
            {
                Name = "own",
                LoadAt = Wrenmoor.Celsius(random.Next(2) == 0 ? 20 : 150),
                Stages = [new BurnoutStage(Wrenmoor.Celsius(732), 200, Duration.FromHours(random.Next(1, 5))), new BurnoutStage(Wrenmoor.Celsius(540), null, Duration.FromHours(1))],
            }],
        };
        var stud = Wrenmoor.Stud(random.Next(1, 60)) with { Alloy = "Bell bronze", StonesIn = random.Next(4) == 0 };
        return Wrenmoor.Night(shop, Wrenmoor.Ring(random.Next(1, 60)), stud) with
        {
            Clock = Hour(seed, new TimeSpan(random.Next(24), random.Next(60), 0), random.Next(3) == 0),
        };
    }

    // Every fourth night is one of a clock change, in spring or in autumn.
    private static ClockQuestion Hour(int seed, TimeSpan hour, bool isPour)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin");
        return seed % 4 == 0
            ? new ClockQuestion(ClockQuestion.Nearest((seed % 8 == 0 ? new DateTime(2026, 3, 28) : new DateTime(2026, 10, 24)) + hour, zone), isPour, zone)
            : new ClockQuestion(new DateTimeOffset(new DateTime(2026, 11, 25) + hour, TimeSpan.Zero), isPour, TimeZoneInfo.Utc);
    }

    private static Kiln Kiln(int number, Random random) => new()
    {
        Name = $"Kiln {number}",
        InsideDiameter = random.Next(3) == 0 ? null : Wrenmoor.Mm(random.Next(150, 400)),
        CoolsDegreesPerHour = random.Next(60, 200),
    };
}
