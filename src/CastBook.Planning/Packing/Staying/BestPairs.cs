namespace CastBook.Planning.Packing.Staying;

/// <summary>Pairs two lists so that the pairs are worth most together.</summary>
/// <remarks>
/// <para><b>Formula.</b> Shortest augmenting paths over reduced worths, one row after the other.</para>
/// <para><b>Source.</b> Kuhn, The Hungarian Method for the Assignment Problem, Naval Research Logistics Quarterly 2, 1955;
/// Jonker and Volgenant, A Shortest Augmenting Path Algorithm for Dense and Sparse Linear Assignment Problems, Computing 38, 1987.</para>
/// </remarks>
internal static class BestPairs
{
    /// <summary>The column of each row; less than 0 where it has none that is worth anything.</summary>
    /// <param name="rows">How many rows.</param>
    /// <param name="columns">How many columns.</param>
    /// <param name="worth">What a pair is worth; 0 or more.</param>
    public static int[] Of(int rows, int columns, Func<int, int, long> worth)
    {
        // Further columns stand for being left alone, so that every row finds one.
        var width = columns + rows;
        long[][] worths = [.. Enumerable.Range(0, rows).Select(r => Enumerable.Range(0, columns).Select(c => worth(r, c)).ToArray())];
        var (ofRow, ofColumn, rowOf) = (new long[rows + 1], new long[width + 1], new int[width + 1]);
        for (var row = 1; row <= rows; row++)
        {
            rowOf[0] = row;
            Augment(ofRow, ofColumn, rowOf, worths);
        }

        var pairs = new int[rows];
        Array.Fill(pairs, -1);
        for (var column = 1; column <= columns; column++)
        {
            if (rowOf[column] > 0 && worths[rowOf[column] - 1][column - 1] > 0)
            {
                pairs[rowOf[column] - 1] = column - 1;
            }
        }

        return pairs;
    }

    // Finds the cheapest way to give the row at column 0 a column, the others giving way; 0 stands for none.
    private static void Augment(long[] ofRow, long[] ofColumn, int[] rowOf, long[][] worths)
    {
        var (least, from, isDone) = (new long[rowOf.Length], new int[rowOf.Length], new bool[rowOf.Length]);
        Array.Fill(least, long.MaxValue);
        var at = 0;
        while (rowOf[at] > 0)
        {
            isDone[at] = true;
            var (row, next, step) = (rowOf[at], -1, long.MaxValue);
            for (var column = 1; column < rowOf.Length; column++)
            {
                if (isDone[column])
                {
                    continue;
                }

                var reduced = -(column <= worths[row - 1].Length ? worths[row - 1][column - 1] : 0) - ofRow[row] - ofColumn[column];
                if (reduced < least[column])
                {
                    (least[column], from[column]) = (reduced, at);
                }

                if (least[column] < step)
                {
                    (step, next) = (least[column], column);
                }
            }

            for (var column = 0; column < rowOf.Length; column++)
            {
                if (isDone[column])
                {
                    ofRow[rowOf[column]] += step;
                    ofColumn[column] -= step;
                }
                else if (column > 0)
                {
                    least[column] -= step;
                }
            }

            at = next;
        }

        while (at > 0)
        {
            rowOf[at] = rowOf[from[at]];
            at = from[at];
        }
    }
}
