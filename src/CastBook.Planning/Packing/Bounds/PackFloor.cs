namespace CastBook.Planning.Packing.Bounds;

/// <summary>What any plan that places everything must cost, seen at a glance.</summary>
/// <remarks>
/// One piece takes at least its share of the space of whatever flask it is in, and its share of the metal, and neither adds up to more
/// than one in a flask. Pieces whose only setting is the same cannot be helped by other settings.
/// </remarks>
internal static class PackFloor
{
    /// <summary>The least cost.</summary>
    /// <param name="problem">The problem.</param>
    public static long Of(PackProblem problem) => PackSizes.Least(problem, Flasks(problem));

    /// <summary>The fewest flasks.</summary>
    /// <param name="problem">The problem.</param>
    public static int Flasks(PackProblem problem)
    {
        var apart = problem.Settings.Sum(s => Least(problem, i => i.Lowest == s && i.Highest == s));
        return Math.Max(apart, Least(problem, _ => true));
    }

    private static int Least(PackProblem problem, Func<PackItem, bool> counts)
    {
        var (space, metal, any) = (0L, 0L, false);
        for (var i = 0; i < problem.Items.Length; i++)
        {
            if (counts(problem.Items[i]))
            {
                any = true;
                space += problem.Items[i].Quantity * problem.Spaces[i];
                metal += problem.Items[i].Quantity * problem.MetalShare(i);
            }
        }

        return Math.Max((int)((Math.Max(space, metal) + 999_999) / 1_000_000), any ? 1 : 0);
    }
}
