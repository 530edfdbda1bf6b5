using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

public sealed class CastingLessonsTests
{
    // By hand: a signet of 1.9 g of wax at 0.95 is 2 ml, × 10.4 = 20.8 g; three castings weighed 20.2, 20.0 and 20.4 g are 60.6 of 62.4, or 0.97115;
    // four more of 20.8 g are then 20.2 g each.
    [Fact]
    public void Of_ThreeCastingsWeighed_CorrectTheOthers()
    {
        var plan = NightPlanner.Plan(Night(true, 20.2, 20.0, 20.4));

        plan.Pieces[3].MetalEach!.Value.Grams.ShouldBe(20.2, 1e-9);
        plan.Pieces[1].MetalEach!.Value.Grams.ShouldBe(20.0, 1e-9);
        var finding = plan.The("castings-taught");
        finding.Subjects.ShouldBe([Subject.Setting(SettingName.LearnFromCastings)]);
        finding.Text().ShouldBe(
            "Metal of Bench silver from Injection wax is taken as 97.1 % of what weight and density come to, as the castings weighed in 3 lines say. "
            + "To leave it as reckoned, type no as \"Learn from castings\" on the Shop sheet.");
    }

    // Four signets of 0.6 g less each.
    [Fact]
    public void Of_CastingsWeighed_TheFlaskFollows()
    {
        var (taught, plain) = (NightPlanner.Plan(Night(true, 20.2, 20.2, 20.2)), NightPlanner.Plan(Night(false, 20.2, 20.2, 20.2)));

        taught.Flasks[0].PiecesMetal.Grams.ShouldBe(plain.Flasks[0].PiecesMetal.Grams - (4 * 0.6), 1e-9);
    }

    // The patterns of a built tree weigh what they weigh, and give that much more metal: 8 g of wax at 0.95 are 8.421 ml of trunk or gates;
    // 7.6 g of signets are 8 ml as reckoned, 8 × 1.05 as learnt.
    [Fact]
    public void Of_CastingsWeighed_TheWeighedTreeFollows()
    {
        var night = Night(true, 21.84, 21.84, 21.84);
        var pieces = night.Pieces.Select(p => p with { Done = p.MetalEach is not null, LastFlasks = p.MetalEach is null ? [new FlaskShare("A", 4)] : [] });
        var tree = new TreeInHand("A", "75 × 100", Mass.FromGrams(100), Mass.FromGrams(115.6), Mass.FromGrams(8), FlaskState.Waxed);

        var flask = NightPlanner.Plan(night with { Pieces = [.. pieces], Trees = [tree] }).Flasks.Single();

        flask.Weighed.ShouldBeTrue();
        flask.Tree.Milliliters.ShouldBe((8 / 0.95) + (8 * 1.05), 1e-9);
    }

    [Fact]
    public void Of_CastingsWeighed_AreInTheAccount()
    {
        var account = NightAccounts.Of(Night(true, 20.2, 20.0, 20.4)).Of(Subject.Piece(3), AnswerField.MetalEach)!;

        account.Words.ShouldBe("pattern weight ÷ pattern density × alloy density × learnt from castings");
        account.Numbers.ShouldBe("1.9 g ÷ 0.95 g/cm³ × 10.4 g/cm³ × 0.9712");
        account.Result!.Value.ShouldBe(20.2, 1e-9);
        account.Inputs[^1].ShouldBe(new AccountInput("learnt from castings", "0.9712", null, "3 lines in which Metal each was typed"));
    }

    [Fact]
    public void Of_ShopThatDoesNotAsk_LearnsNothing()
    {
        var plan = NightPlanner.Plan(Night(false, 20.2, 20.0, 20.4));

        plan.Pieces[3].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.Ids().ShouldNotContain("castings-taught");
    }

    // Castings of nights before teach too.
    [Fact]
    public void Of_CastingsOfRowsThatAreDone_TeachTonight()
    {
        var night = Night(true, 20.2, 20.0, 20.4);

        var plan = NightPlanner.Plan(night with { Pieces = [.. night.Pieces.Select(p => p with { Done = p.MetalEach is not null })] });

        plan.Pieces[3].MetalEach!.Value.Grams.ShouldBe(20.2, 1e-9);
        plan.Stops().ShouldBeEmpty();
    }

    // Of another alloy, another material or an earlier casting's weight nothing was learnt.
    [Fact]
    public void Of_OtherAlloyMaterialOrMeaning_StaysAsReckoned()
    {
        var night = Night(true, 20.2, 20.0, 20.4);
        var ring = Wrenmoor.Ring();

        var plan = NightPlanner.Plan(night with
        {
            Pieces =
            [
                .. night.Pieces.Take(3),
                ring with { Id = 3, Alloy = "Bell bronze" },
                ring with { Id = 4, Material = "Castable resin" },
                ring with { Id = 5, WeightIsOf = WeightMeaning.FinishedMetal },
            ],
        });

        plan.Pieces[3].MetalEach!.Value.Grams.ShouldBe(17.6, 1e-9);
        plan.Pieces[4].MetalEach!.Value.Grams.ShouldBe(1.9 / 1.15 * 10.4, 1e-9);
        plan.Pieces[5].MetalEach!.Value.Grams.ShouldBe(1.9, 1e-9);
    }

    [Fact]
    public void Of_TwoCastings_AreTooFew()
    {
        var plan = NightPlanner.Plan(Night(true, 20.2, 20.0));

        plan.Pieces[2].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.The("castings-too-few").Text().ShouldBe(
            "Nothing is learnt yet about Bench silver from Injection wax: castings were weighed in 2 lines, and three are wanted. "
            + "Type what one casting weighs, gates off, over Metal each in more lines.");
    }

    // By hand: 18.4 of 20.8 is 88.5 %, more than 10 % off; and 22.4 beside 20.2 is 7 % from their mean.
    [Theory]
    [InlineData(18.4, 18.4, 18.4, "88.5 %", "88.5 %", "88.5 %")]
    [InlineData(20.2, 22.4, 20.2, "100.6 %", "97.1 %", "107.7 %")]
    public void Of_CastingsThatDisagree_TeachNothing(double first, double second, double third, string mean, string least, string most)
    {
        var plan = NightPlanner.Plan(Night(true, first, second, third));

        plan.Pieces[3].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.The("castings-disagree").Text().ShouldBe(
            $"The castings weighed of Bench silver from Injection wax come to {mean} of what was reckoned, the least to {least} and the most to {most}. "
            + "More than 10 % off, or more than 5 % apart, is a slip in a weight or a wrong density. Nothing was learnt from them. "
            + "Correct what is typed over Metal each, the weights beside it or the material's density.");
    }

    [Fact]
    public void Of_NoCasting_IsSaid() =>
        NightPlanner.Plan(Night(true)).The("no-castings-weighed").Text().ShouldBe(
            "\"Learn from castings\" is yes, and no line has the weight of a casting beside that of its pattern. Type what one casting weighs, gates off, over Metal each.");

    private static Night Night(bool learn, params double[] weighed)
    {
        var pieces = weighed.Select((grams, i) => Wrenmoor.Ring() with { Id = i, MetalEach = Mass.FromGrams(grams) })
            .Append(Wrenmoor.Ring(4) with { Id = weighed.Length });
        return Wrenmoor.Night(Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { LearnFromCastings = learn } }, [.. pieces]);
    }
}
