using UnitsNet;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

/// <summary>Moulds that wait for their pour in the hot kiln.</summary>
public sealed class HotWaitsTests
{
    // An hour of hold, then by hand an hour for each pour and three minutes for the quench that falls due in it: 1:00, 2:00, 3:03, 4:06, 5:09 and 6:12
    // after the kiln has come down.
    private static NightPlan Plan(double? hours) => ClockPlanningTests.Plan(
        Kilned(side: 400, settings: Wrenmoor.Answered with { PouringTakes = Duration.FromHours(1) }) with
        {
            FlaskSizes = [Wrenmoor.Small with { Owned = 6 }],
            Investments = [Wrenmoor.Shop.Investments[0] with { KeptHotAtMost = hours is { } h ? Duration.FromHours(h) : null }],
        },
        Start(20),
        OneAFlask(6));

    [Fact]
    public void Plan_LongerThanTheMakerAllows_SaysWhichMoulds() => Plan(5.5).The("kept-hot-too-long").Text().ShouldBe(
        "Flask F waits up to 6 h 12 in the hot kiln before the pour, counted from when the kiln has fallen to the first flask temperature; \"White powder\" is to be kept hot for 5 h 30 at most. "
        + "Gypsum goes on breaking down in a hot kiln, which gives gas and rough castings. "
        + "Part the load with \"Kiln loads\" on the Shop sheet, so that fewer flasks wait for others.");

    [Fact]
    public void Plan_NoLimitKnown_AsksWhereMouldsWaitForLong()
    {
        var finding = Plan(null).The("kept-hot-not-known");

        finding.Text().ShouldBe(
            "Flasks D, E and F wait up to 6 h 12 in the hot kiln before the pour, longer than any published schedule holds, and nothing says how long \"White powder\" bears that. "
            + "Look into the data sheet of your powder for its limit and type it as \"Kept hot at most\" on the Investments sheet.");
        finding.Severity.ShouldBe(Planning.Findings.Severity.Note);
    }

    [Fact]
    public void Plan_WithinTheLimit_SaysNothing() => Plan(6.5).Ids().Where(id => id.StartsWith("kept-hot", StringComparison.Ordinal)).ShouldBeEmpty();

    // Three by three, the last of each waits for 3:03.
    [Fact]
    public void Plan_LoadPartedAsTold_SaysNothing()
    {
        var plan = ClockPlanningTests.Plan(
            Kilned(side: 400, settings: Wrenmoor.Answered with { PouringTakes = Duration.FromHours(1), KilnLoads = [["A", "B", "C"], ["D", "E", "F"]] }) with
            {
                FlaskSizes = [Wrenmoor.Small with { Owned = 6 }],
                Investments = [Wrenmoor.Shop.Investments[0] with { KeptHotAtMost = Duration.FromHours(3.5) }],
            },
            Start(20),
            OneAFlask(6));

        plan.Clock!.Loads.Count.ShouldBe(2);
        plan.Ids().ShouldNotContain("kept-hot-too-long");
    }
}
