using CastBook.Planning.Packing;
using Google.OrTools.Sat;

namespace CastBook.Planning.Tests.Packing;

/// <summary>Compares small problems with CP-SAT, a solver that shares nothing with ours.</summary>
public sealed class PackOracleTests
{
    private const int MostColumns = 8;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_SmallProblem_AgreesWithTheOracle(int seed)
    {
        var problem = Invent(new Random(seed));

        var answer = PackSolver.Solve(problem, 1, inBrief: false, CancellationToken.None);

        PackCheck.Sound(answer.Plan);
        answer.Plan.Lost.ShouldBe(0m);
        var best = Oracle(problem, answer.Plan.Flasks.Count + 1);
        answer.LeastCost.ShouldBeLessThanOrEqualTo(best);
        answer.Plan.Cost.ShouldBe(best);
    }

    private static PackProblem Invent(Random random)
    {
        PackSize[] sizes = [new(90, 4000, 10_442, 4), new(140, 7000, 10_785, 4), new(190, 12000, 11_178, 4)];
        return new PackProblem([.. Enumerable.Range(0, random.Next(3, 7)).Select(_ => Item())], sizes);

        PackItem Item()
        {
            var (theta, pitch, tail, band) = (random.Next(30, 73), random.Next(15, 60), random.Next(0, 30), random.Next(3));
            return new PackItem(random.Next(1, 5), random.Next(100, 2500), [.. sizes.Select(s => new PackShape(Math.Max(24, theta * 90 / s.Rod), pitch, tail, 0))])
            {
                Lowest = band == 1 ? 0 : band,
                Highest = band == 1 ? 2 : band,
            };
        }
    }

    private static long Oracle(PackProblem problem, int slots)
    {
        var model = new CpModel();
        var cost = new List<LinearExpr>();
        var placed = problem.Items.Select(_ => new List<LinearExpr>()).ToArray();
        var used = problem.Sizes.Select(_ => new List<BoolVar>()).ToArray();
        for (var slot = 0; slot < slots; slot++)
        {
            BoolVar[] isSize = [.. problem.Sizes.Select((_, s) => model.NewBoolVar($"size {slot} {s}"))];
            BoolVar[] isSetting = [.. problem.Settings.Select(s => model.NewBoolVar($"setting {slot} {s}"))];
            model.AddAtMostOne(isSize);
            model.AddExactlyOne(isSetting);
            cost.AddRange(problem.Sizes.Select((s, i) => isSize[i] * s.Cost));
            for (var s = 0; s < isSize.Length; s++)
            {
                used[s].Add(isSize[s]);
            }

            Flask(model, problem, isSize, isSetting, placed);
        }

        for (var i = 0; i < placed.Length; i++)
        {
            model.Add(LinearExpr.Sum(placed[i]) == problem.Items[i].Quantity);
        }

        for (var s = 0; s < used.Length; s++)
        {
            model.Add(LinearExpr.Sum(used[s]) <= problem.Sizes[s].Free);
        }

        model.Minimize(LinearExpr.Sum(cost));
        using var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:60" };
        solver.Solve(model).ShouldBe(CpSolverStatus.Optimal);
        return (long)Math.Round(solver.ObjectiveValue);
    }

    private static void Flask(CpModel model, PackProblem problem, BoolVar[] isSize, BoolVar[] isSetting, List<LinearExpr>[] placed)
    {
        var (metal, widths) = (new List<LinearExpr>(), new List<IntVar>());
        for (var column = 0; column < MostColumns; column++)
        {
            var width = model.NewIntVar(0, PackShape.Turn, "width");
            widths.Add(width);
            var counts = new IntVar[problem.Items.Length];
            for (var i = 0; i < counts.Length; i++)
            {
                var item = problem.Items[i];
                counts[i] = model.NewIntVar(0, item.Quantity, "count");
                var isThere = model.NewBoolVar("there");
                model.Add(counts[i] <= item.Quantity * isThere);
                model.Add(isThere <= LinearExpr.Sum(isSize));
                model.Add(isThere <= LinearExpr.Sum(isSetting.Where((_, s) => item.Lowest <= problem.Settings[s] && problem.Settings[s] <= item.Highest)));
                for (var s = 0; s < isSize.Length; s++)
                {
                    model.Add(width >= item.Shapes[s].Theta).OnlyEnforceIf([isThere, isSize[s]]);
                }

                metal.Add(counts[i] * item.Metal);
                placed[i].Add(counts[i]);
            }

            Heights(model, problem, isSize, counts);
        }

        model.Add(LinearExpr.Sum(widths) <= PackShape.Turn);
        model.Add(LinearExpr.Sum(metal) <= LinearExpr.Sum(problem.Sizes.Select((s, i) => isSize[i] * s.Metal)));
    }

    // With the longest tail nearest the button, the pieces of at least so long a tail end so high that the tail fits.
    private static void Heights(CpModel model, PackProblem problem, BoolVar[] isSize, IntVar[] counts)
    {
        for (var s = 0; s < isSize.Length; s++)
        {
            foreach (var tail in problem.Items.Select(i => i.Shapes[s].Tail).Distinct())
            {
                model.Add(LinearExpr.Sum(counts.Select((c, i) => problem.Items[i].Shapes[s].Tail >= tail ? c * problem.Items[i].Shapes[s].Pitch : LinearExpr.Constant(0)))
                    <= problem.Sizes[s].Rod - tail).OnlyEnforceIf(isSize[s]);
            }
        }
    }
}
