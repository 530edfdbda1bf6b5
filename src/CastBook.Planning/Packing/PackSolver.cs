namespace CastBook.Planning.Packing;

/// <summary>Finds a plan for one problem and says what it is worth.</summary>
internal sealed class PackSolver
{
    // Steps of search: enough for a plan that rarely gets better with more, and bounded so that a night is planned while one waits.
    private const long LeastWork = 2_000_000;
    private const long WorkForEach = 40_000;
    private const long MostWork = 300_000_000;

    // No more pieces than this find room in a flask as a rule; what cannot be placed needs no search.
    private const long PiecesOfOne = 60;

    // A proof takes longer than the search on small nights, and never ends on large ones.
    private const long WorkOfProof = 100_000_000;
    private const int MostChoices = 300;

    private readonly PackProblem problem;
    private readonly PackProblem unpinned;
    private readonly PackSearch search;
    private readonly CancellationToken stop;
    private PackPlan plan;
    private long least;

    private PackSolver(PackProblem problem, ulong seed, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        unpinned = problem.WithoutPins();
        var filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        search = new PackSearch(problem, greedy, filling, seed);
        plan = greedy.Best();
        search.Shrink(plan);
        least = PackFloor.Of(problem);
    }

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early with the best so far.</param>
    public static PackAnswer Solve(PackProblem problem, ulong seed, CancellationToken stop)
    {
        var solver = new PackSolver(problem, seed, stop);
        var pieces = Math.Min(problem.Items.Sum(i => (long)i.Quantity), problem.Sizes.Sum(s => (long)s.Free) * PiecesOfOne);
        solver.Solve(Math.Min(MostWork, LeastWork + (pieces * WorkForEach)));
        var flasks = Math.Max(PackFloor.Flasks(problem), PackSizes.Fewest(problem, solver.least));
        return new PackAnswer(solver.plan, solver.least, solver.plan.Lost > 0 ? PackFloor.Flasks(problem) : Math.Min(flasks, solver.plan.Flasks.Count));
    }

    private void Solve(long work)
    {
        plan = search.Improve(plan, least, work / 4, stop);
        if (plan.Lost == 0 && plan.Cost > least)
        {
            least = Math.Max(least, new PackBound(unpinned, [.. problem.Sizes.Select(s => s.Free)]).Find(plan.Flasks, plan.Cost, WorkOfProof, stop));
            RoundUp();
        }

        plan = search.Improve(plan, least, work, stop);
        if (plan.Lost == 0 && plan.Cost > least)
        {
            Settle();
        }
    }

    // Flasks are whole, so that the least cost is that of some choice of them.
    private void RoundUp()
    {
        if (PackSizes.Between(problem, least, plan.Cost, int.MaxValue) is { } choices)
        {
            least = choices.Count == 0 ? plan.Cost : choices[0].Cost;
        }
    }

    // The few choices of flasks between bound and plan are looked at one by one: either one takes all, or it is proved that it cannot.
    private void Settle()
    {
        if (PackSizes.Between(problem, least, plan.Cost, MostChoices) is not { } choices)
        {
            return;
        }

        var (refuted, spent) = (0, 0L);
        for (var i = 0; i < choices.Count; i++)
        {
            if (refuted == i && spent < WorkOfProof && Refutes(choices[i].Cost, choices[i].Counts, ref spent))
            {
                refuted++;
            }
            else if (search.PackInto(choices[i].Counts) is { } better)
            {
                plan = better;
                break;
            }
        }

        least = refuted == choices.Count ? plan.Cost : Math.Min(plan.Cost, choices[refuted].Cost);
    }

    private bool Refutes(long cost, int[] counts, ref long spent)
    {
        var bound = new PackBound(unpinned, counts);
        var isRefuted = bound.Find(plan.Flasks, cost, WorkOfProof / 4, stop) > cost;
        spent += bound.Work;
        return isRefuted && !stop.IsCancellationRequested;
    }
}
