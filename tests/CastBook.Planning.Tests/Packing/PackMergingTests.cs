using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackMergingTests
{
    private static readonly PackProblem Three = new(
        [
            new PackItem(2, 50, [new(30, 20, 8, 0)]), new PackItem(3, 60, [new(32, 18, 9, 0)]), new PackItem(1, 900, [new(90, 70, 5, 0)]),
        ],
        [new PackSize(200, 5000, 1000, 9)]);

    // The two that are alike become five of 30 × 18, tail 8, metal 50; the large one stays as it is.
    [Fact]
    public void Of_TwoKinds_JoinsWhatIsAlike()
    {
        var merged = PackMerging.Of(Three, 2).Merged.Items;

        merged.Select(i => (i.Quantity, i.Metal, i.Shapes[0])).ShouldBe(
            [(5, 50, new PackShape(30, 18, 8, 0)), (1, 900, new PackShape(90, 70, 5, 0))], ignoreOrder: true);
    }

    [Fact]
    public void Of_NoMoreKindsThanAllowed_ChangesNothing() =>
        PackMerging.Of(Three, 3).Merged.Items.Select(i => (i.Quantity, i.Metal)).ShouldBe([(2, 50), (3, 60), (1, 900)]);

    // Pieces of different settings must not become one kind, however alike.
    [Fact]
    public void Of_DifferentSettings_StayApart()
    {
        var problem = new PackProblem(
            [new PackItem(1, 50, [new(30, 20, 8, 0)]), new PackItem(1, 50, [new(30, 20, 8, 0)]) { Lowest = 1, Highest = 2 }],
            [new PackSize(200, 5000, 1000, 9)]);

        PackMerging.Of(problem, 1).Merged.Items.Length.ShouldBe(2);
    }

    // Two of the first kind and two of the second are four of the kind both became.
    [Fact]
    public void Of_ATree_CountsKindsTogether()
    {
        var merging = PackMerging.Of(Three, 2);
        var tree = merging.Of(new PackedFlask(0, [new PackCount(0, 2), new PackCount(1, 2), new PackCount(2, 1)], []));

        tree.Content.Select(c => (merging.Merged.Items[c.Item].Metal, c.Count)).ShouldBe([(50, 4), (900, 1)], ignoreOrder: true);
    }

    // What is said of fewer kinds must never be more than a real plan costs.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Of_AnyProblem_IsNeverHarder(int seed)
    {
        var problem = Problems.Invent(seed + 40, 30, 3);
        var plan = PackSolver.Solve(problem, 1, inBrief: true, CancellationToken.None).Plan;
        var merging = PackMerging.Of(problem, 6);
        int[] free = [.. problem.Sizes.Select(s => s.Free)];
        var least = new PackBound(merging.Merged).Find([.. problem.Sizes.Select(s => s.Cost)], free, free.Sum(), long.MaxValue, 20_000_000, CancellationToken.None);

        if (plan.Lost == 0)
        {
            least.ShouldBeInRange(1, plan.Cost);
        }
    }
}
