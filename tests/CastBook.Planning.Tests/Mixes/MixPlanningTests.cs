using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Mixes;

public sealed class MixPlanningTests
{
    // Rings of unknown size that say how many fit a tree, so that the number of flasks is known: one a flask.
    private static Piece OneAFlask(int quantity) =>
        Wrenmoor.Ring(quantity) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } };

    private static Shop Shop(Settings? settings = null, FlaskSize? size = null) => Wrenmoor.Shop with
    {
        FlaskSizes = [size ?? Wrenmoor.Small with { Owned = 5 }],
        Settings = settings ?? Wrenmoor.Answered,
    };

    private static NightPlan Plan(Shop shop, int flasks) => NightPlanner.Plan(Wrenmoor.Night(shop, OneAFlask(flasks)));

    // By hand: a 75 × 100 flask with one ring takes 411.56 ml; two take 823.12 and lose 5 %, 41.16 ml: 864.28 ml /
    // (1/2.6 + 0.40) = 1,101.7, up to 1,105 g and 442 ml. Two by themselves would take 2 × 565 = 1,130 g.
    [Fact]
    public void Plan_TwoFlasks_ShareAMixAndItsWaste()
    {
        var mix = Plan(Shop(), 2).Mixes.ShouldHaveSingleItem();

        mix.Flasks.ShouldBe(["A", "B"]);
        mix.Powder.Grams.ShouldBe(1105, 1e-9);
        mix.Water.Milliliters.ShouldBe(442, 1e-9);
        mix.Slurry.Milliliters.ShouldBe((1105 / 2.6) + 442, 1e-9);
    }

    [Fact]
    public void Plan_UsualTimes_SayWhenThePourMustBeDone()
    {
        var mix = Plan(Shop(), 2).Mixes[0];

        mix.Takes.Minutes.ShouldBe(8, 1e-9);
        mix.PourDoneBy.Minutes.ShouldBe(6.5, 1e-9);
        mix.GlossOff.Minutes.ShouldBe(9.5, 1e-9);
    }

    // 9.5 min allow two flasks a mix: five flasks take three mixes however large the bowl.
    [Fact]
    public void Plan_FiveFlasks_NeedThreeMixesForTheTime()
    {
        var plan = Plan(Shop(Wrenmoor.Answered with { MixingBowl = Wrenmoor.Ml(20_000) }), 5);

        plan.Mixes.Select(m => string.Join(' ', m.Flasks)).ShouldBe(["A B", "C D", "E"]);
        plan.Flasks.Select(f => f.Mix).ShouldBe([1, 1, 2, 2, 3]);
        plan.Mixes.Select(m => m.Number).ShouldBe([1, 2, 3]);
    }

    // Two flasks make 867 ml of slurry; a bowl of 1,700 ml half full takes 850, one of 1,740 takes 870.
    [Theory]
    [InlineData(1700, 2)]
    [InlineData(1740, 1)]
    public void Plan_SmallBowl_SplitsTheMixes(double bowl, int mixes) =>
        Plan(Shop(Wrenmoor.Answered with { MixingBowl = Wrenmoor.Ml(bowl) }), 2).Mixes.Count.ShouldBe(mixes);

    // By hand: 100 × 150 holds 1,178.1 ml; ring and gate 2.05, trunk of 107 mm 5.4 and cup 25 displace 32.4; 1,145.7 × 1.05 =
    // 1,202.9 ml takes 1,533.1, up to 1,535 g; with 614 ml of water they fill 1,204.4 ml.
    [Fact]
    public void Plan_OneFlaskOverTheBowl_StopsAndMixesTheOthers()
    {
        var shop = Shop(Wrenmoor.Answered with { MixingBowl = Wrenmoor.Ml(1000) }) with { FlaskSizes = [Wrenmoor.Small with { Owned = 1 }, Wrenmoor.Large with { Owned = 1 }] };

        var plan = Plan(shop, 2);

        var small = plan.Flasks.Single(f => f.Size.Name == Wrenmoor.Small.Name).Letter;
        var large = plan.Flasks.Single(f => f.Size.Name == Wrenmoor.Large.Name);
        plan.Mixes.ShouldHaveSingleItem().Flasks.ShouldBe([small]);
        large.Mix.ShouldBeNull();
        plan.The("flask-over-bowl").Text().ShouldBe(
            $"Flask {large.Letter} alone needs 1,204 ml of slurry; the bowl holds 1,000 ml and is filled to 50 % at most. "
            + "Slurry rises under vacuum and runs over, and a mould that is filled from two mixes parts where they meet. "
            + "Use a larger bowl and type it as \"Mixing bowl\" on the Shop sheet, or hang the pieces in smaller flasks.");
    }

    [Fact]
    public void Plan_WaxAndResin_NeverShareAMix()
    {
        var shop = Shop() with { Investments = [], Materials = [Wrenmoor.Wax, Wrenmoor.Resin] };
        var wax = OneAFlask(1);

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, wax, wax with { Material = "Castable resin" }));

        plan.Flasks.Count.ShouldBe(2);
        plan.Mixes.Select(m => m.Flasks.Count).ShouldBe([1, 1]);
    }

    [Fact]
    public void Plan_ChartOfTheShop_AddsUp()
    {
        var shop = Shop(size: Wrenmoor.Small with { Owned = 5, Powder = Mass.FromGrams(600), Water = Wrenmoor.Ml(231) });

        var mix = Plan(shop, 2).Mixes.ShouldHaveSingleItem();

        mix.Powder.Grams.ShouldBe(1200, 1e-9);
        mix.Water.Milliliters.ShouldBe(462, 1e-9);
    }

    [Fact]
    public void Plan_FlaskAlreadyInvested_IsInNoMix()
    {
        var night = Wrenmoor.Night(Shop(), OneAFlask(2) with { LastFlasks = [new FlaskShare("A", 1)] });

        var plan = NightPlanner.Plan(night with { Trees = [new TreeInHand("A", Wrenmoor.Small.Name, null, null, null, FlaskState.Invested)] });

        plan.Flasks.Count.ShouldBe(2);
        plan.Mixes.ShouldHaveSingleItem().Flasks.ShouldBe(["B"]);
    }

    [Fact]
    public void Plan_NoBowl_NotesIt()
    {
        var plan = Plan(Shop(Wrenmoor.Answered with { MixingBowl = null }), 2);

        plan.Mixes.ShouldBeEmpty();
        plan.The("mixing-bowl-not-known").Text().ShouldBe(
            "Nothing says what the mixing bowl holds, so powder and water are given flask by flask and not put together to mixes. "
            + "Type its volume to the brim in ml as \"Mixing bowl\" on the Shop sheet.");
        plan.The("mixing-bowl-not-known").Severity.ShouldBe(Severity.Note);
    }

    [Fact]
    public void Plan_WorkingTimeTooShort_StopsAndPlansNoMix()
    {
        var shop = Shop() with { Investments = [Wrenmoor.Shop.Investments[0] with { WorkingTime = Duration.FromMinutes(8) }] };

        var plan = Plan(shop, 2);

        plan.Mixes.ShouldBeEmpty();
        plan.The("working-time-too-short").Text().ShouldBe(
            "White powder loses its gloss after 8 min; mixing, filling one flask and both vacuums take 7.5 min and must be over 1.5 min before that. "
            + "A mould that is moved while it sets cracks, so no mix is planned. "
            + "Shorten a step on the Shop sheet, or correct \"Working time\" on the Investments sheet.");
    }

    [Fact]
    public void Plan_NothingSaidOfTheSteps_NotesTheUsualOnes()
    {
        var shop = Shop(Wrenmoor.Answered with
        {
            BowlFill = null,
            MixingTakes = null,
            BowlVacuum = null,
            FlaskFilling = null,
            FlaskVacuum = null,
            GlossOffMargin = null,
        }) with
        { Investments = [Wrenmoor.Shop.Investments[0] with { WorkingTime = null }] };

        var notes = Plan(shop, 1).Findings.Where(f => f.Severity == Severity.Note).Select(f => f.Seen).ToList();

        notes.ShouldContain("Bowl fill is taken as 50 %.");
        notes.ShouldContain("Mixing takes is taken as 4 min.");
        notes.ShouldContain("Bowl vacuum is taken as 1.5 min.");
        notes.ShouldContain("Filling a flask takes is taken as 0.5 min.");
        notes.ShouldContain("Flask vacuum is taken as 1.5 min.");
        notes.ShouldContain("Margin before gloss-off is taken as 1.5 min.");
        notes.ShouldContain("White powder: 9.5 min from the first powder in the water to gloss-off.");
    }

    // Powder of the mixes, not of the flasks one by one: 1,105 g do for two flasks.
    [Theory]
    [InlineData(1105, false)]
    [InlineData(1104, true)]
    public void Plan_PowderInStock_IsComparedWithTheMixes(double stock, bool isShort)
    {
        var shop = Shop() with { Investments = [Wrenmoor.Shop.Investments[0] with { InStock = Mass.FromGrams(stock) }] };

        Plan(shop, 2).Ids().Contains("powder-short").ShouldBe(isShort);
    }
}
