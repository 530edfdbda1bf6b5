using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>The cells of an owned sheet that are the shop's (weighings, states, ticks, remarks), kept by flask over a refresh.</summary>
internal sealed class KeptCells
{
    /// <summary>Stands for the heading of cells that stand above the headings, beside what they are for.</summary>
    public const string AboveHeadings = "";

    private readonly Dictionary<(string Flask, string Heading), CellValue> values = [];

    /// <summary>Nothing kept: the sheet is new.</summary>
    public static KeptCells None { get; } = new();

    /// <summary>Reads the shop's cells from the sheet as it stands.</summary>
    /// <param name="grid">The sheet as it stands.</param>
    /// <param name="headings">The headings of the shop's columns.</param>
    /// <param name="keyHeading">The heading of the column that tells the lines apart; missing where it is that of the flasks.</param>
    /// <param name="keyColumn">That column.</param>
    public static KeptCells Read(SheetGrid grid, IReadOnlyCollection<string> headings, string? keyHeading = null, int keyColumn = 1)
    {
        var kept = new KeptCells();
        keyHeading ??= ColumnWords.Flask;
        var heading = grid.Rows.Take(12).FirstOrDefault(row => grid.Cell(row, keyColumn).Text == keyHeading);
        if (heading == 0)
        {
            return kept;
        }

        var columns = Enumerable.Range(1, grid.LastColumnOf(heading))
            .Where(column => grid.Cell(heading, column).Text is { } text && headings.Contains(text))
            .Select(column => (Heading: grid.Cell(heading, column).Text!, Column: column)).ToList();
        foreach (var row in grid.Rows.TakeWhile(r => r < heading))
        {
            if (grid.Cell(row, keyColumn).Text is { Length: > 0 } purpose)
            {
                kept.values[(purpose, AboveHeadings)] = Value(grid.Cell(row, keyColumn + 1));
            }
        }

        foreach (var row in grid.Rows.Where(r => r > heading))
        {
            if (grid.Cell(row, keyColumn).Text is not { Length: > 0 } flask)
            {
                break;
            }

            foreach (var (name, column) in columns)
            {
                kept.values[(flask, name)] = Value(grid.Cell(row, column));
            }
        }

        return kept;
    }

    /// <summary>What the shop wrote; empty where it wrote nothing.</summary>
    /// <param name="flask">The flask's letter, the letters of a mix, or a step of the clock.</param>
    /// <param name="heading">The column's heading.</param>
    public CellValue Of(string flask, string heading) => values.GetValueOrDefault((flask, heading));

    /// <summary>Whether the shop wrote anything under a heading.</summary>
    /// <param name="heading">The column's heading.</param>
    public bool Holds(string heading) => values.Any(v => v.Key.Heading == heading && !v.Value.IsEmpty);

    private static CellValue Value(GridCell cell) => cell.Kind switch
    {
        CellKind.Number or CellKind.Boolean or CellKind.Date => CellValue.Of(cell.Number),
        CellKind.Text => CellValue.Of(cell.Text),
        _ => CellValue.Empty,
    };
}
