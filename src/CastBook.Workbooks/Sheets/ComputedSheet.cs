using CastBook.Planning;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Pieces;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>The computed values of the list, for books whose list leaves no room beside it.</summary>
internal static class ComputedSheet
{
    private const int HeadingRow = 3;
    private const int FirstComputed = 3;

    /// <summary>The rows with the flasks that the last plan put them in, as a Flask column beside the list would tell.</summary>
    /// <param name="list">The shop's list.</param>
    /// <param name="pieces">The rows as read.</param>
    /// <param name="standing">The sheet as it stands.</param>
    public static IReadOnlyList<Piece> WithLastFlasks(PieceSheet list, IReadOnlyList<Piece> pieces, SheetGrid standing)
    {
        var flask = Enumerable.Range(FirstComputed, standing.LastColumnOf(HeadingRow))
            .FirstOrDefault(column => standing.Cell(HeadingRow, column).Text == new FlaskColumn().Heading);
        if (flask == 0)
        {
            return pieces;
        }

        // The row it had, if the same piece still stands there; the list may have been sorted since, so else the only one of that name.
        var found = new Dictionary<int, string>();
        foreach (var row in standing.Rows.Where(r => r > HeadingRow))
        {
            var name = standing.Cell(row, 2).Text ?? "";
            var sameName = pieces.Where(p => p.Name == name).ToList();
            var piece = sameName.FirstOrDefault(p => list.RowOf[p.Id] == (int)standing.Cell(row, 1).Number)
                ?? (sameName.Count == 1 ? sameName[0] : null);
            if (piece is not null && standing.Cell(row, flask).Text is { } letters)
            {
                found[piece.Id] = letters;
            }
        }

        return [.. pieces.Select(p => found.TryGetValue(p.Id, out var letters) ? p with { LastFlasks = FlaskShares.Parse(letters, p.Quantity) } : p)];
    }

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
            sheet.Set(HeadingRow, i + FirstComputed, columns[i].Heading, columns[i].NumberFormat is null ? Look.Heading : Look.NumberHeading);
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
                sheet.Set(row, i + FirstComputed, columns[i].Show(line), columns[i].NumberFormat is { } format ? Look.Number(format) : Look.Text);
            }
        }

        return sheet;
    }
}
