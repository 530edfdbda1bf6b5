using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Packing.Searching;

/// <summary>Makes a plan of the trees that a master takes parts of: the tree it takes most of is hung whole, then it looks anew at what is left.</summary>
/// <remarks>Of many pieces, trees that hold what was hung stay without it: so the master begins each time with nearly all it had.</remarks>
internal sealed class PackDive
{
    // Looks for better trees before each choice.
    private const int MostRounds = 40;

    // The master of what is left is not at its end.
    private const double Doubt = 0.1;

    // The last few flasks are filled all together.
    private const int FewFlasks = 4;
    private const long WorkOfFew = 80_000_000;

    // Of many pieces, trees of one kind that are found at once, so that they go together.
    private const int MostTogether = 8;

    private readonly TreeFilling filling;
    private readonly PackGreedy greedy;
    private readonly long[] costs;
    private readonly double unit;
    private readonly List<PackedFlask> trees;
    private readonly PackPlan plan;
    private readonly long[] values;
    private double needed;

    // The first so many trees are those that the master took parts of last.
    private int likely;

    /// <summary>Prepares for one plan.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="filling">Fills trees.</param>
    /// <param name="greedy">Hangs what is left over.</param>
    /// <param name="costs">What one of each size costs.</param>
    /// <param name="known">Trees that can be hung.</param>
    public PackDive(PackProblem problem, TreeFilling filling, PackGreedy greedy, long[] costs, IEnumerable<PackedFlask> known)
    {
        (this.filling, this.greedy, this.costs) = (filling, greedy, costs);
        unit = costs.Max();
        trees = [.. known];
        plan = PackPlan.Empty(problem);
        values = new long[problem.Items.Length];
    }

    /// <summary>Steps so far besides those of filling.</summary>
    public long Work { get; private set; }

    /// <summary>Whether it gave up before its turn, as any of a later turn would.</summary>
    public bool IsHopeless { get; private set; }

    /// <summary>Makes the plan.</summary>
    /// <param name="turn">The choice at which the second best is taken; less than 0 for none.</param>
    /// <param name="asked">Where all flasks cost the same, how many are asked for; 0 where that is not said.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>The plan; nothing where it gave up as more flasks than asked would be needed, which it does not where no turn is said.</returns>
    public PackPlan? Plan(int turn, int asked, CancellationToken stop)
    {
        if (!Take(turn, asked, stop))
        {
            return null;
        }

        greedy.Fill(plan, greedy.Values(1, 0, urgent: false));
        return plan;
    }

    private bool Take(int turn, int asked, CancellationToken stop)
    {
        while (plan.Lost > 0 && !stop.IsCancellationRequested && Best(plan.Flasks.Count == turn) is { } tree)
        {
            var isBeyond = asked > 0 && needed > asked + Doubt;
            if (isBeyond && turn >= 0)
            {
                IsHopeless = plan.Flasks.Count <= turn;
                return false;
            }

            if (asked == 0 || isBeyond || !FillTogether(asked - plan.Flasks.Count, stop))
            {
                plan.Add(tree);
            }
        }

        return true;
    }

    private bool FillTogether(int flasks, CancellationToken stop)
    {
        var problem = plan.Problem;
        var size = Enumerable.Range(0, plan.Free.Length).MaxBy(s => plan.Free[s] < flasks ? -1 : problem.Sizes[s].Cost);
        if (flasks is < 2 or > FewFlasks || plan.Free[size] < flasks || !PackSqueeze.Suits(problem))
        {
            return false;
        }

        var rest = new PackProblem(
            [.. problem.Items.Select((item, i) => item with { Quantity = plan.Left[i] })], [.. problem.Sizes.Select((s, i) => s with { Free = plan.Free[i] })]);
        var squeeze = new PackSqueeze(rest, new PackGreedy(rest, new TreeFilling(rest)), 1);
        var filled = squeeze.Into([.. Enumerable.Repeat(size, flasks)], [], WorkOfFew, stop);
        Work += squeeze.Work;
        filled?.Flasks.ForEach(f => plan.Add(PackedFlask.Of(problem, f.Size, f.Columns)));
        return filled is not null;
    }

    private PackedFlask? Best(bool second)
    {
        Trim();
        var master = new CoverMaster(plan.Left, plan.Free, plan.Free.Sum(), plan.Problem.IsOfMany);
        foreach (var tree in trees)
        {
            Offer(master, tree);
        }

        master.LookFirst(likely);
        for (var round = 0; round < MostRounds; round++)
        {
            master.Solve();
            if (!FindMore(master))
            {
                break;
            }
        }

        needed = plan.Flasks.Count + master.Solve();
        Work += master.Work;
        var best = Most(master, -1);
        best = second && Most(master, best) is >= 0 and var other ? other : best;
        var most = best < 0 ? null : trees[best];
        MoveFirst(master.Chosen);
        return most;
    }

    private void Trim()
    {
        for (var i = 0; plan.Problem.IsOfMany && i < trees.Count; i++)
        {
            trees[i] = trees[i].Of(plan.Problem, plan.Left);
        }

        likely -= trees.Take(likely).Count(IsGone);
        trees.RemoveAll(IsGone);
    }

    private bool IsGone(PackedFlask tree) =>
        plan.Free[tree.Size] <= 0 || tree.Content.Length == 0 || Array.Exists(tree.Content, c => c.Count > plan.Left[c.Item]);

    private void MoveFirst(IReadOnlyList<int> chosen)
    {
        PackedFlask[] first = [.. chosen.Select(c => trees[c])];
        foreach (var at in chosen.OrderDescending())
        {
            trees.RemoveAt(at);
        }

        trees.InsertRange(0, first);
        likely = first.Length;
    }

    private int Most(CoverMaster master, int but)
    {
        var (best, most) = (-1, 0.0);
        for (var i = 0; i < trees.Count; i++)
        {
            var amount = i == but ? 0 : master.AmountOf(i);
            (best, most) = amount > most + 1e-7 ? (i, amount) : (best, most);
        }

        return best;
    }

    private void Offer(CoverMaster master, PackedFlask tree) => master.Add(tree.Content, tree.Size, costs[tree.Size] / unit);

    private bool FindMore(CoverMaster master)
    {
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Math.Max(0, (long)(master.Duals[i] * unit));
        }

        var (found, settings) = (false, greedy.SettingsFor(plan.Left));
        for (var size = 0; size < costs.Length; size++)
        {
            var dear = costs[size] + ((master.Duals[values.Length + size] + master.Duals[^1]) * unit);
            foreach (var setting in settings)
            {
                int[] left = [.. plan.Left];
                for (var more = plan.Problem.IsOfMany ? Math.Min(MostTogether, plan.Free[size]) : 1; more > 0 && plan.Free[size] > 0 && filling.Fill(size, setting, -1, left, values) is { } filled && filled.Value > dear * (1 + 1e-6); more--)
                {
                    trees.Add(filled.Flask);
                    Offer(master, filled.Flask);
                    Array.ForEach(filled.Flask.Content, c => left[c.Item] -= c.Count);
                    found = true;
                }
            }
        }

        return found;
    }
}
