using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <summary>Which pieces make best use of the metal a tree may take, space apart.</summary>
internal sealed class MetalKnapsack(PackProblem problem)
{
    // The table is no finer than this; pieces are rounded up to it and the room down, so that what it chooses can be poured.
    private const long MostCells = 1024;

    private readonly List<(int Item, int Count)> rows = [];
    private readonly long[] best = new long[MostCells + 1];
    private bool[] taken = [];

    /// <summary>Steps of the table so far.</summary>
    public long Work { get; private set; }

    /// <summary>Chooses pieces.</summary>
    /// <param name="candidates">The pieces.</param>
    /// <param name="left">How many of each piece there are.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <param name="room">The most metal.</param>
    /// <param name="chosen">Takes how many of each piece are chosen; other pieces are not touched.</param>
    public void Choose(ReadOnlySpan<int> candidates, int[] left, long[] values, long room, int[] chosen)
    {
        var unit = Unit(candidates, room);
        var cells = (int)(room / unit);
        rows.Clear();
        Array.Clear(best);
        foreach (var item in candidates)
        {
            chosen[item] = 0;
            var metal = Math.Max(1, (problem.Metals[item] + unit - 1) / unit);
            var copies = (int)Math.Min(left[item], cells / metal);
            for (var count = 1; copies > 0; copies -= count, count = Math.Min(count * 2, copies))
            {
                Offer(item, count, (int)metal * count, values[item] * count, cells);
            }
        }

        var at = cells;
        for (var r = rows.Count - 1; r >= 0; r--)
        {
            if (taken[(r * (cells + 1)) + at])
            {
                var (item, count) = rows[r];
                chosen[item] += count;
                at -= count * (int)Math.Max(1, (problem.Metals[item] + unit - 1) / unit);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Offer(int item, int count, int metal, long value, int cells)
    {
        var from = rows.Count * (cells + 1);
        rows.Add((item, count));
        if (taken.Length < from + cells + 1)
        {
            Array.Resize(ref taken, (from + cells + 1) * 2);
        }

        var marks = taken.AsSpan(from, cells + 1);
        marks.Clear();
        Work += cells;
        for (var at = cells; at >= metal; at--)
        {
            var with = best[at - metal] + value;
            if (with > best[at])
            {
                best[at] = with;
                marks[at] = true;
            }
        }
    }

    private long Unit(ReadOnlySpan<int> candidates, long room)
    {
        var common = room;
        foreach (var item in candidates)
        {
            var (a, b) = (common, problem.Metals[item]);
            while (b > 0)
            {
                (a, b) = (b, a % b);
            }

            common = a;
        }

        return Math.Max(Math.Max(1, common), (room + MostCells - 1) / MostCells);
    }
}
