using CastBook.Casting.Burnout;
using CastBook.Planning.Clock;
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
        SetIsWhole(clock, night);
        HoldsAreWhole(clock);
        EveryFlaskIsPouredOnceOrSaid(plan);
        PoursComeWhenTheirKilnIsReady(plan);
        if (clock.Steps.Any(s => s.IsOutside))
        {
            plan.Ids().ShouldContain("steps-outside-hours");
        }
    }

    // With hours of work the backward plan may start earlier where that keeps more of the mixing within them.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_BackFromItsPour_IsTheSameNight(int seed)
    {
        var invented = Invent(seed);
        var night = invented with { Clock = invented.Clock! with { IsPour = false } };
        var forward = NightPlanner.Plan(night).Clock!;
        if (forward.Loads.Count == 0)
        {
            return;
        }

        var pour = FirstPour(forward);

        var backward = NightPlanner.Plan(night with { Clock = night.Clock with { At = pour, IsPour = true } }).Clock!;

        Math.Abs((FirstPour(backward) - pour).TotalMinutes).ShouldBeLessThan(Dust);
        if (night.Shop.Settings.AtWorkFrom is null)
        {
            Math.Abs((backward.Start!.Value - forward.Start!.Value).TotalMinutes).ShouldBeLessThan(Dust);
            backward.Steps.Select(s => ClockWords.Of(s)).ShouldBe(forward.Steps.Select(s => ClockWords.Of(s)), ignoreOrder: true);
        }
    }

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
        var filled = clock.Steps.Where(s => s.Kind == ClockStepKind.Fill).Max(s => s.Ends.Minutes);
        foreach (var step in clock.Steps.Where(s => s.Kind is ClockStepKind.BaseOff or ClockStepKind.Steam or ClockStepKind.LoadKiln))
        {
            step.Begins.Minutes.ShouldBeGreaterThanOrEqualTo(filled + night.Shop.Investments[0].SetAtLeast!.Value.Minutes - Dust);
        }
    }

    private static void HoldsAreWhole(NightClock clock)
    {
        foreach (var load in clock.Loads)
        {
            var run = clock.Steps.Where(s => s.Load == load.Number && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).Take(load.Schedule.Stages.Count).ToList();
            run.Zip(load.Schedule.Stages).ShouldAllBe(s => s.First.Takes.Minutes >= s.Second.Hold.Minutes - Dust);
            for (var i = 1; i < run.Count; i++)
            {
                run[i].Begins.Minutes.ShouldBe(run[i - 1].Ends.Minutes, Dust);
            }
        }
    }

    private static void EveryFlaskIsPouredOnceOrSaid(NightPlan plan)
    {
        var poured = plan.Clock!.Steps.Where(s => s.Kind == ClockStepKind.Pour).SelectMany(s => s.Flasks).ToList();
        poured.ShouldBeUnique();
        var said = plan.Findings.Where(f => f.Id is "flask-over-kiln" or "schedule-missing").SelectMany(f => f.Subjects).Select(s => s.Key);
        poured.Concat(said).Order(StringComparer.Ordinal).ShouldBe(plan.Flasks.Select(f => f.Letter).Order(StringComparer.Ordinal));
    }

    // The kiln has gone to the temperature of the flask, or of one no more than 10 °C hotter, before it is poured.
    private static void PoursComeWhenTheirKilnIsReady(NightPlan plan)
    {
        foreach (var pour in plan.Clock!.Steps.Where(s => s.Kind == ClockStepKind.Pour && s.Target is not null))
        {
            var kiln = plan.Clock.Steps.Last(s => s.Load == pour.Load && s.Kind is ClockStepKind.Fall && s.Begins < pour.Begins);
            kiln.Ends.Minutes.ShouldBeLessThanOrEqualTo(pour.Begins.Minutes + Dust);
            (kiln.Target!.Value.DegreesCelsius - pour.Target!.Value.DegreesCelsius).ShouldBeInRange(0, 10);
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
            Clock = new ClockQuestion(new DateTimeOffset(2026, 11, 25, random.Next(24), random.Next(60), 0, TimeSpan.Zero), random.Next(3) == 0, TimeZoneInfo.Utc),
        };
    }

    private static Kiln Kiln(int number, Random random) => new()
    {
        Name = $"Kiln {number}",
        InsideDiameter = random.Next(3) == 0 ? null : Wrenmoor.Mm(random.Next(150, 400)),
        CoolsDegreesPerHour = random.Next(60, 200),
    };
}
