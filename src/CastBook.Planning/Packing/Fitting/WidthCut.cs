namespace CastBook.Planning.Packing.Fitting;

/// <summary>A way of valuing pieces, and what sectors of each width can be worth by it at most: sectors worth less than all pieces do not hold them.</summary>
internal sealed class WidthCut
{
    private readonly long[][] bests;

    // By the width of a sector: what it can be worth together with narrower ones beside it, by the angle there is for these.
    private readonly long[][][] with;
    private readonly long[] after;
    private readonly long total;

    // What the sectors chosen so far are worth, by how many they are.
    private readonly long[] sums;

    /// <summary>Works out what sectors can be worth.</summary>
    /// <param name="types">The sizes and settings; takes the prices.</param>
    /// <param name="trees">The trees, all empty.</param>
    /// <param name="all">How many of each piece there are.</param>
    /// <param name="values">What each piece is worth.</param>
    public WidthCut(SectorType[] types, FitTree[] trees, int[] all, int[] values)
    {
        (bests, with) = (new long[types.Length][], new long[types.Length][][]);
        for (var t = 0; t < types.Length; t++)
        {
            var type = types[t];
            type.Price(all, values, 0, PackShape.Turn);
            bests[t] = [.. Enumerable.Range(0, type.Widths.Count).Select(w => (long)type.Best(w))];
            with[t] = With(type.Widths, bests[t]);
        }

        for (var i = 0; i < all.Length; i++)
        {
            total += (long)all[i] * values[i];
        }

        after = new long[trees.Length];
        for (var i = trees.Length - 2; i >= 0; i--)
        {
            after[i] = after[i + 1] + types[trees[i + 1].Type].Turn(PackShape.Turn);
        }

        sums = new long[(trees.Length * PackShape.Turn) + 1];
    }

    /// <summary>Takes note of a sector that was chosen.</summary>
    /// <param name="count">How many were chosen before.</param>
    /// <param name="sector">The sector.</param>
    public void Choose(int count, WidthChoice sector) => sums[count + 1] = sums[count] + bests[sector.Type][sector.Width];

    /// <summary>Whether one more sector leaves too little, however the rest is cut into sectors that are no wider.</summary>
    /// <param name="count">How many were chosen before.</param>
    /// <param name="sector">The sector.</param>
    /// <param name="rest">The angle that its tree has left then.</param>
    public bool Refutes(int count, WidthChoice sector, int rest) =>
        sums[count] + with[sector.Type][sector.Width][rest] + after[sector.Tree] < total;

    /// <summary>Whether the sectors chosen are too few.</summary>
    /// <param name="count">How many they are.</param>
    public bool Refutes(int count) => sums[count] < total;

    private static long[][] With(IReadOnlyList<int> widths, long[] bests)
    {
        var with = new long[bests.Length][];
        var narrower = new long[PackShape.Turn + 1];
        for (var w = 0; w < bests.Length; w++)
        {
            for (var angle = widths[w]; angle <= PackShape.Turn; angle++)
            {
                narrower[angle] = Math.Max(narrower[angle], narrower[angle - widths[w]] + bests[w]);
            }

            with[w] = [.. narrower.Select(n => n + bests[w])];
        }

        return with;
    }
}

/// <summary>A sector of which only the width is chosen.</summary>
/// <param name="Tree">Its tree.</param>
/// <param name="Type">The place of the tree's size and setting.</param>
/// <param name="Width">The place of the width.</param>
internal readonly record struct WidthChoice(int Tree, int Type, int Width);
