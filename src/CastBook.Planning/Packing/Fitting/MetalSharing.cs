using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into given flasks where nothing but metal can be short and flasks may be many.</summary>
/// <remarks>
/// A master takes loads in parts. What it takes most of is loaded whole, again and again, and for the last few flasks
/// <see cref="MetalFit"/> looks at every way. Where the master needs more flasks than are left, what was loaded last was wrong. Source:
/// R. Sadykov, F. Vanderbeck, A. Pessoa, I. Tahiri and E. Uchoa, "Primal heuristics for branch and price", INFORMS Journal on Computing
/// 31 (2019), diving with limited discrepancy; cited from memory.
/// </remarks>
internal sealed class MetalSharing
{
    // The last few flasks.
    private const int FewFlasks = 14;
    private const long WorkOfFew = 3_000_000;

    // Loads found at once, so that they go together.
    private const int MostTogether = 8;

    // How often another load than that of the largest part is taken, at most.
    private const int MostOthers = 3;

    // The tables tell so many parts of a flask's metal from each other; the finer is asked where the other finds nothing more.
    private const long PartsOfMetal = 1000;
    private const long SmallPartsOfMetal = 10_000;

    // What a flask is worth in whole numbers, how far worths are off by that, and for each flask those that are needed.
    private const double Flask = 1e6;
    private const double Dust = 1e-5;
    private const double Doubt = 2e-5;

    private readonly PackProblem problem;
    private readonly CancellationToken stop;
    private readonly MetalKnapsack coarse;
    private readonly MetalKnapsack fine;
    private readonly int[] all;
    private readonly int[] offered;
    private readonly int[] chosen;
    private readonly long[] values;
    private readonly List<MetalLoad> known = [];
    private readonly List<MetalLoad> loaded = [];
    private readonly List<PackCut> cuts = [];
    private int[] left = [];
    private int[] flasks = [];
    private long workOfOthers;
    private long end;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem; it suits <see cref="MetalAlone"/>.</param>
    /// <param name="stop">Ends every look early.</param>
    public MetalSharing(PackProblem problem, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        (coarse, fine) = (new MetalKnapsack(problem, PartsOfMetal), new MetalKnapsack(problem, SmallPartsOfMetal));
        all = [.. problem.Items.Select(i => i.Quantity)];
        (offered, chosen, values) = (new int[all.Length], new int[all.Length], new long[all.Length]);
    }

    private long Work => coarse.Work + fine.Work + workOfOthers;

    /// <summary>Looks whether everything fits.</summary>
    /// <param name="counts">How many flasks of each size.</param>
    /// <param name="steps">How many steps to spend.</param>
    public FitAnswer Look(int[] counts, long steps)
    {
        var before = Work;
        (left, flasks, end) = ([.. all], [.. counts], before + steps);
        loaded.Clear();
        if (cuts.Exists(c => c.Refutes(counts)))
        {
            return new FitAnswer(false, null, 0);
        }

        var parts = Parts();
        cuts.Add(Cut());
        if (cuts[^1].Refutes(counts))
        {
            return new FitAnswer(false, null, Work - before);
        }

        var few = counts.Sum() <= FewFlasks;
        for (var others = 0; !few && parts.Count > 0 && others <= MostOthers && Work - before <= steps / 2 && !stop.IsCancellationRequested; others++)
        {
            if (Dive(parts, others))
            {
                return new FitAnswer(true, MetalAlone.Plan(problem, loaded), Work - before);
            }
        }

        var fit = new MetalFit(problem, counts, all, stop).Look(Math.Max(0, end - Work));
        workOfOthers += fit.Work;
        return fit with { Work = Work - before };
    }

    private bool Dive(List<(MetalLoad Load, double Amount)> parts, int others)
    {
        if (parts.Exists(p => p.Amount > 1 - Dust))
        {
            return Load([.. parts.SelectMany(p => Enumerable.Repeat(p.Load, (int)(p.Amount + Dust)))], others);
        }

        var found = false;
        for (var i = 0; i <= others && i < parts.Count && !found; i++)
        {
            found = Load([parts[i].Load], others - i);
        }

        return found;
    }

    private bool Load(MetalLoad[] loads, int others)
    {
        Array.ForEach(loads, l => Take(l, 1));
        loaded.AddRange(loads);
        if (flasks.Sum() <= FewFlasks ? FillLast() : Parts() is { Count: > 0 } parts && Dive(parts, others))
        {
            return true;
        }

        loaded.RemoveRange(loaded.Count - loads.Length, loads.Length);
        Array.ForEach(loads, l => Take(l, -1));
        return false;
    }

    private void Take(MetalLoad load, int sign)
    {
        flasks[load.Size] -= sign;
        Array.ForEach(load.Content, c => left[c.Item] -= sign * c.Count);
    }

    private bool FillLast()
    {
        var last = new MetalFit(problem, flasks, left, stop);
        var answer = last.Look(Math.Clamp(end - Work, 0, WorkOfFew));
        workOfOthers += answer.Work;
        loaded.AddRange(answer.Fits == true ? last.Loads : []);
        return answer.Fits == true;
    }

    // The loads that the master takes parts of, the largest part first; none where the flasks that are left do not do, or work is at its end.
    private List<(MetalLoad Load, double Amount)> Parts()
    {
        var loads = known.Where(l => flasks[l.Size] > 0 && Array.TrueForAll(l.Content, c => c.Count <= left[c.Item])).ToList();

        // Of one size it is asked how many are needed, however many there are: that refutes all choices of fewer at once.
        int[] free = flasks.Length > 1 ? flasks : [left.Sum()];
        var master = new CoverMaster(left, free, free.Sum());
        loads.ForEach(l => master.Add(l.Content, l.Size, 1));
        var needed = master.Solve();
        while (FindMore(master, loads) && Work + master.Work < end && !stop.IsCancellationRequested)
        {
            needed = master.Solve();
        }

        workOfOthers += master.Work;
        return needed > flasks.Sum() * (1 + Doubt) || Work >= end ? []
            : [.. loads.Select((load, i) => (Load: load, Amount: master.AmountOf(i))).Where(p => p.Amount > Dust).OrderByDescending(p => p.Amount)];
    }

    private bool FindMore(CoverMaster master, List<MetalLoad> loads)
    {
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Math.Max(0, (long)(master.Duals[i] * Flask));
        }

        var before = loads.Count;
        if (!FindMore(coarse, master, loads) && loads.Count == before)
        {
            FindMore(fine, master, loads);
        }

        known.AddRange(loads.Skip(before));
        return loads.Count > before;
    }

    // Says whether there are no others.
    private bool FindMore(MetalKnapsack knapsack, CoverMaster master, List<MetalLoad> loads)
    {
        var isAll = true;
        for (var size = 0; size < flasks.Length; size++)
        {
            var dear = (1 + master.Duals[values.Length + size] + master.Duals[^1]) * Flask * (1 + Dust);
            left.CopyTo(offered, 0);
            for (var more = Math.Min(MostTogether, flasks[size]); more > 0; more--)
            {
                isAll &= Choose(knapsack, size) is not null;
                PackCount[] content = [.. Enumerable.Range(0, chosen.Length).Where(i => chosen[i] > 0).Select(i => new PackCount(i, chosen[i]))];
                if (content.Sum(c => c.Count * values[c.Item]) <= dear)
                {
                    break;
                }

                Array.ForEach(content, c => offered[c.Item] -= c.Count);
                master.Add(content, size, 1);
                loads.Add(new MetalLoad(size, problem.Sizes[size].Metal - content.Sum(c => c.Count * problem.Metals[c.Item]), content));
            }
        }

        return isAll;
    }

    private long? Choose(MetalKnapsack knapsack, int size)
    {
        int[] candidates = [.. problem.ByTail[size].Where(i => offered[i] > 0 && values[i] > 0)];
        Array.Clear(chosen);
        return knapsack.Choose(candidates, offered, values, problem.Sizes[size].Metal, chosen);
    }

    // What pieces were said to be worth last, and the most that a flask can be worth by that.
    private PackCut Cut()
    {
        all.CopyTo(offered, 0);
        Int128 total = 0;
        for (var i = 0; i < all.Length; i++)
        {
            total += (Int128)values[i] * all[i];
        }

        return new PackCut(total, [.. problem.Sizes.Select((_, size) => Choose(coarse, size) ?? Choose(fine, size) ?? -1)]);
    }
}
