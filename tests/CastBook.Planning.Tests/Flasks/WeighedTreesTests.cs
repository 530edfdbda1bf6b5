using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Flasks;

public sealed class WeighedTreesTests
{
    // By hand: 40 g of resin at 1.15 is 34.783 ml, 6 g of wax at 0.95 is 6.316 ml; 41.099 ml × 1.2 × 10.4 × 1.01 = 518.04, up to 519 g.
    // All as resin would give 505 g, all as wax 611 g.
    [Fact]
    public void VolumeOf_ResinOnWax_TakesTheSharesApart()
    {
        var plan = Weighed(treeGrams: 46, waxGrams: 6);

        var flask = plan.Flasks.ShouldHaveSingleItem();
        flask.Weighed.ShouldBeTrue();
        flask.Charge.Grams.ShouldBe(519, 1e-9);
        flask.PiecesMetal.Grams.ShouldBe(40 / 1.15 * 10.4, 1e-6);
        flask.TreeMetal.Grams.ShouldBe(6 / 0.95 * 10.4, 1e-6);
        plan.StopsAndChecks().ShouldBe(["schedule-of-maker-missing"]);
    }

    [Fact]
    public void VolumeOf_WaxNotSaid_IsWhatThePatternsLeave()
    {
        var plan = Weighed(treeGrams: 46, waxGrams: null);

        plan.Flasks[0].Charge.Grams.ShouldBe(519, 1e-9);
        plan.The("wax-from-weighing").Text().ShouldBe(
            "6.0 g of the tree of flask A are taken as wax: what it weighs beyond its patterns. To change it, type \"of it wax\" beside the flask on Trees.");
    }

    // 15 g of wax: 50.572 ml, × 1.2 × 10.504 = 637.4, up to 638 g. Estimate: 34.783 + gates 0.495 + trunk 5.378 = 40.656 ml, 513 g.
    [Fact]
    public void VolumeOf_FarFromTheEstimate_IsUsedAndChecked()
    {
        var plan = Weighed(treeGrams: 55, waxGrams: 15);

        plan.Flasks[0].Charge.Grams.ShouldBe(638, 1e-9);
        plan.The("weighed-tree-differs").Seen.ShouldBe("Flask A takes 638 g by its weighing, 513 g by the estimate.");
    }

    // The low side: 40 g of resin and 1 g of wax are 35.835 ml, × 1.2 × 10.504 = 451.7, up to 452 g, and no less than the pieces; thick gates alone
    // would be 40 × 9 π × 7 mm³ = 7.917 ml, so 34.783 + 7.917 + trunk 5.378 = 48.078 ml, 606.0 g, was the estimate.
    [Fact]
    public void VolumeOf_FarBelowTheEstimate_IsUsedAndChecked()
    {
        var piece = Piece with { Gate = new PieceGate(4, Wrenmoor.Mm(6), Wrenmoor.Mm(7)) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(piece) with { Trees = [Line(41, 1)] });

        plan.Flasks[0].Charge.Grams.ShouldBe(452, 1e-9);
        plan.Ids().ShouldNotContain("weighed-below-pieces");
        plan.The("weighed-tree-differs").Text().ShouldStartWith("Flask A takes 452 g by its weighing, 607 g by the estimate. ");
    }

    [Fact]
    public void VolumeOf_TreeNoHeavierThanBase_StopsAndEstimates()
    {
        var plan = Weighed(treeGrams: 0, waxGrams: null);

        plan.The("tree-not-over-base").Text().ShouldBe(
            "Flask A: the tree on its base weighs 100 g, the base alone 100 g. The tree itself must weigh something, so the charge is still the estimate. "
            + "Weigh both again and correct the cell.");
        plan.The("tree-not-over-base").Subjects.ShouldBe([Subject.Flask("A", ShopField.TreeOnBase)]);
        plan.Flasks[0].Weighed.ShouldBeFalse();
        plan.Flasks[0].Charge.Grams.ShouldBe(513, 1e-9);
    }

    [Fact]
    public void VolumeOf_MoreWaxThanTree_StopsAndEstimates()
    {
        var plan = Weighed(treeGrams: 46, waxGrams: 47);

        plan.The("wax-over-tree").Seen.ShouldBe("Flask A: 47.0 g of wax is more than the tree of 46.0 g weighs.");
        plan.Flasks[0].Weighed.ShouldBeFalse();
    }

    [Fact]
    public void VolumeOf_LighterThanItsPatterns_IsOneCheck()
    {
        var plan = Weighed(treeGrams: 30, waxGrams: null);

        plan.StopsAndChecks().ShouldBe(["tree-lighter-than-patterns", "schedule-of-maker-missing"]);
        plan.Flasks[0].TreeMetal.ShouldBe(Mass.Zero);
        plan.The("tree-lighter-than-patterns").Seen.ShouldBe("The tree of flask A weighs 30.0 g, less than its patterns together, 40.0 g.");
    }

    // 10 g of wax and 20 g of patterns: 20 / 1.15 + 10 / 0.95 = 27.917 ml, 290.3 g; the pieces alone 40 / 1.15 × 10.4 = 361.7 g.
    [Fact]
    public void VolumeOf_LessThanThePiecesAlone_SaysBoth() =>
        Weighed(treeGrams: 30, waxGrams: 10).The("weighed-below-pieces").Text().ShouldBe(
            "The weighed tree of flask A takes 290 g, less than its pieces alone should, 362 g. A piece may be missing, or a density or weight is wrong. Count the pieces and weigh again.");

    [Fact]
    public void VolumeOf_PatternDensityUnknown_KeepsTheEstimateAndAsks()
    {
        var piece = Piece with { Weight = Mass.FromGrams(36), Material = "mystery" };
        var night = Wrenmoor.Night(piece) with { WeightsAreOf = WeightMeaning.FinishedMetal, Trees = [Line(46, null)] };

        var plan = NightPlanner.Plan(night);

        plan.The("wax-share-unknown").Subjects.ShouldBe([Subject.Flask("A", ShopField.OfItWax)]);
        plan.The("wax-share-unknown").Seen.ShouldBe("The tree of flask A weighs 46.0 g, but how much of that is wax and how much pattern is not known.");
        plan.Flasks[0].Weighed.ShouldBeFalse();
    }

    [Fact]
    public void VolumeOf_NoSprueWaxDensity_IsAnAssumption()
    {
        var shop = Wrenmoor.Shop with { Materials = [Wrenmoor.Resin], Settings = Wrenmoor.Answered with { SprueWaxDensity = null } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Piece) with { Trees = [Line(46, 6)] });

        plan.The("assumed-default").Text().ShouldBe(
            "Sprue wax density is taken as 0.95 g/cm³. To change it, type \"Sprue wax density\" on the Shop sheet.");
    }

    private static Piece Piece => Wrenmoor.Ring(10) with
    {
        Material = "Castable resin",
        Weight = Mass.FromGrams(4),
        LastFlasks = [new("A", 10)],
    };

    private static NightPlan Weighed(double treeGrams, double? waxGrams) =>
        NightPlanner.Plan(Wrenmoor.Night(Piece) with { Trees = [Line(treeGrams, waxGrams)] });

    private static TreeInHand Line(double treeGrams, double? waxGrams) => new(
        "A", "100 × 150", Mass.FromGrams(100), Mass.FromGrams(100 + treeGrams),
        waxGrams is { } wax ? Mass.FromGrams(wax) : null, FlaskState.Waxed);
}
