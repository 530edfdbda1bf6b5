using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <summary>Hangs one tree, sector by sector: each time the sector that is worth most for the angle it takes.</summary>
internal sealed class TreeHanging(PackProblem problem)
{
    // A tree of many kinds of pieces needs no look at every width.
    private const int MostWidths = 10;

    private readonly ColumnKnapsack knapsack = new();
    private readonly List<int> widths = [];
    private readonly List<PackCount[]> columns = [];
    private readonly List<int> members = [];
    private ColumnPiece[] pieces = [];
    private int[] bestCounts = [];
    private int size;
    private int usedAngle;
    private long usedShare;
    private long freeMetal;

    /// <summary>Steps so far.</summary>
    public long Work => knapsack.Work;

    /// <summary>Hangs a tree.</summary>
    /// <param name="flaskSize">The flask size.</param>
    /// <param name="candidates">Pieces that fit it, in the order in which they hang.</param>
    /// <param name="left">How many of each piece there are; what is hung is taken off.</param>
    /// <param name="values">What each piece is worth.</param>
    public PackedFlask Hang(int flaskSize, List<int> candidates, int[] left, long[] values)
    {
        (size, usedAngle, usedShare, freeMetal) = (flaskSize, 0, 0, problem.Sizes[flaskSize].Metal);
        columns.Clear();
        var content = new SortedDictionary<int, int>();
        while (Best(candidates, left, values) is { Count: > 0 } column)
        {
            while (Take(column, left, content))
            {
            }
        }

        return new PackedFlask(size, [.. content.Select(c => new PackCount(c.Key, c.Value))], [.. columns])
        {
            Fill = content.Sum(c => c.Value * problem.Weights[c.Key]),
        };
    }

    private int FreeAngle => PackShape.Turn - usedAngle - PackShape.Angle(usedShare);

    // The best sector, or some pieces of which only a share of the tree is known.
    private List<PackCount> Best(List<int> candidates, int[] left, long[] values)
    {
        var best = new List<PackCount>();
        var (mostValue, ofAngle) = (0L, 1);
        var free = FreeAngle;
        Widths(candidates, left, free);
        foreach (var width in widths)
        {
            var value = Solve(candidates, left, values, width);

            // Angle that nothing can use is lost with the sector that leaves it.
            var angle = free - width < widths[0] ? free : width;
            if (value * ofAngle > mostValue * angle)
            {
                (mostValue, ofAngle) = (value, angle);
                knapsack.Take(bestCounts.AsSpan(0, members.Count));
                best.Clear();
                best.AddRange(members.Select((item, i) => new PackCount(item, bestCounts[i])).Where(c => c.Count > 0));
            }
        }

        foreach (var item in candidates.Where(i => left[i] > 0 && problem.Items[i].Shapes[size].Share > 0))
        {
            var count = ByShare(item, left[item]);
            var angle = PackShape.Angle(usedShare + (count * problem.Items[item].Shapes[size].Share)) - PackShape.Angle(usedShare);
            if (count > 0 && count * values[item] * ofAngle > mostValue * Math.Max(1, angle))
            {
                (mostValue, ofAngle) = (count * values[item], Math.Max(1, angle));
                best.Clear();
                best.Add(new PackCount(item, count));
            }
        }

        return best;
    }

    private int ByShare(int item, int left)
    {
        var share = problem.Items[item].Shapes[size].Share;
        var free = ((PackShape.Turn - usedAngle) * PackShape.Whole / PackShape.Turn) - usedShare;
        return (int)Math.Min(Math.Min(left, free / share), ByMetal(item));
    }

    private long ByMetal(int item) => problem.Items[item].Metal <= 0 ? int.MaxValue : freeMetal / problem.Items[item].Metal;

    private void Widths(List<int> candidates, int[] left, int free)
    {
        widths.Clear();
        foreach (var item in candidates)
        {
            var theta = problem.Items[item].Shapes[size].Theta;
            if (theta > 0 && theta <= free && left[item] > 0 && problem.Items[item].Metal <= freeMetal && !widths.Contains(theta))
            {
                widths.Add(theta);
            }
        }

        widths.Sort();
        if (widths.Count > MostWidths)
        {
            var all = widths.ToArray();
            widths.Clear();
            for (var i = 0; i < MostWidths; i++)
            {
                widths.Add(all[i * (all.Length - 1) / (MostWidths - 1)]);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private long Solve(List<int> candidates, int[] left, long[] values, int width)
    {
        if (pieces.Length < candidates.Count)
        {
            Array.Resize(ref pieces, candidates.Count);
            Array.Resize(ref bestCounts, candidates.Count);
        }

        members.Clear();
        foreach (var item in candidates)
        {
            var shape = problem.Items[item].Shapes[size];
            if (left[item] > 0 && shape.HasSector && shape.Theta <= width && problem.Items[item].Metal <= freeMetal)
            {
                pieces[members.Count] = new ColumnPiece(shape.Pitch, shape.Tail, values[item], (int)Math.Min(left[item], ByMetal(item)));
                members.Add(item);
            }
        }

        return knapsack.Solve(pieces.AsSpan(0, members.Count), problem.Sizes[size].Rod);
    }

    // What the metal does not reach for is left off, the heaviest first. Says whether the same sector may be hung once more.
    private bool Take(List<PackCount> column, int[] left, SortedDictionary<int, int> content)
    {
        var taken = column.ToList();
        var metal = taken.Sum(c => c.Count * problem.Items[c.Item].Metal);
        while (metal > freeMetal)
        {
            var at = 0;
            for (var i = 1; i < taken.Count; i++)
            {
                at = problem.Items[taken[i].Item].Metal > problem.Items[taken[at].Item].Metal ? i : at;
            }

            metal -= problem.Items[taken[at].Item].Metal;
            taken[at] = taken[at] with { Count = taken[at].Count - 1 };
            taken.RemoveAll(c => c.Count == 0);
        }

        Count(taken, left, content);
        freeMetal -= metal;
        var sector = problem.Items[column[0].Item].Shapes[size].HasSector;
        return sector && column.TrueForAll(c => left[c.Item] >= c.Count) && metal <= freeMetal && Width(column) <= FreeAngle;
    }

    private void Count(List<PackCount> taken, int[] left, SortedDictionary<int, int> content)
    {
        foreach (var (item, count) in taken)
        {
            left[item] -= count;
            content[item] = content.GetValueOrDefault(item) + count;
            usedShare += count * problem.Items[item].Shapes[size].Share;
        }

        if (taken.Count > 0 && problem.Items[taken[0].Item].Shapes[size].HasSector)
        {
            usedAngle += Width(taken);
            columns.Add([.. taken]);
        }
    }

    private int Width(List<PackCount> column) => column.Max(c => problem.Items[c.Item].Shapes[size].Theta);
}
