namespace CastBook.Planning.Packing;

/// <summary>Finds a plan for one problem.</summary>
internal static class PackSolver
{
    // Steps of search: enough for a plan that rarely gets better with more, and bounded so that a night is planned while one waits.
    private const long LeastWork = 2_000_000;
    private const long WorkForEach = 40_000;
    private const long MostWork = 300_000_000;

    // No more pieces than this find room in a flask as a rule; what cannot be placed needs no search.
    private const long PiecesOfOne = 60;

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early with the best so far.</param>
    public static PackPlan Solve(PackProblem problem, ulong seed, CancellationToken stop)
    {
        var filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        var search = new PackSearch(problem, greedy, filling, seed);
        var plan = greedy.Best();
        search.Shrink(plan);
        var pieces = Math.Min(problem.Items.Sum(i => (long)i.Quantity), problem.Sizes.Sum(s => (long)s.Free) * PiecesOfOne);
        return search.Improve(plan, PackFloor.Of(problem), Math.Min(MostWork, LeastWork + (pieces * WorkForEach)), stop);
    }
}
