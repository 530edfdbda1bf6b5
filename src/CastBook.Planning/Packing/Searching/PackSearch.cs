using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Searching;

/// <summary>Makes a plan better: takes a few flasks apart and builds them anew, often aiming at cheaper flasks.</summary>
internal sealed class PackSearch(PackProblem problem, PackGreedy greedy, TreeFilling filling, ulong seed)
{
    // Tries to pack into given flasks.
    private const int MostTries = 60;

    private readonly Chance chance = new(seed);
    private readonly long[] lightest = Lightest(problem);
    private readonly int[] byCost = [.. Enumerable.Range(0, problem.Sizes.Length).OrderBy(s => problem.Sizes[s].Cost).ThenBy(s => s)];
    private readonly long[] shares = greedy.Values(1, 0, urgent: false);
    private readonly long[]?[] measures = new long[9][];
    private readonly List<int> targets = [];
    private readonly List<int> chosen = [];
    private readonly int[] alone = new int[problem.Items.Length];

    /// <summary>Steps so far.</summary>
    public long Work => filling.Work;

    /// <summary>Moves each tree into the cheapest free flask that takes all of it.</summary>
    /// <param name="plan">The plan.</param>
    public void Shrink(PackPlan plan)
    {
        for (var moved = true; moved;)
        {
            moved = false;
            for (var i = 0; i < plan.Flasks.Count; i++)
            {
                moved |= Shrink(plan, i);
            }
        }
    }

    /// <summary>Moves one tree into the cheapest free flask that takes all of it, and says whether there is one.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="at">The tree's place.</param>
    public bool Shrink(PackPlan plan, int at)
    {
        if (Cheaper(plan, plan.Flasks[at]) is not { } flask)
        {
            return false;
        }

        plan.RemoveAt(at);
        plan.Add(flask);
        return true;
    }

    /// <summary>Searches for a better plan.</summary>
    /// <param name="start">The plan to start from; it is not changed.</param>
    /// <param name="enough">A cost that no plan can go under, or that is as good as is asked; the search ends there.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="effort">How to search.</param>
    /// <param name="stop">Ends the search early.</param>
    public PackPlan Improve(PackPlan start, long enough, long work, PackEffort effort, CancellationToken stop)
    {
        var plan = start.Copy();
        var end = Work + work;
        for (var patience = effort.PatienceFor(plan); patience > 0 && Work < end && (plan.Lost > 0 || plan.Cost > enough); patience--)
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            if (Change(plan, effort.AtOnce) is { } changed && (!effort.Calm || changed.IsBetterThan(plan)))
            {
                patience = changed.IsBetterThan(plan) ? effort.PatienceFor(changed) : patience;
                plan = changed;
            }
        }

        return plan;
    }

    /// <summary>Packs everything that is left into flasks of given sizes, or gives up.</summary>
    /// <param name="plan">Takes the flasks.</param>
    /// <param name="sizes">The sizes, in the order in which they are filled.</param>
    /// <param name="values">What each piece is worth.</param>
    public bool Pack(PackPlan plan, IReadOnlyList<int> sizes, long[] values)
    {
        var pins = Enumerable.Range(0, problem.Pins).Where(plan.IsWanted).ToList();
        for (var i = 0; i < sizes.Count && plan.Lost > 0; i++)
        {
            var pin = i < pins.Count ? pins[i] : -1;
            (PackedFlask Flask, long Value)? best = null;
            foreach (var setting in greedy.SettingsFor(plan.Left))
            {
                if (plan.Free[sizes[i]] > 0 && filling.Fill(sizes[i], setting, pin, plan.Left, values) is { } filled
                    && (best is null || filled.Value > best.Value.Value))
                {
                    best = filled;
                }
            }

            if (best is not { } found || found.Flask.Content.Length == 0)
            {
                return false;
            }

            plan.Add(found.Flask);
        }

        return plan.Lost == 0;
    }

    /// <summary>Packs everything into so many flasks of each size, or gives up after some tries.</summary>
    /// <param name="counts">How many of each size.</param>
    /// <param name="end">The <see cref="Work"/> at which it gives up.</param>
    public PackPlan? PackInto(int[] counts, long end)
    {
        var sizes = Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(s, counts[s])).ToList();
        for (var tries = 0; tries < MostTries && Work < end; tries++)
        {
            Shuffle(sizes);
            var plan = PackPlan.Empty(problem);
            if (Pack(plan, sizes, Perturbed()))
            {
                return plan;
            }
        }

        return null;
    }

    private PackPlan? Change(PackPlan plan, int atOnce)
    {
        var count = Math.Min(plan.Flasks.Count, 1 + Draw(atOnce));
        var changed = plan.Copy();
        for (var i = 0; i < count; i++)
        {
            changed.RemoveAt(Draw(changed.Flasks.Count));
        }

        var values = Perturbed();
        var spent = plan.Cost - changed.Cost;
        if (plan.Lost == 0 && Draw(2) == 0)
        {
            if (Target(changed, count, spent) is not { } sizes || !Pack(changed, sizes, values))
            {
                return null;
            }
        }
        else
        {
            greedy.Fill(changed, values, plan.Lost > 0 ? long.MaxValue : plan.Cost + 1);
            if (changed.Cost <= plan.Cost && changed.Lost <= plan.Lost)
            {
                Shrink(changed);
            }
        }

        return changed.IsBetterThan(plan) || (!plan.IsBetterThan(changed) && Unevenness(changed) >= Unevenness(plan)) ? changed : null;
    }

    // A random choice of flasks that together are no dearer than those that were taken apart, and could hold the pieces.
    private List<int>? Target(PackPlan plan, int count, long spent)
    {
        var (metal, area, share) = (0L, 0L, 0L);
        for (var i = 0; i < plan.Left.Length; i++)
        {
            metal += plan.Left[i] * problem.Metals[i];
            area += plan.Left[i] * lightest[i];
            share += plan.Left[i] * problem.Spaces[i];
        }

        var choices = 0;
        targets.Clear();
        chosen.Clear();
        Choose(0, count, spent);
        if (choices == 0)
        {
            return null;
        }

        var length = targets.Count / choices;
        var start = Draw(choices) * length;
        chosen.AddRange(targets.GetRange(start, length).TakeWhile(size => size >= 0));
        Shuffle(chosen);
        return chosen;

        void Choose(int from, int more, long cost)
        {
            if (chosen.Count > 0 && CouldHold(chosen, metal, area, share))
            {
                choices++;
                targets.AddRange(chosen);
                targets.AddRange(Enumerable.Repeat(-1, count - chosen.Count));
            }

            for (var size = from; size < problem.Sizes.Length && more > 0; size++)
            {
                var free = plan.Free[size] - chosen.Count(s => s == size);
                if (free > 0 && problem.Sizes[size].Cost <= cost)
                {
                    chosen.Add(size);
                    Choose(size, more - 1, cost - problem.Sizes[size].Cost);
                    chosen.RemoveAt(chosen.Count - 1);
                }
            }
        }
    }

    private bool CouldHold(List<int> sizes, long metal, long area, long share)
    {
        foreach (var size in sizes)
        {
            metal -= problem.Sizes[size].Metal;
            area -= (long)PackShape.Turn * problem.Sizes[size].Rod;
        }

        // Spaces are rounded down, so that this never refuses what fits.
        return metal <= 0 && area <= 0 && share <= sizes.Count * 1_000_000L;
    }

    private PackedFlask? Cheaper(PackPlan plan, PackedFlask flask)
    {
        foreach (var size in byCost)
        {
            if (problem.Sizes[size].Cost >= problem.Sizes[flask.Size].Cost)
            {
                return null;
            }

            if (plan.Free[size] > 0 && (flask.Outgrown & Bit(size)) == 0)
            {
                if (Hung(size, flask) is { } hung)
                {
                    return hung;
                }

                flask.Outgrown |= Bit(size);
            }
        }

        return null;
    }

    private static ulong Bit(int size) => size < 64 ? 1UL << size : 0;

    // The same pieces in another size, where they all find room.
    private PackedFlask? Hung(int size, PackedFlask flask)
    {
        var (metal, area, setting, shapes) = (0L, 0L, int.MaxValue, problem.Shapes[size]);
        Array.Clear(alone);
        foreach (var (item, count) in flask.Content)
        {
            alone[item] = count;
            metal += count * problem.Metals[item];
            area += (long)count * shapes[item].Theta * shapes[item].Pitch;
            setting = Math.Min(setting, problem.Items[item].Highest);
        }

        return metal <= problem.Sizes[size].Metal && area <= (long)PackShape.Turn * problem.Sizes[size].Rod
            && filling.Fill(size, setting, flask.Pin, alone, shares) is { } filled && filled.Flask.Fill == flask.Fill ? filled.Flask : null;
    }

    private long[] Perturbed()
    {
        var (share, width) = (Draw(3), Draw(3));
        var measure = measures[(3 * share) + width] ??= greedy.Values(share, width, urgent: false);
        return PackGreedy.Perturbed([.. measure], chance);
    }

    private void Shuffle(List<int> sizes)
    {
        for (var i = sizes.Count - 1; i > 0; i--)
        {
            var j = Draw(i + 1);
            (sizes[i], sizes[j]) = (sizes[j], sizes[i]);
        }
    }

    private int Draw(int below) => (int)(chance.Next() * below);

    // Full flasks beside near-empty ones are one step from a flask saved.
    private static long Unevenness(PackPlan plan) => plan.Flasks.Sum(f => f.Fill / 1000 * (f.Fill / 1000));

    private static long[] Lightest(PackProblem problem) =>
    [
        .. problem.Items.Select(i => i.Shapes.Where(s => s.Fits).Select(s => (long)s.Theta * s.Pitch).DefaultIfEmpty(0).Min()),
    ];
}
