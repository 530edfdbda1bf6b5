using CastBook.Casting.Investing;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Flasks;

public sealed class CrucibleBookTests
{
    // A rating of 1 kg usually means gold: 1000 / 19.3 = 52 ml, of which 41.5 may be melted; 432 g of bench silver.
    [Fact]
    public void Largest_RatingOfGold_IsAVolume()
    {
        var plan = Plan(new Crucible { Name = "Clay", Rated = Mass.FromKilograms(1), RatedFor = "gold" }, 40);

        plan.Stops().ShouldBeEmpty();
        plan.Flasks.ShouldAllBe(f => f.Charge.Grams <= 432);
        plan.Flasks.Count.ShouldBe(3);
    }

    [Fact]
    public void Largest_RatingWithoutMetal_IsAskedFor()
    {
        var plan = Plan(new Crucible { Name = "Clay", Rated = Mass.FromKilograms(1) }, 1);

        plan.Stops().ShouldBe(["crucible-rating-unclear"]);
        plan.The("crucible-rating-unclear").Text().ShouldBe(
            "Crucible \"Clay\" is rated 1,000 g, but the metal of the rating is not said. The same crucible takes half as much silver as gold, so it is not used. "
            + "Type the metal that the rating means under \"Rated for\", or its volume in ml.");
    }

    [Fact]
    public void Largest_NoCrucibleAtAll_IsOneQuestion()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Crucibles = [] }, Wrenmoor.Ring()));

        plan.Stops().ShouldBe(["crucible-unknown"]);
        plan.The("crucible-unknown").Subjects.ShouldBe([Subject.Setting(SettingName.CrucibleHolds), new(SubjectKind.Crucible, "")]);
        plan.Metal[0].Pieces!.Value.Grams.ShouldBe(20.8, 1e-9);
    }

    [Fact]
    public void Largest_SettingOnly_Serves()
    {
        var shop = Wrenmoor.Shop with { Crucibles = [], Settings = Wrenmoor.Answered with { CrucibleHolds = Wrenmoor.Ml(50) } };

        NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring())).Stops().ShouldBeEmpty();
    }

    [Fact]
    public void Largest_CrucibleOfAnotherAlloy_IsNotUsed()
    {
        var plan = Plan(new Crucible { Name = "Bronze pot", Holds = Wrenmoor.Ml(100), Alloys = ["bell bronze"] }, 1);

        plan.The("no-crucible-for-alloy").Subjects.ShouldBe(
            [new Subject(SubjectKind.Alloy, "Bench silver"), Subject.Piece(0, PieceField.Alloy)]);
        plan.Pieces[0].Status.ShouldBe(PieceStatus.NotPlanned);
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData("graphite", false)]
    [InlineData("clay-graphite", false)]
    [InlineData("Carbon", false)]
    [InlineData("Grafit", false)]
    [InlineData("grafite", false)]
    [InlineData("crisol de grafito", false)]
    [InlineData("Tongraphit", false)]
    [InlineData("plumbago", false)]
    [InlineData("plombagine", false)]
    [InlineData("Kohlenstoff", false)]
    [InlineData("silicon carbide", false)]
    [InlineData("Siliziumkarbid", false)]
    [InlineData("SiC", false)]
    [InlineData("?", false)]
    [InlineData("silica", true)]
    [InlineData("Keramik", true)]
    [InlineData("céramique", true)]
    [InlineData("sílice", true)]
    [InlineData("classic quartz", true)]
    public void Largest_Platinum_WantsAMakeThatIsNotGraphite(string? madeOf, bool isPlanned)
    {
        Composition.TryParse("Pt 950 Ru 50", out var parts, out _).ShouldBeTrue();
        var platinum = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { Name = "House 950", Composition = parts, Density = null } };
        var shop = Wrenmoor.Shop with
        {
            Alloys = [platinum],
            Crucibles = [new Crucible { Name = "Pot", Holds = Wrenmoor.Ml(100), MadeOf = madeOf }],
            Investments = [Wrenmoor.Shop.Investments[0] with { Kind = InvestmentKind.HighTemperature }],
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring() with { Alloy = "House 950" }));

        (plan.Flasks.Count == 1).ShouldBe(isPlanned);
        if (!isPlanned)
        {
            plan.The("crucible-of-graphite").Text().ShouldBe(
                "No crucible is known to be free of graphite, and House 950 must not be melted in graphite. "
                + "Platinum and palladium take up carbon and turn brittle; none of its pieces was put into a flask. "
                + "Type what the crucible is made of, such as silica or ceramic, under \"Made of\" on the Crucibles sheet.");
        }
    }

    private static NightPlan Plan(Crucible crucible, int rings) =>
        NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { Crucibles = [crucible], FlaskSizes = [Wrenmoor.Large with { Owned = 9, Cup = Wrenmoor.Ml(60) }] },
            Wrenmoor.Ring(rings)));
}
