namespace CastBook.Planning.Packing.Staying;

/// <summary>What a changed plan is to reach: the less its flasks and the pieces that moved count together, the better.</summary>
/// <param name="MostFlasks">How many flasks it may have.</param>
/// <param name="LeastCost">What the plan searched afresh costs: for less hardly anything hangs.</param>
/// <param name="MostCost">What it may cost.</param>
/// <param name="OfFlask">What a flask counts, by size.</param>
/// <param name="OfMove">What a piece that moved counts.</param>
internal sealed record StayingAim(int MostFlasks, long LeastCost, long MostCost, IReadOnlyList<long> OfFlask, long OfMove)
{
    /// <summary>As few moves as do, at a given cost.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">How many flasks it may have.</param>
    /// <param name="cost">What it may cost.</param>
    public static StayingAim FewestMoves(PackProblem problem, int flasks, long cost) => new(flasks, cost, cost, new long[problem.Sizes.Length], 1);

    /// <summary>As cheap as can be with nothing moved.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">How many flasks it may have.</param>
    /// <param name="least">What the plan searched afresh costs.</param>
    /// <param name="below">What it costs less than.</param>
    public static StayingAim NoMove(PackProblem problem, int flasks, long least, long below) => new(flasks, least, below - 1, [.. problem.Sizes.Select(s => s.Cost)], below);

    /// <summary>What flasks and moves count together.</summary>
    /// <param name="sizes">The size of each flask.</param>
    /// <param name="moved">How many pieces moved.</param>
    public long Of(IEnumerable<int> sizes, int moved) => sizes.Sum(s => OfFlask[s]) + (moved * OfMove);
}
