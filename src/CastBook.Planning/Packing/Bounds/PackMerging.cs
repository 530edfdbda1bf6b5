namespace CastBook.Planning.Packing.Bounds;

/// <summary>A problem with fewer kinds of pieces that is never harder: pieces that are alike count as one, as small as the smallest of each measure.</summary>
/// <remarks>What such a problem must cost at least, the problem itself must cost too. Where they differ most, kinds are parted first.</remarks>
internal sealed class PackMerging
{
    // A tail takes trunk only at the end of a sector.
    private const double TailCounts = 0.1;

    private readonly PackProblem problem;
    private readonly List<int[]> kinds = [];
    private readonly int[] kindOf;

    private PackMerging(PackProblem problem, int most)
    {
        this.problem = problem;
        kindOf = new int[problem.Items.Length];
        foreach (var alike in Enumerable.Range(0, problem.Items.Length).GroupBy(item => problem.Items.Length <= most ? (item, 0, "") : Unlike(item)))
        {
            kinds.Add([.. alike]);
        }

        var open = new PriorityQueue<int, (double, int)>();
        for (var i = 0; i < kinds.Count; i++)
        {
            open.Enqueue(i, (-Waste(kinds[i]), i));
        }

        while (kinds.Count < most && open.TryDequeue(out var widest, out var rank) && rank.Item1 < 0)
        {
            var (small, large) = Part(kinds[widest]);
            kinds[widest] = small;
            kinds.Add(large);
            open.Enqueue(widest, (-Waste(small), widest));
            open.Enqueue(kinds.Count - 1, (-Waste(large), kinds.Count - 1));
        }

        for (var kind = 0; kind < kinds.Count; kind++)
        {
            foreach (var item in kinds[kind])
            {
                kindOf[item] = kind;
            }
        }

        Merged = new PackProblem([.. kinds.Select(Smallest)], problem.Sizes);
    }

    /// <summary>The problem of fewer kinds.</summary>
    public PackProblem Merged { get; }

    /// <summary>Merges.</summary>
    /// <param name="problem">The problem; wishes for a flask are dropped.</param>
    /// <param name="most">How many kinds there may be; more only where pieces are too unlike.</param>
    public static PackMerging Of(PackProblem problem, int most) => new(problem, most);

    /// <summary>A tree as the problem of fewer kinds sees it.</summary>
    /// <param name="flask">The tree.</param>
    public PackedFlask Of(PackedFlask flask)
    {
        var counts = new SortedDictionary<int, int>();
        foreach (var (item, count) in flask.Content)
        {
            counts[kindOf[item]] = counts.GetValueOrDefault(kindOf[item]) + count;
        }

        return flask with { Content = [.. counts.Select(c => new PackCount(c.Key, c.Value))] };
    }

    // Pieces that do not fit the same sizes at the same settings, or of which not the same is known, are never one kind.
    private (int Lowest, int Highest, string Fits) Unlike(int item)
    {
        var piece = problem.Items[item];
        return (piece.Lowest, piece.Highest, string.Concat(Enumerable.Range(0, problem.Sizes.Length).Select(size =>
            !problem.Fits(item, size) ? '-' : piece.Shapes[size].HasSector ? 'x' : 's')));
    }

    // Space and metal that the kind does not count, in parts of a flask.
    private double Waste(int[] kind)
    {
        var least = Smallest(kind);
        var waste = 0.0;
        foreach (var item in kind)
        {
            waste += problem.Items[item].Quantity * (Measure(problem.Items[item]) - Measure(least));
        }

        return waste;
    }

    private double Measure(PackItem item)
    {
        var measure = 0.0;
        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            var (shape, room) = (item.Shapes[size], problem.Sizes[size]);
            if (shape.Fits && room.Free > 0)
            {
                measure += ((double)shape.Theta * (shape.Pitch + (TailCounts * shape.Tail)) / ((double)PackShape.Turn * room.Rod)) + ((double)shape.Share / PackShape.Whole)
                    + ((double)item.Metal / Math.Max(1, room.Metal));
            }
        }

        return measure;
    }

    // Along the measure by which the kind's pieces differ most, in the middle of it.
    private (int[] Small, int[] Large) Part(int[] kind)
    {
        Func<PackItem, double>[] ways =
        [
            i => i.Shapes.Sum(s => (double)s.Theta), i => i.Shapes.Sum(s => (double)s.Pitch), i => i.Metal, i => i.Shapes.Sum(s => (double)s.Tail), i => i.Shapes.Sum(s => (double)s.Share),
        ];
        var widest = ways.MaxBy(way => (kind.Max(i => way(problem.Items[i])) + 1) / (kind.Min(i => way(problem.Items[i])) + 1))!;
        var middle = (kind.Min(i => widest(problem.Items[i])) + kind.Max(i => widest(problem.Items[i]))) / 2;
        var small = kind.Where(i => widest(problem.Items[i]) < middle).ToArray();
        return small.Length > 0 ? (small, [.. kind.Except(small)]) : (kind[..(kind.Length / 2)], kind[(kind.Length / 2)..]);
    }

    private PackItem Smallest(int[] kind) => new(
        kind.Sum(i => problem.Items[i].Quantity),
        kind.Min(i => problem.Items[i].Metal),
        [.. Enumerable.Range(0, problem.Sizes.Length).Select(size => new PackShape(
            kind.Min(i => problem.Items[i].Shapes[size].Theta),
            kind.Min(i => problem.Items[i].Shapes[size].Pitch),
            kind.Min(i => problem.Items[i].Shapes[size].Tail),
            kind.Min(i => problem.Items[i].Shapes[size].Share)))])
    {
        Lowest = problem.Items[kind[0]].Lowest,
        Highest = problem.Items[kind[0]].Highest,
    };
}
