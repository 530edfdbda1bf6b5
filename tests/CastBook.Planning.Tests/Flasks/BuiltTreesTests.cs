using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Tests.Flasks;

public sealed class BuiltTreesTests
{
    [Fact]
    public void Find_WaxedFlask_KeepsItsPiecesLetterAndSize()
    {
        var plan = Plan([Waxed("B", "100 × 150")], Wrenmoor.Ring(5) with { LastFlasks = [new("B", 3)] });

        plan.Flasks.Select(f => (f.Letter, f.Size.Name, f.State, f.Count(0))).ShouldBe(
            [("A", "75 × 100", FlaskState.Planned, 2), ("B", "100 × 150", FlaskState.Waxed, 3)]);
        plan.Pieces[0].Flasks.ShouldBe([new FlaskShare("A", 2), new FlaskShare("B", 3)]);
        plan.Pieces[0].Status.ShouldBe(PieceStatus.Planned);
        plan.Flasks[1].Columns.ShouldBeEmpty();
        plan.TreesWithoutNumbers.ShouldBeEmpty();
        plan.Bound.LeastFlasks.ShouldBe(2);
    }

    [Fact]
    public void Find_FlaskUnderWay_CountsAgainstTheOwned()
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Owned = 1 }] };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring(1) with { LastFlasks = [new("A", 1)] }, Wrenmoor.Ring(1));

        var plan = NightPlanner.Plan(night with { Trees = [Waxed("A", "75 × 100")] });

        plan.Stops().ShouldBe(["no-flask-left"]);
        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.Planned, PieceStatus.NotPlanned]);
    }

    [Fact]
    public void Find_PlannedLineWithoutWeighing_IsStillPlanned()
    {
        var plan = Plan([Waxed("Q", "100 × 150") with { State = FlaskState.Planned }], Wrenmoor.Ring() with { LastFlasks = [new("Q", 1)] });

        var flask = plan.Flasks.ShouldHaveSingleItem();
        (flask.Letter, flask.State).ShouldBe(("Q", FlaskState.Planned));
    }

    [Fact]
    public void Find_WeighedLine_CountsAsWaxedWithANote()
    {
        var line = new TreeInHand("A", "75 × 100", Mass.FromGrams(50), Mass.FromGrams(55), null, FlaskState.Planned);

        var plan = Plan([line], Wrenmoor.Ring() with { LastFlasks = [new("A", 1)] });

        plan.Flasks[0].State.ShouldBe(FlaskState.Waxed);
        plan.The("tree-weighed-counts-as-waxed").Text().ShouldBe(
            "The tree of flask A is weighed, so it counts as waxed and nothing in it is moved. Clear the weighing to plan it anew.");
    }

    [Fact]
    public void Find_MoreHangingThanAsked_CountsTheQuantityAndChecks()
    {
        var plan = Plan([Waxed("A", "100 × 150")], Wrenmoor.Ring(2) with { LastFlasks = [new("A", 3)] });

        plan.Flasks[0].Count(0).ShouldBe(2);
        plan.The("frozen-quantity-differs").Text().ShouldBe(
            "3 of \"Signet\" hang in trees that are built, but the quantity is 2. Only the quantity was counted. "
            + "Correct the quantity, or the Flask column if the tree was built otherwise.");
    }

    [Fact]
    public void Find_NoRowHasItsLetter_IsChecked()
    {
        var plan = Plan([Waxed("D", "75 × 100")], Wrenmoor.Ring());

        plan.The("flask-without-pieces").Seen.ShouldBe("Flask D is under way, but no row of tonight has it in the Flask column.");
        plan.Flasks.ShouldHaveSingleItem().Letter.ShouldBe("A");
    }

    [Fact]
    public void Find_PouredFlaskOfDoneRows_IsHistoryButKeepsItsLetter()
    {
        var plan = Plan([Waxed("A", "75 × 100") with { State = FlaskState.Poured }], Wrenmoor.Ring(), Wrenmoor.Ring() with { Done = true, LastFlasks = [new("A", 1)] });

        plan.StopsAndChecks().ShouldBeEmpty();
        plan.Flasks.ShouldHaveSingleItem().Letter.ShouldBe("B");
    }

    [Theory]
    [InlineData(null, "is not said")]
    [InlineData("bucket", "\"bucket\" is not on the Flasks sheet")]
    public void Find_SizeUnknown_ChecksAndInventsNothing(string? size, string said)
    {
        var plan = Plan([Waxed("A", size)], Wrenmoor.Ring() with { LastFlasks = [new("A", 1)] });

        plan.The("flask-size-unknown").Seen.ShouldBe($"Flask A is under way, but its size {said}.");
        plan.Flasks.ShouldBeEmpty();
        plan.TreesWithoutNumbers.ShouldHaveSingleItem().Flask.ShouldBe("A");
        plan.Pieces[0].Flasks.ShouldBe([new FlaskShare("A", 1)]);
    }

    [Fact]
    public void Find_TwoAlloysInOneTree_Stops()
    {
        var plan = Plan(
            [Waxed("A", "75 × 100")],
            Wrenmoor.Ring() with { LastFlasks = [new("A", 1)] },
            Wrenmoor.Ring() with { Alloy = "Bell bronze", LastFlasks = [new("A", 1)] });

        plan.The("alloys-mixed-in-flask").Seen.ShouldBe("Flask A is under way with pieces of Bench silver and Bell bronze.");
        plan.Flasks.ShouldBeEmpty();
    }

    [Fact]
    public void Find_PouredFlask_NeedsNoMoreMetalOrPowder()
    {
        var shop = Wrenmoor.Shop with { Alloys = [Wrenmoor.Silver with { Fresh = Mass.FromGrams(1) }] };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring() with { LastFlasks = [new("A", 1)] });

        var plan = NightPlanner.Plan(night with { Trees = [Waxed("A", "75 × 100") with { State = FlaskState.Poured }] });

        plan.Metal[0].Charges!.Value.Grams.ShouldBe(0, 1e-9);
        plan.Stops().ShouldBeEmpty();
    }

    [Fact]
    public void Find_BuiltTreeOverTheCrucible_Stops()
    {
        var shop = Wrenmoor.Shop with { Crucibles = [new Shops.Crucible { Name = "Graphite 1", Holds = Wrenmoor.Ml(10) }] };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring(5) with { LastFlasks = [new("A", 5)] });

        var plan = NightPlanner.Plan(night with { Trees = [Waxed("A", "100 × 150")] });

        var flask = plan.Flasks.ShouldHaveSingleItem();
        plan.The("charge-over-crucible").Subjects.ShouldBe([Subject.Flask("A")]);
        plan.The("charge-over-crucible").Seen.ShouldBe(
            FormattableString.Invariant($"Flask A needs a charge of {flask.Charge.Grams:0} g, which is {flask.Charge.Grams / 10.4:0.0} ml."));
        plan.The("charge-over-crucible").Why.ShouldBe("The largest crucible for Bench silver takes 8.0 ml of melt, filled to four fifths.");
    }

    // Of a tree that hangs already the button is what it is: four fifths of 2 ml are 1.6 ml.
    [Fact]
    public void Find_BuiltTreeWhoseButtonIsOverTheCup_Stops()
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Cup = Wrenmoor.Ml(2) }] };
        var night = Wrenmoor.Night(shop, Wrenmoor.Ring(5) with { LastFlasks = [new("A", 5)] });

        var plan = NightPlanner.Plan(night with { Trees = [Waxed("A", "75 × 100")] });

        var button = plan.Flasks.ShouldHaveSingleItem().Button.Grams / 10.4;
        button.ShouldBeGreaterThan(1.6);
        plan.The("button-over-cup").Seen.ShouldBe(
            FormattableString.Invariant($"The button of flask A is {button:0.0} ml, but its cup holds 2.0 ml and may be filled to four fifths."));
    }

    private static NightPlan Plan(TreeInHand[] trees, params Piece[] pieces) =>
        NightPlanner.Plan(Wrenmoor.Night(pieces) with { Trees = trees });

    private static TreeInHand Waxed(string letter, string? size) => new(letter, size, null, null, null, FlaskState.Waxed);
}
