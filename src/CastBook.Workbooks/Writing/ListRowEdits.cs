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
    private readonly StyleBook styles;
    private readonly (ComputedColumn Column, int At, Dictionary<int, int> StyleBeside)[] columns;
    private readonly HashSet<ComputedColumn> filled = [];
    private readonly int shopsLast;

    /// <param name="list">The shop's list.</param>
    /// <param name="standing">Where the columns stand.</param>
    /// <param name="lines">The rows.</param>
    /// <param name="typed">Cells in which a person typed.</param>
    /// <param name="styles">The book's formats.</param>
    public ListRowEdits(
        PieceSheet list, IReadOnlyList<(ComputedColumn Column, int At)> standing, IReadOnlyList<PieceLine> lines, TypedCells typed, StyleBook styles)
    {
        (this.list, this.lines, this.typed, this.styles) = (list, lines, typed, styles);
        columns = [.. standing.Select(s => (s.Column, s.At, new Dictionary<int, int>()))];
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
        if (PieceIn(row) is not { } piece || lines[piece] is not { IsLeftAlone: false } line)
        {
            return;
        }

        var beside = StyleOf(row);
        foreach (var (column, at, styleBeside) in columns)
        {
            var cell = at > list.LastColumn ? default : list.Grid.Cell(row, at);
            if (IsKept(line, column, cell))
            {
                continue;
            }

            // A new column gets its empty cells too, so that its line at the left runs through; one that is all empty needs none.
            var value = column.Show(line);
            if (at > list.LastColumn ? filled.Contains(column) : !Same(cell, value))
            {
                edits.Add(new CellEdit(at, value, Style(column, beside, styleBeside)));
            }
        }
    }

    /// <summary>Says that a column has a value in some row.</summary>
    /// <param name="column">The column.</param>
    public void Fills(ComputedColumn column) => filled.Add(column);

    /// <summary>Makes the formats that the edits of a row need, before the book's formats are written.</summary>
    /// <param name="row">Row, from 1.</param>
    public void MakeFormats(int row)
    {
        var beside = StyleOf(row);
        foreach (var (column, _, styleBeside) in columns)
        {
            Style(column, beside, styleBeside);
        }
    }

    /// <summary>Whether a cell of a computed column stays as it is: a formula, or what a person typed.</summary>
    public bool IsKept(PieceLine line, ComputedColumn column, GridCell cell) =>
        cell.HasFormula || (typed.Any && typed.Contains(line.Piece.Id, column.OwnName));

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
    private int StyleOf(int row)
    {
        var beside = 0;
        for (var at = shopsLast; at >= list.FirstColumn && beside == 0; at--)
        {
            beside = list.Grid.Cell(row, at).Style;
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
