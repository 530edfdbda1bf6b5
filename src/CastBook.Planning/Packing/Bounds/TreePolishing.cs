using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Bounds;

/// <summary>Makes a tree worth more: takes a few of its sectors off and hangs others, and keeps what is worth no less.</summary>
/// <remarks>A tree that is worth just what it costs, as those are that a master chooses, is one step from one that is worth more.</remarks>
/// <param name="problem">The problem.</param>
internal sealed class TreePolishing(PackProblem problem)
{
    private const int MostOff = 3;

    // Sectors are chosen as if pieces were worth up to a fifth more or less.
    private const int Percent = 20;

    // What copying takes, in steps of the tables.
    private const long WorkOfOne = 20;

    private readonly TreeHanging hanging = new(problem);
    private readonly Chance chance = new(1);
    private readonly int[] candidates = new int[problem.Items.Length];
    private readonly int[] left = new int[problem.Items.Length];
    private readonly int[] tried = new int[problem.Items.Length];
    private readonly long[] worths = new long[problem.Items.Length];
    private long calls;

    /// <summary>Steps so far.</summary>
    public long Work => hanging.Work + calls;

    /// <summary>A tree that is worth more; nothing where none was found.</summary>
    /// <param name="tree">The tree, all of it in sectors.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <param name="moves">How often something is tried.</param>
    public (PackedFlask Flask, long Value)? Better(PackedFlask tree, long[] values, int moves)
    {
        for (var i = 0; i < left.Length; i++)
        {
            left[i] = problem.Items[i].Quantity;
        }

        var (best, setting, first) = (tree.Columns.ToList(), int.MaxValue, Worth(tree.Columns, values));
        foreach (var (item, count) in tree.Content)
        {
            left[item] -= count;
            setting = Math.Min(setting, problem.Items[item].Highest);
        }

        var most = first;
        for (var move = 0; move < moves; move++)
        {
            var changed = Changed(tree.Size, setting, best, values);
            if (Worth(changed, values) is var worth && worth >= most)
            {
                (best, most) = (changed, worth);
                tried.CopyTo(left, 0);
            }
        }

        return most > first ? (PackedFlask.Of(problem, tree.Size, [.. best]), most) : null;
    }

    private List<PackCount[]> Changed(int size, int setting, List<PackCount[]> sectors, long[] values)
    {
        calls += problem.Items.Length * WorkOfOne;
        var changed = sectors.ToList();
        left.CopyTo(tried, 0);
        for (var off = 1 + Draw(MostOff); off > 0 && changed.Count > 0; off--)
        {
            var at = Draw(changed.Count);
            foreach (var (item, count) in changed[at])
            {
                tried[item] += count;
            }

            changed.RemoveAt(at);
        }

        var found = 0;
        foreach (var i in problem.ByTail[size])
        {
            var item = problem.Items[i];
            if (tried[i] > 0 && values[i] > 0 && item.MayBeCastAt(setting))
            {
                worths[i] = values[i] * (100 - Percent + Draw((2 * Percent) + 1)) / 100;
                candidates[found++] = i;
            }
        }

        changed.AddRange(hanging.HangOn(size, changed, candidates.AsSpan(0, found), tried, worths));
        return changed;
    }

    private static long Worth(IEnumerable<PackCount[]> sectors, long[] values)
    {
        var worth = 0L;
        foreach (var sector in sectors)
        {
            foreach (var (item, count) in sector)
            {
                worth += count * values[item];
            }
        }

        return worth;
    }

    private int Draw(int below) => (int)(chance.Next() * below);
}
