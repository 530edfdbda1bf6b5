using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests.Flasks;

public sealed class SizeBookTests
{
    [Fact]
    public void Of_MissingMeasures_StopsAtEachAndUsesTheOtherSizes()
    {
        var plan = Plan(Wrenmoor.Small with { SprueDiameter = null, BaseHeight = null }, Wrenmoor.Middle);

        plan.Findings.Where(f => f.Id == "flask-size-incomplete").Select(f => f.Subjects[0].Field)
            .ShouldBe([ShopField.SprueDiameter, ShopField.BaseHeight]);
        plan.Findings.First(f => f.Id == "flask-size-incomplete").Text().ShouldBe(
            "Flask size \"75 × 100\" has no sprue diameter. It is not used until that is known. Type it on the Flasks sheet, in a column with the heading \"Sprue diameter\".");
        plan.Flasks[0].Size.Name.ShouldBe("90 × 125");
    }

    [Fact]
    public void Of_OwnedUnknownBesideOthers_IsAskedForAndNotUsed()
    {
        var plan = Plan(Wrenmoor.Small with { Owned = null }, Wrenmoor.Middle);

        plan.The("flask-size-incomplete").Seen.ShouldBe("Flask size \"75 × 100\" has no number owned.");
        plan.Flasks[0].Size.Name.ShouldBe("90 × 125");
    }

    [Fact]
    public void Of_NothingOwned_IsOneQuestion() =>
        Plan(Wrenmoor.Small with { Owned = null }, Wrenmoor.Middle with { Owned = 0, Height = null }).Stops().ShouldBe(["flasks-not-known"]);

    [Fact]
    public void Of_SizeOwnedNoneTimes_IsLeftAlone() =>
        Plan(Wrenmoor.Small, Wrenmoor.Middle with { Owned = 0, Height = null }).StopsAndChecks().ShouldBeEmpty();

    [Fact]
    public void Of_AboveTreeUnderTwelve_StopsAndIsNotUsed()
    {
        var plan = Plan(Wrenmoor.Small with { AboveTree = Wrenmoor.Mm(11) }, Wrenmoor.Middle);

        plan.The("above-tree-too-small").Text().ShouldBe(
            "Flask size \"75 × 100\" keeps only 11 mm above the tree. Under 12 mm (0.47 in) the mould can blow out; the size is not used. "
            + "Type at least 12 mm (0.47 in) under \"Above tree\", or leave it blank for the usual rule.");
        plan.Flasks[0].Size.Name.ShouldBe("90 × 125");
    }

    [Fact]
    public void Of_AboveTreeUnderTheVacuumRule_IsCheckedAndUsed()
    {
        var plan = Plan(Wrenmoor.Small with { AboveTree = Wrenmoor.Mm(15) });

        plan.The("above-tree-under-rule").Seen.ShouldBe("Flask size \"75 × 100\" keeps 15 mm above the tree; the usual rule under vacuum is 18.8 mm.");
        plan.Flasks[0].Size.Name.ShouldBe("75 × 100");
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(6, false)]
    public void Of_LittleToTheWall_IsChecked(double toWall, bool said) =>
        Plan(Wrenmoor.Small with { ToWall = Wrenmoor.Mm(toWall) }).Ids().Contains("to-wall-too-small").ShouldBe(said);

    [Fact]
    public void Of_LittleToTheWall_SaysHowLittleCastersKeep() =>
        Plan(Wrenmoor.Small with { ToWall = Wrenmoor.Mm(4) }).The("to-wall-too-small").Seen.ShouldBe(
            "Flask size \"75 × 100\" keeps only 4 mm between pieces and wall; under 6 mm is less than casters keep.");

    [Fact]
    public void Of_AboveTreeWhenSpun_NeedsTwelveOnly() =>
        Plan(Wrenmoor.Small with { AboveTree = Wrenmoor.Mm(12), Method = CastingMethod.Spin }).StopsAndChecks().ShouldBeEmpty();

    // What presses less needs no more than the vacuum rule; what else gravity asks of a mould is not known and said once.
    [Fact]
    public void Of_PouredByGravity_KeepsWhatVacuumKeepsAndSaysWhatIsNotJudged()
    {
        var plan = Plan(Wrenmoor.Small with { Method = CastingMethod.Gravity }, Wrenmoor.Middle with { Method = CastingMethod.Gravity });

        plan.StopsAndChecks().ShouldBe(["poured-by-gravity"]);
        plan.Flasks[0].Method.ShouldBe(CastingMethod.Gravity);
        SizeBook.Of(Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Method = CastingMethod.Gravity }] }, ask: true, new()).Sizes[0].RodMm
            .ShouldBe(SizeBook.Of(Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Method = CastingMethod.VacuumSolid }] }, ask: true, new()).Sizes[0].RodMm);
    }

    [Fact]
    public void Of_AboveTreeWhenPouredByGravity_IsTheShopsOwnFromTwelveOn()
    {
        Plan(Wrenmoor.Small with { AboveTree = Wrenmoor.Mm(12), Method = CastingMethod.Gravity }).StopsAndChecks().ShouldBe(["poured-by-gravity"]);
        Plan(Wrenmoor.Small with { AboveTree = Wrenmoor.Mm(11), Method = CastingMethod.Gravity }).Ids().ShouldContain("above-tree-too-small");
    }

    [Fact]
    public void Of_NoMethodAnywhere_IsOneQuestion()
    {
        var shop = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { CastingMethod = null } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring()));

        plan.Stops().ShouldBe(["casting-method-unknown"]);
        plan.Flasks.ShouldBeEmpty();
    }

    [Fact]
    public void Of_FlaskLowerThanBaseAndClearance_SaysWhatIsLeft() =>
        Plan(Wrenmoor.Size("low", 75, 36, 1)).The("flask-size-too-small").Seen.ShouldBe(
            "Flask size \"low\" leaves no room for a tree: 36 mm of height less 18 mm of base and 18.8 mm above the tree.");

    [Fact]
    public void Of_CupUnknown_IsCheckedWhereTheFlaskIsUsed()
    {
        var plan = Plan(Wrenmoor.Small with { Cup = null }, Wrenmoor.Middle with { Cup = null });

        plan.The("cup-missing").Subjects.ShouldBe([new Subject(SubjectKind.FlaskSize, "75 × 100", ShopField.Cup)]);
    }

    // The least button is 1.5 ml; four fifths of 1.8 ml are 1.44.
    [Fact]
    public void Of_CupTooSmallForAnyButton_StopsAtTheCup()
    {
        var plan = Plan(Wrenmoor.Small with { Cup = Wrenmoor.Ml(1.8) });

        plan.Stops().ShouldBe(["cup-too-small"]);
        plan.The("cup-too-small").Seen.ShouldBe("The cup of flask size \"75 × 100\" holds 1.8 ml, too little for the button of 1.5 ml.");
        plan.Flasks.ShouldBeEmpty();
    }

    // Four fifths of 2 ml take a button of 1.6 ml, a fifth of 8 ml: 3.18 of trunk leave 4.8, two signets and not three.
    [Fact]
    public void Of_CupThatTakesTwo_SplitsThree() =>
        Plan(Wrenmoor.Small with { Cup = Wrenmoor.Ml(2) }, 3).Flasks.Select(f => f.Count(0)).ShouldBe([2, 1]);

    private static NightPlan Plan(params FlaskSize[] sizes) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { FlaskSizes = sizes }, Wrenmoor.Ring()));

    private static NightPlan Plan(FlaskSize size, int rings) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { FlaskSizes = [size] }, Wrenmoor.Ring(rings)));
}
