using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Writing;

/// <summary>What CastBook writes into the rows of the shop's list, made row by row when it is asked for.</summary>
internal sealed class ListRowEdits : RowEdits
{
    private readonly PieceSheet list;
    private readonly IReadOnlyList<PieceLine> lines;
    private readonly TypedCells typed;
    private readonly FillRecord before;
    private readonly StyleBook styles;
    private readonly (ComputedColumn Column, int At, string Name, Dictionary<int, int> StyleBeside)[] columns;
    private readonly StandingUnit[] changing;
    private readonly HashSet<ComputedColumn> filled = [];
    private readonly int shopsLast;

    /// <param name="placed">The list with its columns.</param>
    /// <param name="lines">The rows.</param>
    /// <param name="typed">Cells in which a person typed.</param>
    /// <param name="before">What CastBook wrote last.</param>
    /// <param name="styles">The book's formats.</param>
    public ListRowEdits(ListColumns placed, IReadOnlyList<PieceLine> lines, TypedCells typed, FillRecord before, StyleBook styles)
    {
        (list, this.lines, this.typed, this.before, this.styles) = (placed.List, lines, typed, before, styles);
        columns = [.. placed.Standing.Select(s => (s.Column, s.At, placed.List.NameOf(s.Column.OwnName), new Dictionary<int, int>()))];
        changing = [.. placed.Units.Where(u => u.Changes)];
        shopsLast = list.LastColumn;
        while (shopsLast > list.FirstColumn && list.OwnColumns.Values.Contains(shopsLast))
        {
            shopsLast--;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<int> Rows => list.Rows;

    /// <summary>The last column of the list that is the shop's own.</summary>
    public int ShopsLast => shopsLast;

    /// <inheritdoc/>
    public override void Add(int row, List<CellEdit> edits)
    {
        if (PieceIn(row) is not { } piece)
        {
            return;
        }

        var (line, standing) = (lines[piece], list.Grid.Row(row));
        var beside = StyleOf(standing);
        if (line.IsLeftAlone)
        {
            AddToLeftAlone(standing, line, beside, edits);
            return;
        }

        foreach (var (column, at, _, styleBeside) in columns)
        {
            var cell = at > list.LastColumn ? default : standing.Cell(at);
            if (IsKept(line, column, cell))
            {
                continue;
            }

            // A new column gets its empty cells too, so that its line at the left runs through; one that is all empty needs none.
            var value = column.Show(line);
            if (at > list.LastColumn ? filled.Contains(column) : !Same(cell, value))
            {
                edits.Add(EditOf(column, at, cell, value, beside, styleBeside));
            }
        }
    }

    /// <inheritdoc/>
    public override uint DigestOf(int row) => list.Grid.DigestOf(row);

    /// <summary>What CastBook wrote into a row that is left alone, in the unit that the column has now; null where nothing changes.</summary>
    /// <param name="column">The column.</param>
    /// <param name="cell">The cell as it stands.</param>
    public double? InNewUnit(ComputedColumn column, GridCell cell)
    {
        var change = ChangeOf(column);
        return change is not null && cell is { HasFormula: false, Kind: CellKind.Number } && before.Wrote(list.NameOf(column.OwnName), cell)
            ? change.Column.Unit.In(change.Was.One * cell.Number)
            : null;
    }

    private void AddToLeftAlone(GridRow standing, PieceLine line, int beside, List<CellEdit> edits)
    {
        foreach (var (column, at, name, styleBeside) in columns)
        {
            var cell = at > list.LastColumn ? default : standing.Cell(at);
            if (Clears(line, column, name, cell))
            {
                edits.Add(new CellEdit(at, CellValue.Empty, cell.Style));
            }
            else if (InNewUnit(column, cell) is { } number)
            {
                edits.Add(EditOf(column, at, cell, CellValue.Of(number), beside, styleBeside));
            }
        }
    }

    private CellEdit EditOf(ComputedColumn column, int at, GridCell cell, CellValue value, int beside, Dictionary<int, int> styleBeside)
    {
        var style = Renumbered(column, cell);
        return new CellEdit(at, value, style ?? Style(column, beside, styleBeside), Restyles: style is not null);
    }

    // A cell that is written in another unit has the digits of that from now on.
    private int? Renumbered(ComputedColumn column, GridCell cell) => ChangeOf(column) is { } change && !cell.IsEmpty
        ? styles.Renumbered(cell.Style, change.Was.Format, change.Column.Unit.Format)
        : null;

    // A loop, as this is asked of every cell: a function that holds the column would be one more thing to collect each time.
    private StandingUnit? ChangeOf(ComputedColumn column)
    {
        foreach (var change in changing)
        {
            if (ReferenceEquals(change.Column, column))
            {
                return change;
            }
        }

        return null;
    }

    /// <summary>Says that a column has a value in some row.</summary>
    /// <param name="column">The column.</param>
    public void Fills(ComputedColumn column) => filled.Add(column);

    /// <summary>Makes the formats that the edits of a row need, before the book's formats are written.</summary>
    /// <param name="row">Row, from 1.</param>
    public void MakeFormats(int row)
    {
        var standing = list.Grid.Row(row);
        var beside = StyleOf(standing);
        foreach (var (column, at, _, styleBeside) in columns)
        {
            Style(column, beside, styleBeside);
            if (changing.Length > 0 && at <= list.LastColumn)
            {
                Renumbered(column, standing.Cell(at));
            }
        }
    }

    /// <summary>Whether a cell of a computed column stays as it is: a formula, or what a person typed.</summary>
    public bool IsKept(PieceLine line, ComputedColumn column, GridCell cell) =>
        cell.HasFormula || (typed.Any && typed.Contains(line.Piece.Id, column.OwnName));

    /// <summary>Whether a cell of a row that is left alone is emptied: CastBook wrote what stands there, and it no longer holds.</summary>
    /// <param name="line">The row.</param>
    /// <param name="column">The column.</param>
    /// <param name="name">Its hidden name in this list.</param>
    /// <param name="cell">The cell.</param>
    public bool Clears(PieceLine line, ComputedColumn column, string name, GridCell cell) =>
        line.IsStale(column) && cell is { HasFormula: false, Kind: not CellKind.Empty } && before.Wrote(name, cell);

    /// <summary>Whether the cell shows the value already; then its bytes are left as they are.</summary>
    public static bool Same(GridCell cell, CellValue value) => value switch
    {
        { Number: { } number } => cell.Kind == CellKind.Number && cell.Number == number,
        { Text: { } text } => cell.Kind == CellKind.Text && cell.Text == text,
        _ => cell.Kind == CellKind.Empty,
    };

    private int? PieceIn(int row)
    {
        var (first, end) = (0, list.Rows.Count);
        while (first < end)
        {
            var middle = (first + end) / 2;
            (first, end) = list.Rows[middle] < row ? (middle + 1, end) : (first, middle);
        }

        return first < list.Rows.Count && list.Rows[first] == row ? list.FirstId + first : null;
    }

    // The nearest cell of the row that has a format; a row may have gaps.
    private int StyleOf(GridRow row)
    {
        var beside = 0;
        for (var at = shopsLast; at >= list.FirstColumn && beside == 0; at--)
        {
            beside = row.StyleOf(at);
        }

        return beside;
    }

    private int Style(ComputedColumn column, int beside, Dictionary<int, int> known)
    {
        if (!known.TryGetValue(beside, out var style))
        {
            known[beside] = style = styles.Beside(beside, column.NumberFormat ?? "General", column.NumberFormat is not null);
        }

        return style;
    }
}
