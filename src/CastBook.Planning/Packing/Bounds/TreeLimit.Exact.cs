namespace CastBook.Planning.Packing.Bounds;

/// <content>The limit where prices alone leave it too high: what the best tree is worth.</content>
internal sealed partial class TreeLimit
{
    /// <summary>The tree that was found last, where it can be hung as it is.</summary>
    public PackedFlask? Hung => hung;

    /// <summary>Whether more work would have found a lower limit.</summary>
    public bool IsCutShort { get; private set; }

    private long Searched(long[] values, long best, long enough, long work, ref PackCount[] tree)
    {
        if (search is null)
        {
            return best;
        }

        Price(values);
        int[] wanted = [.. Enumerable.Range(0, members.Length).Where(i => values[members[i]] > 0)];
        var before = search.Work;
        var searched = search.Most(
            [.. wanted.Select(i => members[i])], [.. wanted.Select(i => values[members[i]])], [.. wanted.Select(i => net[i])],
            AtPrices(), enough + (enough >> 20), work, out hung);
        Work += search.Work - before;
        tree = hung?.Content ?? tree;
        IsCutShort = searched is null;
        return searched is { } most ? Math.Min(best, most) : best;
    }

    private long AtPrices()
    {
        var cost = ((metalPrice * problem.Sizes[size].Metal) >> MetalBits) + (metalPrice > 0 ? 1 : 0);
        for (var i = 0; i < members.Length; i++)
        {
            cost += copyPrices[i] * problem.Items[members[i]].Quantity;
        }

        return cost;
    }

    private void Price(long[] values)
    {
        for (var i = 0; i < members.Length; i++)
        {
            net[i] = values[members[i]] - copyPrices[i] - ((metalPrice * problem.Items[members[i]].Metal) >> MetalBits);
        }
    }
}
