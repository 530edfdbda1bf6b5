using CastBook.Casting.Burnout;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests;

/// <summary>What somebody has typed and nobody can read: its cell has a stop, so no plan may go on with the usual number in its place.</summary>
public sealed class UnreadableTests
{
    // The usual ratio, density and working time are of other powders: a mould of 40 parts where its maker says 22 breaks in the kiln.
    [Theory]
    [InlineData(ShopField.WaterPer100)]
    [InlineData(ShopField.PowderDensity)]
    [InlineData(ShopField.WorkingTime)]
    public void Plan_NumberOfThePowder_LeavesPowderAndWaterOpen(string field)
    {
        var plan = Plan(Powder(field));

        plan.Flasks[0].Powder.ShouldBeNull();
        plan.Flasks[0].Water.ShouldBeNull();
        plan.Mixes.ShouldBeEmpty();
        plan.Flasks[0].Charge.Grams.ShouldBeGreaterThan(0);
        plan.Ids().ShouldNotContain("assumed-powder");
    }

    // Not one hour after the mixes is known, and a clock that counts without the set would have a wet mould in the kiln.
    [Fact]
    public void Plan_SetOfThePowder_LeavesTheClockOpen()
    {
        var plan = Plan(Powder(ShopField.SetAtLeast));

        plan.Clock.ShouldBeNull();
        plan.SetAtLeast.ShouldBeNull();
        plan.Flasks[0].Powder.ShouldNotBeNull();
    }

    [Fact]
    public void Plan_LimitOfThePowder_LeavesTheProgrammeOpen()
    {
        var plan = Plan(Powder(ShopField.NeverAbove));

        plan.Flasks[0].Program.ShouldBeNull();
        plan.Clock!.Loads.ShouldBeEmpty();
    }

    // The shop has a schedule of its own for these flasks: an hour shorter, or of another powder, a usual one spoils them.
    [Theory]
    [InlineData(ScheduleUse.Wax, 80, null, null, false)]
    [InlineData(ScheduleUse.Wax, 120, null, "close", true)]
    [InlineData(ScheduleUse.Resin, null, null, "8 h wax", true)]
    [InlineData(ScheduleUse.Resin, 80, ShopField.For, null, false)]
    [InlineData(ScheduleUse.Wax, null, ShopField.UpToDiameter, "close", false)]
    public void Plan_ScheduleThatMayBeTheClosest_LeavesTheProgrammeOpen(ScheduleUse use, int? upTo, string? unread, string? other, bool isKnown)
    {
        var shop = Wrenmoor.Shop with
        {
            FlaskSizes = [Wrenmoor.Small],
            Schedules = other == "close" ? [Schedule("close", ScheduleUse.Wax, 100) with { Stages = [Stage(730), Stage(540)] }] : [],
            UnreadSchedules = [Schedule("unread", use, upTo) with { Unreadable = unread is null ? Set(ShopField.Hold) : Set(unread) }],
        };

        var flask = Plan(shop).Flasks[0];

        (flask.Program is not null).ShouldBe(isKnown);
        if (other == "close" && isKnown)
        {
            flask.Schedule.ShouldBe("close");
        }
    }

    [Theory]
    [InlineData(ShopField.MetalTemperature)]
    [InlineData(ShopField.FlaskTemperatureOrdinary)]
    [InlineData(ShopField.QuenchAfter)]
    [InlineData(ShopField.Density)]
    [InlineData(ShopField.Composition)]
    public void Plan_NumberOfAnAlloyThatIsBuiltInToo_IsNotTakenFromThere(string field)
    {
        var builtIn = BuiltInAlloys.All.First(a => a is { MetalTemperature: not null, FlaskTemperatureOrdinary: not null, QuenchAfter.Small: not null, Density: not null });
        var ring = Wrenmoor.Ring() with { Alloy = builtIn.Name };
        var row = new ShopAlloy { Alloy = new Alloy { Name = builtIn.Name } };

        var usual = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [row], FlaskSizes = [Wrenmoor.Small] }, ring));
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [row with { Unreadable = Set(field) }], FlaskSizes = [Wrenmoor.Small] }, ring));

        Said(usual).ShouldNotContain("nothing");
        Said(plan).ShouldContain("nothing");

        string[] Said(NightPlan of) => field switch
        {
            ShopField.MetalTemperature => [of.Flasks[0].MetalTemperature is null ? "nothing" : "a temperature"],
            ShopField.FlaskTemperatureOrdinary => [of.Flasks[0].FlaskTemperature is null ? "nothing" : "a temperature"],
            ShopField.QuenchAfter => [of.Flasks[0].QuenchAfter is null ? "nothing" : "a wait"],
            _ => [of.Flasks.Count == 0 && of.Pieces[0].MetalEach is null ? "nothing" : "metal"],
        };
    }

    // One fault, one finding: the cell that cannot be read is not asked for once more.
    [Fact]
    public void Plan_TemperaturesOfAnAlloy_AreNotAskedForOnceMore()
    {
        var silver = Wrenmoor.Silver with
        {
            Alloy = Wrenmoor.Silver.Alloy with { MetalTemperature = null, FlaskTemperatureOrdinary = null, QuenchAfter = QuenchWaits.None },
            Unreadable = Set(ShopField.MetalTemperature, ShopField.FlaskTemperatureOrdinary, ShopField.QuenchAfter),
        };

        Plan(Wrenmoor.Shop with { Alloys = [silver] }).StopsAndChecks().ShouldBeEmpty();
    }

    [Theory]
    [InlineData(ShopField.Cup)]
    [InlineData(ShopField.AboveTree)]
    [InlineData(ShopField.Method)]
    [InlineData(ShopField.Water)]
    public void Plan_FlaskSize_IsNotPlannedWith(string field)
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Unreadable = Set(field) }, Wrenmoor.Large] };

        Plan(shop).Flasks.ShouldHaveSingleItem().Size.Name.ShouldBe(Wrenmoor.Large.Name);
        Plan(shop with { FlaskSizes = [shop.FlaskSizes[0]] }).Flasks.ShouldBeEmpty();
    }

    // A list of alloys that cannot be read would be none, which lets any metal into it.
    [Fact]
    public void Plan_Crucible_IsNotPlannedWith()
    {
        var crucible = Wrenmoor.Shop.Crucibles[0];

        var plan = Plan(Wrenmoor.Shop with { Crucibles = [crucible with { Unreadable = Set(ShopField.Alloys) }] });

        plan.Flasks.ShouldBeEmpty();
        plan.StopsAndChecks().ShouldBeEmpty();
        Plan(Wrenmoor.Shop with { Crucibles = [crucible with { Unreadable = Set(ShopField.Alloys) }, crucible with { Name = "Clay 5" }] }).Flasks.Count.ShouldBe(1);
    }

    // The setting is the density of what the shop uses mostly, 0.95 for this wax; a sixth less metal than for a resin of 1.15.
    [Theory]
    [InlineData(ShopField.Density)]
    [InlineData(ShopField.CubeMass)]
    public void Plan_DensityOfAMaterial_IsNotTakenFromTheSetting(string field)
    {
        var shop = Wrenmoor.Shop with
        {
            Materials = [Wrenmoor.Wax with { Density = null, Unreadable = Set(field) }],
            Settings = Wrenmoor.Answered with { PatternDensity = Density.FromGramsPerCubicCentimeter(0.95) },
        };

        Plan(shop).Pieces[0].MetalEach.ShouldBeNull();
    }

    [Fact]
    public void Plan_HowFarAKilnReadsWrong_GoesWithItsLoads()
    {
        var shop = Wrenmoor.Shop with { Kilns = [Wrenmoor.Shop.Kilns[0] with { Unreadable = Set(ShopField.ReadsHighBy) }] };

        Plan(shop).Clock!.Loads[0].IsReadingUnread.ShouldBeTrue();
        Plan(Wrenmoor.Shop).Clock!.Loads[0].IsReadingUnread.ShouldBeFalse();
    }

    private static HashSet<string> Set(params string[] fields) => fields.ToHashSet(StringComparer.Ordinal);

    private static Shop Powder(string field)
    {
        var powder = Wrenmoor.Shop.Investments[0];
        powder = field switch
        {
            ShopField.WaterPer100 => powder with { WaterPer100 = null },
            ShopField.PowderDensity => powder with { PowderDensity = null },
            ShopField.WorkingTime => powder with { WorkingTime = null },
            ShopField.SetAtLeast => powder with { SetAtLeast = null },
            _ => powder,
        };
        return Wrenmoor.Shop with { Investments = [powder with { Unreadable = Set(field) }] };
    }

    private static NightPlan Plan(Shop shop) => NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring()));

    private static ShopSchedule Schedule(string name, ScheduleUse use, int? upTo) => new()
    {
        Name = name,
        For = use,
        UpToDiameter = upTo is { } mm ? Wrenmoor.Mm(mm) : null,
        Stages = [],
    };

    private static BurnoutStage Stage(double target) => new(Wrenmoor.Celsius(target), null, Duration.FromHours(4));
}
