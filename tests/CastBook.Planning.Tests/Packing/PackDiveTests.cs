using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackDiveTests
{
    // Sixty times each triplet and pair that is exactly 100 g, and a start that fills them badly: 90 flasks hold 9,000 g.
    [Fact]
    public void Plan_OfManyPieces_FillsEveryFlaskToTheLastGram()
    {
        var problem = Problems.Metal(100, 200, (51, 60), (27, 60), (26, 60), (23, 120));
        problem.IsOfMany.ShouldBeTrue();

        var plan = Dive(problem, -1)!;

        (plan.Flasks.Count, plan.Lost).ShouldBe((90, 0m));
    }

    // Trees lose what was hung elsewhere; whatever is chosen, what comes out must fit and hang each piece once.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Plan_AnyProblemOfManyPieces_IsSound(int seed)
    {
        var invented = Problems.Invent(seed + 1100, 12, 4);
        var problem = new PackProblem(
            [.. invented.Items.Select(i => i with { Pin = -1, Quantity = i.Quantity + ((int)PackWork.Many / invented.Items.Length) })],
            [.. invented.Sizes.Select(s => s with { Free = 900 })]);
        problem.IsOfMany.ShouldBeTrue();

        PackCheck.Sound(Dive(problem, -1)!);
        PackCheck.Sound(Dive(problem, 1)!);
    }

    // Two sectors of 2 and 1, and of 2 of the second piece; one of the first and two of the second are left.
    [Fact]
    public void Of_FewerLeftThanHang_LosesThem()
    {
        var problem = Problems.Metal(100, 9, (10, 4), (20, 4), (30, 4));
        var flask = PackedFlask.Of(problem, 0, [[new PackCount(0, 2), new PackCount(1, 1)], [new PackCount(1, 2)]]) with { Pin = 0, Outgrown = 1 };

        var less = flask.Of(problem, [1, 2, 0]);

        less.Content.ShouldBe([new PackCount(0, 1), new PackCount(1, 2)]);
        less.Columns.Select(c => c.Single()).ShouldBe([new PackCount(0, 1), new PackCount(1, 2)]);
        (less.Size, less.Pin, less.Outgrown, less.Fill).ShouldBe((0, 0, 0UL, problem.Weights[0] + (2 * problem.Weights[1])));
        flask.Of(problem, [2, 3, 0]).ShouldBeSameAs(flask);
        flask.Of(problem, [0, 0, 9]).Content.ShouldBeEmpty();
    }

    // 9,000 g need 90 flasks of 100 g; what is dived for first is made whole all the same.
    [Theory]
    [InlineData(0, 89, true)]
    [InlineData(0, 90, false)]
    [InlineData(-1, 89, false)]
    public void Plan_MoreFlasksThanAskedNeeded_GivesUp(int turn, int asked, bool givesUp) =>
        (Dive(Problems.Metal(100, 200, (51, 60), (27, 60), (26, 60), (23, 120)), turn, asked) is null).ShouldBe(givesUp);

    // 81 pieces of a third of a turn and two thirds of the trunk, and as many of one third: three sectors of both in each of 27 trees.
    [Fact]
    public void Plan_AskedForAsManyAsDo_FillsTheLastTogether()
    {
        var problem = new PackProblem(
            [new PackItem(81, 1, [new(48, 40, 0, 0)]), new PackItem(81, 1, [new(48, 20, 0, 0)])], [new PackSize(60, PackProblem.AnyMetal, 1000, 90)]);

        var plan = Dive(problem, -1, 27)!;

        PackCheck.Sound(plan);
        (plan.Flasks.Count, plan.Lost).ShouldBe((27, 0m));
    }

    private static PackPlan? Dive(PackProblem problem, int turn, int asked = 0)
    {
        var filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        var start = PackPlan.Empty(problem);
        greedy.Fill(start, [.. problem.Items.Select(_ => 1L)]);
        return new PackDive(problem, filling, greedy, [.. problem.Sizes.Select(s => s.Cost)], start.Flasks).Plan(turn, asked, CancellationToken.None);
    }
}
