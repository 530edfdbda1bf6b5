using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

public sealed class ContentHangingTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    // A trunk cut up without a gap, in sectors and these in pieces: what is left when one of them is cancelled still hangs.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void HangWhole_FullTreeThatLostAPiece_Hangs(int seed)
    {
        var random = new Random(seed);
        var pieces = CutUp(random).ToList();
        pieces.RemoveAt(random.Next(pieces.Count));
        var problem = new PackProblem(pieces, [new PackSize(100, PackProblem.AnyMetal, 1000, 1)]);

        var plan = PackPlan.Empty(problem);
        plan.Add(Hanging(problem).HangWhole(0, All(problem))!);

        PackCheck.Sound(plan);
        plan.Lost.ShouldBe(0m);
    }

    // A third piece of half a turn and the whole trunk stays behind.
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, 2)]
    public void Hang_MoreThanFits_LeavesTheRest(int pieces, int hung)
    {
        var problem = new PackProblem([new PackItem(pieces, 1, [new PackShape(72, 100, 0, 0)])], [new PackSize(100, PackProblem.AnyMetal, 1000, 1)]);

        Hanging(problem).Hang(0, -1, All(problem).Content)!.Content.ShouldBe([new PackCount(0, hung)]);
        (Hanging(problem).HangWhole(0, All(problem)) is null).ShouldBe(pieces > hung);
    }

    private static ContentHanging Hanging(PackProblem problem)
    {
        var filling = new TreeFilling(problem);
        return new ContentHanging(problem, new PackGreedy(problem, filling), filling, []);
    }

    private static PackedFlask All(PackProblem problem) => new(0, [.. problem.Items.Select((piece, i) => new PackCount(i, piece.Quantity))], []);

    private static IEnumerable<PackItem> CutUp(Random random)
    {
        for (var turn = PackShape.Turn; turn > 0;)
        {
            var width = turn < 32 ? turn : random.Next(16, 33);
            turn -= width;
            for (var (rod, less) = (100, 0); rod > 0; less = random.Next(6))
            {
                var pitch = rod < 30 ? rod : Math.Min(rod, random.Next(15, 41));
                rod -= pitch;
                yield return new PackItem(1, 1, [new PackShape(Math.Max(1, width - less), pitch, 0, 0)]);
            }
        }
    }
}
