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
        plan.The("crucible-unknown").Subjects.ShouldBe([Subject.Setting(SettingName.CrucibleHolds)]);
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

    private static NightPlan Plan(Crucible crucible, int rings) =>
        NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { Crucibles = [crucible], FlaskSizes = [Wrenmoor.Large with { Owned = 9, Cup = Wrenmoor.Ml(60) }] },
            Wrenmoor.Ring(rings)));
}
