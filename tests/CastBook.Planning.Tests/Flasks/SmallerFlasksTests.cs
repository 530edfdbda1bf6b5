using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Metals;
using CastBook.Planning.Patterns;

namespace CastBook.Planning.Tests.Flasks;

public sealed class SmallerFlasksTests
{
    // One piece of 2 ml hangs in the large flask (2). The small one (0) takes it; without a free small one, the middle one (1) does.
    [Theory]
    [InlineData(1, 1, 0)]
    [InlineData(0, 1, 1)]
    [InlineData(0, 0, 2)]
    public void For_TreeThatFitsSmaller_MovesToTheSmallestFree(int freeSmall, int freeMiddle, int size)
    {
        var findings = new FindingList();
        var alloys = new AlloyBook(Wrenmoor.Shop, findings);
        var sizes = SizeBook.Of(Wrenmoor.Shop, ask: true, findings).Sizes;
        var room = new FlaskRoom(
            new ChargeRules(Wrenmoor.Answered), new CrucibleBook(Wrenmoor.Shop, alloys, ask: true, findings));
        var answer = alloys.Resolve("Bench silver", 0);
        var piece = new TreePiece
        {
            Metal = new PieceMetal(Wrenmoor.Ring(), answer, new MaterialBook(Wrenmoor.Shop).Of(Wrenmoor.Ring())),
            Quantity = 1,
            MetalMl = 2,
            Coldest = SectionBand.Heavy,
            Hottest = SectionBand.Fine,
            Shapes = null,
            PerTree = [10, 10, 10],
        };
        var tree = new TreeBuilder(sizes[2], room.Ml(sizes[2], answer.Known!));
        tree.Hang(piece, 1).ShouldBe(1);
        int[] free = [freeSmall, freeMiddle, 0];

        var moved = SmallerFlasks.For(
            [new OpenFlask(answer.Known!, StonesIn: false, SectionBand.Ordinary) { Tree = tree }], sizes, room, free);

        moved.ShouldHaveSingleItem().Tree.Size.Index.ShouldBe(size);
        free.Sum().ShouldBe(freeSmall + freeMiddle);
        free[2].ShouldBe(size == 2 ? 0 : 1);
    }
}
