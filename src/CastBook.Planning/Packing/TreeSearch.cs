using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing;

/// <summary>The tree of a size that is worth most, copies and metal counted: every tree that could be worth more than is asked is looked at.</summary>
/// <remarks>
/// Sectors are hung widest first. What may still come is valued at prices for copies and metal (<see cref="TreeLimit"/>), and a sector
/// that leaves less than is asked even so is not followed. With good prices few are left. Only for pieces with sectors.
/// </remarks>
internal sealed class TreeSearch(PackProblem problem, int size)
{
    // What one look takes, in steps of the tables.
    private const long WorkOfOne = 12;

    private readonly int rod = problem.Sizes[size].Rod;
    private readonly List<int[]> path = [];
    private readonly List<int> pathWidths = [];
    private int[] items = [];
    private long[] values = [];
    private long[] net = [];
    private int[] left = [];
    private int[] widths = [];
    private int[][] members = [];
    private int[][] tables = [];
    private PackShape[] shapes = [];
    private int[] coarse = [];

    // Tables that are not in use: they are large, and new ones are wanted at every turn.
    private readonly Stack<int[]> spare = new();
    private int shift;
    private long[][] turns = [];
    private long metal;
    private long atPrices;
    private long most;
    private long end;
    private PackedFlask? tree;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>Looks for the tree that is worth most.</summary>
    /// <param name="from">The pieces, in the order in which they hang; each has a sector.</param>
    /// <param name="worth">What each is worth.</param>
    /// <param name="netWorth">What each is worth less its prices, rounded up.</param>
    /// <param name="prices">What the copies and the metal there are cost at these prices.</param>
    /// <param name="atLeast">Only trees that are worth more count.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="best">Takes the best tree; nothing where none is worth more.</param>
    /// <returns>The most that any tree is worth, or what was asked if none is worth more; nothing where the work did not suffice.</returns>
    public long? Most(ReadOnlySpan<int> from, ReadOnlySpan<long> worth, ReadOnlySpan<long> netWorth, long prices, long atLeast, long work, out PackedFlask? best)
    {
        (items, values, net) = (from.ToArray(), worth.ToArray(), netWorth.ToArray());
        left = [.. items.Select(i => problem.Items[i].Quantity)];
        (metal, most, atPrices, tree, end) = (problem.Sizes[size].Metal, atLeast, prices, null, Work + work);
        shapes = [.. items.Select(i => problem.Shapes[size][i])];
        path.Clear();
        pathWidths.Clear();
        Coarsen();
        Tabulate();
        Hang(0, PackShape.Turn, 0, 0);
        Array.ForEach(tables, spare.Push);
        best = tree;
        return Work < end ? most : null;
    }

    // For each width the best sector no wider, by height and the pieces that may still come; and for each angle the best sectors.
    private void Tabulate()
    {
        widths = [.. Enumerable.Range(0, items.Length).Select(i => shapes[i].Theta).Distinct().OrderDescending()];
        members = [.. widths.Select(w => Enumerable.Range(0, items.Length).Where(i => shapes[i].Theta <= w).ToArray())];
        tables = [.. members.Select(Table)];
        turns = Turns(0);
    }

    // So that all pieces together stay within the whole numbers of a table.
    private void Coarsen()
    {
        shift = 0;
        for (var all = net.Select((n, i) => Math.Max(0.0, n) * left[i]).Sum() + left.Sum(); all >= 1 << 29; all /= 2)
        {
            shift++;
        }

        coarse = [.. net.Select(n => n <= 0 ? 0 : (int)((n + (1L << shift) - 1) >> shift))];
    }

    private long[][] Turns(int from)
    {
        var best = new long[widths.Length + 1][];
        best[^1] = new long[PackShape.Turn + 1];
        for (var k = widths.Length - 1; k >= from; k--)
        {
            best[k] = (long[])best[k + 1].Clone();
            for (var angle = widths[k]; angle <= PackShape.Turn; angle++)
            {
                best[k][angle] = Math.Max(best[k][angle], best[k][angle - widths[k]] + Best(k));
            }
        }

        return best;
    }

    // By pieces that may still come, then by height; values are rounded up to what the table counts in.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int[] Table(int[] among)
    {
        var stride = rod + 1;
        var table = spare.Count > 0 ? spare.Pop() : [];
        table = table.Length >= (among.Length + 1) * stride ? table : new int[(items.Length + 1) * stride];
        Array.Clear(table, 0, stride);
        for (var j = 0; j < among.Length; j++)
        {
            var (shape, worth, last) = (shapes[among[j]], coarse[among[j]], rod - shapes[among[j]].Tail);
            var without = table.AsSpan(j * stride, stride);
            var with = table.AsSpan((j + 1) * stride, stride);
            without.CopyTo(with);
            if (worth <= 0 || left[among[j]] <= 0 || shape.Pitch > last)
            {
                continue;
            }

            for (var count = 1; count <= left[among[j]] && count * shape.Pitch <= last; count++)
            {
                Offer(without[..(last + 1)], with[..(last + 1)], count * shape.Pitch, count * worth);
                Work += last >> 2;
            }

            with[(last + 1)..].Fill(Math.Max(with[last], with[^1]));
        }

        return table;
    }

    /// <summary>Takes so much of a length, or leaves it: what it is worth together with the best of the rest, at every length.</summary>
    /// <param name="without">The best without it, by length.</param>
    /// <param name="with">The best so far with it; as long.</param>
    /// <param name="length">The length it takes.</param>
    /// <param name="worth">What it is worth.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Offer(ReadOnlySpan<int> without, Span<int> with, int length, int worth)
    {
        ref var from = ref MemoryMarshal.GetReference(without);
        ref var to = ref MemoryMarshal.GetReference(with);
        var (h, end) = (length, with.Length);
        var more = new Vector<int>(worth);
        for (; h <= end - Vector<int>.Count; h += Vector<int>.Count)
        {
            var taken = Vector.LoadUnsafe(ref from, (nuint)(h - length)) + more;
            Vector.Max(Vector.LoadUnsafe(ref to, (nuint)h), taken).StoreUnsafe(ref to, (nuint)h);
        }

        for (; h < end; h++)
        {
            with[h] = Math.Max(with[h], without[h - length] + worth);
        }
    }

    private long Best(int k) => (long)tables[k][(members[k].Length * (rod + 1)) + rod] << shift;

    // The next sector is of this width or narrower.
    private void Hang(int from, int angle, long hung, long worth)
    {
        for (var k = from; k < widths.Length && Work < end; k++)
        {
            if (widths[k] <= angle && hung + Best(k) + turns[k][angle - widths[k]] + atPrices > most)
            {
                var before = pathWidths.Count > 0 && pathWidths[^1] == k ? path[^1] : null;
                path.Add(new int[items.Length]);
                pathWidths.Add(k);
                Fill(k, members[k].Length, rod, angle, hung, worth, before, isWide: false);
                path.RemoveAt(path.Count - 1);
                pathWidths.RemoveAt(pathWidths.Count - 1);
            }
        }
    }

    // With what is left the sectors to come are worth less.
    private void Next(int k, int angle, long hung, long worth)
    {
        if (angle < widths[^1] || hung + turns[k][angle] + atPrices <= most)
        {
            return;
        }

        // The last sector is found sooner than others are valued again.
        if (angle < 2 * widths[^1])
        {
            Hang(k, angle, hung, worth);
            return;
        }

        var (formerTables, formerTurns) = (tables, turns);
        tables = new int[widths.Length][];
        for (var i = k; i < widths.Length; i++)
        {
            tables[i] = widths[i] <= angle ? Table(members[i]) : formerTables[i];
        }

        turns = Turns(k);
        Hang(k, angle, hung, worth);
        for (var i = k; i < widths.Length; i++)
        {
            if (tables[i] != formerTables[i])
            {
                spare.Push(tables[i]);
            }
        }

        (tables, turns) = (formerTables, formerTurns);
    }

    // Piece by piece from the top down. Of sectors as wide as the one before only those that come after it are looked at.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Fill(int k, int j, int height, int angle, long hung, long worth, int[]? before, bool isWide)
    {
        Work += WorkOfOne;
        if (Work >= end || hung + ((long)tables[k][(j * (rod + 1)) + height] << shift) + turns[k][angle - widths[k]] + atPrices <= most)
        {
            return;
        }

        if (j == 0)
        {
            if (isWide)
            {
                Take(worth);
                Next(k, angle - widths[k], hung, worth);
            }

            return;
        }

        var member = members[k][j - 1];
        ref readonly var shape = ref shapes[member];
        height = Math.Min(height, Math.Max(0, rod - shape.Tail));
        var (weight, isWidest) = (problem.Metals[items[member]], shape.Theta == widths[k]);
        var count = Math.Min(left[member], height / shape.Pitch);
        count = before is null ? count : Math.Min(count, before[member]);
        count = weight > 0 ? (int)Math.Min(count, metal / weight) : count;
        for (var c = count; c >= 0; c--)
        {
            left[member] -= c;
            metal -= c * weight;
            path[^1][member] = c;
            Fill(
                k, j - 1, height - (c * shape.Pitch), angle, hung + (c * net[member]), worth + (c * values[member]),
                before is not null && before[member] == c ? before : null, isWide || (isWidest && c > 0));
            left[member] += c;
            metal += c * weight;
            path[^1][member] = 0;
        }
    }

    private void Take(long worth)
    {
        if (worth > most)
        {
            most = worth;
            tree = new PackedFlask(size, [.. Counts(m => path.Sum(p => p[m])).OrderBy(c => c.Item)], [.. path.Select(p => Counts(m => p[m]).ToArray())])
            {
                Fill = items.Select((item, member) => problem.Weights[item] * path.Sum(p => p[member])).Sum(),
            };
        }
    }

    private IEnumerable<PackCount> Counts(Func<int, int> of) => items.Select((item, member) => new PackCount(item, of(member))).Where(c => c.Count > 0);
}
