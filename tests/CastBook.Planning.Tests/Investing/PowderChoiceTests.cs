using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Investing;

public sealed class PowderChoiceTests
{
    // By hand: 75 × 100 holds 441.79 ml; pieces 2, gate 0.05, trunk 3.18 and the base's cup 25 displace 30.23;
    // 411.56 + 30 waste = 441.56 ml / (1/2.6 + 0.40) = 562.9, up to 565 g, and 226 ml of water.
    [Fact]
    public void For_OneRing_FillsTheFlaskAndTheWaste()
    {
        var flask = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring())).Flasks[0];

        flask.Powder!.Value.Grams.ShouldBe(565, 1e-9);
        flask.Water!.Value.Milliliters.ShouldBe(226, 1e-9);
    }

    [Fact]
    public void For_ChartOfTheShop_WinsAndFarApartIsChecked()
    {
        var near = Plan(Wrenmoor.Small with { Powder = Mass.FromGrams(600), Water = Wrenmoor.Ml(240) });
        var far = Plan(Wrenmoor.Small with { Powder = Mass.FromGrams(450), Water = Wrenmoor.Ml(180) });

        near.Flasks[0].Powder!.Value.Grams.ShouldBe(600, 1e-9);
        near.Flasks[0].Water!.Value.Milliliters.ShouldBe(240, 1e-9);
        near.StopsAndChecks().ShouldBeEmpty();
        far.Flasks[0].Powder!.Value.Grams.ShouldBe(450, 1e-9);
        far.The("powder-chart-differs").Seen.ShouldBe("The chart gives 450 g of powder for flask size \"75 × 100\", 565 g are worked out.");
    }

    [Fact]
    public void For_NoInvestmentRow_NotesTheUsualValues()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Investments = [] }, Wrenmoor.Ring()));

        plan.Flasks[0].Powder!.Value.Grams.ShouldBe(565, 1e-9);
        plan.Findings.Where(f => f.Id == "assumed-powder").Select(f => f.Seen).ShouldBe(
            ["Investment: 40 parts of water to 100 of powder, for flasks of wax.", "Investment: 2.60 g/cm³ for the powder's grains.",
                "Investment: 9.5 min from the first powder in the water to gloss-off.", "Investment: 2 h of set at least, from the last pour."]);
    }

    // 441.56 / (1/2.6 + 0.38) = 577.5, up to 580 g; × 0.38 = 220.4 ml.
    [Fact]
    public void For_ResinAmongWax_TakesTheResinsWater()
    {
        var stud = Wrenmoor.Ring() with { Weight = null, PatternVolume = Wrenmoor.Ml(1) };
        var shop = Wrenmoor.Shop with { Investments = [] };

        var flask = NightPlanner.Plan(Wrenmoor.Night(shop, stud, stud with { Material = "Castable resin" })).Flasks.ShouldHaveSingleItem();

        flask.Powder!.Value.Grams.ShouldBe(580, 1e-9);
        flask.Water!.Value.Milliliters.ShouldBe(220.4, 1e-9);
    }

    [Fact]
    public void For_SeveralAndNoneChosen_AsksAndSaysNoPowder()
    {
        var shop = Wrenmoor.Shop with { Investments = [new Investment { Name = "White" }, new Investment { Name = "Grey" }] };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring()));

        plan.The("investment-not-chosen").Text().ShouldBe(
            "The Investments sheet has \"White\" and \"Grey\". Powder and water are worked out once one of them is chosen. "
            + "Type its name as \"Investment\" on the Shop sheet.");
        plan.Flasks[0].Powder.ShouldBeNull();
        plan.Flasks[0].Charge.Grams.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void For_ChosenOneNotOnTheSheet_Asks()
    {
        var shop = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { Investment = "Pink" } };

        NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring())).The("investment-unknown").Seen
            .ShouldBe("The Shop sheet names the investment \"Pink\", but the Investments sheet has \"White powder\".");
    }

    // 40 parts typed as 0.40, or the two the wrong way round as in print: nothing is worked out by it.
    [Theory]
    [InlineData(0.4)]
    [InlineData(29.9)]
    [InlineData(50.1)]
    [InlineData(400)]
    public void For_WaterRatioOutOfRange_StopsAndSaysNoPowder(double per100)
    {
        var plan = With(Wrenmoor.Shop.Investments[0] with { WaterPer100 = per100 });

        plan.The("water-ratio-impossible").Text().ShouldBe(
            $"White powder has {per100} parts of water to 100 of powder; such powders take 30 to 50, by mass. "
            + "Too thin a mould breaks and too thick a mix does not run, so powder and water are not worked out. "
            + "Type the parts of water to 100 of powder from the maker's data sheet under \"Water per 100\" on the Investments sheet: 40 where it says 0.40.");
        plan.The("water-ratio-impossible").Subjects.ShouldBe([new Subject(SubjectKind.Investment, "White powder", ShopField.WaterPer100)]);
        plan.Flasks[0].Powder.ShouldBeNull();
        plan.Mixes.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(30, null)]
    [InlineData(50, null)]
    [InlineData(20, InvestmentKind.HighTemperature)]
    public void For_WaterRatioWithinRange_IsUsed(double per100, InvestmentKind? kind)
    {
        var flask = With(Wrenmoor.Shop.Investments[0] with { WaterPer100 = per100, Kind = kind ?? InvestmentKind.Gypsum }).Flasks[0];

        (flask.Water!.Value.Milliliters / flask.Powder!.Value.Grams * 100).ShouldBe(per100, 1e-9);
    }

    // What is usual for gypsum is no guide: 40 parts of water would break such a mould, and it sets sooner.
    [Fact]
    public void For_PowderThatIsNotGypsumBonded_AsksForItsOwnNumbers()
    {
        var powder = Wrenmoor.Shop.Investments[0] with { Kind = InvestmentKind.HighTemperature, WaterPer100 = null, WorkingTime = null };
        var bowl = Wrenmoor.Answered with { MixingBowl = Volume.FromLiters(4) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Investments = [powder], Settings = bowl }, Wrenmoor.Ring()));

        plan.The("powder-numbers-missing").Text().ShouldBe(
            "White powder is no gypsum-bonded powder, and its row says nothing under \"Water per 100\" and \"Working time\". What is usual for gypsum-bonded powders breaks such "
            + "a mould, or lets it set in the bowl, so powder and water are not worked out. Type the numbers of the maker's data sheet on the Investments sheet.");
        plan.The("powder-numbers-missing").Subjects.Count.ShouldBe(2);
        plan.Flasks[0].Powder.ShouldBeNull();
        plan.Mixes.ShouldBeEmpty();
        plan.Ids().ShouldNotContain("assumed-powder");
    }

    // Nothing usual for another kind is used, and no number of its own with what belongs to gypsum.
    [Fact]
    public void For_KindThatNobodyCanRead_SaysNoPowder()
    {
        var plan = With(Wrenmoor.Shop.Investments[0] with { Kind = null, Unreadable = new HashSet<string> { ShopField.Kind }, WaterPer100 = null, WorkingTime = null, SetAtLeast = null });

        plan.Flasks[0].Powder.ShouldBeNull();
        plan.Flasks[0].Water.ShouldBeNull();
        plan.Flasks[0].Charge.Grams.ShouldBeGreaterThan(0);
        plan.Mixes.ShouldBeEmpty();
        plan.SetAtLeast.ShouldBeNull();
        plan.Ids().ShouldNotContain("assumed-powder");
    }

    // A chart needs no ratio, and nobody who mixes flask by flask is asked for a working time.
    [Fact]
    public void For_PowderThatIsNotGypsumBondedWithAChart_IsTakenFromIt()
    {
        var powder = Wrenmoor.Shop.Investments[0] with { Kind = InvestmentKind.HighTemperature, WaterPer100 = null };
        var size = Wrenmoor.Small with { Powder = Mass.FromGrams(600), Water = Wrenmoor.Ml(150) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Investments = [powder], FlaskSizes = [size] }, Wrenmoor.Ring()));

        plan.Ids().ShouldNotContain("powder-numbers-missing");
        plan.Flasks[0].Water!.Value.Milliliters.ShouldBe(150, 1e-9);
    }

    // A heap of powder weighs about 0.9 g/cm³: by it 290 g would fill the flask instead of 565 g.
    [Theory]
    [InlineData(0.9, "0.90")]
    [InlineData(3.3, "3.30")]
    public void For_DensityOfAHeap_IsNotUsedAndChecked(double density, string said)
    {
        var plan = With(Wrenmoor.Shop.Investments[0] with { PowderDensity = Density.FromGramsPerCubicCentimeter(density) });

        plan.The("powder-density-impossible").Text().ShouldBe(
            $"White powder has a powder density of {said} g/cm³; the grains of casting powders lie between 2.00 g/cm³ and 3.20 g/cm³. "
            + "A heap is lighter than its grains, for there is air in it; with its density too little powder is weighed out. 2.60 g/cm³ was used. "
            + "Clear \"Powder density\" on the Investments sheet, or type that of the grains.");
        plan.Flasks[0].Powder!.Value.Grams.ShouldBe(565, 1e-9);
    }

    [Fact]
    public void For_ChartWithTooMuchWater_IsUsedAndChecked()
    {
        var plan = Plan(Wrenmoor.Small with { Powder = Mass.FromGrams(600), Water = Wrenmoor.Ml(340) });

        plan.Flasks[0].Water!.Value.Milliliters.ShouldBe(340, 1e-9);
        plan.The("water-chart-unlikely").Text().ShouldBe(
            "The chart for flask size \"75 × 100\" gives 600 g + 340 ml: 56.7 parts of water to 100 of powder; such powders take 30 to 50, by mass. "
            + "Too thin a mould breaks and too thick a mix does not run. The chart was used. "
            + "Check \"Powder\" and \"Water\" on the Flasks sheet, and the units in their headings.");
    }

    [Fact]
    public void CompareStock_TooLittle_Stops()
    {
        var shop = Wrenmoor.Shop with { Investments = [Wrenmoor.Shop.Investments[0] with { InStock = Mass.FromGrams(500) }] };

        var finding = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring())).The("powder-short");

        finding.Text().ShouldBe(
            "White powder: 565 g of powder needed, 500 g in stock. A mix cannot wait for powder. Buy 65 g, or correct \"In stock\" on the Investments sheet.");
        finding.Subjects.ShouldBe([new Subject(SubjectKind.Investment, "White powder", ShopField.InStock)]);
    }

    private static NightPlan With(Investment powder) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Investments = [powder] }, Wrenmoor.Ring()));

    private static NightPlan Plan(FlaskSize size) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { FlaskSizes = [size] }, Wrenmoor.Ring()));
}
