using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class FitMemoryTests
{
    private static readonly PackProblem Problem = Problems.Shapes(100, new(60, 40, 0, 0), new(50, 30, 0, 0));
    private static readonly FitTree Full = new(0, 54, 100, null);
    private static readonly FitTree Empty = new(0, 94, 100, null);

    // A sector of 60 on the second tree has room there; on the second of the same trees in another order, of which 54 are free, it has not.
    [Fact]
    public void PointOf_TreesInAnotherOrder_IsNotTheSamePoint()
    {
        var memory = new FitMemory(Problem);
        var point = new FitPoint([new FitWay(1, 60, [new PackCount(0, 1)], 0)], true, []);

        memory.Keep(memory.StateOf([1, 1], [Full, Empty]), point);

        memory.PointOf(memory.StateOf([1, 1], [Full, Empty])).ShouldBeSameAs(point);
        memory.PointOf(memory.StateOf([1, 1], [Empty, Full])).ShouldBeNull();
        memory.PointOf(memory.StateOf([1, 0], [Full, Empty])).ShouldBeNull();
    }

    // What does not fit does not fit the same trees in another order either.
    [Fact]
    public void IsRefuted_TreesInAnotherOrder_IsRefutedToo()
    {
        var memory = new FitMemory(Problem);
        var state = memory.StateOf([1, 1], [Full, Empty]);
        memory.Keep(state, new FitPoint([], true, []));

        memory.Refute(state);

        memory.IsRefuted(memory.StateOf([1, 1], [Empty, Full])).ShouldBeTrue();
        memory.IsRefuted(memory.StateOf([1, 0], [Empty, Full])).ShouldBeFalse();
        memory.PointOf(state).ShouldBeNull();
    }

    // One of each is left, a unit of metal each: 100 is as good as 7 and better than 1.
    [Fact]
    public void IsRefuted_MoreMetalThanEverythingTakes_IsNoMatter()
    {
        var memory = new FitMemory(Problem);
        memory.Refute(memory.StateOf([1, 1], [Full with { Metal = 7 }]));

        memory.IsRefuted(memory.StateOf([1, 1], [Full])).ShouldBeTrue();
        memory.IsRefuted(memory.StateOf([1, 1], [Full with { Metal = 1 }])).ShouldBeFalse();
    }
}
