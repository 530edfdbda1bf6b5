using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

public sealed class MetalSumsTests
{
    // Three signets take a charge of 118 g; see the planner's tests.
    [Fact]
    public void Of_StockUnderTheCharge_SaysWhatToBuy()
    {
        var shop = Wrenmoor.Shop with
        {
            Alloys = [Wrenmoor.Silver with { Fresh = Mass.FromGrams(60), Remelt = Mass.FromGrams(40) }],
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring(3)));

        plan.Metal[0].Buy!.Value.Grams.ShouldBe(18, 1e-9);
        var finding = plan.The("metal-short");
        finding.Subjects.ShouldBe([new Subject(SubjectKind.Alloy, "Bench silver", ShopField.Fresh)]);
        finding.Text().ShouldBe(
            "Bench silver: 118 g needed, 100 g in stock. 18.0 g are missing. Buy 18.0 g, leave pieces out, or correct the stock on the Alloys sheet.");
    }

    [Fact]
    public void Of_EnoughStock_BuysNothing()
    {
        var shop = Wrenmoor.Shop with { Alloys = [Wrenmoor.Silver with { Fresh = Mass.FromGrams(118) }] };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring(3)));

        plan.Metal[0].Buy!.Value.Grams.ShouldBe(0, 1e-9);
        plan.Ids().ShouldNotContain("metal-short");
    }

    [Fact]
    public void Of_StockUnknown_SaysNothingOfBuying()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(3)));

        plan.Metal[0].Buy.ShouldBeNull();
        plan.Metal[0].Fresh.ShouldBeNull();
    }

    [Fact]
    public void Of_NothingPlanned_ComparesThePiecesAlone()
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [], Alloys = [Wrenmoor.Silver with { Fresh = Mass.FromGrams(50) }] };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring(3)));

        plan.The("metal-short").Seen.ShouldBe("Bench silver: 62.4 g needed for the pieces alone, 50.0 g in stock.");
        plan.Metal[0].Buy.ShouldBeNull();
    }

    [Fact]
    public void Of_SeveralAlloys_KeepTheListsOrder()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring() with { Alloy = "Bell bronze" }, Wrenmoor.Ring()));

        plan.Metal.Select(m => m.Alloy).ShouldBe(["Bell bronze", "Bench silver"]);
        plan.Flasks.Select(f => f.Alloy).ShouldBe(["Bell bronze", "Bench silver"]);
    }
}
