using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A row looked at as a row of headings.</summary>
internal static class HeadingRow
{
    /// <summary>How many rows from the top are looked at.</summary>
    public const int Last = 30;

    private const int LongestHeading = 120;

    /// <summary>The texts of a row as headings, in column order.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="row">The row.</param>
    public static List<(int Column, Heading Heading)> Read(SheetGrid grid, int row)
    {
        var headings = new List<(int, Heading)>();
        var last = grid.LastColumnOf(row);
        for (var column = 1; column <= last; column++)
        {
            if (TextAt(grid, row, column) is { } text)
            {
                headings.Add((column, Heading.Parse(text)));
            }
        }

        return headings;
    }

    /// <summary>The text of a cell, where it may be a heading; null otherwise.</summary>
    public static string? TextAt(SheetGrid grid, int row, int column) =>
        grid.Cell(row, column) is { Kind: CellKind.Text, Text: { } text } && text.Length <= LongestHeading && !string.IsNullOrWhiteSpace(text) ? text : null;
}
