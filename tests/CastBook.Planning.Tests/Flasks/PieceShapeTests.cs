using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Flasks;

public sealed class PieceShapeTests
{
    // By hand, spun (12 mm above), 8 mm to the wall, 18 mm of base, gap 3, 50 degrees, trunk 8, a piece of 22 × 22 × 5 mm on a 4 mm gate:
    // it begins 4 + 4 × sin 50° − 1.6 = 5.46 mm out and takes 141 degrees, so two stand round; (5 + 3)/sin 50° = 10.44, up to 10.5 mm of
    // trunk each; tail 13.4, up to 13.5 mm. 95, 120 and 170 mm of trunk hold 7, 10 and 14 above each other.
    [Theory]
    [InlineData(90, 125, 14)]
    [InlineData(100, 150, 20)]
    [InlineData(100, 200, 28)]
    public void Of_FlatSquare_HangsTwoRound(double diameter, double height, int pieces)
    {
        var piece = Wrenmoor.Ring(500) with { Box = new PieceBox(false, Wrenmoor.Mm(22), Wrenmoor.Mm(22), Wrenmoor.Mm(5)) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Spun(diameter, height), piece));

        plan.Flasks[0].Count(0).ShouldBe(pieces);
    }

    // The same piece under vacuum in 75 × 100: a quarter of 75 mm stays free above, 63 mm of trunk hold 4.
    [Fact]
    public void Of_UnderVacuum_KeepsAQuarterOfTheDiameterFree()
    {
        var shop = Spun(75, 100) with { Settings = Wrenmoor.Answered with { GateLength = null } };
        var piece = Wrenmoor.Ring(500) with { Box = new PieceBox(false, Wrenmoor.Mm(22), Wrenmoor.Mm(22), Wrenmoor.Mm(5)) };

        NightPlanner.Plan(Wrenmoor.Night(shop, piece)).Flasks[0].Count(0).ShouldBe(8);
    }

    // A 22 mm ring standing in the plane of the trunk on a 7 mm gate, by hand: it begins 4 + 18 × sin 50° − 11 = 6.79 mm
    // from the axis, takes 64.4 degrees (5 round the trunk) and (22 + 3)/sin 50° = 32.6 mm of it; 120 mm hold 3, tail 6.3 mm.
    [Fact]
    public void Of_StandingRing_TakesItsDiameterOfTrunk()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Spun(100, 150), Wrenmoor.Ring(500)));

        plan.Flasks[0].Columns.Count.ShouldBe(5);
        plan.Flasks[0].Columns.ShouldAllBe(c => c.Pieces.Single().Quantity == 3);
    }

    // A 64 × 75 flask takes no 22 mm ring with 8 mm to the wall. By hand: the gate is at
    // least (11 + 1 − 11 × sin 50°)/sin 50° = 4.66 mm, so that the ring clears the trunk by 1 mm; then 5 + 22 = 27 mm out,
    // hypot(27, 2.5) = 27.1 mm, and 32 − 8 leaves 24.
    [Fact]
    public void Of_RingInTooNarrowFlask_SaysHowFarItReaches()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Spun(64, 75), Wrenmoor.Ring()));

        plan.The("piece-fits-no-flask").Text().ShouldBe(
            "\"Signet\" fits no flask: it reaches 27.1 mm out from the middle of the trunk, and the largest flask, \"one\", leaves 24 mm. "
            + "8 mm of investment must stay between piece and wall. Check its sizes: the length runs from the gate outwards. "
            + "Upright and alone it would fit \"one\": clear its sizes and type \"one: 1\" as \"Per tree\". Or add a larger flask to the Flasks sheet.");
        plan.Pieces[0].Status.ShouldBe(PieceStatus.NotPlanned);
    }

    // By hand, sector rule: body 12 mm from the axis and 5 mm wide, gap 3:
    // 2 × (atan(2.5/12) + asin(1.5/hypot(12, 2.5))) = 37.6 degrees, and 360/37.6 = 9.57, so 9 stand round the trunk.
    // A slab 5 wide and 1 thick upright on the trunk (90 degrees) begins at 4 + 8 = 12 mm.
    [Fact]
    public void Theta_BodyAtTwelveMillimetres_LetsNineStandRound()
    {
        var rules = new HangingRules(Wrenmoor.Answered with { GateAngle = Angle.FromDegrees(90) }, new FindingList());
        var size = SizeBook.Of(Spun(100, 60), ask: true, new FindingList()).Sizes[0];

        var shape = PieceShape.Of(new PieceBox(false, Wrenmoor.Mm(10), Wrenmoor.Mm(5), Wrenmoor.Mm(5)), [8], rules, size);

        shape.Theta.ShouldBe(16);
        (PieceShape.Turn / shape.Theta).ShouldBe(9);
        shape.Pitch.ShouldBe(16);
        shape.Tail.ShouldBe(0);
    }

    [Fact]
    public void Of_FlatSlab_IsRolledToTheWayThatTakesLess()
    {
        var rules = new HangingRules(Wrenmoor.Answered, new FindingList());
        var size = SizeBook.Of(Spun(100, 150), ask: true, new FindingList()).Sizes[0];

        var flat = PieceShape.Of(new PieceBox(false, Wrenmoor.Mm(20), Wrenmoor.Mm(16), Wrenmoor.Mm(3)), [7], rules, size);
        var rolled = PieceShape.Of(new PieceBox(false, Wrenmoor.Mm(20), Wrenmoor.Mm(3), Wrenmoor.Mm(16)), [7], rules, size);

        (rolled.Theta, rolled.Pitch, rolled.Tail).ShouldBe((flat.Theta, flat.Pitch, flat.Tail));
        (rolled with { Theta = 0 }).ShouldNotBe(flat with { Theta = 0 }, "one of them stands on its edge");
        flat.Fits.ShouldBeTrue();
    }

    [Fact]
    public void Of_ThicknessMissing_CountsAsWide()
    {
        var rules = new HangingRules(Wrenmoor.Answered, new FindingList());
        var size = SizeBook.Of(Spun(100, 150), ask: true, new FindingList()).Sizes[0];

        var unknown = PieceShape.Of(new PieceBox(false, Wrenmoor.Mm(20), Wrenmoor.Mm(8), null), [7], rules, size);

        unknown.ShouldBe(PieceShape.Of(new PieceBox(false, Wrenmoor.Mm(20), Wrenmoor.Mm(8), Wrenmoor.Mm(8)), [7], rules, size));
    }

    private static Shop Spun(double diameter, double height) => Wrenmoor.Shop with
    {
        FlaskSizes = [Wrenmoor.Size("one", diameter, height, 1) with { Cup = Wrenmoor.Ml(1000) }],
        Crucibles = [new Crucible { Name = "Large", Holds = Wrenmoor.Ml(5000) }],
        Settings = Wrenmoor.Answered with { CastingMethod = CastingMethod.Spin, GateLength = null },
    };
}
