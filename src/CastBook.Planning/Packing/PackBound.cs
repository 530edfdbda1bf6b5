namespace CastBook.Planning.Packing;

/// <summary>What any plan that places everything must cost at least: proved by column generation.</summary>
/// <remarks>
/// Trees are chosen in parts (<see cref="CoverMaster"/>), which is never dearer than choosing whole ones. Whatever each piece is said
/// to be worth, pieces together cost at least their worth, less what the worth of some tree exceeds its cost by; worths that come
/// from the master make that sharp. The last step is done in whole numbers. Wishes for a flask are not looked at; they only cost.
/// </remarks>
internal sealed class PackBound
{
    private const int RoundsOfPrices = 200;

    private readonly PackProblem problem;
    private readonly TreeFilling filling;
    private readonly List<(TreeLimit Limit, int Setting)> kinds = [];
    private readonly List<(PackCount[] Content, int Size)> trees = [];
    private readonly List<PackedFlask> flasks = [];
    private readonly List<PackCut> cuts = [];
    private readonly long[] values;
    private readonly long[] extra;
    private CoverMaster master;
    private long workOfMasters;
    private long[] costs;
    private int[] free;
    private int mostFlasks;
    private double unit;

    /// <summary>Prepares the proof.</summary>
    /// <param name="problem">The problem, without wishes for a flask.</param>
    public PackBound(PackProblem problem)
    {
        this.problem = problem;
        (free, costs) = ([.. problem.Sizes.Select(s => s.Free)], [.. problem.Sizes.Select(s => s.Cost)]);
        filling = new TreeFilling(problem);
        master = Master();
        (values, extra) = (new long[problem.Items.Length], new long[problem.Sizes.Length + 1]);
        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            Prepare(size);
        }
    }

    /// <summary>Trees that can be hung, in the order in which they were found.</summary>
    public IReadOnlyList<PackedFlask> Flasks => flasks;

    /// <summary>Steps so far.</summary>
    public long Work => workOfMasters + master.Work + filling.Work + kinds.Sum(k => k.Limit.Work);

    /// <summary>Tells of a tree that can be hung.</summary>
    /// <param name="flask">The tree.</param>
    public void Know(PackedFlask flask)
    {
        flasks.Add(flask);
        trees.Add((flask.Content, flask.Size));
    }

    /// <summary>Whether it is known already that so many flasks of each size cannot take everything.</summary>
    /// <param name="counts">How many of each size.</param>
    public bool IsRefuted(int[] counts) => cuts.Exists(c => c.Refutes(counts));

    /// <summary>The least cost with so many flasks of each size.</summary>
    /// <param name="costOf">What one of each size costs; more than 0.</param>
    /// <param name="counts">How many of each size there are.</param>
    /// <param name="most">How many flasks there may be altogether.</param>
    /// <param name="enough">A bound over this needs no more looking.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends the proof early.</param>
    public long Find(long[] costOf, int[] counts, int most, long enough, long work, CancellationToken stop)
    {
        Restart(costOf, counts, most);
        var (least, end) = (0L, Work + work);
        while (Work < end && !stop.IsCancellationRequested)
        {
            master.Solve();
            Value();
            if (FillMore() && Work < end)
            {
                continue;
            }

            var (bound, more) = Prove();
            least = Math.Max(least, bound);
            if (!more || least > enough)
            {
                break;
            }
        }

        return least;
    }

    private CoverMaster Master() => new([.. problem.Items.Select(i => i.Quantity)], free, mostFlasks);

    private void Restart(long[] costOf, int[] counts, int most)
    {
        workOfMasters += master.Work;
        (costs, free, mostFlasks, unit) = (costOf, counts, most, costOf.Max());
        master = Master();
        foreach (var (content, size) in trees)
        {
            master.Add(content, size, costs[size] / unit);
        }
    }

    private void Prepare(int size)
    {
        var sets = new List<(int Setting, int[] Members)>();
        foreach (var setting in problem.Settings)
        {
            int[] members = [.. problem.ByTail[size].Where(i => problem.Items[i].Lowest <= setting && setting <= problem.Items[i].Highest)];
            if (members.Length > 0)
            {
                sets.Add((setting, members));
            }
        }

        // A setting that suits no piece but those that another suits too is not needed.
        foreach (var (setting, members) in sets)
        {
            if (!sets.Exists(s => s.Setting != setting && members.All(s.Members.Contains) && (s.Members.Length > members.Length || s.Setting > setting)))
            {
                kinds.Add((new TreeLimit(problem, size, members), setting));
            }
        }
    }

    private void Value()
    {
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Math.Max(0, (long)(master.Duals[i] * unit));
        }

        for (var size = 0; size < extra.Length; size++)
        {
            extra[size] = Math.Max(0, (long)(master.Duals[values.Length + size] * unit));
        }
    }

    private long Dear(int size) => costs[size] + extra[size] + extra[^1];

    private void Add(PackCount[] content, int size)
    {
        trees.Add((content, size));
        master.Add(content, size, costs[size] / unit);
    }

    // Trees that are worth more than they cost, found quickly.
    private bool FillMore()
    {
        int[] all = [.. problem.Items.Select(i => i.Quantity)];
        var added = false;
        foreach (var (limit, setting) in kinds.Where(k => free[k.Limit.Size] > 0))
        {
            if (filling.Fill(limit.Size, setting, -1, all, values) is { } found && IsWorthMore(found.Value, limit.Size))
            {
                flasks.Add(found.Flask);
                Add(found.Flask.Content, limit.Size);
                added = true;
            }
        }

        return added;
    }

    private bool IsWorthMore(long worth, int size) => worth > Dear(size) * (1 + 1e-6);

    private (long Bound, bool More) Prove()
    {
        var (most, ofCost, more) = (1L, 1L, false);
        var worths = new long[free.Length];
        foreach (var (limit, _) in kinds.Where(k => free[k.Limit.Size] > 0))
        {
            var dear = Dear(limit.Size);
            var worth = limit.Of(values, dear, RoundsOfPrices, out var tree);
            worths[limit.Size] = Math.Max(worths[limit.Size], worth);
            if ((Int128)worth * ofCost > (Int128)most * dear)
            {
                (most, ofCost) = (worth, dear);
            }

            var real = 0L;
            foreach (var (item, count) in tree)
            {
                real += values[item] * count;
            }

            if (IsWorthMore(real, limit.Size))
            {
                Add(tree, limit.Size);
                more = true;
            }
        }

        Int128 total = 0;
        for (var i = 0; i < values.Length; i++)
        {
            total += (Int128)values[i] * problem.Items[i].Quantity;
        }

        cuts.Add(new PackCut(total, [.. worths.Select((w, size) => free[size] > 0 ? w : -1)]));
        for (var size = 0; size < free.Length; size++)
        {
            total -= (Int128)extra[size] * free[size];
        }

        total -= (Int128)extra[^1] * mostFlasks;

        // Worths are made smaller until no tree is worth more than it costs; what is left of a whole is rounded up.
        return (total <= 0 ? 0 : (long)(((total * ofCost) + most - 1) / most), more);
    }
}
