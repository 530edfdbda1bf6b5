using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing.Bounds;

/// <summary>The most that any tree of a size and flask setting can be worth.</summary>
/// <remarks>
/// Sectors are filled each as if it were the only one, so that copies and metal may be used too often; prices on copies and metal
/// make that unattractive. Whatever the prices, the answer is never less than what a real tree is worth.
/// </remarks>
internal sealed partial class TreeLimit
{
    private const int MostWidths = 72;
    private const int MetalBits = 10;

    private readonly PackProblem problem;
    private readonly int size;
    private readonly int[] members;
    private readonly PackShape[] shapes;
    private readonly int[] quantities;
    private readonly long[] copyPrices;
    private readonly long[] net;
    private readonly int[] used;
    private readonly long[] angleBest = new long[PackShape.Turn + 1];
    private readonly int[] angleColumn = new int[PackShape.Turn + 1];
    private readonly ColumnKnapsack knapsack = new();
    private readonly TreeSearch? search;
    private readonly List<(int Width, long Value, int[] Counts)> columns = [];
    private readonly ColumnPiece[] pieces;
    private readonly int[] indices;
    private readonly int[] counts;
    private long metalPrice;
    private PackedFlask? hung;

    /// <summary>Prepares for a size and setting.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="size">The size.</param>
    /// <param name="members">The pieces that may hang in it, in the order in which they hang.</param>
    public TreeLimit(PackProblem problem, int size, int[] members)
    {
        (this.problem, this.size, this.members) = (problem, size, members);
        (shapes, quantities) = ([.. members.Select(m => problem.Shapes[size][m])], [.. members.Select(m => problem.Items[m].Quantity)]);
        (copyPrices, net, used) = (new long[members.Length], new long[members.Length], new int[members.Length]);
        (pieces, indices, counts) = (new ColumnPiece[members.Length], new int[members.Length], new int[members.Length]);
        search = Array.TrueForAll(members, m => problem.Items[m].Shapes[size].HasSector) ? new TreeSearch(problem, size) : null;
    }

    /// <summary>The size.</summary>
    public int Size => size;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>The limit.</summary>
    /// <param name="values">What each piece is worth, not negative.</param>
    /// <param name="enough">A limit as low as this needs no better prices.</param>
    /// <param name="rounds">How often prices are bettered at most.</param>
    /// <param name="work">How many steps to spend looking for the very best tree.</param>
    /// <param name="tree">Takes a tree that fits and is worth much.</param>
    public long Of(long[] values, long enough, int rounds, long work, out PackCount[] tree)
    {
        (hung, IsCutShort) = (null, false);
        var (best, bestMetal, pace, fruitless) = (long.MaxValue, metalPrice, 1.0, 0);
        var bestCopies = (long[])copyPrices.Clone();
        (tree, var most) = ([], 0L);
        for (var round = 0; ; round++)
        {
            var limit = Limit(values);
            if (limit < best)
            {
                fruitless = limit < best - (best / 1000) ? 0 : fruitless + 1;
                (best, bestMetal) = (limit, metalPrice);
                copyPrices.CopyTo(bestCopies, 0);
            }
            else
            {
                fruitless++;
            }

            if (fruitless > 4)
            {
                (pace, fruitless) = (pace / 2, 0);
            }

            var fitting = Fitting(values, out var worth);
            if (worth > most)
            {
                (tree, most) = (fitting, worth);
            }

            if (best <= enough || best <= most || round >= rounds || !Reprice(limit - Math.Max(most, enough), pace))
            {
                break;
            }
        }

        bestCopies.CopyTo(copyPrices, 0);
        metalPrice = bestMetal;
        return best <= enough || most > enough ? best : Searched(values, best, enough, work, ref tree);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private long Limit(long[] values)
    {
        Price(values);
        FillColumns();
        FillTurn();
        return AtPrices() + TakeShares();
    }

    private void FillColumns()
    {
        columns.Clear();
        var widths = new List<int>();
        for (var i = 0; i < members.Length; i++)
        {
            var theta = shapes[i].Theta;
            if (net[i] > 0 && theta > 0 && !widths.Contains(theta))
            {
                widths.Add(theta);
            }
        }

        widths.Sort();
        var group = (widths.Count + MostWidths - 1) / MostWidths;
        for (var w = 0; w < widths.Count; w += Math.Max(1, group))
        {
            // Of widths that are looked at together, the widest piece counts as the narrowest.
            FillColumn(widths[w], widths[Math.Min(widths.Count, w + group) - 1]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillColumn(int width, int widest)
    {
        var found = 0;
        for (var i = 0; i < members.Length; i++)
        {
            var shape = shapes[i];
            if (net[i] > 0 && shape.HasSector && shape.Theta <= widest)
            {
                pieces[found] = new ColumnPiece(shape.Pitch, shape.Tail, net[i], quantities[i]);
                indices[found++] = i;
            }
        }

        var before = knapsack.Work;
        var value = knapsack.Solve(pieces.AsSpan(0, found), problem.Sizes[size].Rod);
        Work += knapsack.Work - before;
        knapsack.Take(counts.AsSpan(0, found));
        var column = new int[members.Length];
        for (var i = 0; i < found; i++)
        {
            column[indices[i]] = counts[i];
        }

        columns.Add((width, value, column));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillTurn()
    {
        angleBest[0] = 0;
        var sectors = CollectionsMarshal.AsSpan(columns);
        for (var angle = 1; angle <= PackShape.Turn; angle++)
        {
            var (most, column) = (angleBest[angle - 1], -1);
            for (var c = 0; c < sectors.Length && sectors[c].Width <= angle; c++)
            {
                var worth = angleBest[angle - sectors[c].Width] + sectors[c].Value;
                (most, column) = worth > most ? (worth, c) : (most, column);
            }

            (angleBest[angle], angleColumn[angle]) = (most, column);
        }

        Work += (long)PackShape.Turn * columns.Count;
    }

    // Pieces of which only a share is known, in parts of pieces, beside the sectors.
    private long TakeShares()
    {
        var shares = new List<int>();
        for (var i = 0; i < members.Length; i++)
        {
            if (net[i] > 0 && shapes[i].Share > 0)
            {
                shares.Add(i);
            }
        }

        shares.Sort((a, b) => (net[b] * (double)Share(a)).CompareTo(net[a] * (double)Share(b)));
        var (most, angleOfMost) = (-1L, 0);
        for (var angle = shares.Count == 0 ? PackShape.Turn : 0; angle <= PackShape.Turn; angle++)
        {
            var worth = angleBest[angle] + (long)Math.Ceiling(ByShare(shares, PackShape.Turn - angle, take: false));
            (most, angleOfMost) = worth > most ? (worth, angle) : (most, angleOfMost);
        }

        Array.Clear(used);
        ByShare(shares, PackShape.Turn - angleOfMost, take: true);
        for (var angle = angleOfMost; angle > 0;)
        {
            var column = angleColumn[angle];
            for (var i = 0; column >= 0 && i < used.Length; i++)
            {
                used[i] += columns[column].Counts[i];
            }

            angle -= column < 0 ? 1 : columns[column].Width;
        }

        return most;
    }

    private long Share(int member) => shapes[member].Share;

    private double ByShare(List<int> shares, int angle, bool take)
    {
        var (room, worth) = (angle * (double)PackShape.Whole / PackShape.Turn, 0.0);
        foreach (var i in shares)
        {
            var count = Math.Min(quantities[i], room / Share(i));
            worth += count * net[i];
            room -= count * Share(i);
            used[i] = take ? (int)count : used[i];
        }

        // What floating point may lose is given back.
        return worth * (1 + 1e-12);
    }

    // The tree as far as copies and metal go round.
    private PackCount[] Fitting(long[] values, out long worth)
    {
        var tree = new List<PackCount>();
        var metal = problem.Sizes[size].Metal;
        worth = 0;
        for (var i = 0; i < members.Length; i++)
        {
            var item = problem.Items[members[i]];
            var count = (int)Math.Min(Math.Min(used[i], item.Quantity), item.Metal <= 0 ? int.MaxValue : metal / item.Metal);
            if (count > 0 && IsNarrow(i))
            {
                metal -= count * item.Metal;
                worth += count * values[members[i]];
                tree.Add(new PackCount(members[i], count));
            }
        }

        return [.. tree];
    }

    // Where widths were looked at together, only the narrowest is sure to fit.
    private bool IsNarrow(int member)
    {
        var theta = shapes[member].Theta;
        return theta == 0 || columns.Exists(c => c.Width == theta);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Reprice(long gap, double pace)
    {
        var (norm, metal) = (0.0, (double)problem.Sizes[size].Metal);
        for (var i = 0; i < members.Length; i++)
        {
            var item = problem.Items[members[i]];
            double over = used[i] - item.Quantity;
            norm += over > 0 || copyPrices[i] > 0 ? over * over : 0;
            metal -= (double)used[i] * item.Metal;
        }

        // The metal of a flask counts as a few pieces.
        var short_ = -3 * metal / Math.Max(1, problem.Sizes[size].Metal);
        norm += short_ > 0 || metalPrice > 0 ? short_ * short_ : 0;
        if (norm <= 1e-9)
        {
            return false;
        }

        var stride = pace * gap / norm;
        for (var i = 0; i < members.Length; i++)
        {
            copyPrices[i] = Math.Max(0, copyPrices[i] + (long)(stride * (used[i] - quantities[i])));
        }

        metalPrice = Math.Max(0, metalPrice + (long)(stride * short_ * 3 * (1 << MetalBits) / Math.Max(1, problem.Sizes[size].Metal)));
        return true;
    }
}
