using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Bounds;
using Google.OrTools.LinearSolver;

namespace CastBook.Planning.Tests.Packing;

/// <summary>Compares masters with GLOP, a solver that shares nothing with ours.</summary>
public sealed class CoverMasterTests
{
    private const int Flasks = 9000;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    // Pieces wanted once each and trees of equal cost: nearly every basis is degenerate. Trees come in parts, as they do from pricing.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_PiecesWantedOnce_AgreesWithTheOracle(int seed)
    {
        var random = new Random(seed);
        var trees = Trees(random, 60, 400, 1, _ => 1);

        Agrees([.. Enumerable.Repeat(1, 60)], trees);
    }

    // Trees that come in pairs which differ by a millionth of their cost and by one piece, wanted from once to hundreds of times.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_TreesNearlyTheSame_AgreesWithTheOracle(int seed)
    {
        var random = new Random(seed);
        var trees = Trees(random, 40, 150, 6, _ => 0.3 + random.NextDouble());
        trees.AddRange(trees.ToList().Select(t => (t.Content.SkipLast(1).ToArray(), t.Cost - 1e-6)).Where(t => t.Item1.Length > 0));

        Agrees([.. Enumerable.Range(0, 40).Select(_ => random.Next(4) == 0 ? random.Next(100, 800) : 1)], trees);
    }

    // A size of which few are free, and fewer flasks than would be cheapest.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_FewFlasks_AgreesWithTheOracle(int seed)
    {
        var random = new Random(seed);
        var trees = Trees(random, 30, 200, 2, content => (0.1 * content) + (0.02 * content * content));

        Agrees([.. Enumerable.Range(0, 30).Select(_ => random.Next(1, 3))], trees, most: 11);
    }

    // What rows are worth must hold for every tree, or what is proved with it starts from nothing.
    private static void Agrees(int[] needs, List<(PackCount[] Content, double Cost)> trees, int most = Flasks)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var rows = needs.Select(n => solver.MakeConstraint(n, double.PositiveInfinity, "")).ToArray();
        var flasks = solver.MakeConstraint(0, most, "");
        foreach (var (content, cost) in trees)
        {
            var amount = solver.MakeNumVar(0, double.PositiveInfinity, "");
            Array.ForEach(content, c => rows[c.Item].SetCoefficient(amount, c.Count));
            flasks.SetCoefficient(amount, 1);
            solver.Objective().SetCoefficient(amount, cost);
        }

        solver.Objective().SetMinimization();
        solver.Solve().ShouldBe(Solver.ResultStatus.OPTIMAL);

        foreach (var isOfMany in new[] { false, true })
        {
            var master = new CoverMaster(needs, [Flasks], most, isOfMany);
            var cost = 0.0;
            for (var i = 0; i < trees.Count; i++)
            {
                master.Add(trees[i].Content, 0, trees[i].Cost);
                cost = i % 40 == 39 || i == trees.Count - 1 ? master.Solve() : cost;
            }

            cost.ShouldBe(solver.Objective().Value(), 1e-3 * solver.Objective().Value(), $"of many {isOfMany}");
            master.Duals.ShouldAllBe(d => d > -1e-6);
            var flask = master.Duals[^1] + master.Duals[^2];
            trees.ShouldAllBe(t => t.Content.Sum(c => c.Count * master.Duals[c.Item]) <= t.Cost + flask + 1e-6);
        }
    }

    private static List<(PackCount[] Content, double Cost)> Trees(Random random, int kinds, int count, int copies, Func<int, double> cost)
    {
        var trees = Enumerable.Range(0, kinds).Select(item => (Content: new[] { new PackCount(item, copies) }, Cost: cost(1))).ToList();
        while (trees.Count < count)
        {
            PackCount[] content = [.. Enumerable.Range(0, kinds).Where(_ => random.Next(6) == 0).Select(item => new PackCount(item, random.Next(1, copies + 1)))];
            if (content.Length > 0)
            {
                trees.Add((content, cost(content.Length)));
            }
        }

        return trees;
    }
}
