namespace CastBook.Planning.Packing.Searching;

/// <summary>Fills flasks over and over: pieces that stood in poorly filled flasks are worth more the next time, and so find better company.</summary>
/// <remarks>
/// Source: sequential value correction, as in G. Belov and G. Scheithauer, "Setup and open-stacks minimization in one-dimensional stock
/// cutting", INFORMS Journal on Computing 19 (2007); the constants are ours.
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="greedy">Fills flasks.</param>
/// <param name="filling">What that is done with; counts the steps.</param>
internal sealed class PackRevaluing(PackProblem problem, PackGreedy greedy, TreeFilling filling)
{
    // What is worth as much as a full flask.
    private const double Full = 1e6;

    // In flasks that are emptier yet, pieces are worth no more.
    private const double Emptiest = 0.3;

    // How far worth moves to what the last filling says.
    private const double Step = 0.35;

    private readonly double[] worths = [.. problem.Weights.Select(w => (double)w)];
    private readonly double[] said = new double[problem.Items.Length];
    private readonly int[] hung = new int[problem.Items.Length];

    /// <summary>The best plan of many.</summary>
    /// <param name="start">A plan; it is the answer where none is better.</param>
    /// <param name="enough">A cost that is as good as is asked.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends it early.</param>
    public PackPlan Best(PackPlan start, long enough, long work, CancellationToken stop)
    {
        var (best, end) = (start, filling.Work + work);
        while (filling.Work < end && best.Cost > enough && !stop.IsCancellationRequested)
        {
            var plan = PackPlan.Empty(problem);
            greedy.Fill(plan, [.. worths.Select(w => Math.Max(1, (long)w))]);
            best = plan.IsBetterThan(best) ? plan : best;
            Revalue(plan);
        }

        return best;
    }

    private void Revalue(PackPlan plan)
    {
        Array.Clear(said);
        Array.Clear(hung);
        foreach (var flask in plan.Flasks)
        {
            var fill = Math.Max(Emptiest, flask.Fill / Full);
            foreach (var (item, count) in flask.Content)
            {
                said[item] += count * problem.Weights[item] / fill;
                hung[item] += count;
            }
        }

        for (var i = 0; i < worths.Length; i++)
        {
            worths[i] = hung[i] > 0 ? worths[i] + (Step * ((said[i] / hung[i]) - worths[i])) : worths[i];
        }
    }
}
