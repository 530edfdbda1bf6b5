namespace CastBook.Planning.Packing.Fitting;

/// <summary>What the search for a fit knows of where it was: what was refuted, and points that are gone on from.</summary>
/// <remarks>
/// Whichever way led there, what is left fits or it does not, in whatever order the trees stand. The ways of a point name trees by
/// their places, so that a point is that of trees in one order only.
/// </remarks>
/// <param name="problem">The problem.</param>
internal sealed class FitMemory(PackProblem problem)
{
    private readonly HashSet<long[]> refuted = new(new SameNumbers());
    private readonly Dictionary<long[], FitPoint> points = new(new SameNumbers());

    /// <summary>Where the search is.</summary>
    /// <param name="left">How many of each piece are left.</param>
    /// <param name="trees">The trees.</param>
    /// <remarks>More metal than everything takes is no matter.</remarks>
    public FitState StateOf(int[] left, FitTree[] trees) =>
        new(Numbers(left, [.. trees.OrderBy(t => t.Type).ThenBy(t => t.Angle).ThenBy(t => t.Metal)]), Numbers(left, trees));

    /// <summary>Whether it is known that the rest does not fit.</summary>
    /// <param name="state">Where the search is.</param>
    public bool IsRefuted(FitState state) => refuted.Contains(state.Sorted);

    /// <summary>The point that was kept, or nothing.</summary>
    /// <param name="state">Where the search is.</param>
    public FitPoint? PointOf(FitState state) => points.GetValueOrDefault(state.InOrder);

    /// <summary>Keeps a point.</summary>
    /// <param name="state">Where the search is.</param>
    /// <param name="point">The point.</param>
    public void Keep(FitState state, FitPoint point) => points.Add(state.InOrder, point);

    /// <summary>Remembers that the rest does not fit.</summary>
    /// <param name="state">Where the search is.</param>
    public void Refute(FitState state)
    {
        refuted.Add(state.Sorted);
        points.Remove(state.InOrder);
    }

    private long[] Numbers(int[] left, FitTree[] trees)
    {
        var numbers = new long[left.Length + (2 * trees.Length)];
        var metal = 0L;
        for (var i = 0; i < left.Length; i++)
        {
            numbers[i] = left[i];
            metal += left[i] * problem.Metals[i];
        }

        var at = left.Length;
        foreach (var tree in trees)
        {
            numbers[at++] = (tree.Type * (PackShape.Turn + 1L)) + tree.Angle;
            numbers[at++] = Math.Min(metal, tree.Metal);
        }

        return numbers;
    }
}

/// <summary>Where a search for a fit is: what is left, and the room of the trees.</summary>
/// <param name="Sorted">With the trees by their room.</param>
/// <param name="InOrder">With the trees as they stand.</param>
internal readonly record struct FitState(long[] Sorted, long[] InOrder);
