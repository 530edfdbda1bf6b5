using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Bounds;

/// <summary>What any plan that places everything must cost at least: proved by column generation.</summary>
/// <remarks>
/// Trees are chosen in parts (<see cref="CoverMaster"/>), which is never dearer than choosing whole ones. Whatever each piece is said
/// to be worth, flasks must be worth together what all pieces are (<see cref="PackCut"/>); worths that come from the master make that
/// sharp. The last step is done in whole numbers. Wishes for a flask are not looked at; they only cost.
/// </remarks>
internal sealed partial class PackBound
{
    private const int RoundsOfPrices = 200;
    private const double ShareOfBest = 0.6;

    // Of many pieces, trees of one kind that are found at once.
    private const int MostTogether = 8;
    private const long LeastWorkOfTree = 1_000_000;
    private const long MostWorkOfTree = 64_000_000;
    private const long MostWorkOfTreeOfMany = 8_000_000;

    private readonly PackProblem problem;
    private readonly TreeFilling filling;
    private readonly List<(TreeLimit Limit, int Setting)> kinds = [];
    private readonly List<(PackCount[] Content, int Size)> trees = [];
    private readonly List<PackedFlask> flasks = [];
    private readonly List<PackCut> cuts = [];
    private readonly long[] values;
    private readonly long[] asked;
    private readonly long[] center;
    private CoverMaster master;
    private long workOfMasters;
    private long[] costs;
    private int[] free;
    private int mostFlasks;
    private double unit;
    private long workOfTree;
    private bool isCutShort;

    /// <summary>Prepares the proof.</summary>
    /// <param name="problem">The problem, without wishes for a flask.</param>
    public PackBound(PackProblem problem)
    {
        this.problem = problem;
        (free, costs) = ([.. problem.Sizes.Select(s => s.Free)], [.. problem.Sizes.Select(s => s.Cost)]);
        filling = new TreeFilling(problem);
        master = Master();
        values = new long[problem.Items.Length + problem.Sizes.Length + 1];
        (asked, center) = (new long[values.Length], new long[values.Length]);
        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            Prepare(size);
        }
    }

    /// <summary>Trees that can be hung, in the order in which they were found.</summary>
    public IReadOnlyList<PackedFlask> Flasks => flasks;

    /// <summary>Steps so far.</summary>
    public long Work => workOfMasters + master.Work + filling.Work + WorkOfPolishing + kinds.Sum(k => k.Limit.Work);

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
        enough = Math.Min(enough, long.MaxValue - 1);
        Restart(costOf, counts, most);
        AskBy(problem.Weights);
        workOfTree = LeastWorkOfTree;
        var (least, end) = (Math.Min(Known(), enough + 1), Work + work);
        least = least > enough || work <= 0 ? least : Math.Max(least, Math.Min(Prove(enough).Bound, enough + 1));
        asked.CopyTo(center, 0);
        while (least <= enough && Work < end && !stop.IsCancellationRequested)
        {
            var reach = master.Solve() * unit;
            Value();
            if (IsAllThereIs(least, reach))
            {
                break;
            }

            if ((FillMore() || Polish()) && Work < end)
            {
                continue;
            }

            var more = false;
            for (var share = ShareOfBest; !more && share >= 0 && least <= enough; share -= ShareOfBest)
            {
                Ask(share);
                (var bound, more) = Prove(Aim(enough, reach));
                if (bound > least)
                {
                    least = Math.Min(bound, enough + 1);
                    asked.CopyTo(center, 0);
                }
            }

            if (more)
            {
                continue;
            }

            if (!isCutShort || workOfTree >= (problem.IsOfMany ? MostWorkOfTreeOfMany : MostWorkOfTree))
            {
                break;
            }

            workOfTree *= 4;
        }

        return least;
    }

    // Where every flask costs the same, whole flasks are what counts: a bound never passes what trees in parts cost.
    private bool IsAllThereIs(long least, double reach) => CostOfEach is { } one && Whole(reach, one) <= ((least + one - 1) / one);

    // What was learnt before, of other costs and fewer flasks.
    private long Known()
    {
        var least = 0L;
        foreach (var cut in cuts)
        {
            least = Math.Max(least, cut.Least(costs, free, mostFlasks));
        }

        return least;
    }

    private CoverMaster Master() => new([.. problem.Items.Select(i => i.Quantity)], free, mostFlasks, problem.IsOfMany);

    private void Restart(long[] costOf, int[] counts, int most)
    {
        workOfMasters += master.Work;
        (costs, free, mostFlasks, unit, polished) = (costOf, counts, most, costOf.Max(), 0);
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
            int[] members = [.. problem.ByTail[size].Where(i => problem.Items[i].MayBeCastAt(setting))];
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

    private long Dear(long[] prices, int size) => costs[size] + prices[problem.Items.Length + size] + prices[^1];

    private void Add(PackedFlask flask)
    {
        flasks.Add(flask);
        Hangs(flask);
        Add(flask.Content, flask.Size);
    }

    private void Add(PackCount[] content, int size)
    {
        trees.Add((content, size));
        master.Add(content, size, costs[size] / unit);
    }

    // Trees that are worth more than they cost, found quickly: one after the other of what is left, so that they go together.
    private bool FillMore()
    {
        var added = false;
        foreach (var (limit, setting) in kinds.Where(k => free[k.Limit.Size] > 0))
        {
            int[] left = [.. problem.Items.Select(i => i.Quantity)];
            for (var more = problem.IsOfMany ? MostTogether : 1; more > 0 && filling.Fill(limit.Size, setting, -1, left, values) is { } found && IsWorthMore(found.Value, limit.Size); more--)
            {
                Add(found.Flask);
                added = true;
                foreach (var (item, count) in found.Flask.Content)
                {
                    left[item] -= count;
                }
            }
        }

        return added;
    }

    private bool IsWorthMore(long worth, int size) => worth > Dear(values, size) * (1 + 1e-6);

    private (long Bound, bool More) Prove(long aim)
    {
        (var more, isCutShort) = (false, false);
        var (worths, room) = (new long[free.Length], RoomFor(aim));
        foreach (var (limit, _) in kinds.Where(k => free[k.Limit.Size] > 0))
        {
            var worth = limit.Of(asked, (long)(Dear(asked, limit.Size) * room), RoundsOfPrices, workOfTree, out var tree);
            isCutShort |= limit.IsCutShort;
            worths[limit.Size] = Math.Max(worths[limit.Size], worth);
            var real = 0L;
            foreach (var (item, count) in tree)
            {
                real += values[item] * count;
            }

            if (IsWorthMore(real, limit.Size))
            {
                more = true;
                if (limit.Hung is { } hung)
                {
                    Add(hung);
                }
                else
                {
                    Add(tree, limit.Size);
                }
            }
        }

        return (Learn(worths).Least(costs, free, mostFlasks), more);
    }

    private PackCut Learn(long[] worths)
    {
        Int128 total = 0;
        for (var i = 0; i < problem.Items.Length; i++)
        {
            total += (Int128)asked[i] * problem.Items[i].Quantity;
        }

        var cut = new PackCut(total, [.. worths.Select((w, size) => free[size] > 0 ? w : -1)]);
        cuts.Add(cut);
        return cut;
    }
}
