using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing.Bounds;

/// <summary>Columns of a <see cref="CoverSimplex"/>: what each costs and what it gives to rows or takes from them, one behind the other.</summary>
internal sealed class CoverColumns
{
    private readonly List<int> ends = [0];
    private readonly List<int> rows = [];
    private readonly List<double> amounts = [];
    private readonly List<double> costs = [];

    /// <summary>How many there are.</summary>
    public int Count => costs.Count;

    /// <summary>Adds a column.</summary>
    /// <param name="at">The rows it gives to, or takes from.</param>
    /// <param name="amount">How much, below 0 where it takes.</param>
    /// <param name="cost">Its cost.</param>
    public void Add(ReadOnlySpan<int> at, ReadOnlySpan<double> amount, double cost)
    {
        rows.AddRange(at);
        amounts.AddRange(amount);
        costs.Add(cost);
        ends.Add(rows.Count);
    }

    /// <summary>What a column costs.</summary>
    /// <param name="column">Its place.</param>
    public double CostOf(int column) => costs[column];

    /// <summary>How many rows a column gives to or takes from.</summary>
    /// <param name="column">Its place.</param>
    public int LengthOf(int column) => ends[column + 1] - ends[column];

    /// <summary>What a column costs more than it gives.</summary>
    /// <param name="column">Its place.</param>
    /// <param name="duals">What one more of each row is worth.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Reduced(int column, double[] duals)
    {
        var (from, cost) = (ends[column], costs[column]);
        var at = CollectionsMarshal.AsSpan(rows)[from..ends[column + 1]];
        var amount = CollectionsMarshal.AsSpan(amounts).Slice(from, at.Length);
        for (var i = 0; i < at.Length; i++)
        {
            cost -= amount[i] * duals[at[i]];
        }

        return cost;
    }

    /// <summary>What rows of numbers make of a column.</summary>
    /// <param name="column">Its place.</param>
    /// <param name="table">The rows of numbers.</param>
    /// <param name="result">Takes for each of them the sum.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Apply(int column, double[][] table, double[] result)
    {
        var from = ends[column];
        var at = CollectionsMarshal.AsSpan(rows)[from..ends[column + 1]];
        var amount = CollectionsMarshal.AsSpan(amounts).Slice(from, at.Length);
        for (var i = 0; i < result.Length; i++)
        {
            var (sum, row) = (0.0, table[i]);
            for (var k = 0; k < at.Length; k++)
            {
                sum += row[at[k]] * amount[k];
            }

            result[i] = sum;
        }
    }
}
