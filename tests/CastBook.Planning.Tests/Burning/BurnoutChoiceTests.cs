using CastBook.Casting.Burnout;
using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Burning;

public sealed class BurnoutChoiceTests
{
    // Published supplier table: 8 h for flasks up to 3½ × 4 in, 12 h up to 4 × 8 in.
    [Theory]
    [InlineData("75 × 100", 8)]
    [InlineData("100 × 150", 12)]
    public void For_WaxWithoutShopSchedule_TakesTheShippedOne(string size, double hours) =>
        Plan(Wrenmoor.Shop with { FlaskSizes = [.. Wrenmoor.Shop.FlaskSizes.Where(s => s.Name == size)] }, Wrenmoor.Ring())
            .Flasks[0].Program!.Total.Hours.ShouldBe(hours, 1e-9);

    [Fact]
    public void For_ResinWithoutShopSchedule_ChecksOnce()
    {
        var plan = Plan(Wrenmoor.Shop, Resin, Resin with { Alloy = "Bell bronze" });

        plan.Flasks.Select(f => f.Program!.Total.Hours).ShouldBe([10, 10]);
        plan.The("schedule-of-maker-missing").Text().ShouldBe(
            "Resin is burnt out by a usual schedule and not by its maker's. Resin does not melt out; it needs the times its maker has tried. "
            + "Add your maker's schedule to the Schedules sheet with \"resin\" under For.");
    }

    [Fact]
    public void For_MaterialKindUnknown_IsBurntOutAsResin()
    {
        var shop = Wrenmoor.Shop with { Materials = [Wrenmoor.Wax with { Kind = null, Name = "Blue" }], Settings = Wrenmoor.Answered with { PatternMaterial = "Blue" } };

        var plan = Plan(shop, Wrenmoor.Ring());

        plan.Flasks[0].Program!.Total.Hours.ShouldBe(10, 1e-9);
        plan.The("assumed-resin").Seen.ShouldBe("Nothing says whether \"Blue\" is wax or resin; it is burnt out as resin, the longer way.");
    }

    [Fact]
    public void For_ShopSchedules_TakesTheClosestThatFits()
    {
        var shop = Wrenmoor.Shop with
        {
            FlaskSizes = [Wrenmoor.Small],
            Schedules =
            [
                Schedule("any", ScheduleUse.WaxAndResin, null, 5), Schedule("wide", ScheduleUse.Wax, 120, 9), Schedule("close", ScheduleUse.Wax, 80, 7), Schedule("narrow", ScheduleUse.Wax, 70, 4), Schedule("resin", ScheduleUse.Resin, 80, 11),
            ],
        };

        Plan(shop, Wrenmoor.Ring()).Flasks[0].Schedule.ShouldBe("close");
        Plan(shop, Resin).Flasks[0].Schedule.ShouldBe("resin");
        Plan(shop, Resin).Ids().ShouldNotContain("schedule-of-maker-missing");
    }

    [Fact]
    public void For_TwoEquallyClose_TakesTheLonger()
    {
        var shop = Wrenmoor.Shop with { Schedules = [Schedule("short", ScheduleUse.Wax, 120, 6), Schedule("long", ScheduleUse.Wax, 120, 9)] };

        Plan(shop, Wrenmoor.Ring()).Flasks[0].Program!.Total.Hours.ShouldBe(9, 1e-9);
    }

    [Fact]
    public void For_FlaskLargerThanTheClasses_Stops()
    {
        var plan = Plan(Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Size("125 × 250", 125, 250, 1)] }, Wrenmoor.Ring());

        plan.The("schedule-missing").Text().ShouldBe(
            "No burnout is known for flask A: \"125 × 250\" is larger than the usual schedules serve. "
            + "A mould that is not burnt out to its core spits metal or casts full of gas. Add the schedule of your investment's maker to the Schedules sheet.");
        plan.Flasks[0].Burnout.ShouldBeNull();
        plan.The("quench-missing").Seen.ShouldBe("The wait before the quench is not known for Bench silver in all flasks in use.");
    }

    [Fact]
    public void For_StonesWithoutTheirSchedule_StopsEvenBesideOneForAnything()
    {
        var shop = Wrenmoor.Shop with { Schedules = [Schedule("any", ScheduleUse.WaxAndResin, null, 8)] };

        Plan(shop, Wrenmoor.Ring() with { StonesIn = true }).The("schedule-missing").Seen
            .ShouldBe("No burnout is known for flask A: stones are in it and the Schedules sheet has nothing for stones.");
    }

    [Theory]
    [InlineData(732.2, null)]
    [InlineData(745, "schedule-above-limit")]
    [InlineData(760, "schedule-above-limit")]
    [InlineData(762, "schedule-too-hot")]
    public void For_TopOverTheLimits_ChecksOrStops(double top, string? id)
    {
        var shop = Wrenmoor.Shop with { Schedules = [Schedule("own", ScheduleUse.Wax, null, 8, top)] };

        Plan(shop, Wrenmoor.Ring()).StopsAndChecks().ShouldBe(id is null ? [] : [id]);
    }

    [Fact]
    public void For_TopOverTheMakersLimit_Checks()
    {
        var shop = Wrenmoor.Shop with
        {
            Investments = [Wrenmoor.Shop.Investments[0] with { NeverAbove = Wrenmoor.Celsius(700) }],
            Schedules = [Schedule("own", ScheduleUse.Wax, null, 8, 720)],
        };

        Plan(shop, Wrenmoor.Ring()).The("schedule-above-limit").Seen
            .ShouldBe("The schedule \"own\" goes to 720 °C; \"White powder\" should not go above 700 °C.");
    }

    // The shop's own limit does not move the temperature at which gypsum breaks down.
    [Theory]
    [InlineData(750.2, false)]
    [InlineData(752, true)]
    [InlineData(760, true)]
    public void For_TopNearBreakdownWithinTheMakersLimit_Checks(double top, bool isChecked)
    {
        var shop = Wrenmoor.Shop with
        {
            Investments = [Wrenmoor.Shop.Investments[0] with { NeverAbove = Wrenmoor.Celsius(770) }],
            Schedules = [Schedule("own", ScheduleUse.Wax, null, 8, top)],
        };

        var plan = Plan(shop, Wrenmoor.Ring());

        plan.StopsAndChecks().ShouldBe(isChecked ? ["schedule-near-breakdown"] : []);
        if (isChecked)
        {
            plan.The("schedule-near-breakdown").Text().ShouldBe(
                $"The schedule \"own\" goes to {top} °C, which \"White powder\" bears by its row. Gypsum-bonded investment breaks down above 760 °C with the carbon of a burnt "
                + "pattern in it, and many a kiln reads wrong by more than what is left. Measure what the kiln reaches, or lower the schedule.");
        }
    }

    // The usual schedules are those of gypsum-bonded powders.
    [Fact]
    public void For_PowderThatIsNotGypsumBonded_AsksForItsSchedule()
    {
        var shop = Wrenmoor.Shop with { Investments = [Wrenmoor.Shop.Investments[0] with { Kind = InvestmentKind.HighTemperature }] };

        Plan(shop, Wrenmoor.Ring()).The("schedule-missing").Seen
            .ShouldBe("No burnout is known for flask A: \"White powder\" is not gypsum-bonded, and the usual schedules are for powders that are.");
        Plan(shop with { Schedules = [Schedule("hot", ScheduleUse.Wax, null, 8, 870)] }, Wrenmoor.Ring()).Ids().ShouldNotContain("schedule-missing");
    }

    // Its own schedule is used all the same, and may not be hotter than gypsum bears.
    [Fact]
    public void For_PowderOfAKindThatNobodyCanRead_TakesNoUsualSchedule()
    {
        var shop = Wrenmoor.Shop with { Investments = [Wrenmoor.Shop.Investments[0] with { Kind = null, Unreadable = new HashSet<string> { ShopField.Kind } }] };

        Plan(shop, Wrenmoor.Ring()).The("schedule-missing").Seen
            .ShouldBe("No burnout is known for flask A: nobody can read what kind of powder \"White powder\" is, and the usual schedules are for one kind.");
        Plan(shop with { Schedules = [Schedule("hot", ScheduleUse.Wax, null, 8, 870)] }, Wrenmoor.Ring()).Stops().ShouldBe(["schedule-too-hot"]);
    }

    [Fact]
    public void For_StonesAboveTheirLimit_Stops()
    {
        var shop = Wrenmoor.Shop with { Schedules = [Schedule("low", ScheduleUse.Stones, null, 15, 480)] };

        var plan = Plan(shop, Wrenmoor.Ring() with { StonesIn = true });

        plan.The("stones-schedule-too-hot").Seen.ShouldBe("The schedule \"low\" goes to 480 °C with stones in the mould.");
        plan.Flasks[0].Program.ShouldBeNull();
    }

    // A programme that stands on the kiln sheet is dialled in, whatever Checks says.
    [Fact]
    public void For_ScheduleAtWhichGypsumBreaksDown_GivesNoProgramme()
    {
        var plan = Plan(Wrenmoor.Shop with { Schedules = [Schedule("hot", ScheduleUse.Wax, null, 8, 770)] }, Wrenmoor.Ring(), Wrenmoor.Ring() with { Alloy = "Bell bronze" });

        var said = plan.The("schedule-too-hot");
        said.Text().ShouldBe(
            "The schedule \"hot\" goes to 770 °C. Gypsum-bonded investment breaks down above 760 °C with the carbon of a burnt pattern in it, so its programme is not given. "
            + "Lower the schedule.");
        said.Subjects.ShouldBe([new Subject(SubjectKind.Schedule, "hot", ShopField.Target), Subject.Flask("A"), Subject.Flask("B")]);
        plan.Flasks.ShouldAllBe(f => f.Program == null && !f.Burnout.HasValue && f.Schedule == null);
        plan.Clock!.Loads.ShouldBeEmpty();
    }

    // The kiln is brought to the flask's own temperature, so no schedule ends elsewhere.
    [Theory]
    [InlineData(540)]
    [InlineData(600)]
    public void For_ShopScheduleThatEndsElsewhere_EndsAtTheFlaskTemperatureInItsLoad(double end)
    {
        var plan = Plan(Wrenmoor.Shop with { Schedules = [Schedule("own", ScheduleUse.Wax, null, 8, 730, end)] }, Wrenmoor.Ring());

        plan.Clock!.Loads[0].Schedule.Stages[^1].Target.DegreesCelsius.ShouldBe(540);
    }

    private static Piece Resin => Wrenmoor.Ring() with { Material = "Castable resin" };

    private static NightPlan Plan(Shop shop, params Piece[] pieces) => NightPlanner.Plan(Wrenmoor.Night(shop, pieces));

    private static ShopSchedule Schedule(string name, ScheduleUse use, double? upTo, double hours, double top = 730, double end = 540) => new()
    {
        Name = name,
        For = use,
        UpToDiameter = upTo is { } mm ? Wrenmoor.Mm(mm) : null,
        Stages =
        [
            new BurnoutStage(Wrenmoor.Celsius(top), null, Duration.FromHours(hours)),
            new BurnoutStage(Wrenmoor.Celsius(Math.Min(top, end)), null, Duration.Zero),
        ],
    };
}
