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
        var gold = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { Name = name, Composition = parts } };

        var plan = Plan(gold, Wrenmoor.Ring() with { Alloy = name });

        plan.Flasks.ShouldNotBeEmpty();
        plan.The(id).Text().ShouldBe(text);
    }

    private static NightPlan Plan(ShopAlloy alloy, Piece piece) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [alloy] }, piece));
}
