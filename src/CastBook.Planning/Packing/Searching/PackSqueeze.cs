using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Searching;

/// <summary>Squeezes everything into given flasks: takes a few sectors of some trees off and hangs others, over and over.</summary>
/// <remarks>What is left over again and again is worth more and more, so that room is made for it. Only for pieces with sectors and without wishes.</remarks>
internal sealed class PackSqueeze(PackProblem problem, PackGreedy greedy, ulong seed)
{
    // A change that leaves no more over than so many changes ago is taken.
    private const int Memory = 40;

    // What is left over gains a part of its worth.
    private const int GainOfLeft = 64;

    private readonly TreeHanging hanging = new(problem);
    private readonly Chance chance = new(seed);
    private readonly long[] memory = new long[Memory];
    private readonly long[] atFirst = [.. greedy.Values(1, 0, urgent: false)];
    private readonly long[] worth = [.. greedy.Values(1, 0, urgent: false)];
    private readonly int[] candidates = new int[problem.Items.Length];
    private long calls;

    /// <summary>Whether it can be asked at all.</summary>
    /// <param name="problem">The problem.</param>
    public static bool Suits(PackProblem problem) =>
        problem.Pins == 0 && Array.TrueForAll(problem.Items, i => i.Shapes.All(s => !s.Fits || s.HasSector));

    /// <summary>Steps so far.</summary>
    public long Work => hanging.Work + calls;

    /// <summary>Packs everything, or gives up.</summary>
    /// <param name="sizes">The size of each flask.</param>
    /// <param name="start">Sectors to start from, for each flask; none for an empty tree.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends it early.</param>
    public PackPlan? Into(IReadOnlyList<int> sizes, IReadOnlyList<PackCount[][]> start, long work, CancellationToken stop)
    {
        int[] left = [.. problem.Items.Select(i => i.Quantity)];
        List<PackCount[]>[] trees = [.. sizes.Select((_, i) => i < start.Count ? start[i].ToList() : [])];
        foreach (var (item, count) in trees.SelectMany(t => t).SelectMany(c => c))
        {
            left[item] -= count;
        }

        for (var i = 0; i < trees.Length; i++)
        {
            Hang(sizes[i], trees[i], left, Perturbed());
        }

        var over = Over(left);
        Array.Fill(memory, over);
        var end = Work + work;
        for (var turn = 0; over > 0 && Work < end && !stop.IsCancellationRequested; turn++)
        {
            var changed = ((int[])left.Clone(), trees.ToArray());
            Change(sizes, changed.Item2, changed.Item1);
            var then = Over(changed.Item1);
            if (then <= over || then <= memory[turn % Memory])
            {
                (left, trees, over) = (changed.Item1, changed.Item2, then);
            }

            memory[turn % Memory] = over;
            for (var i = 0; i < left.Length; i++)
            {
                worth[i] += left[i] > 0 ? Math.Max(1, atFirst[i] / GainOfLeft) : 0;
            }
        }

        return over > 0 ? null : Plan(sizes, trees);
    }

    private void Change(IReadOnlyList<int> sizes, List<PackCount[]>[] trees, int[] left)
    {
        var count = Math.Min(trees.Length, 1 + Draw(3));
        var first = Draw(trees.Length);
        var values = Perturbed();
        for (var i = 0; i < count; i++)
        {
            var at = i == 0 ? first : Draw(trees.Length);
            var drop = 1 + Draw(3);
            trees[at] = [.. trees[at]];
            for (var d = 0; d < drop && trees[at].Count > 0; d++)
            {
                var sector = Draw(trees[at].Count);
                foreach (var (item, copies) in trees[at][sector])
                {
                    left[item] += copies;
                }

                trees[at].RemoveAt(sector);
            }
        }

        for (var i = 0; i < trees.Length; i++)
        {
            var at = (first + i) % trees.Length;
            Hang(sizes[at], trees[at] = [.. trees[at]], left, values);
        }
    }

    private void Hang(int size, List<PackCount[]> tree, int[] left, long[] values)
    {
        calls += problem.Items.Length * 20;
        var (lowest, highest) = (int.MinValue, int.MaxValue);
        foreach (var sector in tree)
        {
            foreach (var (item, _) in sector)
            {
                lowest = Math.Max(lowest, problem.Items[item].Lowest);
                highest = Math.Min(highest, problem.Items[item].Highest);
            }
        }

        var setting = Setting(lowest, highest);
        var count = 0;
        foreach (var i in problem.ByTail[size])
        {
            if (left[i] > 0 && problem.Items[i].MayBeCastAt(setting))
            {
                candidates[count++] = i;
            }
        }

        if (count > 0)
        {
            tree.AddRange(hanging.HangOn(size, tree, candidates.AsSpan(0, count), left, values));
        }
    }

    private int Setting(int lowest, int highest)
    {
        var start = Draw(problem.Settings.Length);
        for (var i = 0; i < problem.Settings.Length; i++)
        {
            var setting = problem.Settings[(start + i) % problem.Settings.Length];
            if (lowest <= setting && setting <= highest)
            {
                return setting;
            }
        }

        return highest;
    }

    private PackPlan Plan(IReadOnlyList<int> sizes, List<PackCount[]>[] trees)
    {
        var plan = PackPlan.Empty(problem);
        for (var i = 0; i < trees.Length; i++)
        {
            PackCount[] content = [.. trees[i].SelectMany(c => c).GroupBy(c => c.Item).OrderBy(g => g.Key).Select(g => new PackCount(g.Key, g.Sum(c => c.Count)))];
            if (content.Length > 0)
            {
                plan.Add(new PackedFlask(sizes[i], content, [.. trees[i]]) { Fill = content.Sum(c => c.Count * problem.Weights[c.Item]) });
            }
        }

        return plan;
    }

    private long Over(int[] left)
    {
        var over = 0L;
        for (var i = 0; i < left.Length; i++)
        {
            over += left[i] * problem.Weights[i];
        }

        return over;
    }

    private long[] Perturbed() => PackGreedy.Perturbed([.. worth], chance);

    private int Draw(int below) => (int)(chance.Next() * below);
}
