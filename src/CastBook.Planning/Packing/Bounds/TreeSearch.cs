using System.Runtime.CompilerServices;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Packing.Bounds;

/// <summary>The tree of a size that is worth most, copies and metal counted: every tree that could be worth more than is asked is looked at.</summary>
/// <remarks>
/// Sectors are hung widest first. What may still come is valued at prices for copies and metal (<see cref="TreeLimit"/>), and a sector
/// that leaves less than is asked even so is not followed. With good prices few are left. Only for pieces with sectors.
/// </remarks>
internal sealed class TreeSearch(PackProblem problem, int size)
{
    // What takes time, in steps of the tables: a look, a row of a table, and turning a tree further.
    private const long WorkOfOne = 24;
    private const long WorkOfRow = 40;
    private const long WorkOfTurn = 400;

    private static readonly long[] Nothing = new long[PackShape.Turn + 1];

    private readonly int rod = problem.Sizes[size].Rod;
    private readonly List<int[]> path = [];
    private readonly List<int> pathWidths = [];
    private int[] items = [];
    private long[] values = [];
    private long[] net = [];
    private int[] left = [];
    private int[] widths = [];
    private int[][] members = [];

    // For each width the first of its members that are as wide.
    private int[] lowestWide = [];
    private SectorTable[] tables = [];
    private PackShape[] shapes = [];
    private int[] coarse = [];

    // What is not in use: tables are large, and all of these are wanted at every turn.
    private readonly Stack<SectorTable> spare = new();
    private readonly Stack<long[]> spareTurns = new();
    private readonly Stack<int[]> sparePaths = new();
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
        sparePaths.Clear();
        Coarsen();
        Tabulate();
        Hang(0, PackShape.Turn, 0, 0);
        Return(0, tables, [], turns);
        best = tree;
        return Work < end ? most : null;
    }

    // For each width the best sector no wider, by height and the pieces that may still come; and for each angle the best sectors.
    private void Tabulate()
    {
        widths = [.. Enumerable.Range(0, items.Length).Select(i => shapes[i].Theta).Distinct().OrderDescending()];
        members = [.. widths.Select(w => Enumerable.Range(0, items.Length).Where(i => shapes[i].Theta <= w).ToArray())];
        lowestWide = [.. widths.Select((w, k) => Array.FindIndex(members[k], m => shapes[m].Theta == w))];
        tables = [.. members.Select(Table)];
        turns = Turns(0, PackShape.Turn);
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

    // Up to an angle: what sectors of each width and narrower are worth together.
    private long[][] Turns(int from, int angle)
    {
        var best = new long[widths.Length + 1][];
        best[^1] = Nothing;
        for (var k = widths.Length - 1; k >= from; k--)
        {
            var (width, worth, narrower) = (widths[k], Best(k), best[k + 1]);
            if (width > angle || worth <= 0)
            {
                best[k] = narrower;
                continue;
            }

            var turn = best[k] = spareTurns.Count > 0 ? spareTurns.Pop() : new long[PackShape.Turn + 1];
            narrower.AsSpan(0, angle + 1).CopyTo(turn);
            for (var a = width; a <= angle; a++)
            {
                turn[a] = Math.Max(turn[a], turn[a - width] + worth);
            }

            Work += 2 * (angle - width);
        }

        return best;
    }

    // Values are rounded up to what the table counts in.
    private SectorTable Table(int[] among)
    {
        var table = spare.Count > 0 ? spare.Pop() : new SectorTable(items.Length, rod);
        table.Clear(items.Length);
        for (var j = 0; j < among.Length; j++)
        {
            ref readonly var shape = ref shapes[among[j]];
            var passes = table.Add(coarse[among[j]], left[among[j]], shape.Pitch, rod - shape.Tail);
            Work += passes > 0 ? WorkOfRow + (passes * ((rod - shape.Tail) >> 2)) : 1;
        }

        return table;
    }

    private void Return(int from, SectorTable[] used, SectorTable[] kept, long[][] usedTurns)
    {
        for (var i = from; i < used.Length; i++)
        {
            if (kept.Length == 0 || used[i] != kept[i])
            {
                spare.Push(used[i]);
            }

            if (usedTurns[i] != usedTurns[i + 1])
            {
                spareTurns.Push(usedTurns[i]);
            }
        }
    }

    private long Best(int k) => (long)tables[k].Best << shift;

    // The next sector is of this width or narrower.
    private void Hang(int from, int angle, long hung, long worth)
    {
        for (var k = from; k < widths.Length && Work < end; k++)
        {
            if (widths[k] <= angle && hung + Best(k) + turns[k][angle - widths[k]] + atPrices > most)
            {
                var before = pathWidths.Count > 0 && pathWidths[^1] == k ? path[^1] : null;
                path.Add(sparePaths.Count > 0 ? sparePaths.Pop() : new int[items.Length]);
                pathWidths.Add(k);
                Fill(k, members[k].Length, rod, angle, hung, worth, before, isWide: false);
                sparePaths.Push(path[^1]);
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
        Work += WorkOfTurn;
        tables = new SectorTable[widths.Length];
        for (var i = k; i < widths.Length; i++)
        {
            tables[i] = widths[i] <= angle ? Table(members[i]) : formerTables[i];
        }

        turns = Turns(k, angle);
        Hang(k, angle, hung, worth);
        Return(k, tables, formerTables, turns);
        (tables, turns) = (formerTables, formerTurns);
    }

    // Piece by piece from the top down. Of sectors as wide as the one before only those that come after it are looked at.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Fill(int k, int j, int height, int angle, long hung, long worth, int[]? before, bool isWide)
    {
        var (table, among, sector) = (tables[k], members[k], path[^1]);
        var rest = turns[k][angle - widths[k]] + atPrices;
        for (; ; j--)
        {
            Work += WorkOfOne;
            if (Work >= end || hung + ((long)table.At(j, height) << shift) + rest <= most || (!isWide && j <= lowestWide[k]))
            {
                return;
            }

            if (j == 0)
            {
                Take(worth);
                Next(k, angle - widths[k], hung, worth);
                return;
            }

            var member = among[j - 1];
            ref readonly var shape = ref shapes[member];
            height = Math.Min(height, Math.Max(0, rod - shape.Tail));
            var (weight, isWidest) = (problem.Metals[items[member]], shape.Theta == widths[k]);
            var count = Math.Min(left[member], height / shape.Pitch);
            count = before is null ? count : Math.Min(count, before[member]);
            count = weight > 0 ? (int)Math.Min(count, metal / weight) : count;
            for (var c = count; c > 0; c--)
            {
                left[member] -= c;
                metal -= c * weight;
                sector[member] = c;
                Fill(
                    k, j - 1, height - (c * shape.Pitch), angle, hung + (c * net[member]), worth + (c * values[member]),
                    before is not null && before[member] == c ? before : null, isWide || isWidest);
                left[member] += c;
                metal += c * weight;
                sector[member] = 0;
            }

            before = before is not null && before[member] == 0 ? before : null;
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
