namespace CastBook.Planning.Packing.Bounds;

/// <summary>What a choice of flasks must be able to take, by one way of valuing the pieces.</summary>
/// <param name="Total">What all pieces are worth together.</param>
/// <param name="Most">The most that one tree of each size can be worth; less than 0 where that was not looked at.</param>
internal sealed record PackCut(Int128 Total, long[] Most)
{
    /// <summary>Whether so many flasks of each size cannot take all pieces.</summary>
    /// <param name="counts">How many of each size.</param>
    public bool Refutes(int[] counts)
    {
        Int128 worth = 0;
        for (var size = 0; size < counts.Length; size++)
        {
            if (counts[size] > 0 && Most[size] < 0)
            {
                return false;
            }

            worth += (Int128)counts[size] * Most[size];
        }

        return worth < Total;
    }

    /// <summary>What flasks that can take all pieces cost at least, where they may be used in parts.</summary>
    /// <param name="costs">What one of each size costs, more than 0.</param>
    /// <param name="free">How many there are of each size.</param>
    /// <param name="most">How many flasks there may be altogether.</param>
    /// <returns>The cost, rounded up; the largest number where no so many flasks can take all pieces, and 0 where a size was not looked at.</returns>
    /// <remarks>
    /// By duality: let a unit of worth cost <c>p/q</c> and one more flask <c>e/q</c>. Then all pieces cost their worth, less what the
    /// flasks are worth beyond their cost. The best of these is found where two sizes are worth just what they cost, or one is and
    /// more flasks cost nothing.
    /// </remarks>
    public long Least(long[] costs, int[] free, int most)
    {
        if (free.Where((count, size) => count > 0 && Most[size] < 0).Any())
        {
            return 0;
        }

        if (MostWorth(free, most) < Total)
        {
            return long.MaxValue;
        }

        Int128 least = 0;
        for (var i = 0; i < costs.Length; i++)
        {
            if (free[i] <= 0 || Most[i] <= 0)
            {
                continue;
            }

            least = Int128.Max(least, Priced(costs, free, most, costs[i], Most[i], 0));
            for (var j = 0; j < costs.Length; j++)
            {
                var (p, q) = ((Int128)costs[i] - costs[j], (Int128)Most[i] - Most[j]);
                if (free[j] > 0 && p > 0 && q > 0 && (p * Most[i]) - (q * costs[i]) is var e && e > 0)
                {
                    least = Int128.Max(least, Priced(costs, free, most, p, q, e));
                }
            }
        }

        return (long)least;
    }

    private Int128 Priced(long[] costs, int[] free, int most, Int128 p, Int128 q, Int128 e)
    {
        var cost = (p * Total) - (e * most);
        for (var size = 0; size < costs.Length; size++)
        {
            cost -= free[size] <= 0 ? 0 : free[size] * Int128.Max(0, (p * Most[size]) - (q * costs[size]) - e);
        }

        return (cost + q - 1) / q;
    }

    private Int128 MostWorth(int[] free, int most)
    {
        Int128 worth = 0;
        foreach (var size in Enumerable.Range(0, free.Length).Where(s => free[s] > 0).OrderByDescending(s => Most[s]))
        {
            var count = Math.Min(most, free[size]);
            worth += (Int128)count * Most[size];
            most -= count;
        }

        return worth;
    }
}
