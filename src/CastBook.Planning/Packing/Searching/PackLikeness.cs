namespace CastBook.Planning.Packing.Searching;

/// <summary>Puts pieces of like thickness into the same flasks: pieces of two flasks change places while the spread within flasks falls.</summary>
/// <remarks>
/// The spread of a flask is the sum of the squares by which its pieces differ from their mean. No flask is added or taken away, and no row is
/// spread over more of them; what is pinned stays, and so do pieces of which no thickness is known. Of two flasks a cut through their pieces by thickness is tried, and
/// the exchange of a few, the ones that gain most first. Trees are hung by their content alone, so that filling again leaves them.
/// </remarks>
internal sealed class PackLikeness
{
    // Exchanges between two flasks that are tried on their trees.
    private const int MostHangs = 16;

    // What the arithmetic of one exchange takes, in steps of the tables.
    private const long WorkOfLook = 500;

    // Less gain than this is rounding, in hundredths of a millimetre squared.
    private const double LeastGain = 0.5;

    private readonly PackProblem problem;
    private readonly Func<int, long, long>? button;
    private readonly TreeFilling filling;
    private readonly ContentHanging hanging;
    private readonly long[][] measures;
    private readonly int[] alone;
    private readonly long end;
    private readonly CancellationToken stop;
    private long looks;

    private PackLikeness(PackProblem problem, IReadOnlyList<PackedFlask> known, Func<int, long, long>? button, long work, CancellationToken stop)
    {
        (this.problem, this.button, this.stop) = (problem, button, stop);
        filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        hanging = new ContentHanging(problem, greedy, filling, known);
        measures = [.. greedy.Measured()];
        alone = new int[problem.Items.Length];
        end = filling.Work + work;
    }

    /// <summary>Exchanges pieces; the same flasks where nothing is gained.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">The flasks.</param>
    /// <param name="button">The button of a flask by its size and the metal of its pieces, where no more may go into buttons than before.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends it early.</param>
    public static IReadOnlyList<PackedFlask> Together(
        PackProblem problem, IReadOnlyList<PackedFlask> flasks, Func<int, long, long>? button, long work, CancellationToken stop) =>
        problem.Items.Where(i => i.Section > 0).Select(i => i.Section).Distinct().Skip(1).Any()
            ? new PackLikeness(problem, flasks, button, work, stop).Together(flasks)
            : flasks;

    /// <summary>By how much the thicknesses of a flask's pieces differ.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="content">What hangs in it.</param>
    public static double Spread(PackProblem problem, IEnumerable<PackCount> content)
    {
        var sums = default(Sections);
        foreach (var (item, copies) in content)
        {
            sums = sums.With(problem.Items[item].Section, copies);
        }

        return sums.Spread;
    }

    private PackedFlask[] Together(IReadOnlyList<PackedFlask> flasks)
    {
        PackedFlask[] now = [.. flasks];
        for (var changed = true; changed;)
        {
            changed = false;
            for (var a = 0; a < now.Length; a++)
            {
                for (var b = a + 1; b < now.Length; b++)
                {
                    while (Exchanged(now[a], now[b]) is var (first, second))
                    {
                        (now[a], now[b], changed) = (first, second, true);
                    }
                }
            }
        }

        return now;
    }

    private (PackedFlask First, PackedFlask Second)? Exchanged(PackedFlask a, PackedFlask b)
    {
        if (Spent >= end || stop.IsCancellationRequested)
        {
            return null;
        }

        var hangs = 0;
        foreach (var take in Gaining(a, b))
        {
            var (first, second) = (Taken(a, take, 1), Taken(b, take, -1));
            // Rows are not spread over more flasks.
            if (first.Length + second.Length > a.Content.Length + b.Content.Length || !MayFit(a, first) || !MayFit(b, second) || TakesMore(a, b, first, second))
            {
                continue;
            }

            if (++hangs > MostHangs || Spent >= end || stop.IsCancellationRequested)
            {
                return null;
            }

            if (Hung(a, first) is { } one && Hung(b, second) is { } other)
            {
                return (one, other);
            }
        }

        return null;
    }

    private long Spent => filling.Work + looks;

    // What the first flask takes, by piece, less than 0 for what it gives: what gains most first.
    private IEnumerable<Dictionary<int, int>> Gaining(PackedFlask a, PackedFlask b)
    {
        var (first, second) = (SectionsOf(a), SectionsOf(b));
        var gaining = new List<(Dictionary<int, int> Take, double Spread)>();
        var (there, here) = (Movable(a), Movable(b));
        foreach (var take in Cuts(there, here).Concat(Swaps(there, here)))
        {
            looks += WorkOfLook;
            var (one, other) = (first, second);
            foreach (var (item, copies) in take)
            {
                one = one.With(problem.Items[item].Section, copies);
                other = other.With(problem.Items[item].Section, -copies);
            }

            if (one.Spread + other.Spread < first.Spread + second.Spread - LeastGain)
            {
                gaining.Add((take, one.Spread + other.Spread));
            }
        }

        return gaining.OrderBy(g => g.Spread).Select(g => g.Take);
    }

    private Sections SectionsOf(PackedFlask flask) => flask.Content.Aggregate(default(Sections), (sums, c) => sums.With(problem.Items[c.Item].Section, c.Count));

    private List<PackCount> Movable(PackedFlask flask) => [.. flask.Content.Where(c => problem.Items[c.Item].Section > 0 && problem.Items[c.Item].Pin < 0)];

    // All of both by thickness, and so many of the thinnest or the thickest into the first.
    private IEnumerable<Dictionary<int, int>> Cuts(List<PackCount> a, List<PackCount> b)
    {
        var pool = a.Concat(b).GroupBy(c => c.Item).Select(g => new PackCount(g.Key, g.Sum(c => c.Count)))
            .OrderBy(c => problem.Items[c.Item].Section).ThenBy(c => c.Item).ToList();
        foreach (var order in new[] { pool, [.. pool.AsEnumerable().Reverse()] })
        {
            var take = a.ToDictionary(c => c.Item, c => -c.Count);
            foreach (var (item, count) in order)
            {
                for (var copy = 0; copy < count; copy++)
                {
                    take[item] = take.GetValueOrDefault(item) + 1;
                    yield return new(take);
                }
            }
        }
    }

    // One or all of a piece for none, one or all of another.
    private static IEnumerable<Dictionary<int, int>> Swaps(List<PackCount> a, List<PackCount> b)
    {
        foreach (var give in a.SelectMany(OneOrAll).Append(default))
        {
            foreach (var take in b.SelectMany(OneOrAll).Append(default))
            {
                if (give.Item != take.Item || give.Count == 0 || take.Count == 0)
                {
                    var change = new Dictionary<int, int>();
                    change[give.Item] = -give.Count;
                    change[take.Item] = change.GetValueOrDefault(take.Item) + take.Count;
                    yield return change;
                }
            }
        }
    }

    private static IEnumerable<PackCount> OneOrAll(PackCount of) => of.Count == 1 ? [of] : [of with { Count = 1 }, of];

    private static PackCount[] Taken(PackedFlask flask, Dictionary<int, int> take, int sign) =>
    [
        .. flask.Content.Select(c => c.Item).Union(take.Keys).Order()
            .Select(i => new PackCount(i, Array.Find(flask.Content, c => c.Item == i).Count + (sign * take.GetValueOrDefault(i)))).Where(c => c.Count > 0),
    ];

    // Metal, room and setting; the burnout stays what it was.
    private bool MayFit(PackedFlask flask, PackCount[] content)
    {
        var (metal, area, lowest, highest, size) = (0L, 0L, int.MinValue, int.MaxValue, problem.Sizes[flask.Size]);
        foreach (var (item, count) in content)
        {
            var piece = problem.Items[item];
            if (!problem.Fits(item, flask.Size))
            {
                return false;
            }

            metal += count * piece.Metal;
            area += (long)count * piece.Shapes[flask.Size].Theta * piece.Shapes[flask.Size].Pitch;
            (lowest, highest) = (Math.Max(lowest, piece.Lowest), Math.Min(highest, piece.Highest));
        }

        return content.Length > 0 && lowest <= highest && metal <= size.Metal && area <= (long)PackShape.Turn * size.Rod
            && Sort(content) == Sort(flask.Content);
    }

    private int Sort(PackCount[] content) => content.Max(c => problem.Items[c.Item].Sort);

    private bool TakesMore(PackedFlask a, PackedFlask b, PackCount[] first, PackCount[] second) =>
        button is not null && Button(a, first) + Button(b, second) > Button(a, a.Content) + Button(b, b.Content);

    private long Button(PackedFlask flask, PackCount[] content) => button!(flask.Size, content.Sum(c => c.Count * problem.Items[c.Item].Metal));

    // A first way that hangs them all is the one that they hang by alone.
    private PackedFlask? Hung(PackedFlask flask, PackCount[] content)
    {
        Array.Clear(alone);
        foreach (var (item, count) in content)
        {
            alone[item] = count;
        }

        foreach (var values in measures)
        {
            if (filling.Fill(flask.Size, content.Min(c => problem.Items[c.Item].Highest), flask.Pin, alone, values) is { } filled
                && filled.Flask.Content.AsSpan().SequenceEqual(content))
            {
                return hanging.HangWhole(flask.Size, filled.Flask);
            }
        }

        return null;
    }

    // How many pieces of known thickness, the sum of their thicknesses and of the squares of these.
    private readonly record struct Sections(long Count, long Sum, long Squares)
    {
        public double Spread => Count == 0 ? 0 : Squares - ((double)Sum * Sum / Count);

        public Sections With(long section, long copies) =>
            section <= 0 ? this : new(Count + copies, Sum + (copies * section), Squares + (copies * section * section));
    }
}
