using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>The list as read.</summary>
/// <param name="Sheet">Where it stands.</param>
/// <param name="Pieces">Its pieces.</param>
/// <param name="WeightsAreOf">What its heading says the weights are of.</param>
/// <param name="Unread">Columns of fields that stand in the list but could not be read.</param>
/// <param name="Findings">What was found.</param>
internal sealed record ListReading(
    PieceSheet Sheet, IReadOnlyList<Piece> Pieces, WeightMeaning WeightsAreOf, IReadOnlyDictionary<string, int> Unread, IReadOnlyList<Finding> Findings);

/// <summary>Reads the list that was found.</summary>
internal static class ListReader
{
    /// <summary>Reads the list; one without rows refuses the book.</summary>
    /// <param name="package">The book.</param>
    /// <param name="strings">Its shared texts.</param>
    /// <param name="formats">Its formats.</param>
    /// <param name="values">How its cells are read.</param>
    /// <param name="marks">What is ours in it.</param>
    /// <param name="list">Where the list stands.</param>
    /// <param name="words">The shop's own words for headings.</param>
    public static ListReading Read(
        BookPackage package, SharedStrings strings, NumberFormats formats, CellValues values, OwnMarks marks, FoundList list,
        IReadOnlyDictionary<string, IReadOnlyList<string>> words)
    {
        var grid = SheetReader.Read(package, list.Sheet, strings);
        var table = TableReader.At(package, list.Sheet, grid, list.Headings.Row, list.Headings.FirstColumn);
        var headings = list.Headings.Again(grid, [.. marks.ColumnsOn(list.Sheet).Values], words, table?.Range);
        if (UnitRow.Read(grid, headings.Row + 1, headings.Match.Fields.Values.Select(f => f.Column)) is { } units)
        {
            headings.Match.TakeUnits(units, HeadingWords.PieceIndex);
        }

        var (fields, unread, headingFindings) = HeadingFindings.Of(headings);
        var rows = ListRows.Sort(grid, formats, fields, headings.Top, headings.Bottom, table);
        if (rows.Pieces.Count == 0)
        {
            throw BookRefusedException.For(Catalogue.ListEmpty, list.Sheet.Name, RowText(headings.Row));
        }

        var sheet = Place(grid, list.Sheet, headings, fields, table, marks, rows);
        var cells = new PieceCells(grid, values, fields, rows.Pieces, [.. unread.Keys]);
        var weight = fields.GetValueOrDefault(PieceField.PatternMass);
        var material = (weight ?? fields.GetValueOrDefault(PieceField.PatternVolume))?.Word.Material;
        var reader = new PieceReader(cells, material, grid, sheet.OwnColumns.TryGetValue(OwnName.Flask, out var flask) ? flask : null);
        var pieces = new Piece[rows.Pieces.Count];
        for (var id = 0; id < pieces.Length; id++)
        {
            pieces[id] = reader.Read(rows.Pieces[id], id);
        }

        // All that is asked of the cells from here on are the headings and our own columns.
        grid.KeepOnly(headings.Row, sheet.OwnColumns.Values.ToHashSet());
        IReadOnlyList<Finding> findings = [.. OtherLists(list), .. headingFindings, .. cells.Findings, .. RowFindings(rows, grid)];
        return new ListReading(sheet, pieces, weight?.Word.Meaning ?? WeightMeaning.Unknown, unread, findings);
    }

    private static PieceSheet Place(
        SheetGrid grid, SheetPart part, ListHeadings headings, IReadOnlyDictionary<string, FieldColumn> fields, SheetTable? table, OwnMarks marks, ListRows rows)
    {
        var own = marks.ColumnsOn(part);
        var lastField = fields.Values.Max(f => f.Column);
        if (own.Count == 0 && marks.DeletedColumns.Count == 0)
        {
            own = OwnHeadings.Find(HeadingRow.Read(grid, headings.Row), lastField);
        }

        var (first, last) = table is null
            ? ListExtent.AroundHeadings(headings.Columns, fields.Values.Min(f => f.Column), Math.Max(lastField, own.Values.DefaultIfEmpty(0).Max()))
            : (table.Range.FirstColumn, Math.Max(table.Range.LastColumn, own.Values.DefaultIfEmpty(0).Max()));
        var lastRow = table is null ? rows.Pieces[^1] : table.Range.LastRow - (table.HasTotalsRow ? 1 : 0);
        return new PieceSheet
        {
            Sheet = part,
            Grid = grid,
            HeadingRow = headings.Row,
            RowOf = rows.Pieces,
            Columns = fields.ToDictionary(f => f.Key, f => f.Value.Column, StringComparer.Ordinal),
            OwnColumns = own,
            DeletedOwnColumns = marks.DeletedColumns,
            FirstColumn = first,
            LastColumn = last,
            LastRow = lastRow,
            Table = table,
            OccupiedFrom = ListExtent.OccupiedFrom(grid, headings.Row, lastRow, last),
            AutoFilter = grid.AutoFilter,
        };
    }

    private static IEnumerable<Finding> OtherLists(FoundList list)
    {
        if (list.Others.Count > 0)
        {
            yield return Catalogue.ListsOnOtherSheets.At(Subject.Book, list.Sheet.Name, string.Join(", ", list.Others), list.Others[0]);
        }
    }

    private static IEnumerable<Finding> RowFindings(ListRows rows, SheetGrid grid)
    {
        Finding About(FindingKind kind, IReadOnlyList<int> which) => kind.At(Subject.Column(PieceField.Piece), RowNumbers.Text(which));
        var hidden = rows.Pieces.Where(grid.IsRowHidden).ToList();
        if (rows.Outside.Count > 0)
        {
            yield return About(Catalogue.RowsOutsideList, rows.Outside);
        }

        if (rows.Unclear.Count > 0)
        {
            yield return About(Catalogue.RowsWithoutPiece, rows.Unclear);
        }

        if (rows.Sections.Count > 0)
        {
            yield return About(Catalogue.RowsSections, rows.Sections);
        }

        if (rows.Sums.Count > 0)
        {
            yield return About(Catalogue.RowsReadAsSums, rows.Sums);
        }

        if (rows.Struck.Count > 0)
        {
            yield return About(Catalogue.RowsStruckOut, rows.Struck);
        }

        if (hidden.Count > 0)
        {
            yield return About(Catalogue.RowsHidden, hidden);
        }
    }

    private static string RowText(int row) => row.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
