using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Which rows below the headings are pieces, and what the others are.</summary>
internal sealed partial class ListRows
{
    // So many empty rows end a plain list: what stands further down is something else.
    private const int GapEndsList = 3;

    private readonly SheetGrid grid;
    private readonly NumberFormats formats;
    private readonly (int Column, string Upper, string Lower)[] columns;
    private readonly int headingRow;
    private readonly int piece;
    private readonly int quantity;
    private readonly int mass;
    private readonly int volume;
    private readonly int alloy;
    private readonly HeadingsAgain again;
    private readonly RunningSums sums = new();
    private readonly List<(int Row, int First)> openSections = [];

    private ListRows(
        SheetGrid grid, NumberFormats formats, IReadOnlyDictionary<string, FieldColumn> fields, IReadOnlyDictionary<string, int> unread, HeadingsAgain again, int topRow, int headingRow)
    {
        (this.grid, this.formats, this.again, this.headingRow) = (grid, formats, again, headingRow);
        string TextOf(int row, int column) => grid.Cell(row, column) is { Kind: CellKind.Text, Text: { } text } ? CellValues.Clean(text) : "";
        columns = [.. fields.Values.OrderBy(f => f.Column).Select(f => (f.Column, TextOf(topRow, f.Column), TextOf(headingRow, f.Column)))];
        int ColumnOf(string field) => fields.TryGetValue(field, out var found) ? found.Column : unread.GetValueOrDefault(field);
        (piece, quantity, alloy) = (ColumnOf(PieceField.Piece), ColumnOf(PieceField.Quantity), ColumnOf(PieceField.Alloy));
        (mass, volume) = (ColumnOf(PieceField.PatternMass), ColumnOf(PieceField.PatternVolume));
    }

    /// <summary>The rows that are pieces.</summary>
    public List<int> Pieces { get; } = [];

    /// <summary>Rows with a name and nothing else.</summary>
    public List<int> Sections { get; } = [];

    /// <summary>Section lines with the places in <see cref="Pieces"/> of the first row below them and of the one behind their last; a line right below another is inside it.</summary>
    public List<(int Row, int First, int End)> Sectioned { get; } = [];

    /// <summary>Rows that say something but name no piece.</summary>
    public List<int> Unclear { get; } = [];

    /// <summary>Rows that are struck out.</summary>
    public List<int> Struck { get; } = [];

    /// <summary>Rows without a name or a word of sums whose numbers are those of the rows above.</summary>
    public List<int> Sums { get; } = [];

    /// <summary>Rows that begin with a word of sums and say other numbers than those of the rows above: a piece may be called so.</summary>
    public List<int> OtherTotals { get; } = [];

    /// <summary>Rows below the list that look like pieces.</summary>
    public List<int> Outside { get; } = [];

    /// <summary>A heading that stands once more below rows and says something else than the list's own: there the list ends.</summary>
    public OtherHeading? Differing { get; private set; }

    /// <summary>Sorts the rows of a list.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="formats">The book's formats, which tell what is struck out.</param>
    /// <param name="fields">The list's columns.</param>
    /// <param name="unread">Columns of fields that stand in the list but cannot be read: a row is a piece by what stands in them all the same.</param>
    /// <param name="headings">Its headings.</param>
    /// <param name="words">The shop's own words for headings.</param>
    /// <param name="table">The table it is, where it is one.</param>
    public static ListRows Sort(
        SheetGrid grid, NumberFormats formats, IReadOnlyDictionary<string, FieldColumn> fields, IReadOnlyDictionary<string, int> unread,
        ListHeadings headings, IReadOnlyDictionary<string, IReadOnlyList<string>> words, SheetTable? table)
    {
        var (topRow, headingRow) = (headings.Top, headings.Bottom);
        var rows = new ListRows(grid, formats, fields, unread, new HeadingsAgain(grid, fields, topRow, headingRow, words), topRow, headingRow);
        var last = table is null ? CellRef.MaxRow : table.Range.LastRow - (table.HasTotalsRow ? 1 : 0);
        var (previous, ended) = (headingRow, false);
        foreach (var number in grid.Rows)
        {
            var row = grid.Row(number);
            if (number <= headingRow || (rows.IsBlank(row) && !rows.IsTitle(row)))
            {
                continue;
            }

            var (isHeading, isAgain) = (rows.IsForeignHeading(row), rows.IsHeadingAgain(row));
            ended |= number > last || (table is null && (number - previous > GapEndsList || (number - previous > 1 && isHeading && !isAgain)));
            previous = number;
            if (ended)
            {
                rows.TakeOutside(row);
            }
            else if (!isAgain && !(isHeading && rows.again.AreIn(number)))
            {
                rows.Take(row);
            }
            else if ((rows.Differing = rows.again.Differing(number)) is not null)
            {
                break;
            }
        }

        rows.EndSections();
        return rows;
    }

    private void Take(GridRow row)
    {
        if (row.Number == headingRow + 1 && UnitRow.Read(grid, row.Number, columns.Select(c => c.Column)) is not null)
        {
            return;
        }

        if ((formats.AnyStruck || grid.AnyStruckText) && IsStruck(row))
        {
            Struck.Add(row.Number);
            return;
        }

        if (SaysTotal(row))
        {
            if ((Has(row, alloy) || !SaysTotal(row, mayGoOn: false)) && (Has(row, quantity) || Has(row, mass)) && !sums.Agree(At(row, quantity), At(row, mass)))
            {
                OtherTotals.Add(row.Number);
            }

            EndSections();
            return;
        }

        if (IsSum(row))
        {
            Sums.Add(row.Number);
            EndSections();
            return;
        }

        var named = Has(row, piece);
        var weighed = Has(row, mass) || Has(row, volume);
        var counted = Has(row, quantity);
        if (named ? weighed || counted || Has(row, alloy) : weighed && (counted || IsNamedAbove(row)))
        {
            Pieces.Add(row.Number);
            sums.Add(At(row, quantity), At(row, mass));
        }
        else if (named || IsTitle(row))
        {
            if (openSections.Count > 0 && openSections[^1].First < Pieces.Count)
            {
                EndSections();
            }

            Sections.Add(row.Number);
            openSections.Add((row.Number, Pieces.Count));
            sums.EndSection();
        }
        else
        {
            Unclear.Add(row.Number);
        }
    }

    private void EndSections()
    {
        Sectioned.AddRange(openSections.Where(s => s.First < Pieces.Count).Select(s => (s.Row, s.First, Pieces.Count)));
        openSections.Clear();
        sums.EndSection();
    }

    private void TakeOutside(GridRow row)
    {
        var counted = At(row, quantity) is { Kind: CellKind.Number, Number: >= 1 } count && count.Number == Math.Floor(count.Number);
        var weighed = At(row, mass) is { Kind: CellKind.Number, Number: > 0 } || Has(row, volume);
        if (Has(row, piece) && counted && (weighed || Has(row, alloy)) && !SaysTotal(row))
        {
            Outside.Add(row.Number);
        }
    }

    private static GridCell At(GridRow row, int column) => column == 0 ? default : row.Cell(column);

    private static bool Has(GridRow row, int column) => !CellValues.IsBlank(At(row, column));

    private bool IsBlank(GridRow row)
    {
        foreach (var (column, _, _) in columns)
        {
            var cell = row.Cell(column);
            if (!CellValues.IsBlank(cell) && !CellValues.HasNoValue(cell) && !IsUntickedBox(cell))
            {
                return false;
            }
        }

        return true;
    }

    // Lists have boxes to tick far below their last row.
    private static bool IsUntickedBox(GridCell cell) => cell is { Kind: CellKind.Boolean, Number: 0, HasFormula: false };

    // One name merged over the rows of a piece in several sizes.
    private bool IsNamedAbove(GridRow row)
    {
        foreach (var merge in grid.Merges)
        {
            if (merge.Contains(row.Number, piece) && merge.FirstColumn == piece && Has(grid.Row(merge.FirstRow), piece))
            {
                return true;
            }
        }

        return false;
    }

    // A row is struck out with its name, or, where it has none, with everything it says.
    private bool IsStruck(GridRow row)
    {
        if (Has(row, piece))
        {
            return IsStruck(At(row, piece));
        }

        if (IsTitle(row))
        {
            return IsStruck(row.Cell(TitleColumn(row.Number)!.Value));
        }

        foreach (var (column, _, _) in columns)
        {
            var cell = row.Cell(column);
            if (!cell.IsEmpty && !IsStruck(cell))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsStruck(GridCell cell) => formats.IsStruck(cell.Style) || grid.IsTextStruck(cell);

    // A list without a column of names tells nothing by a missing name.
    private bool IsSum(GridRow row) => piece > 0 && !Has(row, piece) && !Has(row, alloy) && !IsNamedAbove(row) && sums.AreIn(At(row, quantity), At(row, mass));

    private bool SaysTotal(GridRow row) => SaysTotal(row, mayGoOn: !Has(row, alloy));

    private bool SaysTotal(GridRow row, bool mayGoOn)
    {
        for (var column = 1; column <= columns[^1].Column; column++)
        {
            var cell = row.Cell(column);
            if (cell.Kind == CellKind.Text && CellValues.Clean(cell.Text) is { Length: > 0 } text)
            {
                return CellWords.IsTotal(text, mayGoOn);
            }
        }

        return false;
    }
}
