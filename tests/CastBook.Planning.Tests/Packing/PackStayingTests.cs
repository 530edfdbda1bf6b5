using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;
using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackStayingTests
{
    private const long Work = 100_000_000;

    // By hand: of two trunks of 100 in halves one held 60 | 60 and the other 50, 20 | 30, 30. One of 80 comes in: the first does not take
    // it beside two of 60, the second has no room for 210 of 200. With one piece moved (30 to the first) everything fits; here two moved.
    [Fact]
    public void Plan_TooManyMoved_OneGoesBack()
    {
        var problem = new PackProblem([Half(2, 60), Half(1, 50), Half(2, 30), Half(1, 20), Half(1, 80)], [new PackSize(100, PackProblem.AnyMetal, 1000, 2)]);
        var homes = new PackHomes(problem, [Flask(0, [new(0, 2)]), Flask(0, [new(1, 1), new(2, 2), new(3, 1)])]);
        var start = PackPlan.Empty(problem);
        start.Add(Flask(0, [new(0, 2), new(2, 1), new(3, 1)], [[new(0, 1), new(2, 1)], [new(0, 1), new(3, 1)]]));
        start.Add(Flask(0, [new(1, 1), new(2, 1), new(4, 1)], [[new(4, 1)], [new(1, 1), new(2, 1)]]));
        homes.Moved(start).ShouldBe(2);

        var plan = Plan(problem, homes, start);

        PackCheck.Sound(plan);
        plan.Lost.ShouldBe(0m);
        homes.Moved(plan).ShouldBe(1);
    }

    // A small flask takes one piece, a large one two. One stood alone in a large flask and two in another; the one goes into a small
    // flask and is under its letter still.
    [Fact]
    public void Plan_FlaskOfAnotherSize_IsNoMove()
    {
        PackSize[] sizes = [new(60, PackProblem.AnyMetal, 1000, 3), new(120, PackProblem.AnyMetal, 1500, 3)];
        var (one, two) = (new PackItem(1, 1, [Whole, Whole]), new PackItem(2, 1, [Whole, Whole]));
        var problem = new PackProblem([one, two], sizes);
        var homes = new PackHomes(problem, [Flask(1, [new(0, 1)]), Flask(1, [new(1, 2)])]);
        var start = PackPlan.Empty(problem);
        start.Add(Flask(1, [new(0, 1), new(1, 1)], [[new(0, 1), new(1, 1)]]));
        start.Add(Flask(0, [new(1, 1)], [[new(1, 1)]]));
        homes.Moved(start).ShouldBe(1);

        var plan = Plan(problem, homes, start);

        PackCheck.Sound(plan);
        plan.Cost.ShouldBe(2500);
        homes.Moved(plan).ShouldBe(0);
    }

    // Three pieces stood alone in small flasks, 3 x 1000. Two together in a large one, 1500 + 1000, save 500 by one move.
    [Theory]
    [InlineData(400, 2500, 1)]
    [InlineData(600, 3000, 0)]
    public void Plan_MovesThatCount_AreMadeOnlyWhereTheySaveMore(int ofMove, long cost, int moved)
    {
        PackSize[] sizes = [new(60, PackProblem.AnyMetal, 1000, 3), new(120, PackProblem.AnyMetal, 1500, 3)];
        var problem = new PackProblem([.. Enumerable.Range(0, 3).Select(_ => new PackItem(1, 1, [Whole, Whole]))], sizes);
        var homes = new PackHomes(problem, [Flask(0, [new(0, 1)]), Flask(0, [new(1, 1)]), Flask(0, [new(2, 1)])]);
        var start = PackPlan.Empty(problem);
        for (var item = 0; item < 3; item++)
        {
            start.Add(Flask(0, [new(item, 1)], [[new(item, 1)]]));
        }

        var plan = Plan(problem, homes, start, new StayingAim(3, 2500, 3000, [1000, 1500], ofMove));

        PackCheck.Sound(plan);
        plan.Lost.ShouldBe(0m);
        (plan.Cost, homes.Moved(plan)).ShouldBe((cost, moved));
    }

    // One of two in a large flask is gone: what is left goes into a small one, and for less it does not go beside the others.
    [Fact]
    public void Plan_NoMove_CheaperFlasksWithEverythingWhereItStood()
    {
        PackSize[] sizes = [new(60, PackProblem.AnyMetal, 1000, 3), new(120, PackProblem.AnyMetal, 1500, 3), new(180, PackProblem.AnyMetal, 1800, 3)];
        var problem = new PackProblem([new PackItem(1, 1, [Whole, Whole, Whole]), new PackItem(2, 1, [Whole, Whole, Whole])], sizes);
        var homes = new PackHomes(problem, [Flask(1, [new(0, 1)]), Flask(1, [new(1, 2)])]);
        var start = PackPlan.Empty(problem);
        start.Add(Flask(1, [new(0, 1)], [[new(0, 1)]]));
        start.Add(Flask(1, [new(1, 2)], [[new(1, 2)]]));

        var plan = Plan(problem, homes, start, StayingAim.NoMove(problem, 3, 1800, start.Cost));

        PackCheck.Sound(plan);
        (plan.Cost, homes.Moved(plan)).ShouldBe((2500, 0));
    }

    // Seven pieces stand in two flasks, and an eighth comes. As few move as in the best of all ways to share the eight out.
    [Fact]
    public void Plan_SmallProblems_AsFewMoveAsInTheBestOfAllWays()
    {
        var moves = new List<int>();
        for (var seed = 1; moves.Count < 40; seed++)
        {
            var random = new Random(seed);
            var problem = new PackProblem([.. Enumerable.Range(0, Eight).Select(_ => Piece(random))], [new PackSize(100, 1000, 1000, 2)]);
            var start = PackSolver.Solve(problem, 1, inBrief: false, CancellationToken.None).Plan;
            var stood = Ways(problem, Eight - 1).OrderBy(_ => random.Next()).FirstOrDefault();
            if (start.Lost > 0 || start.Flasks.Count < 2 || stood is null)
            {
                continue;
            }

            var homes = new PackHomes(problem, [Stood(stood, 0), Stood(stood, 1)]);
            var plan = Plan(problem, homes, start);

            PackCheck.Sound(plan);
            plan.Lost.ShouldBe(0m);
            moves.Add(Ways(problem, Eight).Min(way => stood.Zip(way).Count(p => p.First != p.Second)));
            homes.Moved(plan).ShouldBe(moves[^1], $"seed {seed}");
        }

        moves.Count(m => m > 0).ShouldBeGreaterThan(5);
    }

    private const int Eight = 8;

    // The flask of each of the first pieces, in every way in which two flasks take them.
    private static IEnumerable<int[]> Ways(PackProblem problem, int pieces) => Enumerable.Range(0, 1 << pieces)
        .Select(bits => Enumerable.Range(0, pieces).Select(i => (bits >> i) & 1).ToArray())
        .Where(way => Fits(problem, way, 0) && Fits(problem, way, 1));

    private static PackedFlask Stood(int[] way, int flask) =>
        Flask(0, [.. Enumerable.Range(0, way.Length).Where(i => way[i] == flask).Select(i => new PackCount(i, 1))]);

    private static bool Fits(PackProblem problem, int[] way, int flask) => SectorsByHand.Fit(
        new PackProblem([.. problem.Items.Take(way.Length).Select((item, i) => item with { Quantity = way[i] == flask ? 1 : 0 })], problem.Sizes), [(0, 1)]);

    private static PackItem Piece(Random random) =>
        new(1, random.Next(100, 300), [new PackShape(random.Next(30, 73), random.Next(20, 60), random.Next(0, 20), 0)]) { Lowest = 1, Highest = 1 };

    private static PackShape Whole => new(PackShape.Turn, 60, 0, 0);

    private static PackPlan Plan(PackProblem problem, PackHomes homes, PackPlan start) =>
        Plan(problem, homes, start, StayingAim.FewestMoves(problem, start.Flasks.Count, start.Cost));

    private static PackPlan Plan(PackProblem problem, PackHomes homes, PackPlan start, StayingAim aim)
    {
        var filling = new TreeFilling(problem);
        var hanging = new ContentHanging(problem, new PackGreedy(problem, filling), filling, []);
        return PackStaying.Plan(problem, homes, hanging, start, aim, Work, 1, CancellationToken.None);
    }

    private static PackItem Half(int quantity, int pitch) => new(quantity, 1, [new PackShape(PackShape.Turn / 2, pitch, 0, 0)]);

    private static PackedFlask Flask(int size, PackCount[] content, PackCount[][]? columns = null) => new(size, content, columns ?? []);
}
