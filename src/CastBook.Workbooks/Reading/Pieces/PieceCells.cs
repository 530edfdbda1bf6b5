using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>The cells of one row at a time, read by field; what cannot be read becomes a finding and a name in <see cref="Unreadable"/>.</summary>
/// <param name="grid">The sheet.</param>
/// <param name="values">How cells are read.</param>
/// <param name="fields">The list's columns.</param>
/// <param name="signs">The decimal signs that its texts settle, by field.</param>
/// <param name="unreadColumns">Fields that no row can be read of, said once at their headings.</param>
internal sealed class PieceCells(
    SheetGrid grid,
    CellValues values,
    IReadOnlyDictionary<string, FieldColumn> fields,
    IReadOnlyDictionary<string, DecimalSign> signs,
    IReadOnlyList<string> unreadColumns)
{
    private readonly HashSet<string> commaSaid = new(StringComparer.Ordinal);
    private List<string> unreadable = [];
    private int row;
    private int id;

    /// <summary>What was found so far, over all rows.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>The fields of the row begun last that could not be read.</summary>
    public IReadOnlyList<string> Unreadable => unreadable.Count == 0 ? unreadColumns : [.. unreadColumns, .. unreadable];

    /// <summary>Begins a row.</summary>
    public void Begin(int sheetRow, int pieceId)
    {
        (row, id) = (sheetRow, pieceId);
        if (unreadable.Count > 0)
        {
            unreadable = [];
        }
    }

    /// <summary>The number of a field in its base unit; missing where the cell says nothing or cannot be read.</summary>
    public double? Number(FieldLook look)
    {
        if (!fields.TryGetValue(look.Field, out var column))
        {
            return null;
        }

        var reading = values.Number(Cell(column), look.Dimension, column.Unit, signs.GetValueOrDefault(look.Field));
        if (reading.Outcome == ReadOutcome.Missing)
        {
            return null;
        }

        var (kind, words) = Fault(reading, look);
        if (kind is not null)
        {
            Fail(kind, look.Field, words);
            return null;
        }

        if (reading.UsedComma && commaSaid.Add(look.Field))
        {
            Findings.Add(Catalogue.DecimalComma.At(Subject.Column(look.Field), column.Heading.Text, reading.Typed, Round(reading.Value)));
        }

        return reading.Value;
    }

    /// <summary>A number that must be whole.</summary>
    public int? Whole(FieldLook look)
    {
        var number = Number(look);
        if (number is { } value && value != Math.Floor(value))
        {
            Fail(look.Field == PieceField.Quantity ? Catalogue.QuantityNotWhole : Catalogue.ValueNotANumber, look.Field, Round(value), ": it is not whole", look.Called);
            return null;
        }

        return (int?)number;
    }

    /// <summary>The text of a field; missing where the cell says nothing.</summary>
    public string? Text(string field, string called)
    {
        if (!fields.TryGetValue(field, out var column))
        {
            return null;
        }

        var cell = Cell(column);
        if (cell.Kind == CellKind.Error)
        {
            Fail(Catalogue.FormulaError, field, values.Shown(cell), called);
        }
        else if (CellValues.HasNoValue(cell))
        {
            Fail(Catalogue.FormulaWithoutValue, field, called);
        }

        return values.Text(cell);
    }

    /// <summary>A yes or no; no where the cell says nothing.</summary>
    public bool YesOrNo(string field, FindingKind otherwise)
    {
        if (!fields.TryGetValue(field, out var column))
        {
            return false;
        }

        var cell = Cell(column);
        if (CellValues.YesOrNo(cell) is { } said)
        {
            return said;
        }

        Fail(otherwise, field, values.Shown(cell), column.Heading.Text);
        return false;
    }

    /// <summary>The day of a field.</summary>
    public DateOnly? Day(string field)
    {
        if (!fields.TryGetValue(field, out var column))
        {
            return null;
        }

        var cell = Cell(column);
        var (day, understood) = values.Day(cell);
        if (!understood)
        {
            Fail(Catalogue.DueUnreadable, field, values.Shown(cell));
        }

        return day;
    }

    /// <summary>Says that a field could not be read.</summary>
    public void Fail(FindingKind kind, string field, params string[] words)
    {
        Findings.Add(kind.At(Subject.Piece(id, field), words));
        unreadable.Add(field);
    }

    private GridCell Cell(FieldColumn column) => grid.Cell(row, column.Column);

    private static (FindingKind? Kind, string[] Words) Fault(NumberReading reading, FieldLook look) => reading.Outcome switch
    {
        ReadOutcome.Error => (Catalogue.FormulaError, [reading.Typed, look.Called]),
        ReadOutcome.NoValue => (Catalogue.FormulaWithoutValue, [look.Called]),
        ReadOutcome.Undecided => (Catalogue.NumberUndecided, [reading.Typed]),
        ReadOutcome.WrongUnit => (Catalogue.UnitWrong, [reading.Typed, look.Called, look.Unit]),
        ReadOutcome.AmbiguousUnit => (Catalogue.UnitInCellAmbiguous, [reading.Typed]),
        ReadOutcome.NotANumber => (look.Kind, [reading.Typed, NumberFault.Of(reading.Typed), look.Called]),
        _ when reading.Value < 0 && look.Dimension != Dimension.Temperature => (Catalogue.ValueBelowZero, [reading.Typed, look.Called]),
        _ when reading.Value == 0 && !look.MayBeZero => (Catalogue.ValueZero, [look.Called]),
        _ when reading.Value > look.Most => (Catalogue.ValueAbsurd, [reading.Typed, look.Called, $"{Round(look.Most)} {look.Unit}"]),
        _ => (null, []),
    };

    private static string Round(double value) => value.ToString("#,0.######", CultureInfo.InvariantCulture);
}
