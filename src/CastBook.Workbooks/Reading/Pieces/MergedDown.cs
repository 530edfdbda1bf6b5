using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Cells of a list that are merged over several rows: what stands in the first is said of each.</summary>
/// <remarks>Not of quantities, weights and volumes: merged over rows, they may be of all of them together.</remarks>
internal sealed class MergedDown
{
    private static readonly string[] MaySum = [PieceField.Quantity, PieceField.PatternMass, PieceField.PatternVolume];

    private readonly List<(FieldColumn Field, CellRange Range)> merges;
    private readonly IReadOnlyList<int> rows;

    private MergedDown(List<(FieldColumn Field, CellRange Range)> merges, IReadOnlyList<int> rows) => (this.merges, this.rows) = (merges, rows);

    /// <summary>Finds them.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="fields">The list's columns.</param>
    /// <param name="rows">The rows that are pieces.</param>
    public static MergedDown Of(SheetGrid grid, IEnumerable<FieldColumn> fields, IReadOnlyList<int> rows)
    {
        var merges = grid.Merges.Where(m => m.LastRow > m.FirstRow && m.FirstRow >= rows[0] && m.FirstRow <= rows[^1]).ToList();
        return new(
            merges.Count == 0
                ? []
                : [.. fields.Where(f => !MaySum.Contains(f.Field)).SelectMany(f => merges.Where(m => m.FirstColumn == f.Column).Select(m => (f, m)))],
            rows);
    }

    /// <summary>The row in which what is said of a cell stands.</summary>
    /// <param name="row">The cell's row.</param>
    /// <param name="column">Its column.</param>
    public int RowOf(int row, int column)
    {
        foreach (var (_, range) in merges)
        {
            if (range.Contains(row, column))
            {
                return range.FirstRow;
            }
        }

        return row;
    }

    /// <summary>A note for each column.</summary>
    public IEnumerable<Finding> Findings() => merges.GroupBy(m => m.Field.Field, StringComparer.Ordinal).Select(g => Catalogue.MergedCellsReadDown.At(
        Subject.Column(g.Key), g.First().Field.Heading.Text, RowNumbers.Text([.. rows.Where(r => g.Any(m => r >= m.Range.FirstRow && r <= m.Range.LastRow))])));
}
