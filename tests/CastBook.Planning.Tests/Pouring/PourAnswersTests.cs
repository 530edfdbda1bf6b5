using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests.Pouring;

public sealed class PourAnswersTests
{
    [Fact]
    public void Metal_TemperaturesMissing_AreAskedForOnceAnAlloy()
    {
        var bare = Wrenmoor.Silver with
        {
            Alloy = Wrenmoor.Silver.Alloy with { MetalTemperature = null, FlaskTemperatureOrdinary = null, QuenchAfter = QuenchWaits.None },
        };

        var plan = Plan(bare, Wrenmoor.Ring(60));

        plan.Flasks.Select(f => f.Size.Name).Distinct().Count().ShouldBeGreaterThan(1);
        plan.StopsAndChecks().ShouldBe(["metal-temperature-missing", "flask-temperature-missing", "quench-missing"]);
        plan.The("metal-temperature-missing").Text().ShouldBe(
            "No metal temperature is known for Bench silver. A wrong one ruins the pour, so none is guessed. "
            + "Type the temperature of the alloy's data sheet under \"Metal temp\" on the Alloys sheet.");
        plan.The("flask-temperature-missing").Text().ShouldBe(
            "No flask temperature for ordinary work is known for Bench silver. It decides whether the mould fills, so none is guessed. "
            + "Type it under \"Flask temp ordinary\" on the Alloys sheet.");
        plan.The("flask-temperature-missing").Subjects.ShouldBe(
            [new Subject(SubjectKind.Alloy, "Bench silver", ShopField.FlaskTemperatureOrdinary)]);
        plan.Flasks[0].MetalTemperature.ShouldBeNull();
        plan.Flasks[0].QuenchAfter.ShouldBeNull();
    }

    [Fact]
    public void Metal_AlloyOnlyOnTheSheet_IsNotAskedAbout() =>
        NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { Alloys = [Wrenmoor.Silver, new ShopAlloy { Alloy = new Alloy { Name = "Spare" } }] }, Wrenmoor.Ring()))
            .StopsAndChecks().ShouldBeEmpty();

    [Fact]
    public void Metal_HotterThanGypsumLikes_IsChecked()
    {
        var hot = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { MetalTemperature = Wrenmoor.Celsius(1180) } };

        Plan(hot, Wrenmoor.Ring()).The("metal-hot-for-gypsum").Seen.ShouldBe("Bench silver is poured at 1,180 °C into gypsum-bonded investment.");
    }

    [Theory]
    [InlineData("75 × 100", 15)]
    [InlineData("100 × 150", 20)]
    [InlineData("60 × 60", 8)]
    public void Quench_ByFlaskClass_IsTheAlloysOwn(string size, double minutes)
    {
        var shop = Wrenmoor.Shop with
        {
            FlaskSizes = [.. new[] { Wrenmoor.Small, Wrenmoor.Large, Wrenmoor.Size("60 × 60", 60, 60, 1) }.Where(s => s.Name == size)],
        };

        NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Stud())).Flasks[0].QuenchAfter!.Value.Minutes.ShouldBe(minutes, 1e-9);
    }

    [Theory]
    [InlineData("Rose 14k", "Au 585 Cu 325 Ag 90", "red-gold-not-slow", "Rose 14k is a red gold: it orders and turns brittle when it cools slowly. "
        + "Quench it as soon as its wait is over and the button shows no red in shade; do not leave the flask to cool.")]
    [InlineData("White 14k", "Au 585 Cu 220 Ni 120 Zn 75", "nickel-gold-not-hurried", "White 14k is a white gold with nickel: quenched too hot it cracks. "
        + "Wait its full time before the quench, and longer where you are not sure.")]
    public void Quench_GoldsOfTheirOwnWay_AreNoted(string name, string composition, string id, string text)
    {
        Composition.TryParse(composition, out var parts, out _).ShouldBeTrue();
        var gold = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { Name = name, Composition = parts, Density = null } };

        var plan = Plan(gold, Wrenmoor.Ring() with { Alloy = name });

        plan.Flasks.ShouldNotBeEmpty();
        plan.The(id).Text().ShouldBe(text);
    }

    // Sterling by a published table: solid up to 802 °C, liquid from 893 °C. 1,780 is 971 °C written in °F.
    [Theory]
    [InlineData(101, "Bench silver cannot be poured at 101 °C: it is not all liquid up to 893 °C.")]
    [InlineData(893, "Bench silver cannot be poured at 893 °C: it is not all liquid up to 893 °C.")]
    [InlineData(1780, "Bench silver cannot be poured at 1,780 °C: its liquidus is 893 °C, and 1,193 °C is more than anybody needs.")]
    public void Metal_WhereItCannotBePoured_IsAStopAndNotUsed(double degrees, string seen)
    {
        var plan = Plan(Melting(Wrenmoor.Silver.Alloy with { MetalTemperature = Wrenmoor.Celsius(degrees) }), Wrenmoor.Ring());

        plan.The("metal-temperature-impossible").Seen.ShouldBe(seen);
        plan.The("metal-temperature-impossible").Severity.ShouldBe(Severity.Stop);
        plan.Flasks[0].MetalTemperature.ShouldBeNull();
    }

    [Theory]
    [InlineData(499, true)]
    [InlineData(501, false)]
    [InlineData(2101, true)]
    public void Metal_WithoutLiquidus_IsHeldToWhatMetalIsPouredAt(double degrees, bool stops)
    {
        var plan = Plan(new ShopAlloy { Alloy = Wrenmoor.Silver.Alloy with { MetalTemperature = Wrenmoor.Celsius(degrees) } }, Wrenmoor.Ring());

        plan.Ids().Contains("metal-temperature-impossible").ShouldBe(stops);
        (plan.Flasks[0].MetalTemperature is null).ShouldBe(stops);
    }

    [Theory]
    [InlineData(1000, "A flask of Bench silver cannot stand at 1,000 °C for the pour: the investment bears no more than 788 °C.")]
    [InlineData(788, "A flask of Bench silver cannot stand at 788 °C for the pour: the investment bears no more than 788 °C.")]
    public void Flask_HotterThanTheInvestmentBears_IsAStopAndNotUsed(double degrees, string seen)
    {
        var plan = Plan(Melting(Wrenmoor.Silver.Alloy with { FlaskTemperatureOrdinary = Wrenmoor.Celsius(degrees) }), Wrenmoor.Ring());

        plan.The("flask-temperature-impossible").Seen.ShouldBe(seen);
        plan.The("flask-temperature-impossible").Remedy.ShouldStartWith("Correct \"Flask temp ordinary\" on the Alloys sheet");
        plan.Flasks[0].FlaskTemperature.ShouldBeNull();
    }

    [Fact]
    public void Flask_WhereTheMetalWouldNotFreeze_IsAStop()
    {
        var solder = Wrenmoor.Silver.Alloy with
        {
            Solidus = Wrenmoor.Celsius(640),
            Liquidus = Wrenmoor.Celsius(700),
            MetalTemperature = Wrenmoor.Celsius(760),
            FlaskTemperatureOrdinary = Wrenmoor.Celsius(650),
        };

        Plan(new ShopAlloy { Alloy = solder }, Wrenmoor.Ring()).The("flask-temperature-impossible").Seen.ShouldBe(
            "A flask of Bench silver cannot stand at 650 °C for the pour: the metal is not solid above 640 °C.");
    }

    private static ShopAlloy Melting(Alloy alloy) => new() { Alloy = alloy with { Solidus = Wrenmoor.Celsius(802), Liquidus = Wrenmoor.Celsius(893) } };

    private static NightPlan Plan(ShopAlloy alloy, Piece piece) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [alloy] }, piece));
}
