using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Plans with every piece left where it was as far as it still fits: new pieces go into the room left, then into new flasks.</summary>
internal sealed class PackKeeping
{
    // What hangs in a flask already comes before all that might be added.
    private const long HungFirst = 100_000;

    // Steps to look whether cheaper flasks do.
    private const long WorkOfCheaper = 400_000_000;

    private readonly PackProblem problem;
    private readonly TreeFilling filling;
    private readonly PackGreedy greedy;
    private readonly PackSearch search;
    private readonly ContentHanging hanging;
    private readonly ulong seed;
    private readonly PackPlan plan;

    private PackKeeping(PackProblem problem, IReadOnlyList<PackedFlask> known, ulong seed)
    {
        (this.problem, this.seed) = (problem, seed);
        filling = new TreeFilling(problem);
        greedy = new PackGreedy(problem, filling);
        search = new PackSearch(problem, greedy, filling, seed);
        hanging = new ContentHanging(problem, greedy, filling, known);
        plan = PackPlan.Empty(problem);
    }

    /// <summary>Plans.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="standing">What stands, by pieces; a flask that lost some since is marked so.</param>
    /// <param name="known">Trees already hung; one with the same pieces is taken as it is.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search for new flasks early.</param>
    public static PackPlan Plan(
        PackProblem problem, IReadOnlyList<(PackedFlask Flask, bool HasLost)> standing, IReadOnlyList<PackedFlask> known, ulong seed, CancellationToken stop)
    {
        var keeping = new PackKeeping(problem, known, seed);
        foreach (var (flask, hasLost) in standing)
        {
            keeping.Keep(flask, hasLost);
        }

        var isChanged = keeping.plan.Lost > 0 || standing.Any(s => s.HasLost);
        if (keeping.plan.Lost > 0)
        {
            keeping.FillRoom();
        }

        var kept = keeping.plan.Lost > 0 ? keeping.Larger() ?? keeping.WithNew(stop) : keeping.plan;
        var homes = new PackHomes(problem, [.. standing.Select(s => s.Flask)]);

        // Where nothing changed, nothing is looked for: filling again says the same.
        return isChanged && kept.Lost == 0 && PackStaying.Suits(problem, homes)
            ? PackStaying.Plan(problem, homes, keeping.hanging, kept, StayingAim.NoMove(problem, homes.Count + 1, known.Sum(k => problem.Sizes[k.Size].Cost), kept.Cost), WorkOfCheaper, seed, stop)
            : kept;
    }

    private void Keep(PackedFlask flask, bool hasLost)
    {
        PackCount[] wanted = [.. flask.Content.Select(c => c with { Count = Math.Min(c.Count, plan.Left[c.Item]) }).Where(c => c.Count > 0)];
        if (wanted.Length == 0 || plan.Free[flask.Size] <= 0 || hanging.Hang(flask.Size, flask.Pin, wanted) is not { Content.Length: > 0 } hung)
        {
            return;
        }

        plan.Add(hung);
        if (hasLost && !hanging.Knows(hung) && search.Shrink(plan, plan.Flasks.Count - 1) && hanging.HangWhole(plan.Flasks[^1].Size, plan.Flasks[^1]) is { } small)
        {
            Replace(plan, plan.Flasks[^1], small);
        }
    }

    // The fullest first, so that what is nearly empty may be needed no longer next time.
    private void FillRoom()
    {
        foreach (var flask in plan.Flasks.OrderByDescending(f => f.Fill).ThenBy(f => plan.Flasks.IndexOf(f)).ToList())
        {
            if (Fuller(plan, flask, flask.Size) is { } fuller)
            {
                Replace(plan, flask, fuller);
            }
        }
    }

    // Larger flasks for trees that stand, where no new flask is needed then.
    private PackPlan? Larger()
    {
        var grown = plan.Copy();
        while (grown.Lost > 0)
        {
            var (best, was) = ((PackedFlask?)null, (PackedFlask?)null);
            foreach (var flask in grown.Flasks)
            {
                for (var size = 0; size < problem.Sizes.Length; size++)
                {
                    if (grown.Free[size] > 0 && problem.Sizes[size].Cost > problem.Sizes[flask.Size].Cost && Fuller(grown, flask, size) is { } fuller
                        && (best is null || Gain(fuller, flask).CompareTo(Gain(best, was!)) > 0))
                    {
                        (best, was) = (fuller, flask);
                    }
                }
            }

            if (best is null)
            {
                return null;
            }

            Replace(grown, was!, best);
        }

        return grown;
    }

    // By what is added, then by what it costs.
    private (long Fill, long Cost) Gain(PackedFlask fuller, PackedFlask flask) =>
        (fuller.Fill - flask.Fill, problem.Sizes[flask.Size].Cost - problem.Sizes[fuller.Size].Cost);

    private PackPlan WithNew(CancellationToken stop)
    {
        var rest = new PackProblem(
            [.. problem.Items.Select((item, i) => item with { Quantity = IsBound(item) ? 0 : plan.Left[i] })],
            [.. problem.Sizes.Select((size, i) => size with { Free = plan.Free[i] })]);
        foreach (var flask in PackSolver.Solve(rest, seed, inBrief: true, stop).Plan.Flasks)
        {
            plan.Add(hanging.HangWhole(flask.Size, flask) ?? flask);
        }

        return plan;

        bool IsBound(PackItem item) => item.Pin >= 0 && plan.Flasks.Exists(f => f.Pin == item.Pin);
    }

    // The flask with more in it, if all that was in it still is and the tree can be hung by itself.
    private PackedFlask? Fuller(PackPlan from, PackedFlask flask, int size)
    {
        var left = (int[])from.Left.Clone();
        var values = greedy.Values(1, 0, urgent: false);
        foreach (var (item, count) in flask.Content)
        {
            left[item] += count;
            values[item] *= HungFirst;
        }

        foreach (var setting in problem.Settings.Where(s => flask.Content.All(c => problem.Items[c.Item].MayBeCastAt(s))).Reverse())
        {
            if (filling.Fill(size, setting, flask.Pin, left, values) is { } filled && filled.Flask.Fill > flask.Fill
                && flask.Content.All(c => filled.Flask.Content.Any(n => n.Item == c.Item && n.Count >= c.Count))
                && hanging.HangWhole(size, filled.Flask) is { } hung)
            {
                return hung;
            }
        }

        return null;
    }

    private static void Replace(PackPlan from, PackedFlask flask, PackedFlask by)
    {
        from.RemoveAt(from.Flasks.IndexOf(flask));
        from.Add(by);
    }
}
