using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Flasks;
using CastBook.Planning.Metals;
using CastBook.Planning.Patterns;

namespace CastBook.Planning.Tests.Flasks;

public sealed class TreeBuilderTests
{
    // Rod 100 mm: C (pitch 40, tail 0), B (20, 10), A (20, 40). A last would end at 80 + 40 = 120; A first ends at 20 + 40 = 60,
    // B at 40 + 10 = 50, C at 80.
    [Fact]
    public void Hang_LongTails_AreHungNearestTheButton()
    {
        var tree = Tree(rodMm: 100);
        TreePiece[] pieces = [Piece(0, 144, 40, 0), Piece(1, 144, 20, 10), Piece(2, 144, 20, 40)];

        foreach (var piece in pieces)
        {
            tree.Hang(piece, 1).ShouldBe(1);
        }

        tree.Sectors.ShouldHaveSingleItem().Pieces.Select(p => p.Piece.Id).ShouldBe([2, 1, 0]);
    }

    [Fact]
    public void Hang_TailWithoutRoom_IsRefused()
    {
        var tree = Tree(rodMm: 100);
        tree.Hang(Piece(0, 144, 40, 60), 1).ShouldBe(1);

        // It would have to hang above the first: 40 + 30 + 40 = 110.
        tree.Hang(Piece(1, 144, 30, 40), 1).ShouldBe(0);
        tree.Hang(Piece(2, 144, 30, 30), 1).ShouldBe(1);
    }

    // Six pieces of a third of a turn on 30 mm: columns 20 + 10, 20 + 10 and 15 + 15 are exactly full; in tiers of three
    // the best split needs 20 + 15 = 35 mm.
    [Fact]
    public void Hang_ColumnsThatFitExactly_BeatTiers()
    {
        var tree = Tree(rodMm: 30);
        double[] pitches = [20, 20, 15, 15, 10, 10];

        pitches.Select((pitch, i) => tree.Hang(Piece(i, 48, pitch, 0), 1)).ShouldAllBe(hung => hung == 1);

        tree.Sectors.Count.ShouldBe(3);
        tree.Sectors.ShouldAllBe(s => s.Free == 0);
    }

    [Fact]
    public void Hang_WiderPieceAboveNarrowOnes_WidensTheSectorWithinTheTurn()
    {
        var tree = Tree(rodMm: 30);
        tree.Hang(Piece(0, 100, 20, 0), 1).ShouldBe(1);
        tree.Hang(Piece(1, 40, 20, 0), 1).ShouldBe(1);

        // 4 units of the turn are left: the second sector can be 44 wide, not 45.
        tree.Hang(Piece(2, 105, 10, 0), 1).ShouldBe(0);
        tree.Hang(Piece(3, 104, 10, 0), 1).ShouldBe(1);
        tree.Sectors.Sum(s => s.Theta).ShouldBe(144);
    }

    [Fact]
    public void Hang_MetalForThree_HangsThree() => Tree(rodMm: 100, roomMl: 3.5).Hang(Piece(0, 10, 10, 0), 9).ShouldBe(3);

    [Fact]
    public void Hang_PerTreeAndSized_ShareTheTurn()
    {
        var tree = Tree(rodMm: 100);
        tree.Hang(PerTree(0, 10), 5).ShouldBe(5);

        // Half the tree is gone: 72 of 144 units, six sectors of 12 with ten pieces each.
        tree.Hang(Piece(1, 12, 10, 0), 200).ShouldBe(60);
        tree.Hang(PerTree(2, 10), 1).ShouldBe(0);
    }

    private static TreeBuilder Tree(double rodMm, double roomMl = 1000) => new(
        new UsableSize(Wrenmoor.Small, 0, Wrenmoor.Ml(440), Wrenmoor.Ml(3)) {
            Method = CastingMethod.VacuumPerforated, TrunkRadiusMm = 4, ReachMm = 30, RodMm = rodMm, WallMm = 8,
        },
        roomMl);

    private static TreePiece Piece(int id, int theta, double pitchMm, double tailMm) =>
        Hung(id, [new PieceShape(theta, (int)(pitchMm * 2), (int)(tailMm * 2), Fits: true)], 0);

    private static TreePiece PerTree(int id, int perTree) => Hung(id, null, perTree);

    private static TreePiece Hung(int id, PieceShape[]? shapes, int perTree) => new()
    {
        Metal = new PieceMetal(Wrenmoor.Ring() with { Id = id }, AlloyAnswer.Nothing, new KnownMaterial("", PatternKind.Wax, null, null, false)),
        Quantity = 1,
        MetalMl = 1,
        Coldest = SectionBand.Heavy,
        Hottest = SectionBand.Fine,
        Shapes = shapes,
        PerTree = [perTree],
    };
}
