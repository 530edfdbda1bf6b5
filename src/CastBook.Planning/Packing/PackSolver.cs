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
    private const long WorkOfBound = 100_000_000;
    private const long LeastProof = 30_000_000;
    private const long MostProof = 100_000_000;
    private const long ProofOfOne = 3_000_000_000;
    private const int MostChoices = 300;
    private const int MostFailed = 4;

    private readonly PackProblem problem;
    private readonly PackBound bound;
    private readonly PackSearch search;
    private readonly CancellationToken stop;
    private readonly long pieces;
    private PackPlan plan;
    private long least;

    private PackSolver(PackProblem problem, ulong seed, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        pieces = Math.Min(problem.Items.Sum(i => (long)i.Quantity), problem.Sizes.Sum(s => (long)s.Free) * PiecesOfOne);
        bound = new PackBound(problem.WithoutPins());
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
        solver.Solve(Math.Min(MostWork, LeastWork + (solver.pieces * WorkForEach)));
        var flasks = Math.Max(PackFloor.Flasks(problem), PackSizes.Fewest(problem, solver.least));
        return new PackAnswer(solver.plan, solver.least, solver.plan.Lost > 0 ? PackFloor.Flasks(problem) : Math.Min(flasks, solver.plan.Flasks.Count));
    }

    // Few pieces are soon proved; of many a proof would not end.
    private long WorkOfProof => Math.Clamp(ProofOfOne / Math.Max(1, pieces), LeastProof, MostProof);

    private void Solve(long work)
    {
        plan = search.Improve(plan, least, work / 4, stop);
        if (plan.Lost == 0 && plan.Cost > least)
        {
            plan.Flasks.ForEach(bound.Know);
            least = Math.Max(least, bound.Find([.. problem.Sizes.Select(s => s.Free)], plan.Cost, WorkOfBound, stop));
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
            var open = choices.FirstOrDefault(c => !bound.IsRefuted(c.Counts));
            least = open.Counts is null ? plan.Cost : open.Cost;
        }
    }

    // The few choices of flasks between bound and plan: from below each is refuted in turn while there is work left for proofs. Of
    // what is left open the fewest flasks are tried first, and of as many the largest, where everything is likeliest to find room.
    private void Settle()
    {
        var (choices, beyond) = Choices();
        var (refuted, end) = (0, bound.Work + WorkOfProof);
        while (refuted < choices.Count && Refutes(choices[refuted].Counts, choices[refuted].Cost, end))
        {
            refuted++;
        }

        least = refuted < choices.Count ? choices[refuted].Cost : Math.Max(least, beyond);
        var until = search.Work + WorkOfProof;
        foreach (var fewest in choices.Skip(refuted).Where(c => !bound.IsRefuted(c.Counts)).GroupBy(c => c.Counts.Sum()).OrderBy(g => g.Key))
        {
            if (Try([.. fewest.Reverse()], until))
            {
                break;
            }
        }
    }

    private bool Try(IReadOnlyList<(long Cost, int[] Counts)> choices, long end)
    {
        var (failed, found) = (0, false);
        for (var i = 0; i < choices.Count && failed < MostFailed && search.Work < end && !stop.IsCancellationRequested; i++)
        {
            var better = search.PackInto(choices[i].Counts, end);
            failed = better is null ? failed + 1 : 0;
            found |= better is not null;
            plan = better ?? plan;
        }

        return found;
    }

    // The cheapest choices, as many as are worth a look, and the cost up to which there are no others.
    private (IReadOnlyList<(long Cost, int[] Counts)> Choices, long Beyond) Choices()
    {
        for (var below = plan.Cost; ; below = least + ((below - least) / 2))
        {
            if (PackSizes.Between(problem, least, below, MostChoices) is { } choices)
            {
                return (choices, below);
            }
        }
    }

    private bool Refutes(int[] counts, long cost, long end) => bound.IsRefuted(counts)
        || (bound.Work < end && bound.Find(counts, cost, end - bound.Work, stop) > cost && !stop.IsCancellationRequested);
}
