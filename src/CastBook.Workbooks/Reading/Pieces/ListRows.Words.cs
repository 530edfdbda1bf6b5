using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <content>Rows of words: section lines, and headings that stand once more.</content>
internal sealed partial class ListRows
{
    private Dictionary<int, int>? titles;

    /// <summary>What a section line says.</summary>
    /// <param name="number">Its row.</param>
    public string TitleOf(int number)
    {
        var row = grid.Row(number);
        return CellValues.Clean((Has(row, piece) ? At(row, piece) : row.Cell(TitleColumn(number) ?? piece)).Text);
    }

    // A title merged over the whole list stands in its first cell.
    private bool IsTitle(GridRow row)
    {
        if (TitleColumn(row.Number) is not { } first)
        {
            return false;
        }

        return row.Cell(first) is { Kind: CellKind.Text } cell && !CellValues.IsBlank(cell) && Array.TrueForAll(columns, c => c.Column == first || !Has(row, c.Column));
    }

    private int? TitleColumn(int row) => (titles ??= TitleColumns()).TryGetValue(row, out var column) ? column : null;

    private Dictionary<int, int> TitleColumns()
    {
        var columnOf = new Dictionary<int, int>();
        foreach (var merge in grid.Merges)
        {
            if (piece > 0 && merge.FirstRow == merge.LastRow && merge.FirstColumn < merge.LastColumn && merge.Contains(merge.FirstRow, piece))
            {
                columnOf[merge.FirstRow] = merge.FirstColumn;
            }
        }

        return columnOf;
    }

    private bool IsHeadingAgain(GridRow row)
    {
        var (sameAsUpper, sameAsLower) = (0, 0);
        foreach (var (column, upper, lower) in columns)
        {
            // A text without letters, as formulas and exports leave it, is the same as no heading at all.
            if (row.Cell(column) is { Kind: CellKind.Text } cell && CellValues.Clean(cell.Text) is { Length: > 0 } clean)
            {
                sameAsUpper += clean.Equals(upper, StringComparison.OrdinalIgnoreCase) ? 1 : 0;
                sameAsLower += clean.Equals(lower, StringComparison.OrdinalIgnoreCase) ? 1 : 0;
            }
        }

        return sameAsUpper >= 2 || sameAsLower >= 2;
    }

    // Words where the list has numbers, and no number at all: the headings of another list.
    private bool IsForeignHeading(GridRow row)
    {
        var words = 0;
        foreach (var (column, _, _) in columns)
        {
            var cell = row.Cell(column);
            if (cell.Kind == CellKind.Number || cell.HasFormula)
            {
                return false;
            }

            words += cell.Kind == CellKind.Text && !CellValues.IsBlank(cell) ? 1 : 0;
        }

        return words >= 2 && (IsWord(At(row, quantity)) || IsWord(At(row, mass)) || IsWord(At(row, volume)));
    }

    private static bool IsWord(GridCell cell) =>
        !CellValues.IsBlank(cell) && cell is { Kind: CellKind.Text, Text: { } text } && !text.AsSpan().ContainsAnyInRange('0', '9');
}
