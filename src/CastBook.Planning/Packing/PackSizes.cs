namespace CastBook.Planning.Packing;

/// <summary>Choices of flasks by what they cost together.</summary>
internal static class PackSizes
{
    private const int MostLooks = 100_000;

    /// <summary>The fewest flasks that can cost so much.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="cost">The cost.</param>
    public static int Fewest(PackProblem problem, long cost)
    {
        var flasks = 0;
        foreach (var size in problem.Sizes.OrderByDescending(s => s.Cost))
        {
            var take = (int)Math.Clamp((cost + size.Cost - 1) / size.Cost, 0, size.Free);
            flasks += take;
            cost -= take * size.Cost;
        }

        return flasks;
    }

    /// <summary>The most flasks that can cost no more.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="cost">The cost.</param>
    public static int Most(PackProblem problem, long cost)
    {
        var flasks = 0;
        foreach (var size in problem.Sizes.OrderBy(s => s.Cost))
        {
            var take = (int)Math.Clamp(cost / size.Cost, 0, size.Free);
            flasks += take;
            cost -= take * size.Cost;
        }

        return flasks;
    }

    /// <summary>What so many flasks cost at least.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">How many.</param>
    public static long Least(PackProblem problem, int flasks)
    {
        var cost = 0L;
        foreach (var size in problem.Sizes.OrderBy(s => s.Cost))
        {
            var take = Math.Min(flasks, size.Free);
            cost += take * size.Cost;
            flasks -= take;
        }

        return cost;
    }

    /// <summary>The choices that cost at least so much and less than another amount, cheapest first; nothing where they are too many to look at.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="least">The least cost.</param>
    /// <param name="below">The cost to stay below.</param>
    /// <param name="most">The most choices.</param>
    public static IReadOnlyList<(long Cost, int[] Counts)>? Between(PackProblem problem, long least, long below, int most)
    {
        var found = new List<(long Cost, int[] Counts)>();
        var counts = new int[problem.Sizes.Length];
        var looks = 0;
        if (!Choose(0, 0))
        {
            return null;
        }

        found.Sort((a, b) => a.Cost.CompareTo(b.Cost));
        return found;

        bool Choose(int size, long cost)
        {
            if (++looks > MostLooks || found.Count > most)
            {
                return false;
            }

            if (size == counts.Length)
            {
                if (cost >= least)
                {
                    found.Add((cost, [.. counts]));
                }

                return true;
            }

            for (var count = 0; count <= problem.Sizes[size].Free && cost < below; count++, cost += problem.Sizes[size].Cost)
            {
                counts[size] = count;
                if (!Choose(size + 1, cost))
                {
                    return false;
                }
            }

            counts[size] = 0;
            return true;
        }
    }
}
