using CastBook.Planning;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Pieces;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>The computed values of lists that leave no room beside them.</summary>
internal static class ComputedSheet
{
    private const int HeadingRow = 3;
    private const int SheetColumn = 3;

    /// <summary>The rows with the flasks that the last plan put them in, as a Flask column beside the list would tell.</summary>
    /// <param name="reading">The book as read.</param>
    /// <param name="standing">The sheet as it stands.</param>
    public static IReadOnlyList<Piece> WithLastFlasks(BookReading reading, SheetGrid standing)
    {
        var pieces = reading.Night.Pieces;
        var flask = ColumnOf(standing, new FlaskColumn().Heading);
        if (flask == 0)
        {
            return pieces;
        }

        // The row it had, if the same piece still stands there; the list may have been sorted since, so else the only one of that name.
        var found = new Dictionary<int, string>();
        var named = pieces.ToLookup(p => p.Name, StringComparer.Ordinal);
        var ofSeveral = ColumnOf(standing, ComputedSheetWords.Sheet) == SheetColumn;
        foreach (var row in standing.Rows.Where(r => r > HeadingRow))
        {
            var sheet = ofSeveral ? standing.Cell(row, SheetColumn).Text : null;
            var sameName = named[standing.Cell(row, 2).Text ?? ""].ToList();
            var piece = sameName.FirstOrDefault(p => reading.ListOf(p.Id) is var list
                && list.RowOf(p.Id) == (int)standing.Cell(row, 1).Number && (sheet is null || sheet == list.Sheet.Name))
                ?? (sameName.Count == 1 ? sameName[0] : null);
            if (piece is not null && standing.Cell(row, flask).Text is { } letters)
            {
                found[piece.Id] = letters;
            }
        }

        return [.. pieces.Select(p => found.TryGetValue(p.Id, out var letters) ? p with { LastFlasks = FlaskShares.Parse(letters, p.Quantity) } : p)];
    }

    /// <summary>Makes the sheet.</summary>
    /// <param name="lists">All lists; those with columns that have no room are shown.</param>
    /// <param name="lines">The rows of all lists.</param>
    /// <param name="units">The units of the shop.</param>
    public static OwnedSheet Make(IReadOnlyList<ListColumns> lists, IReadOnlyList<PieceLine> lines, ShopUnits units)
    {
        var shown = lists.Where(l => l.Elsewhere.Count > 0).ToList();
        var columns = ComputedColumns.All(units).Where(c => shown.Exists(l => l.Elsewhere.Any(e => e.OwnName == c.OwnName))).ToList();
        var ofSeveral = lists.Count > 1;
        var sheet = new OwnedSheet(ComputedSheetWords.Name)
        {
            HeadingRow = HeadingRow,
            Landscape = true,
            Widths = [8, 30, .. ofSeveral ? [16.0] : (double[])[], .. columns.Select(c => c.Width)],
        };
        sheet.Set(1, 1, ComputedSheetWords.Title([.. shown.Select(l => l.List.Sheet.Name)]), CellLook.Title);
        sheet.Set(HeadingRow, 1, ComputedSheetWords.Row, CellLook.Heading);
        sheet.Set(HeadingRow, 2, ComputedSheetWords.Piece, CellLook.Heading);
        if (ofSeveral)
        {
            sheet.Set(HeadingRow, SheetColumn, ComputedSheetWords.Sheet, CellLook.Heading);
        }

        var first = ofSeveral ? SheetColumn + 1 : SheetColumn;
        for (var i = 0; i < columns.Count; i++)
        {
            sheet.Set(HeadingRow, i + first, columns[i].Heading, columns[i].NumberFormat is null ? CellLook.Heading : CellLook.NumberHeading);
        }

        var row = HeadingRow;
        foreach (var (list, id) in shown.SelectMany(l => l.List.Ids.Where(id => !lines[id].IsLeftAlone).Select(id => (l, id))))
        {
            WriteLine(sheet, ++row, list, lines[id], columns, first);
        }

        return sheet;
    }

    private static void WriteLine(OwnedSheet sheet, int row, ListColumns list, PieceLine line, List<ComputedColumn> columns, int first)
    {
        var place = list.List.RowOf(line.Piece.Id);
        sheet.Set(row, 1, CellValue.Of((double)place), CellLook.Number("0"));
        sheet.Link(row, 1, new CellRef(list.List.Sheet.Name, place, list.List.FirstColumn));
        sheet.Set(row, 2, line.Piece.Name, CellLook.Text);
        if (first > SheetColumn)
        {
            sheet.Set(row, SheetColumn, list.List.Sheet.Name, CellLook.Text);
        }

        for (var i = 0; i < columns.Count; i++)
        {
            var value = list.Elsewhere.Any(c => c.OwnName == columns[i].OwnName) ? columns[i].Show(line) : CellValue.Empty;
            sheet.Set(row, i + first, value, columns[i].NumberFormat is { } format ? CellLook.Number(format) : CellLook.Text);
        }
    }

    private static int ColumnOf(SheetGrid standing, string heading) =>
        Enumerable.Range(1, standing.LastColumnOf(HeadingRow)).FirstOrDefault(column => standing.Cell(HeadingRow, column).Text == heading);
}
