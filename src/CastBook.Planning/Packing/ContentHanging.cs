using CastBook.Planning.Packing.Fitting;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing;

/// <summary>Hangs trees by their content alone: the same pieces hang the same way whatever else there is.</summary>
/// <param name="problem">The problem.</param>
/// <param name="greedy">Measures of pieces.</param>
/// <param name="filling">Fills flasks.</param>
/// <param name="known">Trees already hung; one with the same pieces is taken as it is.</param>
internal sealed class ContentHanging(PackProblem problem, PackGreedy greedy, TreeFilling filling, IReadOnlyList<PackedFlask> known)
{
    // Ways of valuing pieces to try until all of a full tree hangs.
    private const int MostPerturbed = 60;

    // Steps to find the tree that measures do not.
    private const long WorkOfFit = 100_000_000;

    private readonly Dictionary<string, PackedFlask?> hung = new(StringComparer.Ordinal);

    /// <summary>Whether a tree is known already.</summary>
    /// <param name="flask">The tree.</param>
    public bool Knows(PackedFlask flask) => known.Contains(flask);

    /// <summary>The tree of given pieces; of what does not fit, the rest.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="pin">The pin the flask answers, or less than 0.</param>
    /// <param name="content">The pieces, by piece.</param>
    public PackedFlask? Hang(int size, int pin, PackCount[] content)
    {
        if (known.FirstOrDefault(k => k.Size == size && k.Pin == pin && k.Content.AsSpan().SequenceEqual(content)) is { } same)
        {
            return same;
        }

        var key = string.Join(' ', content.Select(c => $"{c.Item}:{c.Count}").Prepend($"{size} {pin}"));
        if (!hung.TryGetValue(key, out var tree))
        {
            hung[key] = tree = Hung(size, pin, content);
        }

        return tree;
    }

    private PackedFlask? Hung(int size, int pin, PackCount[] content)
    {
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
        return Fitted(size, pin, content) ?? (best is not { Content.Length: > 0 } ? null : Hang(size, pin, best.Content));
    }

    // What hung once hangs when a piece of it is gone, but how may be hard to find.
    private PackedFlask? Fitted(int size, int pin, PackCount[] content)
    {
        if (!Array.TrueForAll(content, c => problem.Shapes[size][c.Item].HasSector))
        {
            return null;
        }

        var alone = new PackProblem([.. content.Select(c => problem.Items[c.Item] with { Quantity = c.Count, Pin = -1 })], problem.Sizes);
        var fit = new FlaskFit(alone, [(size, content.Min(c => problem.Items[c.Item].Highest))], CancellationToken.None).Look(WorkOfFit);
        return fit.Plan is { } plan
            ? PackedFlask.Of(problem, size, [.. plan.Flasks[0].Columns.Select(c => c.Select(p => p with { Item = content[p.Item].Item }).ToArray())]) with { Pin = pin }
            : null;
    }

    /// <summary>The tree of given pieces; nothing where they do not all hang.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="flask">The pieces, and the pin.</param>
    public PackedFlask? HangWhole(int size, PackedFlask flask) =>
        Hang(size, flask.Pin, flask.Content) is { } hung && hung.Content.AsSpan().SequenceEqual(flask.Content) ? hung : null;

    /// <summary>Hangs every tree of a plan by its content alone; nothing where that cannot be. What is hung in another way by itself would be hung in another way next time.</summary>
    /// <param name="plan">The plan; it is not changed.</param>
    public PackPlan? HangAll(PackPlan plan)
    {
        var hung = PackPlan.Empty(problem);
        foreach (var flask in plan.Flasks)
        {
            if (HangWhole(flask.Size, flask) is not { } same)
            {
                return null;
            }

            hung.Add(same);
        }

        return hung;
    }
}
