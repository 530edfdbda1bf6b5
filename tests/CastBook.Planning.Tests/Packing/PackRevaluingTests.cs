using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackRevaluingTests
{
    // 900 g in flasks of 100 g. Filled lightest first, as all pieces are worth the same, the heavy ones come to stand alone.
    [Fact]
    public void Best_OfAPoorStart_FillsEveryFlaskToTheLastGram()
    {
        var problem = Problems.Metal(100, 20, (51, 6), (27, 6), (26, 6), (23, 12));
        var filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        var start = PackPlan.Empty(problem);
        greedy.Fill(start, [1, 1, 1, 1]);
        start.Flasks.Count.ShouldBeGreaterThan(9);

        var best = new PackRevaluing(problem, greedy, filling).Best(start, 0, 10_000_000, CancellationToken.None);

        PackCheck.Sound(best);
        (best.Flasks.Count, best.Lost).ShouldBe((9, 0m));
    }

    [Fact]
    public void Best_NoWorkLeft_IsTheStart()
    {
        var problem = Problems.Invent(3, 10, 4);
        var filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        var start = greedy.Best();

        new PackRevaluing(problem, greedy, filling).Best(start, 0, 0, CancellationToken.None).ShouldBeSameAs(start);
    }
}
