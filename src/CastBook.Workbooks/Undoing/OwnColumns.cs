using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Undoing;

/// <summary>
/// Our columns of one list, to be taken out. Those beside the list go with their width, their place in the table and in the
/// filter; one with columns of the shop to its right is emptied, because nothing of the shop's is shifted.
/// </summary>
internal sealed class OwnColumns
{
    private readonly SheetGrid grid;
    private readonly int headingRow;
    private readonly IReadOnlyList<(string OwnName, int Column)> columns;
    private readonly SheetTable? table;
    private readonly OwnFormats formats;

    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="grid">Its cells.</param>
    /// <param name="headingRow">The row of our headings.</param>
    /// <param name="columns">Our columns, by hidden name.</param>
    public OwnColumns(
        BookPackage package, SheetPart sheet, SheetGrid grid, int headingRow, IReadOnlyList<(string OwnName, int Column)> columns)
    {
        this.grid = grid;
        this.headingRow = headingRow;
        // On a copy of a sheet a column bears the names of both.
        this.columns = [.. columns.DistinctBy(c => c.Column).OrderBy(c => c.Column)];
        Sheet = sheet;
        table = TableReader.At(package, sheet, grid, headingRow, columns[0].Column);
        formats = OwnFormats.Of(package);
    }

    /// <summary>The sheet.</summary>
    public SheetPart Sheet { get; }

    /// <summary>How many there are.</summary>
    public int Count => columns.Count;

    /// <summary>Those that are columns of a table, and how a formula refers to them.</summary>
    public IEnumerable<(int Column, string Needle)> TableColumns => table is null
        ? []
        : columns.Where(c => c.Column <= table.Range.LastColumn).Select(c => (c.Column, $"[{table.ColumnNames[c.Column - table.Range.FirstColumn]}]"));

    /// <summary>Takes them out.</summary>
    /// <param name="edits">Where the edits go.</param>
    /// <param name="workbook">The workbook part's edits.</param>
    /// <param name="record">What CastBook wrote last.</param>
    /// <param name="looks">What formulas of the shop look at.</param>
    /// <param name="findings">Takes what a person should know.</param>
    /// <returns>What a person had typed into them.</returns>
    public IReadOnlyList<(CellRef Cell, string Text)> Remove(
        BookEdits edits, WorkbookEdits workbook, FillRecord record, HashSet<string> looks, List<Finding> findings)
    {
        var sheet = edits.Sheet(Sheet.PartName);
        var beside = Beside(looks);
        var typed = Clear(sheet, record, beside);
        if (beside.Count < columns.Count)
        {
            findings.Add(Catalogue.ColumnsEmptied.At(Subject.Book, Sheet.Name));
        }

        if (beside.Count > 0)
        {
            Narrow(edits, sheet, workbook, record, beside);
        }

        if (columns.Any(c => RowsOfList().Any(row => grid.Cell(row, c.Column).HasFormula)))
        {
            edits.DropCalcChain();
        }

        return typed;
    }

    /// <summary>The last of them, with nothing of the shop's to their right and no formula that looks at them.</summary>
    private HashSet<int> Beside(HashSet<string> looks)
    {
        var ours = columns.Select(c => c.Column).ToHashSet();
        var kept = TableColumns.Where(c => looks.Contains(c.Needle)).Select(c => c.Column).ToHashSet();
        var last = table?.Range.LastColumn ?? columns[^1].Column;
        if (table is null && !grid.Cell(headingRow, last + 1).IsEmpty)
        {
            return [];
        }

        var beside = new HashSet<int>();
        for (var column = last; ours.Contains(column) && !kept.Contains(column); column--)
        {
            beside.Add(column);
        }

        return beside;
    }

    private List<(CellRef, string)> Clear(SheetEdits sheet, FillRecord record, HashSet<int> beside)
    {
        var typed = new List<(CellRef, string)>();
        foreach (var row in RowsOfList())
        {
            foreach (var (ownName, column) in columns)
            {
                // A table's column must have a heading, and its totals are the shop's as long as the column stands.
                var stays = table is not null && !beside.Contains(column) && (row == headingRow || (table.HasTotalsRow && row == table.Range.LastRow));
                if (stays)
                {
                    continue;
                }

                var cell = grid.Cell(row, column);
                Clear(sheet, row, column, cell);
                if (row != headingRow && TextOf(cell) is { Length: > 0 } text && record.Knows(ownName) && (cell.HasFormula || !record.Wrote(ownName, text)))
                {
                    typed.Add((new CellRef(Sheet.Name, row, column), text));
                }
            }
        }

        return typed;
    }

    private void Clear(SheetEdits sheet, int row, int column, GridCell cell)
    {
        if (cell.Style == 0 || formats.Contains(cell.Style))
        {
            sheet.Remove(row, column);
        }
        else if (!cell.IsEmpty)
        {
            sheet.Set(row, column, CellValue.Empty, cell.Style);
        }
    }

    private static string TextOf(GridCell cell) => FillRecord.TextOf(cell) is { Length: > 0 } text ? text : cell.HasFormula ? UndoWords.Formula : "";

    /// <summary>From the heading to the last row in which something of ours stands.</summary>
    private IEnumerable<int> RowsOfList()
    {
        var last = table?.Range.LastRow
            ?? grid.Rows.LastOrDefault(row => columns.Any(c => !grid.Cell(row, c.Column).IsEmpty || formats.Contains(grid.Cell(row, c.Column).Style)));
        return grid.Rows.Where(row => row >= headingRow && row <= last);
    }

    private void Narrow(BookEdits edits, SheetEdits sheet, WorkbookEdits workbook, FillRecord record, HashSet<int> beside)
    {
        var last = beside.Min() - 1;
        sheet.Change("cols", element => ColumnWidths.Without(element, beside, record, columns.Select(c => c.OwnName)));
        var cells = LastColumnLeft(beside);
        sheet.Change("dimension", element => SheetRanges.WithLastColumn(element, r => beside.Contains(r.LastColumn) ? Math.Max(cells, r.FirstColumn) : r.LastColumn));
        if (table is not null)
        {
            edits.Replace(table.PartName, TableEdits.Narrow(edits.Current(table.PartName), table, beside.Count));
        }
        else if (grid.AutoFilter is { } filter && beside.Contains(filter.LastColumn) && filter.FirstColumn <= last)
        {
            var narrow = filter with { LastColumn = last };
            sheet.Change("autoFilter", element => SheetRanges.WithFilter(element, narrow));
            workbook.Filter(Sheet, narrow);
        }
    }

    private int LastColumnLeft(HashSet<int> beside)
    {
        var last = 0;
        foreach (var row in grid.Rows)
        {
            var column = grid.LastColumnOf(row);
            while (column > last && beside.Contains(column) && (grid.Cell(row, column).Style == 0 || formats.Contains(grid.Cell(row, column).Style)))
            {
                column--;
            }

            last = Math.Max(last, column);
        }

        return last;
    }
}
