using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <summary>Chooses among trees at least cost, in parts of trees, so that every piece is hung: the simplex method.</summary>
/// <remarks>
/// Rows are pieces, each to be hung at least as often as there are copies, then sizes, each used at most as often as it is free, then
/// all flasks together.
/// </remarks>
internal sealed class CoverMaster
{
    private const double Dust = 1e-9;

    // A piece that no tree holds costs as much as so many of the dearest flask.
    private const double Unhung = 10;

    private readonly int items;
    private readonly int rows;
    private readonly double[] need;
    private readonly List<(int[] Rows, double[] Counts, double Cost)> columns = [];
    private readonly double[][] inverse;
    private readonly double[] amounts;
    private readonly double[] basisCosts;
    private readonly int[] basis;
    private readonly double[] step;

    /// <summary>Starts with nothing hung.</summary>
    /// <param name="needs">How often each piece is wanted.</param>
    /// <param name="free">How often each size may be used.</param>
    /// <param name="most">How many flasks there may be altogether.</param>
    public CoverMaster(IReadOnlyList<int> needs, IReadOnlyList<int> free, int most)
    {
        items = needs.Count;
        rows = items + free.Count + 1;
        need = [.. needs.Select(n => (double)n), .. free.Select(f => -(double)f), -most];
        Duals = new double[rows];
        amounts = [.. need.Select(Math.Abs)];
        basis = new int[rows];
        step = new double[rows];
        basisCosts = new double[rows];
        inverse = new double[rows][];
        for (var i = 0; i < rows; i++)
        {
            inverse[i] = new double[rows];
            inverse[i][i] = i < items ? 1 : -1;
            basis[i] = i < items ? Outside : Surplus(i);
            basisCosts[i] = i < items ? Unhung : 0;
        }
    }

    /// <summary>What each row is worth: a piece, one more of a size, or one more flask; in the unit of the costs.</summary>
    public double[] Duals { get; }

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

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
        columns.Add((at, counts, cost));
    }

    /// <summary>How much of a tree is taken.</summary>
    /// <param name="tree">Its place in the order in which trees were added.</param>
    public double AmountOf(int tree)
    {
        var at = Array.IndexOf(basis, tree);
        return at < 0 ? 0 : amounts[at];
    }

    /// <summary>Finds the least cost and what each row is worth then.</summary>
    public double Solve()
    {
        for (var pivots = 0; pivots < 20 * rows; pivots++)
        {
            Price();
            if (Entering() is not { } entering)
            {
                break;
            }

            Direct(entering);
            if (Leaving() is not { } leaving)
            {
                break;
            }

            Pivot(leaving, entering);
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

            var row = inverse[i];
            for (var j = 0; j < rows; j++)
            {
                Duals[j] += cost * row[j];
            }
        }

        Work += (long)rows * rows;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int? Entering()
    {
        int? best = null;
        var least = -1e-7;
        for (var c = 0; c < columns.Count; c++)
        {
            var (at, counts, cost) = columns[c];
            for (var i = 0; i < at.Length; i++)
            {
                cost -= counts[i] * Duals[at[i]];
            }

            Work += at.Length;
            if (cost < least)
            {
                (best, least) = (c, cost);
            }
        }

        for (var r = 0; r < rows; r++)
        {
            if (Duals[r] < least)
            {
                (best, least) = (Surplus(r), Duals[r]);
            }
        }

        return best;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Direct(int entering)
    {
        for (var i = 0; i < rows; i++)
        {
            var sum = 0.0;
            if (entering < 0)
            {
                sum = -inverse[i][-2 - entering];
            }
            else
            {
                var (at, counts, _) = columns[entering];
                for (var k = 0; k < at.Length; k++)
                {
                    sum += inverse[i][at[k]] * counts[k];
                }
            }

            step[i] = sum;
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

            var row = inverse[i];
            for (var j = 0; j < rows; j++)
            {
                row[j] -= factor * pivot[j];
            }

            amounts[i] -= factor * amounts[leaving];
        }

        Work += (long)rows * rows;
        basis[leaving] = entering;
        basisCosts[leaving] = entering < 0 ? 0 : columns[entering].Cost;
    }
}
