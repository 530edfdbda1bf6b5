using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>The computed values of the list, for books whose list leaves no room beside it.</summary>
internal static class ComputedSheet
{
    private const int HeadingRow = 3;

    /// <summary>Makes the sheet.</summary>
    /// <param name="list">The shop's list.</param>
    /// <param name="columns">The columns that have no room.</param>
    /// <param name="lines">The rows.</param>
    public static OwnedSheet Make(PieceSheet list, IReadOnlyList<ComputedColumn> columns, IReadOnlyList<PieceLine> lines)
    {
        var sheet = new OwnedSheet("Computed")
        {
            HeadingRow = HeadingRow,
            Landscape = true,
            Widths = [8, 30, .. columns.Select(c => c.Width)],
        };
        sheet.Set(1, 1, $"Computed values of the list on {list.Sheet.Name}", Look.Title);
        sheet.Set(HeadingRow, 1, "Row", Look.Heading);
        sheet.Set(HeadingRow, 2, "Piece", Look.Heading);
        for (var i = 0; i < columns.Count; i++)
        {
            sheet.Set(HeadingRow, i + 3, columns[i].Heading, columns[i].NumberFormat is null ? Look.Heading : Look.NumberHeading);
        }

        var row = HeadingRow;
        foreach (var line in lines.Where(l => !l.IsLeftAlone))
        {
            row++;
            sheet.Set(row, 1, CellValue.Of((double)list.RowOf[line.Piece.Id]), Look.Number("0"));
            sheet.Link(row, 1, new CellRef(list.Sheet.Name, list.RowOf[line.Piece.Id], list.FirstColumn));
            sheet.Set(row, 2, line.Piece.Name, Look.Text);
            for (var i = 0; i < columns.Count; i++)
            {
                sheet.Set(row, i + 3, columns[i].Show(line), columns[i].NumberFormat is { } format ? Look.Number(format) : Look.Text);
            }
        }

        return sheet;
    }
}
