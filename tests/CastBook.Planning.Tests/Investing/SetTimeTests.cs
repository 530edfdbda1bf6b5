using UnitsNet;

namespace CastBook.Planning.Tests.Investing;

public sealed class SetTimeTests
{
    // Published: set 1 h at least; 1½ to 2 h; 2 h before the kiln.
    [Fact]
    public void Of_NothingSaid_IsTwoHoursAndNoted()
    {
        var plan = Plan(null);

        plan.SetAtLeast!.Value.Hours.ShouldBe(2, 1e-9);
        plan.Findings.Select(f => f.Seen).ShouldContain("White powder: 2 h of set at least, from the last pour.");
    }

    [Fact]
    public void Of_TheShopsOwn_Wins() => Plan(90).SetAtLeast!.Value.Minutes.ShouldBe(90, 1e-9);

    [Fact]
    public void Of_LessThanAnybodyPublishes_IsChecked()
    {
        var plan = Plan(45);

        plan.SetAtLeast!.Value.Minutes.ShouldBe(45, 1e-9);
        plan.The("set-too-short").Text().ShouldBe(
            "White powder is to set for 45 min. Published times start at an hour; a green mould cracks and its skin comes off with the wax. "
            + "Correct \"Set at least\" on the Investments sheet, or check it against the maker's data sheet.");
    }

    private static NightPlan Plan(double? minutes) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with
        {
            Investments = [Wrenmoor.Shop.Investments[0] with { SetAtLeast = minutes is { } set ? Duration.FromMinutes(set) : null }],
        },
        Wrenmoor.Ring()));
}
