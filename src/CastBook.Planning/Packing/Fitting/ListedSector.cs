namespace CastBook.Planning.Packing.Fitting;

/// <summary>A sector to which nothing can be added.</summary>
/// <param name="Kind">The kind of room it takes: its size and setting and its width.</param>
/// <param name="Content">What hangs in it, from the button up.</param>
internal sealed record ListedSector(int Kind, PackCount[] Content)
{
    /// <summary>What it holds of the pieces that are left.</summary>
    /// <param name="left">How many of each piece are left.</param>
    public PackCount[] Of(int[] left) =>
        [.. Content.Where(c => left[c.Item] > 0).Select(c => new PackCount(c.Item, Math.Min(c.Count, left[c.Item])))];

    /// <summary>What that is worth.</summary>
    /// <param name="left">How many of each piece are left.</param>
    /// <param name="values">What each piece is worth.</param>
    public long Worth(int[] left, long[] values)
    {
        var worth = 0L;
        foreach (var (item, count) in Content)
        {
            worth += values[item] * Math.Min(count, left[item]);
        }

        return worth;
    }

    /// <summary>Whether it holds any piece that is left.</summary>
    /// <param name="left">How many of each piece are left.</param>
    public bool IsWanted(int[] left)
    {
        foreach (var (item, _) in Content)
        {
            if (left[item] > 0)
            {
                return true;
            }
        }

        return false;
    }
}
