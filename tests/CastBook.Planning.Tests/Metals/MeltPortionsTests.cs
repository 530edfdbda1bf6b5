using CastBook.Casting.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

/// <summary>Three signets take a charge of 118 g, one of them 59 g or so; see the planner's tests.</summary>
public sealed class MeltPortionsTests
{
    [Fact]
    public void Of_PlentyOfBoth_UsesRemeltUpToTheLeastShare()
    {
        var metal = Plan(Stock(100, 100), null, Wrenmoor.Ring(3)).Metal[0];

        var portion = metal.Portions.ShouldHaveSingleItem();
        (portion.Flask, portion.Charge.Grams, portion.Fresh!.Value.Grams, portion.Remelt!.Value.Grams).ShouldBe(("A", 118, 59, 59));
        metal.Buy!.Value.Grams.ShouldBe(0);
    }

    [Fact]
    public void Of_TheShopsOwnShare_IsKept()
    {
        var portion = Plan(Stock(100, 100), 75, Wrenmoor.Ring(3)).Metal[0].Portions.ShouldHaveSingleItem();

        // By hand: 75 % of 118 g is 88.5 g, 89 g on the scale.
        (portion.Fresh!.Value.Grams, portion.Remelt!.Value.Grams).ShouldBe((89, 29));
    }

    [Fact]
    public void Of_NobodyNamedAShare_IsSaid()
    {
        var settings = Wrenmoor.Answered with { FreshAtLeast = null };

        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Settings = settings, Alloys = [Stock(100, 100)] }, Wrenmoor.Ring(3)))
            .The("assumed-default").Seen.ShouldBe("Fresh at least is taken as 50 %.");
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Settings = settings, Alloys = [Stock(200, 0)] }, Wrenmoor.Ring(3)))
            .Ids().ShouldNotContain("assumed-default");
    }

    [Fact]
    public void Of_EnoughMetalButTooLittleFresh_SaysWhatToBuy()
    {
        var plan = Plan(Stock(50, 200), 50, Wrenmoor.Ring(3));

        plan.Metal[0].Portions.ShouldHaveSingleItem().Fresh.ShouldBeNull();
        plan.Metal[0].Buy!.Value.Grams.ShouldBe(9, 1e-9);
        plan.The("fresh-metal-short").Text().ShouldBe(
            "Bench silver: 118 g needed, 50.0 g fresh and 200 g of re-melt in stock. At least 50 % of each melt is to be fresh, so 9.0 g of fresh metal are missing. "
            + "Buy 9.0 g fresh, leave pieces out, or lower \"Fresh at least\" on the Shop sheet.");
        plan.Ids().ShouldNotContain("metal-short");
    }

    [Fact]
    public void Of_StockForOneOfTwoFlasks_GivesItToThePiecesThatAreDue()
    {
        var later = Wrenmoor.Ring(3) with { KeepInFlask = "A" };
        var due = Wrenmoor.Ring(3) with { KeepInFlask = "B", Due = new DateOnly(2026, 12, 4) };

        var plan = Plan(Stock(100, 60), 50, later, due);

        plan.Metal[0].Portions.Select(p => (p.Flask, p.Fresh?.Grams)).ShouldBe([("A", null), ("B", 59)]);
        plan.The("metal-short").Seen.ShouldBe("Bench silver: 236 g needed, 160 g in stock.");
        plan.The("flasks-to-pour-first").Text().ShouldBe(
            "Bench silver: the metal in stock is enough for flask B. Trees that are under way come first, then pieces that are due; flask A must wait for metal. "
            + "Have the metal in hand before you burn out flask A.");
    }

    [Fact]
    public void Of_TreeUnderWay_ComesBeforePiecesThatAreDue()
    {
        var built = Wrenmoor.Ring(3) with { LastFlasks = [new("A", 3)] };
        var due = Wrenmoor.Ring(3) with { Due = new DateOnly(2026, 12, 4) };
        var night = Wrenmoor.Night(Shop(50, Stock(100, 60)), built, due) with
        {
            Trees = [new TreeInHand("A", "75 × 100", null, null, null, FlaskState.Invested)],
        };

        NightPlanner.Plan(night).Metal[0].Portions.Select(p => (p.Flask, p.Fresh is null)).ShouldBe([("A", false), ("B", true)]);
    }

    [Fact]
    public void Of_ManyFlasks_HandOutNoGramTwice()
    {
        var pieces = Enumerable.Range(0, 6).Select(i => Wrenmoor.Ring(9) with { Name = $"Signet {i}", Due = new DateOnly(2026, 12, 10 - i) }).ToArray();

        var metal = Plan(Stock(700, 300), 60, pieces).Metal[0];

        metal.Portions.Count.ShouldBeGreaterThan(2);
        metal.Portions.Sum(p => p.Fresh?.Grams ?? 0).ShouldBeLessThanOrEqualTo(700);
        metal.Portions.Sum(p => p.Remelt?.Grams ?? 0).ShouldBeLessThanOrEqualTo(300);
        foreach (var portion in metal.Portions.Where(p => p.Fresh is not null))
        {
            (portion.Fresh!.Value.Grams + portion.Remelt!.Value.Grams).ShouldBe(portion.Charge.Grams, 1e-9);
            portion.Fresh!.Value.Grams.ShouldBeGreaterThanOrEqualTo(0.6 * portion.Charge.Grams);
        }
    }

    // By hand: 18 g are missing; 92.5 % of it is 16.65 g of silver, the rest 1.35 g of copper.
    [Fact]
    public void Of_FineMetalsInTheDrawer_MakeUpTheRest()
    {
        var plan = Plan([Silver(60, 40), Metal("fine silver", "Ag 1000", 30), Metal("copper", "Cu 1000", 2)], 50, Wrenmoor.Ring(3));

        Parts(plan).ShouldBe([("fine silver", 16.65), ("copper", 1.35)]);
        plan.The("metal-made-up").Text().ShouldBe(
            "Bench silver: 118 g needed, 100 g in stock; the rest can be made up from fine silver and copper. The weights for each crucible stand on the sheet Metal. "
            + "Melt them together as it says, or buy 18.0 g of fresh Bench silver.");
        plan.Stops().ShouldNotContain("metal-short");
    }

    // By hand: 18 g of 925 hold 16.65 g of silver and 1.35 g of copper. The 800 is used up first: 4 g of it
    // hold 3.2 g and 0.8 g; 13.45 g of silver and 0.55 g of copper are left to add.
    [Fact]
    public void Of_PoorerAlloyInTheDrawer_IsRaisedWithFineMetal()
    {
        var plan = Plan(
            [Silver(60, 40), Metal("800 silver", "Ag 800 Cu 200", 4), Metal("fine silver", "Ag 1000", 30), Metal("copper", "Cu 1000", 2)], 50, Wrenmoor.Ring(3));

        Parts(plan).ShouldBe([("800 silver", 4), ("fine silver", 13.45), ("copper", 0.55)]);
    }

    [Theory]
    [InlineData("Ag 1000", 16.64, "Cu 1000", 2)] // a hundredth of a gram short
    [InlineData("Ag 990 Ni 10", 30, "Cu 1000", 2)] // nickel has no place in it
    public void Of_DrawerThatCannotMakeIt_LeavesTheShortage(string first, double firstGrams, string second, double secondGrams)
    {
        var plan = Plan([Silver(60, 40), Metal("one", first, firstGrams), Metal("two", second, secondGrams)], 50, Wrenmoor.Ring(3));

        plan.Metal[0].Portions.ShouldHaveSingleItem().Fresh.ShouldBeNull();
        plan.Stops().ShouldContain("metal-short");
    }

    [Fact]
    public void Of_MetalUsedForOneFlask_IsNotThereForTheNext()
    {
        var first = Wrenmoor.Ring(3) with { KeepInFlask = "A" };
        var second = Wrenmoor.Ring(3) with { KeepInFlask = "B" };

        var plan = Plan([Silver(60, 0), Metal("fine silver", "Ag 1000", 100), Metal("copper", "Cu 1000", 20)], 50, first, second);

        plan.Metal[0].Portions.Select(p => p.MadeUp.Count).ShouldBe([2, 0]);
    }

    private static IReadOnlyList<(string, double)> Parts(NightPlan plan) =>
        [.. plan.Metal[0].Portions.ShouldHaveSingleItem().MadeUp.Select(p => (p.Metal, Math.Round(p.Mass.Grams, 6)))];

    private static NightPlan Plan(ShopAlloy silver, double? freshAtLeast, params Piece[] pieces) => Plan([silver], freshAtLeast, pieces);

    private static NightPlan Plan(ShopAlloy[] alloys, double? freshAtLeast, params Piece[] pieces) =>
        NightPlanner.Plan(Wrenmoor.Night(Shop(freshAtLeast, alloys), pieces));

    private static Shop Shop(double? freshAtLeast, params ShopAlloy[] alloys) => Wrenmoor.Shop with
    {
        Alloys = alloys,
        Settings = Wrenmoor.Answered with { FreshAtLeast = freshAtLeast is { } percent ? Ratio.FromPercent(percent) : null },
    };

    private static ShopAlloy Stock(double fresh, double remelt) => Wrenmoor.Silver with { Fresh = Mass.FromGrams(fresh), Remelt = Mass.FromGrams(remelt) };

    private static ShopAlloy Silver(double fresh, double remelt)
    {
        var row = Stock(fresh, remelt);
        return row with { Alloy = row.Alloy with { Composition = Of("Ag 925 Cu 75") } };
    }

    private static ShopAlloy Metal(string name, string composition, double fresh) => new()
    {
        Alloy = new Alloy { Name = name, Composition = Of(composition) },
        Fresh = Mass.FromGrams(fresh),
    };

    private static Composition Of(string text) => Composition.TryParse(text, out var composition, out _) ? composition : throw new ArgumentException(text);
}
