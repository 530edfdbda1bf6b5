namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into given flasks where nothing but metal can be short: looks at every way of sharing it out.</summary>
/// <remarks>
/// All flasks together have so much metal to spare, and none may leave more than that unused. The piece that can go into the fewest
/// loads is loaded next, as in an exact cover.
/// </remarks>
internal sealed class MetalFit
{
    // Of loads of a piece no more are listed.
    private const int MostLoads = 2000;

    private readonly PackProblem problem;
    private readonly CancellationToken stop;
    private readonly int[] heaviestFirst;
    private readonly int[] left;
    private readonly int[] flasks;
    private readonly long[] rest;
    private readonly List<MetalLoad> loaded = [];
    private readonly List<PackCount> content = [];
    private List<MetalLoad> loads = [];
    private int most;
    private long work;
    private long end;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem; it suits <see cref="MetalAlone"/>.</param>
    /// <param name="counts">How many flasks of each size.</param>
    /// <param name="pieces">How many of each piece.</param>
    /// <param name="stop">Ends every look early.</param>
    public MetalFit(PackProblem problem, int[] counts, IEnumerable<int> pieces, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        (flasks, left) = ([.. counts], [.. pieces]);
        heaviestFirst = [.. Enumerable.Range(0, left.Length).Where(i => left[i] > 0).OrderByDescending(i => problem.Metals[i]).ThenBy(i => i)];
        rest = new long[heaviestFirst.Length + 1];
    }

    /// <summary>Where everything fits, what each flask is to take.</summary>
    public IReadOnlyList<MetalLoad> Loads => loaded;

    /// <summary>Looks whether everything fits.</summary>
    /// <param name="steps">How many steps to spend.</param>
    public FitAnswer Look(long steps)
    {
        (work, end) = (0, steps);
        var metal = left.Select((count, i) => count * problem.Metals[i]).Sum();
        var fits = Load(flasks.Select((count, size) => count * problem.Sizes[size].Metal).Sum() - metal);
        return new FitAnswer(fits, fits == true ? MetalAlone.Plan(problem, loaded) : null, work);
    }

    // All pieces that are left, with so much to spare; nothing where not every way was looked at.
    private bool? Load(long spare)
    {
        if (spare < 0 || Array.TrueForAll(left, l => l == 0))
        {
            return spare >= 0;
        }

        var ways = Fewest(spare);
        bool? fits = ways.Count < MostLoads && work < end ? false : null;
        for (var i = 0; i < ways.Count && fits != true && work < end && !stop.IsCancellationRequested; i++)
        {
            Take(ways[i], 1);
            var others = Load(spare - ways[i].Unused);
            fits = others == false ? fits : others;
            if (fits != true)
            {
                Take(ways[i], -1);
            }
        }

        return fits == false && (work >= end || stop.IsCancellationRequested) ? null : fits;
    }

    private void Take(MetalLoad load, int sign)
    {
        flasks[load.Size] -= sign;
        foreach (var (item, count) in load.Content)
        {
            left[item] -= sign * count;
        }

        if (sign > 0)
        {
            loaded.Add(load);
        }
        else
        {
            loaded.RemoveAt(loaded.Count - 1);
        }
    }

    // Whichever piece is loaded next, one of its loads is right. The fullest come first.
    private List<MetalLoad> Fewest(long spare)
    {
        List<MetalLoad>? fewest = null;
        most = MostLoads;
        for (var at = 0; at < heaviestFirst.Length && most > 0; at++)
        {
            if (left[heaviestFirst[at]] > 0)
            {
                LoadsOf(heaviestFirst[at], spare);
                if (fewest is null || loads.Count < fewest.Count)
                {
                    (fewest, most) = (loads, loads.Count);
                }
            }
        }

        fewest!.Sort((a, b) => a.Unused.CompareTo(b.Unused));
        return fewest;
    }

    private void LoadsOf(int piece, long spare)
    {
        loads = [];
        content.Clear();
        content.Add(new PackCount(piece, 1));
        left[piece]--;
        for (var i = heaviestFirst.Length - 1; i >= 0; i--)
        {
            rest[i] = rest[i + 1] + (left[heaviestFirst[i]] * problem.Metals[heaviestFirst[i]]);
        }

        for (var size = 0; size < flasks.Length; size++)
        {
            if (flasks[size] > 0 && problem.Fits(piece, size))
            {
                Fill(size, 0, problem.Sizes[size].Metal - problem.Metals[piece], spare);
            }
        }

        left[piece]++;
    }

    // With so much room; heavy pieces first, each piece as often as it goes first.
    private void Fill(int size, int from, long room, long spare)
    {
        work += heaviestFirst.Length;
        if (room <= spare && IsFull(size, room))
        {
            loads.Add(new MetalLoad(size, room, Merged()));
        }

        for (var at = from; at < heaviestFirst.Length && room - rest[at] <= spare && loads.Count < most && work < end; at++)
        {
            var (item, metal) = (heaviestFirst[at], problem.Metals[heaviestFirst[at]]);
            var count = problem.Fits(item, size) ? left[item] : 0;
            for (var c = (int)Math.Min(count, room / metal); c > 0; c--)
            {
                content.Add(new PackCount(item, c));
                left[item] -= c;
                Fill(size, at + 1, room - (c * metal), spare);
                left[item] += c;
                content.RemoveAt(content.Count - 1);
            }
        }
    }

    // Where another piece finds room as well, nothing is lost by loading it.
    private bool IsFull(int size, long room)
    {
        for (var at = heaviestFirst.Length - 1; at >= 0 && problem.Metals[heaviestFirst[at]] <= room; at--)
        {
            if (left[heaviestFirst[at]] > 0 && problem.Fits(heaviestFirst[at], size))
            {
                return false;
            }
        }

        return true;
    }

    private PackCount[] Merged() => [.. content.GroupBy(c => c.Item).Select(g => new PackCount(g.Key, g.Sum(c => c.Count)))];
}
