using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Bounds;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

public sealed class TreePolishingTests
{
    // 60 mm of trunk, sectors of a third of a turn: a poor tree holds one of 40 mm in each; 20 mm beside each is free.
    [Fact]
    public void Better_OfAPoorTree_HangsWhatIsFree()
    {
        var problem = new PackProblem(
            [new PackItem(3, 1, [new(48, 40, 0, 0)]), new PackItem(3, 1, [new(48, 20, 0, 0)])], [new PackSize(60, PackProblem.AnyMetal, 1000, 9)]);
        var poor = PackedFlask.Of(problem, 0, [[new PackCount(0, 1)], [new PackCount(0, 1)], [new PackCount(0, 1)]]);

        var better = new TreePolishing(problem).Better(poor, [2, 1], 20)!.Value;

        better.Value.ShouldBe(9);
        better.Flask.Content.ShouldBe([new PackCount(0, 3), new PackCount(1, 3)]);
        new TreePolishing(problem).Better(better.Flask, [2, 1], 20).ShouldBeNull();
    }

    // Whatever is tried: it is worth what is said, more than before, and fits.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Better_OfAnyTree_FitsAndIsWorthMore(int seed)
    {
        var random = new Random(seed);
        var invented = Problems.Invent(seed + 1300, 12, 4);
        var problem = new PackProblem([.. invented.Items.Where(i => i.Shapes.All(s => !s.Fits || s.HasSector)).Select(i => i with { Pin = -1 })], invented.Sizes);
        var plan = new PackGreedy(problem, new TreeFilling(problem)).Best();
        foreach (var tree in plan.Flasks)
        {
            long[] values = [.. problem.Items.Select(_ => (long)random.Next(1, 1000))];
            if (new TreePolishing(problem).Better(tree, values, 30) is not { } better)
            {
                continue;
            }

            better.Value.ShouldBe(better.Flask.Content.Sum(c => c.Count * values[c.Item]));
            better.Value.ShouldBeGreaterThan(tree.Content.Sum(c => c.Count * values[c.Item]));
            var alone = PackPlan.Empty(problem);
            alone.Add(better.Flask);
            PackCheck.Sound(alone);
        }
    }
}
