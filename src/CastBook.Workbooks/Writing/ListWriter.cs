using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Writing;

/// <summary>Turns the computed columns into edits of the shop's list.</summary>
internal sealed class ListWriter(PieceSheet list, BookEdits edits, StyleBook styles, WorkbookEdits workbook, FillRecord before, TypedCells typed)
{
    private const int MostReplacedSaid = 40;

    private readonly SheetEdits sheet = edits.Sheet(list.Sheet.PartName);
    private readonly Dictionary<ComputedColumn, List<string>> replaced = [];

    /// <summary>Writes headings, table, filter and widths of new columns, and the values of all rows.</summary>
    /// <param name="columns">Where the columns stand.</param>
    /// <param name="lines">The rows.</param>
    /// <param name="after">Takes down what is written.</param>
    /// <returns>What to say about cells that were left as the shop's, and about values replaced.</returns>
    public IReadOnlyList<Finding> Write(ListColumns columns, IReadOnlyList<PieceLine> lines, FillRecord after)
    {
        if (columns.New.Count > 0)
        {
            Widen(columns);
        }

        foreach (var (column, at) in columns.Standing)
        {
            workbook.Name(column.OwnName, new CellRef(list.Sheet.Name, list.HeadingRow, at));
        }

        var kept = new HashSet<Subject>();
        foreach (var line in lines)
        {
            if (line.IsLeftAlone)
            {
                Remember(columns, line, after);
            }
            else
            {
                WriteRow(columns, line, kept, after);
            }
        }

        return
        [
            .. kept.Select(column => Catalogue.FormulaKept.At(column)),
            .. replaced.Select(r => Catalogue.ValuesReplaced.At(Subject.Column(r.Key.OwnName), r.Key.Heading, Listed(r.Value))),
        ];
    }

    private static string Listed(List<string> values) => string.Join("; ", values.Take(MostReplacedSaid))
        + (values.Count > MostReplacedSaid ? $" and {values.Count - MostReplacedSaid} more" : "");

    /// <summary>A row that is left alone keeps what CastBook wrote into it on its night.</summary>
    private void Remember(ListColumns columns, PieceLine line, FillRecord after)
    {
        foreach (var (column, at) in columns.Standing)
        {
            var text = FillRecord.TextOf(list.Grid.Cell(list.RowOf[line.Piece.Id], at));
            if (before.Wrote(column.OwnName, text))
            {
                after.Add(column.OwnName, text);
            }
        }
    }

    private void WriteRow(ListColumns columns, PieceLine line, HashSet<Subject> kept, FillRecord after)
    {
        var row = list.RowOf[line.Piece.Id];
        foreach (var (column, at) in columns.Standing)
        {
            var cell = list.Grid.Cell(row, at);
            if (cell.HasFormula)
            {
                kept.Add(Subject.Column(column.OwnName));
                continue;
            }

            if (typed.Contains(line.Piece.Id, column.OwnName))
            {
                continue;
            }

            // A new column gets its empty cells too, so that its line at the left runs through.
            var value = column.Show(line);
            after.Add(column.OwnName, FillRecord.TextOf(value));
            NoteReplaced(column, row, cell, value);
            if (at > list.LastColumn || !Same(cell, value))
            {
                sheet.Set(row, at, value, StyleFor(column, row));
            }
        }
    }

    private void NoteReplaced(ComputedColumn column, int row, GridCell cell, CellValue value)
    {
        if (before.Knows(column.OwnName) || cell.IsEmpty || Same(cell, value))
        {
            return;
        }

        if (!replaced.TryGetValue(column, out var values))
        {
            replaced[column] = values = [];
        }

        values.Add($"row {row} \"{FillRecord.TextOf(cell)}\"");
    }

    private int StyleFor(ComputedColumn column, int row)
    {
        // The nearest cell of the row that has a format; a row may have gaps.
        var beside = 0;
        for (var at = ShopsLast; at >= list.FirstColumn && beside == 0; at--)
        {
            beside = list.Grid.Cell(row, at).Style;
        }

        return styles.Beside(beside, column.NumberFormat ?? "General", column.NumberFormat is not null);
    }

    /// <summary>The last column of the list that is the shop's own.</summary>
    private int ShopsLast
    {
        get
        {
            var last = list.LastColumn;
            while (last > list.FirstColumn && list.OwnColumns.Values.Contains(last))
            {
                last--;
            }

            return last;
        }
    }

    private void Widen(ListColumns columns)
    {
        var widths = columns.New.ToDictionary(n => n.At, n => n.Column.Width);
        foreach (var (column, at, heading) in columns.New)
        {
            var beside = list.Grid.Cell(list.HeadingRow, ShopsLast).Style;
            sheet.Set(list.HeadingRow, at, CellValue.Of(heading), styles.Beside(beside, null, column.NumberFormat is not null));
        }

        sheet.ChangeOrInsert("cols", element => ColumnWidths.Change(element, widths), ColumnWidths.Whole(widths));
        var last = columns.New[^1].At;
        sheet.Change("dimension", element => WithDimension(element, last));
        if (list.Table is { } table)
        {
            edits.Replace(table.PartName, TableEdits.Widen(edits.Current(table.PartName), table, [.. columns.New.Select(n => n.Heading)]));
        }
        else if (list.AutoFilter is { } filter && filter.LastColumn >= list.LastColumn)
        {
            var wide = filter with { LastColumn = last };
            sheet.Change("autoFilter", element => WithRef(element, wide));
            workbook.Filter(list.Sheet, wide);
        }
    }

    private static byte[] WithDimension(byte[] element, int lastColumn)
    {
        var part = new XmlPart(element);
        return CellRange.TryParse(part.Attribute(part.Root, "ref"), out var range) && range.LastColumn < lastColumn
            ? WithRef(element, range with { LastColumn = lastColumn })
            : element;
    }

    private static byte[] WithRef(byte[] element, CellRange range)
    {
        var part = new XmlPart(element);
        part.SetAttribute(part.Root, "ref", range.ToString());
        return part.ToBytes();
    }

    /// <summary>Whether the cell shows the value already; then its bytes are left as they are.</summary>
    private static bool Same(GridCell cell, CellValue value) => value switch
    {
        { Number: { } number } => cell.Kind == CellKind.Number && cell.Number == number,
        { Text: { } text } => cell.Kind == CellKind.Text && cell.Text == text,
        _ => cell.Kind == CellKind.Empty,
    };
}
