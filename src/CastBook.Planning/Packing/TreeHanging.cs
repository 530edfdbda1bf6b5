using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <summary>Hangs one tree, sector by sector: each time the sector that is worth most for the angle it takes.</summary>
internal sealed partial class TreeHanging(PackProblem problem)
{
    private readonly ColumnKnapsack knapsack = new();
    private readonly SectorWidths widths = new();
    private readonly KnownSectors known = new();
    private readonly int[] hung = new int[problem.Items.Length];
    private readonly List<PackCount> columns = [];
    private readonly List<int> columnEnds = [];
    private int[] members = new int[16];
    private ColumnPiece[] pieces = new ColumnPiece[16];
    private int[] counts = new int[16];
    private int[] densest = new int[16];
    private double[] thinness = new double[16];
    private PackCount[] column = new PackCount[16];
    private PackCount[] taken = new PackCount[16];
    private PackShape[] shapes = [];
    private int columnLength;
    private int memberCount;
    private int size;
    private int usedAngle;
    private long usedShare;
    private long freeMetal;

    /// <summary>Steps so far.</summary>
    public long Work => knapsack.Work + widths.Work;

    /// <summary>Hangs a tree.</summary>
    /// <param name="flaskSize">The flask size.</param>
    /// <param name="candidates">Pieces that fit it, in the order in which they hang.</param>
    /// <param name="left">How many of each piece there are; what is hung is taken off.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <returns>What all that hangs is worth.</returns>
    public long Hang(int flaskSize, ReadOnlySpan<int> candidates, int[] left, long[] values)
    {
        Clear(flaskSize);
        return HangMore(candidates, left, values);
    }

    private void Clear(int flaskSize)
    {
        (size, usedAngle, usedShare, freeMetal) = (flaskSize, 0, 0, problem.Sizes[flaskSize].Metal);
        shapes = problem.Shapes[flaskSize];
        columns.Clear();
        columnEnds.Clear();
    }

    private long HangMore(ReadOnlySpan<int> candidates, int[] left, long[] values)
    {
        Reserve(candidates.Length);
        foreach (var item in candidates)
        {
            hung[item] = 0;
        }

        SortByDensity(candidates, values);
        known.Clear();
        while (Best(candidates, left, values))
        {
            while (Take(left))
            {
            }
        }

        var value = 0L;
        foreach (var item in candidates)
        {
            value += values[item] * hung[item];
        }

        return value;
    }

    /// <summary>The tree that was hung last.</summary>
    /// <param name="candidates">The pieces that were offered.</param>
    public PackedFlask Hung(ReadOnlySpan<int> candidates)
    {
        var (found, fill) = (0, 0L);
        foreach (var item in candidates)
        {
            found += hung[item] > 0 ? 1 : 0;
            fill += hung[item] * problem.Weights[item];
        }

        var content = new PackCount[found];
        foreach (var item in candidates)
        {
            if (hung[item] > 0)
            {
                content[--found] = new PackCount(item, hung[item]);
            }
        }

        Array.Sort(content, static (a, b) => a.Item.CompareTo(b.Item));
        return new PackedFlask(size, content, Sectors()) { Fill = fill };
    }

    private int FreeAngle => PackShape.Turn - usedAngle - PackShape.Angle(usedShare);

    private void Reserve(int count)
    {
        if (members.Length < count)
        {
            (members, pieces, counts, column) = (new int[count], new ColumnPiece[count], new int[count], new PackCount[count]);
            (densest, thinness, taken) = (new int[count], new double[count], new PackCount[count]);
        }
    }

    // The best sector, or some pieces of which only a share of the tree is known.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Best(ReadOnlySpan<int> candidates, int[] left, long[] values)
    {
        columnLength = 0;
        var (mostValue, ofAngle) = (0L, 1);
        OfferWidths(candidates.Length, left, values);

        // The most promising width first; what promises no more than the best found is not worked out.
        while (widths.Next(mostValue, ofAngle) is var (width, angle))
        {
            if (!Hangs(known.Of(width), left))
            {
                Find(candidates, left, values, width);
            }

            if (known.ValueOf(width) is var value && value * ofAngle > mostValue * angle)
            {
                (mostValue, ofAngle) = (value, angle);
                known.Of(width).CopyTo(column);
                columnLength = known.Of(width).Length;
            }
        }

        foreach (var item in candidates)
        {
            if (left[item] <= 0 || shapes[item].Share <= 0)
            {
                continue;
            }

            var count = ByShare(item, left[item]);
            var angle = Math.Max(1, PackShape.Angle(usedShare + (count * shapes[item].Share)) - PackShape.Angle(usedShare));
            if (count > 0 && count * values[item] * ofAngle > mostValue * angle)
            {
                (mostValue, ofAngle) = (count * values[item], angle);
                column[0] = new PackCount(item, count);
                columnLength = 1;
            }
        }

        return columnLength > 0;
    }

    private int ByShare(int item, int left)
    {
        var free = ((PackShape.Turn - usedAngle) * PackShape.Whole / PackShape.Turn) - usedShare;
        return (int)Math.Min(Math.Min(left, free / shapes[item].Share), ByMetal(item));
    }

    private long ByMetal(int item) => problem.Metals[item] <= 0 ? int.MaxValue : freeMetal / problem.Metals[item];

    // What the metal does not reach for is left off, the heaviest first. Says whether the same sector may be hung once more.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Take(int[] left)
    {
        var (from, metal, isSector) = (columns.Count, 0L, shapes[column[0].Item].HasSector);
        for (var i = 0; i < columnLength; i++)
        {
            columns.Add(column[i]);
            metal += column[i].Count * problem.Metals[column[i].Item];
        }

        while (metal > freeMetal)
        {
            metal -= TakeOff(from);
        }

        Count(from, left, isSector);
        freeMetal -= metal;
        return isSector && metal <= freeMetal && HangsAgain(left);
    }

    private long TakeOff(int from)
    {
        var at = from;
        for (var i = from + 1; i < columns.Count; i++)
        {
            at = problem.Metals[columns[i].Item] > problem.Metals[columns[at].Item] ? i : at;
        }

        var (item, count) = columns[at];
        columns[at] = new PackCount(item, count - 1);
        if (count == 1)
        {
            columns.RemoveAt(at);
        }

        return problem.Metals[item];
    }

    private void Count(int from, int[] left, bool isSector)
    {
        var width = 0;
        for (var i = from; i < columns.Count; i++)
        {
            var (item, count) = columns[i];
            left[item] -= count;
            hung[item] += count;
            usedShare += count * shapes[item].Share;
            width = Math.Max(width, shapes[item].Theta);
        }

        if (isSector && columns.Count > from)
        {
            usedAngle += width;
            columnEnds.Add(columns.Count);
        }
        else
        {
            columns.RemoveRange(from, columns.Count - from);
        }
    }

    private bool HangsAgain(int[] left)
    {
        var width = 0;
        for (var i = 0; i < columnLength; i++)
        {
            var (item, count) = column[i];
            width = left[item] < count ? int.MaxValue : Math.Max(width, shapes[item].Theta);
        }

        return width <= FreeAngle;
    }
}
