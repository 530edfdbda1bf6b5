namespace CastBook.Planning.Packing;

/// <summary>Plans with every piece left where it was as far as it still fits: new pieces go into the room left, then into new flasks.</summary>
internal sealed class PackKeeping
{
    // What hangs in a flask already comes before all that might be added.
    private const long HungFirst = 100_000;

    // Searches for few moves, of which that with the fewest counts.
    private const int CalmTries = 18;

    // Ways of valuing pieces to try until all of a full tree hangs.
    private const int MostPerturbed = 60;

    private readonly PackProblem problem;
    private readonly IReadOnlyList<PackedFlask> known;
    private readonly TreeFilling filling;
    private readonly PackGreedy greedy;
    private readonly PackSearch search;
    private readonly ulong seed;
    private readonly PackPlan plan;

    private PackKeeping(PackProblem problem, IReadOnlyList<PackedFlask> known, ulong seed)
    {
        (this.problem, this.known, this.seed) = (problem, known, seed);
        filling = new TreeFilling(problem);
        greedy = new PackGreedy(problem, filling);
        search = new PackSearch(problem, greedy, filling, seed);
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

        if (keeping.plan.Lost > 0)
        {
            keeping.FillRoom();
        }

        return keeping.plan.Lost > 0 ? keeping.Larger() ?? keeping.WithNew(stop) : keeping.plan;
    }

    /// <summary>Moves as few pieces of a plan as make it as cheap as is asked, or gives up.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="kept">The flasks of the plan.</param>
    /// <param name="known">Trees already hung; one with the same pieces is taken as it is.</param>
    /// <param name="enough">The cost that is asked.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan? Better(
        PackProblem problem, IReadOnlyList<PackedFlask> kept, IReadOnlyList<PackedFlask> known, long enough, long work, ulong seed, CancellationToken stop)
    {
        var keeping = new PackKeeping(problem, known, seed);
        foreach (var flask in kept)
        {
            if (keeping.plan.Free[flask.Size] <= 0)
            {
                return null;
            }

            keeping.plan.Add(flask);
        }

        var (best, fewest) = ((PackPlan?)null, int.MaxValue);
        for (var i = 0; i < CalmTries; i++)
        {
            var better = keeping.search.Improve(keeping.plan, enough, work / CalmTries, PackEffort.Few(2 + (i % (PackEffort.MostAtOnce - 1))), stop);
            var moved = better.Lost == 0 && better.Cost <= enough ? Moved(better, kept) : int.MaxValue;
            if (moved < fewest && keeping.HangAgain(better, kept))
            {
                (best, fewest) = (better, moved);
            }
        }

        return best;
    }

    // Pieces that are not in the flask that has most in common with the one they were in.
    private static int Moved(PackPlan plan, IReadOnlyList<PackedFlask> kept)
    {
        var (moved, left) = (0, plan.Flasks.ToList());
        foreach (var was in kept)
        {
            var now = left.MaxBy(f => Common(was, f));
            moved += was.Content.Sum(c => c.Count) - (now is null ? 0 : Common(was, now));
            left.Remove(now!);
        }

        return moved;
    }

    private static int Common(PackedFlask a, PackedFlask b) =>
        a.Content.Sum(c => Math.Min(c.Count, b.Content.FirstOrDefault(o => o.Item == c.Item).Count));

    // What is hung in another way by itself would be hung in another way next time.
    private bool HangAgain(PackPlan better, IReadOnlyList<PackedFlask> kept)
    {
        foreach (var flask in better.Flasks.Where(f => !kept.Contains(f)).ToList())
        {
            if (Hang(flask.Size, flask.Pin, flask.Content) is not { } hung || !hung.Content.AsSpan().SequenceEqual(flask.Content))
            {
                return false;
            }

            Replace(better, flask, hung);
        }

        return true;
    }

    private void Keep(PackedFlask flask, bool hasLost)
    {
        PackCount[] wanted = [.. flask.Content.Select(c => c with { Count = Math.Min(c.Count, plan.Left[c.Item]) }).Where(c => c.Count > 0)];
        if (wanted.Length == 0 || plan.Free[flask.Size] <= 0 || Hang(flask.Size, flask.Pin, wanted) is not { Content.Length: > 0 } hung)
        {
            return;
        }

        plan.Add(hung);
        if (hasLost && !known.Contains(hung))
        {
            search.Shrink(plan, plan.Flasks.Count - 1);
        }
    }

    // The tree of given pieces, the same whatever else there is; of what does not fit, the rest.
    private PackedFlask? Hang(int size, int pin, PackCount[] content)
    {
        if (known.FirstOrDefault(k => k.Size == size && k.Pin == pin && k.Content.AsSpan().SequenceEqual(content)) is { } same)
        {
            return same;
        }

        var left = new int[problem.Items.Length];
        foreach (var (item, count) in content)
        {
            left[item] = count;
        }

        PackedFlask? best = null;
        foreach (var values in greedy.Measured().Concat(greedy.Perturbed(MostPerturbed)))
        {
            if (filling.Fill(size, content.Min(c => problem.Items[c.Item].Highest), pin, left, values) is { } filled
                && (best is null || filled.Flask.Fill > best.Fill))
            {
                best = filled.Flask;
                if (best.Content.AsSpan().SequenceEqual(content))
                {
                    return best;
                }
            }
        }

        // What stays behind had a say in how the rest hangs; next time it will not be asked.
        return best is not { Content.Length: > 0 } ? null : Hang(size, pin, best.Content);
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
            var hung = Hang(flask.Size, flask.Pin, flask.Content);
            plan.Add(hung is not null && hung.Content.AsSpan().SequenceEqual(flask.Content) ? hung : flask);
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

        foreach (var setting in problem.Settings.Where(s => flask.Content.All(c => problem.Items[c.Item].Lowest <= s && s <= problem.Items[c.Item].Highest)).Reverse())
        {
            if (filling.Fill(size, setting, flask.Pin, left, values) is { } filled && filled.Flask.Fill > flask.Fill
                && flask.Content.All(c => filled.Flask.Content.Any(n => n.Item == c.Item && n.Count >= c.Count))
                && Hang(size, flask.Pin, filled.Flask.Content) is { } hung && hung.Content.AsSpan().SequenceEqual(filled.Flask.Content))
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
