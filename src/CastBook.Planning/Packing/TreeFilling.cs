namespace CastBook.Planning.Packing;

/// <summary>Fills one flask from what is left, by space and, where metal is short, by metal too.</summary>
internal sealed class TreeFilling(PackProblem problem)
{
    // A flask of so many kinds gains nothing from more to choose from.
    private const int MostCandidates = 70;

    // Pinned pieces come before all others in their flask.
    private const long PinnedFirst = 1000;

    // What gathering and counting take, in steps of the tables.
    private const long WorkOfOne = 5000;

    private readonly TreeHanging hanging = new(problem);
    private readonly MetalKnapsack metals = new(problem);
    private readonly List<int> candidates = [];
    private readonly int[] stock = new int[problem.Items.Length];
    private readonly long[] worth = new long[problem.Items.Length];
    private long calls;

    /// <summary>Steps so far.</summary>
    public long Work => hanging.Work + metals.Work + calls;

    /// <summary>Fills a flask; nothing where nothing fits.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="setting">The flask setting.</param>
    /// <param name="pin">The pin the flask answers, or less than 0.</param>
    /// <param name="left">How many of each piece there are.</param>
    /// <param name="values">What each piece is worth.</param>
    public (PackedFlask Flask, long Value)? Fill(int size, int setting, int pin, int[] left, long[] values)
    {
        calls += WorkOfOne;
        Gather(size, setting, pin, left, values);
        if (candidates.Count == 0)
        {
            return null;
        }

        Restock(left);
        var flask = hanging.Hang(size, candidates, stock, worth);
        var value = Value(flask);
        if (MetalIsShort(size, left))
        {
            metals.Choose(candidates, left, worth, problem.Sizes[size].Metal, stock);
            var byMetal = hanging.Hang(size, candidates, stock, worth);
            var other = Value(byMetal);
            if (other > value)
            {
                (flask, value) = (byMetal, other);
            }
        }

        return (flask with { Pin = pin }, value);
    }

    private void Gather(int size, int setting, int pin, int[] left, long[] values)
    {
        candidates.Clear();
        foreach (var i in problem.ByTail[size])
        {
            var item = problem.Items[i];
            if (left[i] > 0 && item.Lowest <= setting && setting <= item.Highest && (item.Pin < 0 || item.Pin == pin))
            {
                candidates.Add(i);
                worth[i] = item.Pin < 0 ? values[i] : values[i] * PinnedFirst;
            }
        }

        if (candidates.Count <= MostCandidates)
        {
            return;
        }

        // The largest, and some of the smallest to fill up with.
        var byWorth = candidates.OrderByDescending(i => worth[i]).ThenBy(i => i).ToList();
        byWorth.RemoveRange(MostCandidates * 3 / 4, byWorth.Count - MostCandidates);
        var kept = byWorth.ToHashSet();
        candidates.RemoveAll(i => !kept.Contains(i));
    }

    private void Restock(int[] left)
    {
        foreach (var i in candidates)
        {
            stock[i] = left[i];
        }
    }

    private bool MetalIsShort(int size, int[] left)
    {
        var metal = 0L;
        foreach (var i in candidates)
        {
            metal += left[i] * problem.Items[i].Metal;
        }

        return metal > problem.Sizes[size].Metal;
    }

    private long Value(PackedFlask flask)
    {
        var value = 0L;
        foreach (var (item, count) in flask.Content)
        {
            value += worth[item] * count;
        }

        return value;
    }
}
