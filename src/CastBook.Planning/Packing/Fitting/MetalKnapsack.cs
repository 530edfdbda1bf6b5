namespace CastBook.Planning.Packing.Fitting;

/// <summary>Which pieces make best use of the metal a tree may take, space apart.</summary>
/// <remarks>Pieces are rounded up to whole cells of a table and the room down, so that what it chooses can be poured.</remarks>
/// <param name="problem">The problem.</param>
/// <param name="mostCells">The table is no finer than this.</param>
internal sealed class MetalKnapsack(PackProblem problem, long mostCells)
{
    private readonly ColumnKnapsack knapsack = new();
    private ColumnPiece[] pieces = [];
    private int[] counts = [];

    /// <summary>Steps of the table so far.</summary>
    public long Work => knapsack.Work;

    /// <summary>Chooses pieces.</summary>
    /// <param name="candidates">The pieces.</param>
    /// <param name="left">How many of each piece there are.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <param name="room">The most metal.</param>
    /// <param name="chosen">Takes how many of each piece are chosen; other pieces are not touched.</param>
    /// <returns>The most that pieces can be worth; nothing where rounding may hide what is worth more.</returns>
    public long? Choose(ReadOnlySpan<int> candidates, int[] left, long[] values, long room, int[] chosen)
    {
        if (pieces.Length < candidates.Length)
        {
            (pieces, counts) = (new ColumnPiece[candidates.Length], new int[candidates.Length]);
        }

        var (unit, isRounded) = (Unit(candidates, room), false);
        for (var i = 0; i < candidates.Length; i++)
        {
            var item = candidates[i];
            var metal = (int)Math.Min(int.MaxValue / 2, Math.Max(1, (problem.Metals[item] + unit - 1) / unit));
            isRounded |= metal * unit != problem.Metals[item];
            pieces[i] = new ColumnPiece(metal, 0, values[item], left[item]);
        }

        var most = knapsack.Solve(pieces.AsSpan(0, candidates.Length), (int)(room / unit));
        knapsack.Take(counts.AsSpan(0, candidates.Length));
        for (var i = 0; i < candidates.Length; i++)
        {
            chosen[candidates[i]] = counts[i];
        }

        return isRounded ? null : most;
    }

    private long Unit(ReadOnlySpan<int> candidates, long room)
    {
        var common = room;
        foreach (var item in candidates)
        {
            var (a, b) = (common, problem.Metals[item]);
            while (b > 0)
            {
                (a, b) = (b, a % b);
            }

            common = a;
        }

        return Math.Max(Math.Max(1, common), (room + mostCells - 1) / mostCells);
    }
}
