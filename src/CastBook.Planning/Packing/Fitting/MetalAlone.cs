namespace CastBook.Planning.Packing.Fitting;

/// <summary>Problems in which nothing but metal can be short: whatever a flask can be poured with hangs in it.</summary>
internal static class MetalAlone
{
    /// <summary>Whether a problem is such a one: all pieces may share a flask, and as many as its metal reaches for hang in any.</summary>
    /// <param name="problem">The problem.</param>
    public static bool Suits(PackProblem problem) =>
        problem is { Pins: 0, IsOfOneSetting: true }
        && Array.TrueForAll(problem.Metals, m => m > 0)
        && Enumerable.Range(0, problem.Sizes.Length).All(size => HangsWhatIsPoured(problem, size));

    /// <summary>The plan that consists of some loads.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="loads">The loads.</param>
    public static PackPlan Plan(PackProblem problem, IEnumerable<MetalLoad> loads)
    {
        var plan = PackPlan.Empty(problem);
        foreach (var (size, _, content) in loads)
        {
            var inOrder = content.OrderBy(c => Array.IndexOf(problem.ByTail[size], c.Item)).SelectMany(c => Enumerable.Repeat(c.Item, c.Count));
            plan.Add(PackedFlask.Of(problem, size, [.. inOrder.Chunk(InSector(problem, size)).Select(Sector)]));
        }

        return plan;
    }

    private static PackCount[] Sector(int[] pieces) => [.. pieces.GroupBy(i => i).Select(g => new PackCount(g.Key, g.Count()))];

    private static bool HangsWhatIsPoured(PackProblem problem, int size)
    {
        var (fitting, shapes) = (problem.ByTail[size], problem.Shapes[size]);
        if (fitting.Length == 0)
        {
            return true;
        }

        return Array.TrueForAll(fitting, i => shapes[i].HasSector)
            && Poured(problem, size) <= PackShape.Turn / fitting.Max(i => shapes[i].Theta) * InSector(problem, size);
    }

    // The most pieces that the metal reaches for: the lightest.
    private static long Poured(PackProblem problem, int size) =>
        Most(problem.ByTail[size].OrderBy(i => problem.Metals[i]), i => problem.Metals[i], problem.Items, problem.Sizes[size].Metal);

    // So many pieces hang one above the other, whichever they are: the longest do.
    private static int InSector(PackProblem problem, int size)
    {
        var (fitting, shapes) = (problem.ByTail[size], problem.Shapes[size]);
        return (int)Most(fitting.OrderByDescending(i => shapes[i].Pitch), i => shapes[i].Pitch, problem.Items, problem.Sizes[size].Rod - fitting.Max(i => shapes[i].Tail));
    }

    private static long Most(IEnumerable<int> inOrder, Func<int, long> take, PackItem[] items, long room)
    {
        var most = 0L;
        foreach (var i in inOrder)
        {
            var count = Math.Clamp(room / take(i), 0, items[i].Quantity);
            (most, room) = (most + count, room - (count * take(i)));
            if (count < items[i].Quantity)
            {
                break;
            }
        }

        return most;
    }
}

/// <summary>Pieces that may go into a flask.</summary>
/// <param name="Size">Its size.</param>
/// <param name="Unused">The metal it could take besides.</param>
/// <param name="Content">The pieces.</param>
internal sealed record MetalLoad(int Size, long Unused, PackCount[] Content);
