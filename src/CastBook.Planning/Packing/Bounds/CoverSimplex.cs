using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing.Bounds;

/// <summary>Chooses amounts of columns at least cost so that every row gets at least what it needs: the simplex method.</summary>
internal sealed class CoverSimplex
{
    private const double Dust = 1e-9;

    // What no column gives costs so much for each.
    private const double Missing = 10;

    // A look at all columns serves for some steps.
    private const int MostListed = 16;

    // Numbers of a row that are worked out at once, and what a look at a column takes besides.
    private const int Together = 2;
    private const int WorkOfColumn = 4;

    // Worths are carried on from step to step, and worked out anew so often.
    private const int StepsOfPrices = 40;

    private readonly int rows;
    private readonly CoverColumns columns = new();
    private readonly double[][] inverse;
    private readonly double[] amounts;
    private readonly double[] basisCosts;
    private readonly int[] basis;
    private readonly double[] step;
    private readonly List<(double Cost, int Column)> shortList = [];

    /// <summary>Starts with no columns.</summary>
    /// <param name="needs">What each row needs; 0 or less where it starts with that much to spare.</param>
    public CoverSimplex(double[] needs)
    {
        rows = needs.Length;
        Duals = new double[rows];
        amounts = [.. needs.Select(Math.Abs)];
        basis = new int[rows];
        step = new double[rows];
        basisCosts = new double[rows];
        inverse = new double[rows][];
        for (var i = 0; i < rows; i++)
        {
            inverse[i] = new double[rows];
            inverse[i][i] = needs[i] > 0 ? 1 : -1;
            basis[i] = needs[i] > 0 ? Outside : Surplus(i);
            basisCosts[i] = needs[i] > 0 ? Missing : 0;
        }
    }

    /// <summary>What one more of each row is worth, in the unit of the costs.</summary>
    public double[] Duals { get; }

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>Adds a column.</summary>
    /// <param name="at">The rows it gives to, or takes from.</param>
    /// <param name="amount">How much, below 0 where it takes.</param>
    /// <param name="cost">Its cost, about 1.</param>
    public void Add(ReadOnlySpan<int> at, ReadOnlySpan<double> amount, double cost) => columns.Add(at, amount, cost);

    /// <summary>Looks at the columns added first before all others.</summary>
    /// <param name="count">How many.</param>
    public void LookFirst(int count)
    {
        shortList.Clear();
        shortList.AddRange(Enumerable.Range(0, count).Select(c => (0.0, c)));
    }

    /// <summary>The columns that a solution is made of, by their places.</summary>
    public IEnumerable<int> Chosen => basis.Where(b => b >= 0);

    /// <summary>How much of a column is taken.</summary>
    /// <param name="column">Its place in the order in which columns were added.</param>
    public double AmountOf(int column)
    {
        var at = Array.IndexOf(basis, column);
        return at < 0 ? 0 : amounts[at];
    }

    /// <summary>Finds the least cost and what each row is worth then.</summary>
    public double Solve()
    {
        for (var pivots = 0; pivots < 20 * rows; pivots++)
        {
            if (pivots % StepsOfPrices == 0)
            {
                Price();
            }

            if (Entering() is not { } entering)
            {
                break;
            }

            Direct(entering);
            if (Leaving() is not { } leaving)
            {
                break;
            }

            var saved = entering < 0 ? Duals[Surplus(entering)] : Reduced(entering);
            Pivot(leaving, entering);
            Subtract(inverse[leaving], Duals, -saved);
        }

        Price();
        var cost = 0.0;
        for (var i = 0; i < rows; i++)
        {
            cost += basisCosts[i] * amounts[i];
        }

        return cost;
    }

    // What stands in the basis: a tree by its place, or below zero the surplus of a row, or nothing of ours.
    private static int Surplus(int row) => -2 - row;

    private const int Outside = -1;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Price()
    {
        Array.Clear(Duals);
        for (var i = 0; i < rows; i++)
        {
            var cost = basisCosts[i];
            if (cost == 0)
            {
                continue;
            }

            Subtract(inverse[i], Duals, -cost);
        }

        Work += (long)rows * rows / Together;
    }

    // Every place by itself, so that it is the same on every machine.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Subtract(double[] what, double[] from, double times)
    {
        ref var take = ref MemoryMarshal.GetArrayDataReference(what);
        ref var of = ref MemoryMarshal.GetArrayDataReference(from);
        var by = new Vector<double>(times);
        var j = 0;
        for (; j <= from.Length - Vector<double>.Count; j += Vector<double>.Count)
        {
            (Vector.LoadUnsafe(ref of, (nuint)j) - (by * Vector.LoadUnsafe(ref take, (nuint)j))).StoreUnsafe(ref of, (nuint)j);
        }

        for (; j < from.Length; j++)
        {
            from[j] -= times * what[j];
        }
    }

    private int? Entering() => Best(shortList) ?? (ListShort() ? shortList[0].Column : Surplus());

    private int? Surplus()
    {
        int? best = null;
        var least = -1e-7;
        for (var r = 0; r < rows; r++)
        {
            (best, least) = Duals[r] < least ? (Surplus(r), Duals[r]) : (best, least);
        }

        return best;
    }

    // Of those that looked best a while ago.
    private int? Best(List<(double Cost, int Column)> among)
    {
        int? best = null;
        var least = -1e-7;
        foreach (var (_, column) in among)
        {
            var cost = Reduced(column);
            (best, least) = cost < least ? (column, cost) : (best, least);
        }

        return best;
    }

    // The columns that save most, the best first.
    private bool ListShort()
    {
        shortList.Clear();
        for (var c = 0; c < columns.Count; c++)
        {
            var cost = Reduced(c);
            if (cost >= -1e-7 || (shortList.Count == MostListed && cost >= shortList[^1].Cost))
            {
                continue;
            }

            var at = shortList.Count;
            while (at > 0 && shortList[at - 1].Cost > cost)
            {
                at--;
            }

            shortList.Insert(at, (cost, c));
            if (shortList.Count > MostListed)
            {
                shortList.RemoveAt(MostListed);
            }
        }

        return shortList.Count > 0;
    }

    private double Reduced(int column)
    {
        Work += WorkOfColumn + columns.LengthOf(column);
        return columns.Reduced(column, Duals);
    }

    private void Direct(int entering)
    {
        if (entering >= 0)
        {
            Work += (long)rows * columns.LengthOf(entering);
            columns.Apply(entering, inverse, step);
            return;
        }

        for (var i = 0; i < rows; i++)
        {
            step[i] = -inverse[i][Surplus(entering)];
        }
    }

    private int? Leaving()
    {
        int? best = null;
        var least = double.MaxValue;
        for (var i = 0; i < rows; i++)
        {
            if (step[i] <= 1e-7)
            {
                continue;
            }

            var ratio = Math.Max(0, amounts[i]) / step[i];
            if (ratio < least - Dust || (ratio < least + Dust && best is { } other && step[i] > step[other]))
            {
                (best, least) = (i, Math.Min(ratio, least));
            }
        }

        return best;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pivot(int leaving, int entering)
    {
        var pivot = inverse[leaving];
        var by = 1 / step[leaving];
        for (var j = 0; j < rows; j++)
        {
            pivot[j] *= by;
        }

        amounts[leaving] *= by;
        for (var i = 0; i < rows; i++)
        {
            var factor = step[i];
            if (i == leaving || factor == 0)
            {
                continue;
            }

            Subtract(pivot, inverse[i], factor);
            amounts[i] -= factor * amounts[leaving];
        }

        Work += (long)rows * rows / Together;
        basis[leaving] = entering;
        basisCosts[leaving] = entering < 0 ? 0 : columns.CostOf(entering);
    }
}
