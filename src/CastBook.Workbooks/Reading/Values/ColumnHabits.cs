using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>How a column writes what can be written in two ways: what any of its texts settles counts for all of them.</summary>
/// <param name="Signs">The signs in its numbers.</param>
/// <param name="Days">The order of day and month.</param>
internal readonly record struct ColumnHabits(NumberSigns Signs, DayOrders Days)
{
    /// <summary>Whether sizes stand alone in it, as the sizes of rings do.</summary>
    public bool HasSizeAlone { get; init; }

    /// <summary>Looks through a column.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="column">The column.</param>
    /// <param name="rows">The rows that count.</param>
    /// <param name="isDay">Whether it is a column of days.</param>
    public static ColumnHabits Of(SheetGrid grid, int column, IReadOnlyList<int> rows, bool isDay)
    {
        var (signs, days) = (NumberSigns.None, DayOrders.None);
        for (var at = 0; at < rows.Count; at++)
        {
            if (grid.Cell(rows[at], column) is not { Kind: CellKind.Text, Text: { Length: > 0 } text })
            {
                continue;
            }

            if (isDay)
            {
                days |= DayText.Read(CellValues.Clean(text), DayOrders.None).Settles;
            }
            else
            {
                signs |= NumberText.SignsOf(text);
            }
        }

        return new ColumnHabits(signs, days);
    }
}
