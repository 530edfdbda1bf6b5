using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Which rows below the headings are pieces, and what the others are.</summary>
internal sealed class ListRows
{
    // So many empty rows end a plain list: what stands further down is something else.
    private const int GapEndsList = 3;

    private static readonly string[] TotalWords =
    [
        "total", "totals", "sum", "summe", "subtotal", "sub-total", "sub total", "grand total", "gesamt", "gesamtsumme", "zwischensumme", "sum total",
    ];

    private readonly SheetGrid grid;
    private readonly IReadOnlyDictionary<string, FieldColumn> fields;
    private readonly int[] columns;
    private readonly int headingRow;

    private ListRows(SheetGrid grid, IReadOnlyDictionary<string, FieldColumn> fields, int headingRow)
    {
        this.headingRow = headingRow;
        this.grid = grid;
        this.fields = fields;
        columns = [.. fields.Values.Select(f => f.Column).Order()];
    }

    /// <summary>The rows that are pieces.</summary>
    public List<int> Pieces { get; } = [];

    /// <summary>Rows with a name and nothing else.</summary>
    public List<int> Sections { get; } = [];

    /// <summary>Rows that say something but name no piece.</summary>
    public List<int> Unclear { get; } = [];

    /// <summary>Rows below the list that look like pieces.</summary>
    public List<int> Outside { get; } = [];

    /// <summary>Sorts the rows of a list.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="fields">The list's columns.</param>
    /// <param name="headingRow">Its heading row.</param>
    /// <param name="table">The table it is, where it is one.</param>
    public static ListRows Sort(SheetGrid grid, IReadOnlyDictionary<string, FieldColumn> fields, int headingRow, SheetTable? table)
    {
        var rows = new ListRows(grid, fields, headingRow);
        var last = table is null ? CellRef.MaxRow : table.Range.LastRow - (table.HasTotalsRow ? 1 : 0);
        var (previous, ended) = (headingRow, false);
        foreach (var row in grid.Rows.Where(r => r > headingRow))
        {
            if (rows.IsBlank(row))
            {
                continue;
            }

            ended |= row > last || (table is null && row - previous > GapEndsList);
            previous = row;
            if (ended)
            {
                rows.TakeOutside(row);
            }
            else
            {
                rows.Take(row);
            }
        }

        return rows;
    }

    private void Take(int row)
    {
        if (IsTotal(row) || IsHeadingAgain(row) || (row == headingRow + 1 && UnitRow.Read(grid, row, columns) is not null))
        {
            return;
        }

        var named = Has(row, PieceField.Piece);
        var weighed = Has(row, PieceField.PatternMass) || Has(row, PieceField.PatternVolume);
        var counted = Has(row, PieceField.Quantity);
        if (named ? weighed || counted || Has(row, PieceField.Alloy) : weighed && counted)
        {
            Pieces.Add(row);
        }
        else if (named)
        {
            Sections.Add(row);
        }
        else
        {
            Unclear.Add(row);
        }
    }

    private void TakeOutside(int row)
    {
        var counted = CellOf(row, PieceField.Quantity) is { Kind: CellKind.Number, Number: >= 1 } quantity && quantity.Number == Math.Floor(quantity.Number);
        var weighed = CellOf(row, PieceField.PatternMass) is { Kind: CellKind.Number, Number: > 0 } || Has(row, PieceField.PatternVolume);
        if (Has(row, PieceField.Piece) && counted && (weighed || Has(row, PieceField.Alloy)) && !IsTotal(row))
        {
            Outside.Add(row);
        }
    }

    private GridCell CellOf(int row, string field) => fields.TryGetValue(field, out var column) ? grid.Cell(row, column.Column) : default;

    private bool Has(int row, string field) => !CellValues.IsBlank(CellOf(row, field));

    private bool IsBlank(int row) => columns.All(c => CellValues.IsBlank(grid.Cell(row, c)) || CellValues.HasNoValue(grid.Cell(row, c)));

    private bool IsTotal(int row)
    {
        for (var column = 1; column <= columns[^1]; column++)
        {
            var cell = grid.Cell(row, column);
            if (cell.Kind == CellKind.Text && CellValues.Clean(cell.Text) is { Length: > 0 } text)
            {
                var words = text.TrimEnd(':', ' ');
                return TotalWords.Any(t => string.Equals(words, t, StringComparison.OrdinalIgnoreCase)
                    || (words.StartsWith(t + " ", StringComparison.OrdinalIgnoreCase) && !Has(row, PieceField.Alloy)));
            }
        }

        return false;
    }

    private bool IsHeadingAgain(int row) => IsItsHeading(row, fields.Values.First()) && fields.Values.Count(f => IsItsHeading(row, f)) >= 2;

    private bool IsItsHeading(int row, FieldColumn f) =>
        grid.Cell(row, f.Column) is { Kind: CellKind.Text, Text: { } text }
        && string.Equals(CellValues.Clean(text), f.Heading.Text, StringComparison.OrdinalIgnoreCase);
}
