using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

/// <summary>Small and large flasks that stand in one kiln.</summary>
public sealed class MouldsOfALoadTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 24)];

    // The top is held long enough for both; where it is poured at 540 °C the schedule holds ten minutes.
    private static readonly BurnoutStage[] Stages =
        [new(Wrenmoor.Celsius(149), null, Duration.FromHours(2)), new(Wrenmoor.Celsius(732), null, Duration.FromHours(7)), new(Wrenmoor.Celsius(540), null, Duration.FromMinutes(10))];

    // A silver ring in a large flask, a bronze one in a small one; silver is poured into 540 °C.
    private static NightPlan Plan(double bronzeFlask) => Plan(bronzeFlask, Wrenmoor.Size("small", 60, 60, 1), Wrenmoor.Size("large", 101, 203, 1));

    private static NightPlan Plan(double bronzeFlask, params FlaskSize[] sizes) => ClockPlanningTests.Plan(
        Kilned() with
        {
            FlaskSizes = sizes,
            Alloys = [Wrenmoor.Silver, Wrenmoor.Bronze with { Alloy = Wrenmoor.Bronze.Alloy with { FlaskTemperatureOrdinary = Wrenmoor.Celsius(bronzeFlask) } }],
            Schedules = [new ShopSchedule { Name = "own", Stages = Stages }],
        },
        Start(20),
        OneAFlask(1) with { PerTree = new Dictionary<string, int> { ["large"] = 1 } },
        OneAFlask(1) with { PerTree = new Dictionary<string, int> { ["small"] = 1 }, Alloy = "Bell bronze" });

    [Fact]
    public void Plan_TwoSizes_FollowsEachOfThem()
    {
        var plan = Plan(540);

        var heat = plan.Clock!.Loads.ShouldHaveSingleItem().Heat;
        heat.Moulds.Select(m => m.Size).ShouldBe(["large", "small"]);
        heat.Moulds.Select(m => m.Flasks.ShouldHaveSingleItem()).ShouldBe(plan.Flasks.OrderBy(f => f.Size.Name, StringComparer.Ordinal).Select(f => f.Letter));
        heat.Flask.ShouldBe(heat.Moulds[0].Flasks[0]);
        heat.Moulds[1].Arrivals[1].Slow!.Value.ShouldBeLessThan(heat.Moulds[0].Arrivals[1].Slow!.Value);
        heat.Moulds[1].Arrivals[0].Slow.ShouldNotBeNull();
        heat.Moulds[0].Arrivals[0].Slow.ShouldBeNull();
    }

    // Poured at one temperature the small one waits for the large one's core, as both are in one group.
    [Fact]
    public void Plan_OneTemperature_HoldsForTheSlowestThatIsPoured()
    {
        var plan = Plan(540);

        var load = plan.Clock!.Loads[0];
        load.Schedule.Stages[^1].Hold.Minutes.ShouldBeGreaterThan(60);
        Behind(load, "large", load.Schedule.Stages[^1].Hold).ShouldBeInRange(0, 20);
        Behind(load, "large", load.Schedule.Stages[^1].Hold - Duration.FromMinutes(5)).ShouldBeGreaterThan(20);
        plan.The("last-hold-lengthened").Seen.ShouldContain($"the core of flask {load.Heat.Moulds[0].Flasks[0]} may need");
    }

    // The small flask goes first, at 640 °C: its core is held for, not that of the large one, which waits for its own temperature.
    [Fact]
    public void Plan_SmallOneIsHotter_IsNotKeptWaitingForTheLargeOne()
    {
        var plan = Plan(640);

        var load = plan.Clock!.Loads.ShouldHaveSingleItem();
        var first = load.Schedule.Stages[^1].Hold;
        load.Pours.Select(p => p.Flasks.ShouldHaveSingleItem()).ShouldBe([load.Heat.Moulds[1].Flasks[0], load.Heat.Moulds[0].Flasks[0]]);
        load.SlowestOf(load.Pours[0]).ShouldBe(load.Heat.Moulds[1].Flasks[0]);
        Behind(load, "small", first).ShouldBeInRange(0, 20);
        Behind(load, "large", first).ShouldBeGreaterThan(20);

        var lowered = plan.Clock.Steps.Last(s => s.Kind == ClockStepKind.Fall);
        lowered.Hold!.Value.Minutes.ShouldBeGreaterThan(60);
        lowered.Target!.Value.DegreesCelsius.ShouldBe(540);
    }

    // Whatever the sizes, and whichever of them is poured first: a hold before pours is as long as the schedule asks (a later one as long as the
    // first) or, to five minutes, as long as the moulds need that are poured then. The slowest mould may be another, which is not waited for yet.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_AnyTwoSizes_HoldsForTheMouldsPouredThenAndForNoOthers(int seed)
    {
        var random = new Random(seed);
        var plan = Plan(
            random.Next(2) == 0 ? random.Next(560, 680) : random.Next(420, 520),
            Wrenmoor.Size("small", random.Next(50, 75), random.Next(60, 80), 1), Wrenmoor.Size("large", random.Next(85, 105), random.Next(120, 205), 1));

        var load = plan.Clock!.Loads.ShouldHaveSingleItem();
        var falls = plan.Clock.Steps.Where(s => s.Kind == ClockStepKind.Fall).ToList();
        falls.Count.ShouldBe(2);
        load.Pours.Count.ShouldBe(2);
        foreach (var (pour, at) in load.Pours.Select((p, i) => (p, i)))
        {
            var hold = falls[at].Hold!.Value;
            var poured = plan.Flasks.Where(f => pour.Flasks.Contains(f.Letter)).Select(f => f.Size).ToList();
            poured.ShouldAllBe(size => Math.Abs(Behind(load, falls, at, size, hold)) <= 20 + 1e-6);
            if (hold > (at == 0 ? Stages[^1].Hold : falls[0].Hold!.Value))
            {
                poured.ShouldContain(size => Math.Abs(Behind(load, falls, at, size, hold - Duration.FromMinutes(5))) > 20);
            }
        }
    }

    // The core of a size, driven by hand to the end of a hold that is another one than planned.
    private static double Behind(KilnLoad load, List<ClockStep> falls, int at, FlaskSize size, Duration hold)
    {
        var core = new CoreTrace(size.InsideDiameter!.Value, size.Height!.Value, MouldCase.Slow, Wrenmoor.Celsius(149), BurnoutSchedule.ColdKiln);
        foreach (var stage in KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour).SkipLast(1))
        {
            core.Run(stage);
        }

        for (var i = 0; i <= at; i++)
        {
            core.Hold(i == 0 ? Duration.Zero : falls[i].Begins - falls[i - 1].Ends);
            core.Go(falls[i].Target!.Value, falls[i].Arrives!.Value);
            core.Hold(i == at ? hold : falls[i].Hold!.Value);
        }

        return core.Core.DegreesCelsius - core.Kiln.DegreesCelsius;
    }

    // A core driven by hand through the load's stages, its last hold another one.
    private static double Behind(KilnLoad load, string size, Duration lastHold)
    {
        var (diameter, height) = size == "large" ? (101, 203) : (60, 60);
        var core = new CoreTrace(Wrenmoor.Mm(diameter), Wrenmoor.Mm(height), MouldCase.Slow, Wrenmoor.Celsius(149), BurnoutSchedule.ColdKiln);
        foreach (var stage in KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour))
        {
            core.Run(stage with { Hold = stage.Target.DegreesCelsius == load.Schedule.Stages[^1].Target.DegreesCelsius ? lastHold : stage.Hold });
        }

        return core.Core.DegreesCelsius - core.Kiln.DegreesCelsius;
    }
}
