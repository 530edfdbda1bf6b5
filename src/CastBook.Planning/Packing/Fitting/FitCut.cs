namespace CastBook.Planning.Packing.Fitting;

/// <summary>A way of valuing pieces and metal, and what trees can be worth by it at most: pieces worth more than all trees do not fit.</summary>
/// <remarks>It holds for the pieces that were left when it was made, and for any of them that are left later.</remarks>
internal sealed class FitCut
{
    private readonly int[] values;
    private readonly long[] metalPrices;
    private readonly long[][] turns;

    /// <summary>Works out what trees can be worth.</summary>
    /// <param name="types">The sizes and settings.</param>
    /// <param name="left">How many of each piece there are at most.</param>
    /// <param name="trees">The trees, with the most room they will have.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <param name="metalPrices">For each size and setting what a unit of metal costs, with <see cref="SectorType.MetalBits"/> bits of parts.</param>
    public FitCut(SectorType[] types, int[] left, FitTree[] trees, int[] values, long[] metalPrices)
    {
        (this.values, this.metalPrices) = (values, metalPrices);
        turns = new long[types.Length][];
        for (var t = 0; t < types.Length; t++)
        {
            types[t].Price(left, values, metalPrices[t], Widest(trees, t));
            turns[t] = types[t].Turns();
        }
    }

    /// <summary>The same values where there is more.</summary>
    /// <param name="types">The sizes and settings.</param>
    /// <param name="left">How many of each piece there are at most.</param>
    /// <param name="trees">The trees, with the most room they will have.</param>
    public FitCut For(SectorType[] types, int[] left, FitTree[] trees) => new(types, left, trees, values, metalPrices);

    /// <summary>The most angle that is free on a tree of a size and setting.</summary>
    /// <param name="trees">The trees.</param>
    /// <param name="type">The place of the size and setting.</param>
    public static int Widest(FitTree[] trees, int type) => trees.Where(t => t.Type == type).Select(t => t.Angle).DefaultIfEmpty(0).Max();

    /// <summary>Whether the pieces are sure not to fit.</summary>
    /// <param name="left">How many of each are left.</param>
    /// <param name="trees">The trees.</param>
    public bool Refutes(int[] left, FitTree[] trees)
    {
        var over = 0L;
        for (var i = 0; i < left.Length; i++)
        {
            over += (long)left[i] * values[i];
        }

        foreach (var tree in trees)
        {
            over -= Worth(tree);
        }

        return over > 0;
    }

    /// <summary>What a tree can be worth at most.</summary>
    /// <param name="tree">The tree.</param>
    public long Worth(FitTree tree) => turns[tree.Type][tree.Angle] + MetalWorth(tree);

    /// <summary>What the metal of a tree costs, rounded up: what pieces pay for theirs is rounded down.</summary>
    /// <param name="tree">The tree.</param>
    public long MetalWorth(FitTree tree) => metalPrices[tree.Type] is > 0 and var price
        ? (long)(((Int128)price * tree.Metal) >> SectorType.MetalBits) + 1
        : 0;
}
