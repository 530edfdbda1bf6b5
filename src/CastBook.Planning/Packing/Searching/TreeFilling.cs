using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Packing.Searching;

/// <summary>Fills one flask from what is left, by space and, where metal is short, by metal too.</summary>
internal sealed class TreeFilling(PackProblem problem)
{
    // A flask of so many kinds gains nothing from more to choose from.
    private const int MostCandidates = 70;

    // Pinned pieces come before all others in their flask.
    private const long PinnedFirst = 1000;

    private const int Offered = 1;
    private const int Taken = 2;

    // The table tells so many parts of a flask's metal from each other.
    private const long PartsOfMetal = 1024;

    // What gathering and counting take, in steps of the tables.
    private const long WorkOfOne = 5000;

    private readonly TreeHanging hanging = new(problem);
    private readonly MetalKnapsack metals = new(problem, PartsOfMetal);
    private readonly int[] candidates = new int[problem.Items.Length];
    private readonly int[] byWorth = [.. Enumerable.Range(0, problem.Items.Length)];
    private readonly int[] stock = new int[problem.Items.Length];
    private readonly long[] worth = new long[problem.Items.Length];
    private long[]? sortedBy;
    private int count;
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
        if (count == 0)
        {
            return null;
        }

        Restock(left);
        var value = hanging.Hang(size, Candidates, stock, worth);
        if (!MetalIsShort(size, left))
        {
            return (hanging.Hung(Candidates) with { Pin = pin }, value);
        }

        var flask = hanging.Hung(Candidates);
        metals.Choose(Candidates, left, worth, problem.Sizes[size].Metal, stock);
        var byMetal = hanging.Hang(size, Candidates, stock, worth);
        return byMetal > value ? (hanging.Hung(Candidates) with { Pin = pin }, byMetal) : (flask with { Pin = pin }, value);
    }

    private ReadOnlySpan<int> Candidates => candidates.AsSpan(0, count);

    private void Gather(int size, int setting, int pin, int[] left, long[] values)
    {
        count = 0;
        foreach (var i in problem.ByTail[size])
        {
            var item = problem.Items[i];
            if (left[i] > 0 && item.MayBeCastAt(setting) && (item.Pin < 0 || item.Pin == pin))
            {
                candidates[count++] = i;
                worth[i] = item.Pin < 0 ? values[i] : values[i] * PinnedFirst;
            }
        }

        if (count > MostCandidates)
        {
            Thin(values);
        }
    }

    // The largest, and some of the smallest to fill up with. The order is that of the values alone, and sorted once for all flasks.
    private void Thin(long[] values)
    {
        if (!ReferenceEquals(sortedBy, values))
        {
            sortedBy = values;
            byWorth.AsSpan().Sort((a, b) => values[a] != values[b] ? values[b].CompareTo(values[a]) : a.CompareTo(b));
        }

        Array.Clear(stock);
        foreach (var i in Candidates)
        {
            stock[i] = problem.Items[i].Pin < 0 ? Offered : Taken;
        }

        Choose(MostCandidates * 3 / 4, 0, 1);
        Choose(MostCandidates - (MostCandidates * 3 / 4), byWorth.Length - 1, -1);
        var kept = 0;
        for (var i = 0; i < count; i++)
        {
            if (stock[candidates[i]] == Taken)
            {
                candidates[kept++] = candidates[i];
            }
        }

        count = kept;
    }

    private void Choose(int most, int from, int step)
    {
        for (var i = from; i >= 0 && i < byWorth.Length && most > 0; i += step)
        {
            if (stock[byWorth[i]] == Offered)
            {
                stock[byWorth[i]] = Taken;
                most--;
            }
        }
    }

    private void Restock(int[] left)
    {
        foreach (var i in Candidates)
        {
            stock[i] = left[i];
        }
    }

    private bool MetalIsShort(int size, int[] left)
    {
        var metal = 0L;
        foreach (var i in Candidates)
        {
            metal += left[i] * problem.Metals[i];
        }

        return metal > problem.Sizes[size].Metal;
    }
}
