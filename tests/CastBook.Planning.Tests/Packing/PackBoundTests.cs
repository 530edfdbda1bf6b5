using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Bounds;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackBoundTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // What a plan does is possible: with just its flasks, and however little was looked, no bound may be over what they cost.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Find_FlasksOfAPlan_IsNeverOverTheirCost(int seed)
    {
        var problem = Problems.Invent(seed + 500, 12, 4);
        var plan = new PackGreedy(problem, new TreeFilling(problem)).Best();
        if (plan.Lost > 0)
        {
            return;
        }

        int[] counts = [.. problem.Sizes.Select((_, size) => plan.Flasks.Count(f => f.Size == size))];
        foreach (var work in new long[] { 1, 300_000, 3_000_000, 30_000_000 })
        {
            var bound = new PackBound(problem);

            bound.Find([.. problem.Sizes.Select(s => s.Cost)], counts, plan.Flasks.Count, plan.Cost, work, CancellationToken.None).ShouldBeLessThanOrEqualTo(plan.Cost);
            bound.IsRefuted(counts).ShouldBeFalse();
        }
    }

    // Less is looked for where less is asked, and what is learnt is possible still.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Find_LessThanAPlanCosts_DoesNotRefuteIt(int seed)
    {
        var problem = Problems.Invent(seed + 300, 12, 4);
        var plan = new PackGreedy(problem, new TreeFilling(problem)).Best();
        if (plan.Lost > 0)
        {
            return;
        }

        int[] counts = [.. problem.Sizes.Select((_, size) => plan.Flasks.Count(f => f.Size == size))];
        int[] free = [.. problem.Sizes.Select(s => s.Free)];
        var bound = new PackBound(problem);
        foreach (var enough in new[] { plan.Cost / 3, plan.Cost / 2, plan.Cost - 1 })
        {
            bound.Find([.. problem.Sizes.Select(s => s.Cost)], free, free.Sum(), enough, 3_000_000, CancellationToken.None).ShouldBeLessThanOrEqualTo(plan.Cost);
            bound.IsRefuted(counts).ShouldBeFalse();
            bound.Find([.. free.Select(_ => 1_000L)], free, free.Sum(), enough % 1_000 * 10, 3_000_000, CancellationToken.None).ShouldBeLessThanOrEqualTo(1_000 * plan.Flasks.Count);
            bound.IsRefuted(counts).ShouldBeFalse();
        }
    }

    // Of so many pieces trees are found together, and the proof ends where whole flasks are all there is.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Find_FlasksOfAPlanOfManyPieces_IsNeverOverTheirCost(int seed)
    {
        var invented = Problems.Invent(seed + 700, 5, 4);
        var problem = new PackProblem(
            [.. invented.Items.Select(i => i with { Pin = -1, Quantity = i.Quantity + (int)PackWork.Many })], [.. invented.Sizes.Select(s => s with { Free = 900 })]);
        problem.IsOfMany.ShouldBeTrue();
        var plan = new PackGreedy(problem, new TreeFilling(problem)).Best();
        plan.Lost.ShouldBe(0m);

        int[] counts = [.. problem.Sizes.Select((_, size) => plan.Flasks.Count(f => f.Size == size))];
        foreach (var work in new long[] { 300_000, 30_000_000 })
        {
            var bound = new PackBound(problem);

            bound.Find([.. counts.Select(_ => 1_000L)], counts, plan.Flasks.Count, long.MaxValue, work, CancellationToken.None).ShouldBeLessThanOrEqualTo(1_000 * plan.Flasks.Count);
            bound.Find([.. problem.Sizes.Select(s => s.Cost)], counts, plan.Flasks.Count, plan.Cost, work, CancellationToken.None).ShouldBeLessThanOrEqualTo(plan.Cost);
            bound.IsRefuted(counts).ShouldBeFalse();
        }
    }

    // Of so many kinds only the space they take is asked.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void AskBySpace_FlasksOfAPlan_AreNotRefuted(int seed)
    {
        var problem = Problems.Invent(seed + 900, 12, 4);
        var plan = new PackGreedy(problem, new TreeFilling(problem)).Best();
        if (plan.Lost > 0)
        {
            return;
        }

        int[] counts = [.. problem.Sizes.Select((_, size) => plan.Flasks.Count(f => f.Size == size))];
        var bound = new PackBound(problem);
        bound.AskBySpace();

        bound.IsRefuted(counts).ShouldBeFalse();
        bound.Find([.. problem.Sizes.Select(s => s.Cost)], counts, plan.Flasks.Count, plan.Cost, 0, CancellationToken.None).ShouldBeLessThanOrEqualTo(plan.Cost);
    }

    // 40 pieces of a quarter turn and 40 of 100 mm with tails of 20 mm: by space alone ten hang on a tree, in sectors eight.
    [Fact]
    public void AskBySpace_PiecesWithTails_SaysMoreThanTheirSpace()
    {
        var problem = new PackProblem([new PackItem(40, 1, [new(36, 40, 20, 0)])], [new PackSize(100, PackProblem.AnyMetal, 1000, 9)]);
        var bound = new PackBound(problem);
        bound.AskBySpace();

        PackFloor.Flasks(problem).ShouldBe(4);
        bound.Find([1000], [9], 9, long.MaxValue, 0, CancellationToken.None).ShouldBe(5000);
    }

    // Trees worth 6 and 4 that cost 3 and 1, at most so many of each and of both: 10 is a large and a small one, or two and a half small ones.
    [Theory]
    [InlineData(10, 1, 1, 2, 4)]
    [InlineData(10, 9, 9, 9, 3)]
    [InlineData(9, 9, 2, 9, 3)]
    [InlineData(12, 1, 1, 2, long.MaxValue)]
    [InlineData(14, 9, 9, 3, 5)]
    public void Least_OfACut_IsTheCheapestInParts(int total, int large, int small, int most, long cost) =>
        new PackCut(total, [6, 4]).Least([3, 1], [large, small], most).ShouldBe(cost);
}
