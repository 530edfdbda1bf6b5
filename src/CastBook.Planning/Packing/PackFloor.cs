namespace CastBook.Planning.Packing;

/// <summary>What any plan that places everything must cost, seen at a glance.</summary>
/// <remarks>
/// One piece takes at least its weight of whatever flask it is in, and weights of one flask add up to one at most. Pieces whose only
/// setting is the same cannot be helped by other settings.
/// </remarks>
internal static class PackFloor
{
    /// <summary>The least cost.</summary>
    /// <param name="problem">The problem.</param>
    public static long Of(PackProblem problem)
    {
        var count = Flasks(problem);
        var cost = 0L;
        foreach (var size in problem.Sizes.OrderBy(s => s.Cost))
        {
            var take = Math.Min(count, size.Free);
            cost += take * size.Cost;
            count -= take;
        }

        return cost;
    }

    /// <summary>The fewest flasks.</summary>
    /// <param name="problem">The problem.</param>
    public static int Flasks(PackProblem problem)
    {
        var apart = problem.Settings.Sum(s => Least(problem, i => i.Lowest == s && i.Highest == s));
        return Math.Max(apart, Least(problem, _ => true));
    }

    private static int Least(PackProblem problem, Func<PackItem, bool> counts)
    {
        var weight = 0L;
        for (var i = 0; i < problem.Items.Length; i++)
        {
            // A weight is never less than 1, and what is rounded down must stay so.
            weight += counts(problem.Items[i]) ? problem.Items[i].Quantity * (problem.Weights[i] > 1 ? problem.Weights[i] : 0) : 0;
        }

        return weight > 0 ? (int)((weight + 999_999) / 1_000_000) : problem.Items.Any(counts) ? 1 : 0;
    }
}
