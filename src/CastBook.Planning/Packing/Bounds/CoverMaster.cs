namespace CastBook.Planning.Packing.Bounds;

/// <summary>Chooses among trees at least cost, in parts of trees, so that every piece is hung.</summary>
/// <remarks>
/// Rows are pieces, each to be hung at least as often as there are copies, then sizes, each used at most as often as it is free, then
/// all flasks together.
/// </remarks>
internal sealed class CoverMaster
{
    // Of many rows most are even at once, and step after step gains nothing. So each wants a little more than it needs, none the same, and
    // flasks are free for it. What a row is worth then is right as it is: no tree is worth more than it costs.
    private const double MoreOfPiece = 1e-4;
    private const double MoreOfFlask = 1e-3;
    private const double Golden = 0.6180339887498949;

    private readonly int items;
    private readonly int rows;
    private readonly double[] needs;
    private readonly CoverSimplex simplex;

    /// <summary>Starts with nothing hung.</summary>
    /// <param name="needs">How often each piece is wanted.</param>
    /// <param name="free">How often each size may be used.</param>
    /// <param name="most">How many flasks there may be altogether.</param>
    /// <param name="isOfMany">Whether there are so many pieces that rows must not be even.</param>
    public CoverMaster(IReadOnlyList<int> needs, IReadOnlyList<int> free, int most, bool isOfMany = false)
    {
        items = needs.Count;
        rows = items + free.Count + 1;
        this.needs = [.. needs.Select(n => (double)n), .. free.Select(f => -(double)f), -most];
        simplex = new CoverSimplex(isOfMany ? [.. this.needs.Select(Uneven)] : this.needs);
    }

    /// <summary>What each row is worth: a piece, one more of a size, or one more flask; in the unit of the costs.</summary>
    public double[] Duals => simplex.Duals;

    /// <summary>Steps so far.</summary>
    public long Work => simplex.Work;

    /// <summary>The trees that a solution is made of, by their places.</summary>
    public IReadOnlyList<int> Chosen => [.. simplex.Chosen];

    /// <summary>Adds a tree.</summary>
    /// <param name="content">What hangs in it.</param>
    /// <param name="size">Its size.</param>
    /// <param name="cost">Its cost, about 1.</param>
    public void Add(IReadOnlyList<PackCount> content, int size, double cost)
    {
        var at = new int[content.Count + 2];
        var counts = new double[content.Count + 2];
        for (var i = 0; i < content.Count; i++)
        {
            (at[i], counts[i]) = (content[i].Item, content[i].Count);
        }

        (at[^2], counts[^2]) = (items + size, -1);
        (at[^1], counts[^1]) = (rows - 1, -1);
        simplex.Add(at, counts, cost);
    }

    /// <summary>Looks at the trees added first before all others.</summary>
    /// <param name="count">How many.</param>
    public void LookFirst(int count) => simplex.LookFirst(count);

    /// <summary>How much of a tree is taken, within a thousandth or two where rows are not even.</summary>
    /// <param name="tree">Its place in the order in which trees were added.</param>
    public double AmountOf(int tree) => simplex.AmountOf(tree);

    /// <summary>Finds the least cost and what each row is worth then.</summary>
    public double Solve()
    {
        simplex.Solve();
        var cost = 0.0;
        for (var i = 0; i < rows; i++)
        {
            cost += Duals[i] * needs[i];
        }

        return cost;
    }

    private static double Uneven(double need, int row)
    {
        var by = 1 + ((row + 1) * Golden % 1);
        return need > 0 ? need + (MoreOfPiece * by) : need - (MoreOfFlask * by);
    }
}
