using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackProofTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // 900 g of pieces in flasks of 100 g, and four exact triplets of 100 g: nine and four are proved.
    [Fact]
    public void Solve_ExactFills_AreProved()
    {
        var nine = PackSolver.Solve(Problems.Metal(100, 20, (51, 6), (27, 6), (26, 6), (23, 12)), 1, inBrief: false, CancellationToken.None);
        var four = PackSolver.Solve(
            Problems.Metal(100, 9, (49, 1), (26, 2), (25, 2), (47, 1), (28, 1), (45, 1), (29, 1), (43, 1), (30, 1), (27, 1)), 1, inBrief: false, CancellationToken.None);

        (nine.LeastFlasks, nine.IsCheapest).ShouldBe((9, true));
        (four.LeastFlasks, four.IsCheapest).ShouldBe((4, true));
    }

    // Three of 60 in flasks of 100 need three flasks, which weight alone, 180, does not say.
    [Fact]
    public void Solve_PiecesOfMoreThanHalf_NeedAFlaskEach() =>
        PackSolver.Solve(Problems.Metal(100, 9, (60, 3)), 1, inBrief: false, CancellationToken.None).LeastFlasks.ShouldBe(3);

    // One takes 60 % of the metal and 10 % of the space, the other 10 % and 60 %: together 70 % of each, although the larger shares
    // of both come to 120 %.
    [Fact]
    public void Solve_OneHeavyAndOneBulkyPiece_ShareAFlask()
    {
        var answer = PackSolver.Solve(
            new PackProblem([new PackItem(1, 60, [new(36, 40, 0, 0)]), new PackItem(1, 10, [new(96, 90, 0, 0)])], [new PackSize(100, 100, 1000, 9)]),
            1, inBrief: false, CancellationToken.None);

        (answer.Plan.Flasks.Count, answer.LeastFlasks, answer.IsCheapest).ShouldBe((1, 1, true));
    }

    // Some hundred flasks of five sizes are more choices than can be looked at; the proof must end all the same.
    [Fact]
    public void Solve_MoreChoicesOfFlasksThanCanBeListed_Ends()
    {
        PackSize[] sizes = [.. Enumerable.Range(0, 5).Select(i => new PackSize(10, 100 + (7 * i), 10_000 + (37 * i), 60))];
        var items = Enumerable.Range(0, 30).Select(i => new PackItem(9, 31 + i, [.. sizes.Select(_ => new PackShape(1, 1, 0, 0))]));

        var answer = PackSolver.Solve(new PackProblem([.. items], sizes), 1, inBrief: true, CancellationToken.None);

        PackCheck.Sound(answer.Plan);
        answer.LeastFlasks.ShouldBeInRange(answer.Plan.Flasks.Count * 9 / 10, answer.Plan.Flasks.Count);
    }

    // Nine pieces of 1/3 turn and 20 of 30 mm: one stands in each of three sectors, so three trees.
    [Fact]
    public void Solve_OnePieceInEachSector_IsProved()
    {
        var answer = PackSolver.Solve(
            new PackProblem([new PackItem(9, 1, [new(48, 40, 0, 0)])], [new PackSize(60, PackProblem.AnyMetal, 1000, 9)]), 1, inBrief: false, CancellationToken.None);

        (answer.Plan.Flasks.Count, answer.LeastFlasks, answer.IsCheapest).ShouldBe((3, 3, true));
    }

    // Every way of dealing up to seven pieces into flasks, each into the cheapest size that takes it, is tried by hand.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_FewPieces_AgreesWithEveryWayTried(int seed)
    {
        var random = new Random(seed);
        var pieces = Enumerable.Range(0, random.Next(2, 8)).Select(_ => (Metal: (long)random.Next(10, 70), Band: random.Next(3))).ToArray();
        PackSize[] sizes = [new(100, 100, 1_000_900 + random.Next(200), random.Next(1, 4)), new(100, 60, 1_000_400, random.Next(0, 4))];
        var problem = new PackProblem(
            [.. pieces.Select(p => new PackItem(1, p.Metal, [new(1, 1, 0, 0), new(1, 1, 0, 0)]) { Lowest = p.Band == 1 ? 0 : p.Band, Highest = p.Band == 1 ? 2 : p.Band })],
            sizes);

        var answer = PackSolver.Solve(problem, 1, inBrief: false, CancellationToken.None);

        var best = Cheapest(pieces, sizes, 0, []);
        if (best == long.MaxValue)
        {
            answer.Plan.Lost.ShouldBeGreaterThan(0m);
            return;
        }

        answer.Plan.Cost.ShouldBe(best);
        answer.LeastCost.ShouldBeLessThanOrEqualTo(best);
        answer.LeastFlasks.ShouldBeLessThanOrEqualTo(answer.Plan.Flasks.Count);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_AnyProblem_NeverClaimsMoreThanThePlan(int seed)
    {
        var answer = PackSolver.Solve(Problems.Invent(seed + 100, 10, 4), 1, inBrief: false, CancellationToken.None);

        PackCheck.Sound(answer.Plan);
        if (answer.Plan.Lost == 0)
        {
            answer.LeastCost.ShouldBeLessThanOrEqualTo(answer.Plan.Cost);
        }
    }

    // Pieces worth 10 together; a large tree is worth 4 at most, a small one 3, of a third size nothing is known.
    [Theory]
    [InlineData(2, 0, 0, true)]
    [InlineData(1, 2, 0, false)]
    [InlineData(0, 3, 0, true)]
    [InlineData(2, 0, 1, false)]
    public void Refutes_FlasksThatAreWorthLess_AreTooFew(int large, int small, int third, bool refuted) =>
        new PackCut(10, [4, 3, -1]).Refutes([large, small, third]).ShouldBe(refuted);

    // 2x + y at least 3 for the first piece and x + 2y for the second: x = y = 1.
    [Fact]
    public void Master_TwoTrees_AreSharedAtLeastCost()
    {
        var master = new CoverMaster([3, 3], [9], 9);
        master.Add([new PackCount(0, 2), new PackCount(1, 1)], 0, 1);
        master.Add([new PackCount(0, 1), new PackCount(1, 2)], 0, 1);

        master.Solve().ShouldBe(2, 1e-9);
        master.Duals[0].ShouldBe(1 / 3.0, 1e-9);
        master.Duals[1].ShouldBe(1 / 3.0, 1e-9);
        master.Duals[2].ShouldBe(0, 1e-9);
    }

    // Only one of the cheap size is free: the second tree costs 5, and one more of the cheap size is worth 4.
    [Fact]
    public void Master_FewOfASize_SaysWhatOneMoreIsWorth()
    {
        var master = new CoverMaster([2], [1, 9], 9);
        master.Add([new PackCount(0, 1)], 0, 1);
        master.Add([new PackCount(0, 1)], 1, 5);

        master.Solve().ShouldBe(6, 1e-9);
        master.Duals[0].ShouldBe(5, 1e-9);
        master.Duals[1].ShouldBe(4, 1e-9);
    }

    private static long Cheapest((long Metal, int Band)[] pieces, PackSize[] sizes, int at, List<List<int>> flasks)
    {
        if (at == pieces.Length)
        {
            return Cost(pieces, sizes, flasks);
        }

        var best = long.MaxValue;
        for (var i = 0; i <= flasks.Count; i++)
        {
            if (i == flasks.Count)
            {
                flasks.Add([]);
            }

            flasks[i].Add(at);
            best = Math.Min(best, Cheapest(pieces, sizes, at + 1, flasks));
            flasks[i].RemoveAt(flasks[i].Count - 1);
            if (flasks[i].Count == 0)
            {
                flasks.RemoveAt(i);
                break;
            }
        }

        return best;
    }

    private static long Cost((long Metal, int Band)[] pieces, PackSize[] sizes, List<List<int>> flasks)
    {
        var (small, large) = (0, 0);
        foreach (var flask in flasks)
        {
            // Bands 0 and 2 share with 1, but not with each other.
            var metal = flask.Sum(i => pieces[i].Metal);
            if (metal > 100 || (flask.Exists(i => pieces[i].Band == 0) && flask.Exists(i => pieces[i].Band == 2)))
            {
                return long.MaxValue;
            }

            (small, large) = metal <= 60 ? (small + 1, large) : (small, large + 1);
        }

        // Where small ones run short, large ones stand in.
        var moved = Math.Max(0, small - sizes[1].Free);
        return large + moved > sizes[0].Free ? long.MaxValue : ((large + moved) * sizes[0].Cost) + ((small - moved) * sizes[1].Cost);
    }
}
