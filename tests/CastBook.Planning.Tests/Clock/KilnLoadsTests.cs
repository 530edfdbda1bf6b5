using CastBook.Planning.Clock;
using UnitsNet;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

/// <summary>Which flasks stand in the kiln together, and when the moulds of a late load are mixed.</summary>
public sealed class KilnLoadsTests
{
    // Each pour takes 45 minutes and the last quench its wait, so that six or five flasks are more than the four hours of a morning, and four are not.
    [Fact]
    public void Plan_PoursOfALoadTakeTooLong_ProposesToPartIt()
    {
        var mornings = Wrenmoor.Answered with { AtWorkFrom = new TimeOnly(7, 0), AtWorkUntil = new TimeOnly(11, 0), PouringTakes = Duration.FromMinutes(45) };
        var shop = Kilned(side: 400, settings: mornings) with { FlaskSizes = [Wrenmoor.Small with { Owned = 6 }] };

        var plan = Plan(shop, Start(7), OneAFlask(6));

        plan.Clock!.Loads.ShouldHaveSingleItem();
        var finding = plan.The("steps-outside-hours");
        finding.Remedy.ShouldStartWith("Type \"A B; C D E F\" as \"Kiln loads\" on the Shop sheet: then nothing falls outside, and the first pour is at ");
        var parted = Plan(shop with { Settings = mornings with { KilnLoads = [["A", "B"], ["C", "D", "E", "F"]] } }, Start(7), OneAFlask(6));
        parted.Ids().ShouldNotContain("steps-outside-hours");
        parted.Clock!.Loads.Select(l => string.Concat(l.Flasks)).ShouldBe(["AB", "CDEF"]);
        finding.Remedy.ShouldEndWith($"the first pour is at {Hour(parted.Clock, ClockStepKind.Pour)}.");
    }

    // From its loading: 9 h 55.2 to the first pour, 10 min of pouring, and from 540 down to the 149 °C of the first stage at 100 an hour 3 h 54.6.
    [Fact]
    public void FreeAfter_OneFlask_IsWhenTheKilnTakesTheNextLoad() =>
        Plan(Kilned(), Start(20), Wrenmoor.Ring()).Clock!.Loads[0].FreeAfter!.Value.Minutes.ShouldBe(595.2 + 10 + 234.6, 1e-6);

    [Fact]
    public void Plan_LoadsThatTheShopWants_StandTogetherAndTheRestFollows()
    {
        var plan = Plan(Kilned(settings: Wrenmoor.Answered with { KilnLoads = [["C"], ["A", "Z"]] }), Start(20), OneAFlask(5));

        plan.Clock!.Loads.Select(l => string.Concat(l.Flasks)).ShouldBe(["C", "A", "BDE"]);
        plan.The("kiln-loads-name-no-flask").Text().ShouldBe(
            "\"Kiln loads\" names flask Z, which does not wait for the kiln tonight. The flasks it does name stand together as it says, and all others as they fit. "
            + "Correct \"Kiln loads\" on the Shop sheet, or clear it when the next night is planned.");
    }

    // Resin runs ten hours where wax runs eight, and both have the same fall.
    [Fact]
    public void Plan_WaxWaitsForResin_SaysWhatItWouldSave()
    {
        var shop = Kilned() with { Materials = [Wrenmoor.Wax, Wrenmoor.Resin] };
        var resin = Wrenmoor.Ring() with { Alloy = "Bell bronze", Material = "Castable resin" };

        var plan = Plan(shop, Start(20), Wrenmoor.Ring() with { Material = "Injection wax" }, resin);

        var (wax, other) = (plan.Flasks.Single(f => f.IsWax).Letter, plan.Flasks.Single(f => !f.IsWax).Letter);
        plan.The("load-waits-for-a-flask").Text().ShouldBe(
            $"Load 1 takes 11 h 55 by \"resin 10 h\", for the sake of {other}; by itself {wax} could be poured after 9 h 55. "
            + $"Nothing to do. To run them apart, type \"{wax}; {other}\" as \"Kiln loads\" on the Shop sheet.");
        var apart = Plan(shop with { Settings = Wrenmoor.Answered with { KilnLoads = [[wax], [other]] } }, Start(20), Wrenmoor.Ring() with { Material = "Injection wax" }, resin);
        apart.Clock!.Loads.Select(l => l.Takes.Hours).ShouldBe([9.92, 11.92], 1e-9);
        apart.Ids().ShouldNotContain("load-waits-for-a-flask");
    }

    // Mixes of one flask each. All in one go the moulds of the last loads would stand for more than a day; theirs are mixed so that the last one
    // is filled two hours before they are taken up.
    [Fact]
    public void Plan_MouldsOfALateLoadWouldStandLong_TheirMixesAreMadeLate()
    {
        var settings = Wrenmoor.Answered with { MixingBowl = Volume.FromLiters(1.2) };
        var shop = Kilned(side: 200, settings: settings) with { FlaskSizes = [Wrenmoor.Small with { Owned = 7 }] };

        var plan = Plan(shop, Start(20), OneAFlask(7));

        plan.Ids().ShouldNotContain("moulds-stand-long");
        var clock = plan.Clock!;
        Hour(clock, ClockStepKind.Weigh).ShouldBe("Wed 25 Nov, 20:00");
        var last = clock.Loads[^1];
        var filled = clock.Steps.Where(s => s.Kind == ClockStepKind.FlaskVacuum && s.Flasks.Any(last.Flasks.Contains)).Max(s => s.Begins.Minutes);
        var takenUp = clock.Steps.Single(s => s.Kind == ClockStepKind.BaseOff && s.Load == last.Number).Begins.Minutes;
        (takenUp - filled).ShouldBeInRange(120, 150);
        clock.Steps.Where(s => s.Kind == ClockStepKind.Set).ShouldAllBe(s => s.Takes.Hours <= 24 && s.Takes.Hours >= 2 - 1e-9);
        var tonight = clock.Steps.Where(s => s.Kind == ClockStepKind.Mix && s.Begins.Hours < 3).SelectMany(s => s.Flasks).ToList();
        tonight.ShouldNotBeEmpty();
        tonight.ShouldAllBe(f => !last.Flasks.Contains(f));
    }

    // Two bowls fill moulds of several loads, and cannot wait for the last.
    [Fact]
    public void Plan_MixOfTwoLoads_CannotWaitAndSaysSo()
    {
        var plan = Plan(Kilned(side: 230), Start(20), OneAFlask(7));

        plan.The("moulds-stand-long").Text().ShouldBe(
            "The moulds E, F and G stand for 39 h before they go into the kiln. An open mould dries half way after a day and cracks. "
            + "Bag them damp and type yes as \"Kept damp\" on the Shop sheet, or mix their load later; part mix 1 and 2 for that, which fill moulds of two loads.");
    }

    // A bagged mould keeps a week: the same 39 h are nothing to speak of, and mixes of a late load are made with the others.
    [Fact]
    public void Plan_MouldsKeptDamp_MayStandForAWeek()
    {
        var damp = Wrenmoor.Answered with { KeptDamp = true, MixingBowl = Volume.FromLiters(1.2) };
        var shop = Kilned(side: 200, settings: damp) with { FlaskSizes = [Wrenmoor.Small with { Owned = 7 }] };

        var plan = Plan(shop, Start(20), OneAFlask(7));

        plan.Ids().ShouldNotContain("moulds-stand-long");
        plan.Ids().ShouldNotContain("damp-moulds-stand-long");
        plan.Clock!.Steps.Where(s => s.Kind == ClockStepKind.Mix).ShouldAllBe(s => s.Begins.Hours < 5);
        plan.Clock.Steps.Where(s => s.Kind == ClockStepKind.Set).Max(s => s.Takes.Hours).ShouldBeInRange(24.1, 7 * 24);
    }

    // A kiln for one flask at a time takes two days over each pair.
    [Fact]
    public void Plan_MouldsKeptDampForMoreThanAWeek_SaysSo()
    {
        var damp = Wrenmoor.Answered with { KeptDamp = true };
        var shop = Kilned(side: 130, settings: damp) with { FlaskSizes = [Wrenmoor.Small with { Owned = 20 }] };

        var plan = Plan(shop, Start(20), OneAFlask(20));

        plan.Findings.First(f => f.Id == "damp-moulds-stand-long").Why.ShouldBe("Kept damp, moulds keep about a week.");
    }
}
