using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <content>Cells in which several numbers stand together.</content>
internal sealed partial class PieceCells
{
    private readonly IReadOnlyList<string>? orderOfSizes;
    private bool sizesWithoutUnit;
    private string? sizeAlone;

    /// <summary>The sizes that stand in one cell, in millimetres: length, width and perhaps thickness, in whatever order the heading names them; none where it says none.</summary>
    public IReadOnlyList<double> Sizes()
    {
        if (!fields.TryGetValue(PieceField.Sizes, out var field))
        {
            return [];
        }

        var cell = Cell(field.Column);
        if (values.IsDate(cell))
        {
            // An office program makes a day of 7/8.
            Fail(Catalogue.NumberIsDate, PieceField.Sizes, values.Shown(cell), CellNameWords.Size);
            return [];
        }

        if (values.Text(cell) is not { } text)
        {
            return [];
        }

        if (!SizesText.IsSeveral(text))
        {
            sizeAlone ??= IsLeftAlone ? null : text;
            return [];
        }

        if (RingsMeant(text, field.Column, field.Habits) is var (count, size))
        {
            if (!IsLeftAlone)
            {
                Fail(Catalogue.SizesMayBeRings, PieceField.Sizes, text, Round(size), Round(count), $"{text.Trim()} {field.Column.Unit?.Name ?? "mm"}");
            }

            return [];
        }

        if (SizesText.Parse(text, field.Column.Unit, field.Habits.Signs) is { } sizes)
        {
            sizesWithoutUnit |= !sizes.HasUnit && !IsLeftAlone;
            return LengthFirst(sizes.Millimetres);
        }

        Fail(Catalogue.SizesUnreadable, PieceField.Sizes, text);
        return [];
    }

    // Under "W x L x H" the second is the length. Where the first two are all and not these two, nothing tells which they are.
    private IReadOnlyList<double> LengthFirst(IReadOnlyList<double> sizes)
    {
        var order = orderOfSizes?.Take(sizes.Count).ToList() ?? [];
        var (length, width) = (order.IndexOf(PieceField.Length), order.IndexOf(PieceField.Width));
        return length < 0 || width < 0 ? sizes : [sizes[length], sizes[width], .. sizes.Where((_, at) => at != length && at != width)];
    }

    /// <summary>How many pieces the quantity comes to where another column says what is counted: pairs, dozens.</summary>
    /// <param name="number">The number under the quantity's heading.</param>
    /// <param name="counted">What the other column says is counted.</param>
    public int? Counted(int? number, string? counted)
    {
        if (number is not { } count || counted is null || !CountWord.TryParse(counted, out var times) || times == 1)
        {
            return number;
        }

        var column = fields[PieceField.Quantity].Column;
        if (Cell(column) is { Kind: CellKind.Text } cell && values.Shown(cell).AsSpan().ContainsAnyExceptInRange('0', '9'))
        {
            // The cell says itself what it counts.
            return number;
        }

        if (!IsLeftAlone)
        {
            notes.Take(
                PieceField.Quantity, column.Heading.Text, row.Number, CountWord.Assumed(times), $"{Round(count)} {counted}", Round(count), $"{Round(count * times)} pieces");
        }

        return count * times;
    }

    /// <summary>The baths of the wash, where their minutes stand one by one in the cell; none where it gives one number.</summary>
    public IReadOnlyList<double> Baths() =>
        fields.TryGetValue(PieceField.Washed, out var field) && values.Text(Cell(field.Column)) is { } text
            ? BathsText.Parse(text, field.Column.Unit, field.Habits.Signs) ?? []
            : [];

    // "2x54" under Size: two rings of size 54. Under "Dimensions", or with a unit beside it, it measures the piece.
    private static (int Count, double Size)? RingsMeant(string text, FieldColumn column, ColumnHabits habits) =>
        column.Word.Rank > 1 && SizesText.Rings(text, habits.Signs) is { } rings
        && (habits.HasSizeAlone || (column.Unit is null && SizesText.IsCircumference(rings.Size))) ? rings : null;

    private bool HasSizeAlone(int column, IReadOnlyList<int> rows)
    {
        foreach (var number in rows)
        {
            if (grid.Cell(number, column) is var cell && !CellValues.IsBlank(cell) && !values.IsDate(cell) && !(cell.Kind == CellKind.Text && SizesText.IsSeveral(CellValues.Clean(cell.Text))))
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<Finding> SizesAssumed()
    {
        var heading = fields.GetValueOrDefault(PieceField.Sizes).Column?.Heading.Text;
        if (sizesWithoutUnit)
        {
            yield return Catalogue.UnitAssumed.At(Subject.Column(PieceField.Sizes), $"\"{heading}\"", CellNameWords.Millimetres, $"{heading} (mm)");
        }

        if (sizeAlone is { } alone)
        {
            yield return Catalogue.SizeLeftAlone.At(Subject.Column(PieceField.Sizes), alone, heading!);
        }
    }
}
