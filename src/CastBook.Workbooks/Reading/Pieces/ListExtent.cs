using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>How wide a list is, and what stands to its right.</summary>
internal static class ListExtent
{
    /// <summary>The columns of a plain list: those that were recognised, and all that stand beside them under a heading without a gap.</summary>
    /// <param name="columns">The columns under a heading.</param>
    /// <param name="first">First column recognised.</param>
    /// <param name="last">Last column recognised.</param>
    public static (int First, int Last) AroundHeadings(HashSet<int> columns, int first, int last)
    {
        while (columns.Contains(first - 1))
        {
            first--;
        }

        while (columns.Contains(last + 1))
        {
            last++;
        }

        return (first, last);
    }

    /// <summary>The first column right of the list that says anything in one of its rows; null where all is free.</summary>
    public static int? OccupiedFrom(SheetGrid grid, int headingRow, int lastRow, int lastColumn)
    {
        int? from = null;
        foreach (var row in grid.Rows)
        {
            if (row < headingRow || row > lastRow)
            {
                continue;
            }

            var end = Math.Min(grid.LastColumnOf(row), (from ?? CellRef.MaxColumn + 1) - 1);
            for (var column = lastColumn + 1; column <= end; column++)
            {
                if (!grid.Cell(row, column).IsEmpty)
                {
                    from = column;
                    break;
                }
            }
        }

        return from;
    }
}
