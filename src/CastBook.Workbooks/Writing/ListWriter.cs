using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Turns the computed columns into edits of the shop's list.</summary>
internal sealed class ListWriter(ListColumns columns, BookEdits edits, StyleBook styles, WorkbookEdits workbook, FillRecord before, TypedCells typed)
{
    private const int MostReplacedSaid = 40;

    private readonly PieceSheet list = columns.List;
    private readonly (ComputedColumn Column, int At, string Name)[] standing =
        [.. columns.Standing.Select(s => (s.Column, s.At, columns.List.NameOf(s.Column.OwnName)))];

    private readonly SheetEdits sheet = edits.Sheet(columns.List.Sheet.PartName);
    private readonly Dictionary<ComputedColumn, List<string>> replaced = [];

    /// <summary>Writes headings, table, filter and widths of new columns, and the values of all rows.</summary>
    /// <param name="lines">The rows of all lists.</param>
    /// <param name="after">Takes down what is written.</param>
    /// <returns>What to say about cells that were left as the shop's, and about values replaced.</returns>
    public IReadOnlyList<Finding> Write(IReadOnlyList<PieceLine> lines, FillRecord after)
    {
        WriteUnits(after);
        foreach (var (_, at, name) in standing)
        {
            workbook.Name(name, new CellRef(list.Sheet.Name, list.HeadingRow, at));

            // Known even where every value of it is a person's: else the next fill would take those for old ones of ours.
            after.Add(name, "");
        }

        var rows = new ListRowEdits(columns, lines, typed, before, styles);
        if (columns.New.Count > 0)
        {
            Widen(rows.ShopsLast, after);
        }

        var kept = new HashSet<Subject>();
        var any = false;
        foreach (var id in list.Ids)
        {
            var line = lines[id];
            if (line.IsLeftAlone)
            {
                if (Remember(rows, line, after))
                {
                    rows.MakeFormats(list.RowOf(id));
                    any = true;
                }
            }
            else if (TakeDown(rows, line, kept, after))
            {
                rows.MakeFormats(list.RowOf(id));
                any = true;
            }
        }

        sheet.List = any ? rows : null;

        return
        [
            .. kept.Select(column => Catalogue.FormulaKept.At(column)),
            .. replaced.Select(r => Catalogue.ValuesReplaced.At(list.Column(r.Key.OwnName), r.Key.Heading, Listed(r.Value))),
        ];
    }

    private static string Listed(List<string> values) => string.Join("; ", values.Take(MostReplacedSaid))
        + (values.Count > MostReplacedSaid ? PlaceWords.More(values.Count - MostReplacedSaid) : "");

    /// <summary>Takes down in which units metal stands, and changes the headings that change with them.</summary>
    private void WriteUnits(FillRecord after)
    {
        foreach (var (column, at, _) in standing)
        {
            if (column is MassColumn mass)
            {
                var stood = columns.Units.FirstOrDefault(u => u.Column.OwnName == column.OwnName);
                var heading = stood is null ? columns.New.First(n => n.At == at).Heading : stood.IsOurs ? columns.HeadingOf(stood) : null;
                columns.UnitsIn(before).Remember(after, column.OwnName, mass.Unit, heading);
                if (stood is { IsOurs: true } && heading != list.Grid.Cell(list.HeadingRow, at).Text?.Trim())
                {
                    sheet.Set(list.HeadingRow, at, CellValue.Of(heading!), list.Grid.Cell(list.HeadingRow, at).Style);
                    if (list.Table is { } table)
                    {
                        edits.Replace(table.PartName, TableEdits.Rename(edits.Current(table.PartName), at - table.Range.FirstColumn, heading!));
                    }
                }
            }
        }
    }

    /// <summary>A row that is left alone keeps what CastBook wrote into it on its night while that holds, in the unit of the heading, where that was changed.</summary>
    /// <returns>Whether any of its cells changes.</returns>
    private bool Remember(ListRowEdits rows, PieceLine line, FillRecord after)
    {
        var changes = false;
        foreach (var (column, at, name) in standing)
        {
            var cell = list.Grid.Cell(list.RowOf(line.Piece.Id), at);
            if (rows.Clears(line, column, name, cell))
            {
                changes = true;
            }
            else if (rows.InNewUnit(column, cell) is { } number)
            {
                after.Add(name, CellValue.Of(number));
                changes = true;
            }
            else if (before.Wrote(name, cell))
            {
                after.Add(name, cell);
            }
        }

        return changes;
    }

    /// <summary>Takes down what a row is going to show; whether any of its cells changes.</summary>
    private bool TakeDown(ListRowEdits rows, PieceLine line, HashSet<Subject> kept, FillRecord after)
    {
        var row = list.RowOf(line.Piece.Id);
        var changes = false;
        foreach (var (column, at, name) in standing)
        {
            var cell = at > list.LastColumn ? default : list.Grid.Cell(row, at);
            if (cell.HasFormula)
            {
                kept.Add(list.Column(column.OwnName));
            }
            else if (!rows.IsKept(line, column, cell))
            {
                var value = column.Show(line);
                after.Add(name, value);
                NoteReplaced(column, row, cell, value);
                changes |= at > list.LastColumn || !ListRowEdits.Same(cell, value);
                if (!value.IsEmpty)
                {
                    rows.Fills(column);
                }
            }
        }

        return changes;
    }

    private void NoteReplaced(ComputedColumn column, int row, GridCell cell, CellValue value)
    {
        if (before.Knows(column.OwnName) || cell.IsEmpty || ListRowEdits.Same(cell, value))
        {
            return;
        }

        if (!replaced.TryGetValue(column, out var values))
        {
            replaced[column] = values = [];
        }

        values.Add(CellNameWords.RowHeld(row, FillRecord.TextOf(cell)));
    }

    private void Widen(int shopsLast, FillRecord after)
    {
        // Headings are often bold and large.
        var widths = columns.New.ToDictionary(n => n.At, n => Math.Max(n.Column.Width, n.Heading.Length + 3));
        foreach (var (column, at, heading) in columns.New)
        {
            var beside = list.Grid.Cell(list.HeadingRow, shopsLast).Style;
            sheet.Set(list.HeadingRow, at, CellValue.Of(heading), styles.Beside(beside, null, column.NumberFormat is not null));
        }

        WriteWidths(widths, ColumnWidths.RecordKey(list.NameOf(columns.New[0].Column.OwnName)), after);
        var last = columns.New[^1].At;
        sheet.Change("dimension", element => SheetRanges.WithLastColumn(element, r => Math.Max(r.LastColumn, last)));
        if (list.Table is { } table)
        {
            edits.Replace(table.PartName, TableEdits.Widen(edits.Current(table.PartName), table, [.. columns.New.Select(n => n.Heading)]));
        }
        else if (list.AutoFilter is { } filter && filter.LastColumn >= list.LastColumn)
        {
            var wide = filter with { LastColumn = Math.Max(filter.LastColumn, last) };
            sheet.Change("autoFilter", element => SheetRanges.WithRange(element, wide));
            workbook.Filter(list.Sheet, wide);
        }
    }

    private void WriteWidths(Dictionary<int, double> widths, string recordKey, FillRecord after)
    {
        var (element, prefix) = SheetElement.Read(edits.Package, list.Sheet.PartName, "cols");
        var whole = ColumnWidths.Whole(widths);
        sheet.ChangeOrInsert("cols", old => ColumnWidths.Change(old, widths), whole);
        after.Changed(recordKey, element ?? [], element is null ? Encoding.UTF8.GetBytes(XmlPart.WithPrefix(whole, prefix)) : ColumnWidths.Change(element, widths));
    }
}
