using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A row of units right below the headings.</summary>
internal static class UnitRow
{
    /// <summary>The units of a row by column, where it is a row of units: nothing but units in the cells that say anything, at least two of them.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="row">The row.</param>
    /// <param name="columns">The list's columns.</param>
    public static IReadOnlyDictionary<int, CellUnit>? Read(SheetGrid grid, int row, IEnumerable<int> columns)
    {
        var units = new Dictionary<int, CellUnit>();
        foreach (var column in columns)
        {
            var cell = grid.Cell(row, column);
            if (CellValues.IsBlank(cell))
            {
                continue;
            }

            if (cell.Kind == CellKind.Text && SmallWords.Counts.Contains(string.Concat(WordKey.Parts(cell.Text))))
            {
                continue;
            }

            if (cell.Kind != CellKind.Text || !(HeadingUnit.TryParse(CellValues.Clean(cell.Text), out var unit) || SaysSizesIn(cell.Text, out unit)))
            {
                return null;
            }

            units[column] = unit;
        }

        return units.Count >= 2 ? units : null;
    }

    // "L × B × H in mm" below "Maße": the order of the sizes, and their unit.
    private static bool SaysSizesIn(string? text, out CellUnit unit)
    {
        var sizes = Heading.Parse(CellValues.Clean(text)).Senses(HeadingWords.PieceIndex)
            .Find(s => s.Unit is not null && HeadingWords.PieceIndex.Fields[s.Known.FieldAt].Field == PieceField.Sizes);
        unit = sizes?.Unit ?? CellUnit.Gram;
        return sizes is not null;
    }
}
