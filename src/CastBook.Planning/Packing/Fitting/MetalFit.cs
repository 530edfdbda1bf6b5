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
    /// <param name="problem">The problem; it <see cref="Suits"/>.</param>
    /// <param name="counts">How many flasks of each size.</param>
    /// <param name="stop">Ends every look early.</param>
    public MetalFit(PackProblem problem, int[] counts, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        (flasks, left) = ([.. counts], [.. problem.Items.Select(i => i.Quantity)]);
        heaviestFirst = [.. Enumerable.Range(0, left.Length).OrderByDescending(i => problem.Metals[i]).ThenBy(i => i)];
        rest = new long[left.Length + 1];
    }

    /// <summary>Whether nothing but metal can be short: all pieces may share a flask, and hang in one sector of any.</summary>
    /// <param name="problem">The problem.</param>
    public static bool Suits(PackProblem problem) =>
        problem is { Pins: 0, IsOfOneSetting: true }
        && Array.TrueForAll(problem.Metals, m => m > 0)
        && Enumerable.Range(0, problem.Sizes.Length).All(size => TakesAll(problem.Sizes[size].Rod, problem.Items, problem.Shapes[size]));

    /// <summary>Looks whether everything fits.</summary>
    /// <param name="steps">How many steps to spend.</param>
    public FitAnswer Look(long steps)
    {
        (work, end) = (0, steps);
        var metal = left.Select((count, i) => count * problem.Metals[i]).Sum();
        var fits = Load(flasks.Select((count, size) => count * problem.Sizes[size].Metal).Sum() - metal);
        return new FitAnswer(fits, fits == true ? Plan() : null, work);
    }

    private static bool TakesAll(int rod, PackItem[] items, PackShape[] shapes)
    {
        var (length, tail) = (0L, 0);
        for (var i = 0; i < items.Length; i++)
        {
            if (!shapes[i].HasSector || shapes[i].Theta > PackShape.Turn)
            {
                return false;
            }

            length += (long)items[i].Quantity * shapes[i].Pitch;
            tail = Math.Max(tail, shapes[i].Tail);
        }

        return length + tail <= rod;
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
        for (var i = left.Length - 1; i >= 0; i--)
        {
            rest[i] = rest[i + 1] + (left[heaviestFirst[i]] * problem.Metals[heaviestFirst[i]]);
        }

        for (var size = 0; size < flasks.Length; size++)
        {
            if (flasks[size] > 0 && problem.Sizes[size].Metal >= problem.Metals[piece])
            {
                Fill(size, 0, problem.Sizes[size].Metal - problem.Metals[piece], spare);
            }
        }

        left[piece]++;
    }

    // With so much room; heavy pieces first, each piece as often as it goes first.
    private void Fill(int size, int from, long room, long spare)
    {
        work += left.Length;
        if (room <= spare && IsFull(room))
        {
            loads.Add(new MetalLoad(size, room, Merged()));
        }

        for (var at = from; at < left.Length && room - rest[at] <= spare && loads.Count < most && work < end; at++)
        {
            var (item, metal) = (heaviestFirst[at], problem.Metals[heaviestFirst[at]]);
            var count = left[item];
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
    private bool IsFull(long room)
    {
        for (var i = 0; i < left.Length; i++)
        {
            if (left[i] > 0 && problem.Metals[i] <= room)
            {
                return false;
            }
        }

        return true;
    }

    private PackCount[] Merged() => [.. content.GroupBy(c => c.Item).Select(g => new PackCount(g.Key, g.Sum(c => c.Count)))];

    private PackPlan Plan()
    {
        var plan = PackPlan.Empty(problem);
        foreach (var (size, _, pieces) in loaded)
        {
            plan.Add(PackedFlask.Of(problem, size, [[.. pieces.OrderBy(c => Array.IndexOf(problem.ByTail[size], c.Item))]]));
        }

        return plan;
    }
}

/// <summary>Pieces that may go into a flask.</summary>
/// <param name="Size">Its size.</param>
/// <param name="Unused">The metal it could take besides.</param>
/// <param name="Content">The pieces.</param>
internal sealed record MetalLoad(int Size, long Unused, PackCount[] Content);
