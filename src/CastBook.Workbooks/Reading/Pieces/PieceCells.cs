using System.Collections.Frozen;
using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>The cells of one row at a time, read by field; what cannot be read becomes a finding and a name in <see cref="Unreadable"/>.</summary>
internal sealed partial class PieceCells
{
    private readonly SheetGrid grid;
    private readonly CellValues values;
    private readonly IReadOnlyList<string> unreadColumns;
    private readonly FrozenDictionary<string, (FieldColumn Column, ColumnHabits Habits)> fields;
    private readonly List<Finding> found = [];
    private readonly ReadingNotes notes = new();
    private readonly MergedDown merged;
    private readonly HashSet<string> statuses = new(StringComparer.OrdinalIgnoreCase);
    private List<string> unreadable = [];
    private SeenUnit weights;
    private GridRow row;
    private int id;

    /// <summary>Makes ready to read.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="values">How cells are read.</param>
    /// <param name="fields">The list's columns.</param>
    /// <param name="rows">The rows that are pieces.</param>
    /// <param name="unreadColumns">Fields that no row can be read of, said once at their headings.</param>
    /// <param name="elsewhere">What the rest of the book settles about the order of day and month, for columns that settle nothing.</param>
    public PieceCells(
        SheetGrid grid, CellValues values, IReadOnlyDictionary<string, FieldColumn> fields, IReadOnlyList<int> rows, IReadOnlyList<string> unreadColumns, DayOrders elsewhere)
    {
        (this.grid, this.values, this.unreadColumns) = (grid, values, unreadColumns);
        orderOfSizes = fields.GetValueOrDefault(PieceField.Sizes)?.Heading.OrderOfSizes(HeadingWords.PieceIndex);
        merged = MergedDown.Of(grid, fields.Values, rows);
        var known = fields.ToDictionary(f => f.Key, f => (Column: f.Value, Habits: HabitsOf(f.Value, rows)), StringComparer.Ordinal);
        Days = known.Values.Aggregate(DayOrders.None, (all, f) => all | f.Habits.Days);
        var rest = Days == DayOrders.None ? elsewhere : Days;
        this.fields = known.ToFrozenDictionary(
            f => f.Key, f => f.Value.Habits.Days == DayOrders.None ? (f.Value.Column, f.Value.Habits with { Days = rest }) : f.Value, StringComparer.Ordinal);
    }

    /// <summary>What was found so far, over all rows.</summary>
    public IReadOnlyList<Finding> Findings => [.. found, .. SizesAssumed(), .. notes.Findings(), .. merged.Findings()];

    /// <summary>The fields of the row begun last that could not be read.</summary>
    public IReadOnlyList<string> Unreadable => unreadable.Count == 0 ? unreadColumns : [.. unreadColumns, .. unreadable];

    /// <summary>What one of the unit in which all weights stand is in grams; missing where they stand in several, or none does.</summary>
    public double? GramsOfWeightUnit => weights.Factor;

    /// <summary>What its columns of days settle about the order of day and month.</summary>
    public DayOrders Days { get; }

    /// <summary>Whether the row begun last is done or to be left out; what is taken for granted in it is nobody's concern.</summary>
    public bool IsLeftAlone { private get; set; }

    /// <summary>Begins a row.</summary>
    public void Begin(int sheetRow, int pieceId)
    {
        (row, id, IsLeftAlone) = (grid.Row(sheetRow), pieceId, false);
        if (unreadable.Count > 0)
        {
            unreadable = [];
        }
    }

    /// <summary>The number of a field in its base unit; missing where the cell says nothing or cannot be read.</summary>
    public double? Number(FieldLook look)
    {
        if (!fields.TryGetValue(look.Field, out var field))
        {
            return null;
        }

        var cell = Cell(field.Column);
        var reading = values.Number(cell, look.Dimension, field.Column.Unit, field.Habits.Signs);
        if (reading.Outcome == ReadOutcome.Missing)
        {
            return null;
        }

        if (reading.Outcome == ReadOutcome.Undecided)
        {
            notes.Ask(look.Field, Catalogue.NumberUndecided, Subject.Piece(id, look.Field), values.Shown(cell), field.Column.Heading.Text);
            unreadable.Add(look.Field);
            return null;
        }

        if (IsFaulty(reading, look))
        {
            var (kind, words) = Fault(reading, look, values.Shown(cell));
            Fail(kind, look.Field, words);
            return null;
        }

        if (look.Field == PieceField.PatternMass)
        {
            weights.See(reading);
        }

        if (reading.Assumed != NumberAssumptions.None && !IsLeftAlone)
        {
            notes.Take(
                look.Field, field.Column.Heading.Text, row.Number, reading.Assumed, values.Shown(cell), Round(reading.Typed), $"{Round(reading.Value)} {look.Unit}");
        }

        return reading.Value;
    }

    /// <summary>A number that must be whole.</summary>
    public int? Whole(FieldLook look)
    {
        var number = Number(look);
        if (number is { } value && value != Math.Floor(value))
        {
            Fail(look.Field == PieceField.Quantity ? Catalogue.QuantityNotWhole : Catalogue.ValueNotANumber, look.Field, Round(value), NumberFaultWords.NotWhole, look.Called);
            return null;
        }

        return (int?)number;
    }

    /// <summary>The text of a field; missing where the cell says nothing.</summary>
    public string? Text(string field, string called)
    {
        if (!fields.TryGetValue(field, out var known))
        {
            return null;
        }

        var cell = Cell(known.Column);
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

    /// <summary>Words that nothing is reckoned from; a cell that has none says nothing and is no fault.</summary>
    /// <param name="field">The field.</param>
    public string? Words(string field) =>
        fields.TryGetValue(field, out var known) && Cell(known.Column) is { Kind: not CellKind.Error } cell ? values.Text(cell) : null;

    /// <summary>Whether the row begun last says anything of a field.</summary>
    public bool Says(string field) => fields.TryGetValue(field, out var known) && !CellValues.IsBlank(Cell(known.Column));

    /// <summary>The day of a field.</summary>
    public DateOnly? Day(string field)
    {
        if (!fields.TryGetValue(field, out var known) || CellValues.IsBlank(Cell(known.Column)))
        {
            return null;
        }

        var cell = Cell(known.Column);
        var read = values.Day(cell, known.Habits.Days);
        if (read.Day is { } day)
        {
            NoteOrder(known.Column, read);
            return day;
        }

        if (read is { First: { } first, Other: { } other })
        {
            notes.Ask(field, Catalogue.DayUndecided, Subject.Piece(id, field), values.Shown(cell), known.Column.Heading.Text, Iso(first), Iso(other));
            unreadable.Add(field);
        }
        else
        {
            // A column without years would else be a check in each of its cells.
            notes.Ask(field, Catalogue.DueUnreadable, Subject.Piece(id, field), values.Shown(cell));
            unreadable.Add(field);
        }

        return null;
    }

    /// <summary>The night of a row: a day in the one form that compares, else the words as typed.</summary>
    public string? Night()
    {
        var text = Text(PieceField.Night, CellNameWords.Night);
        if (text is null || !fields.TryGetValue(PieceField.Night, out var known))
        {
            return text;
        }

        // A bare number is the number of a night; it is a day only where it is shown as one.
        var cell = Cell(known.Column);
        if (cell.Kind != CellKind.Text && !values.IsDate(cell))
        {
            return text;
        }

        var read = values.Day(cell, known.Habits.Days);
        NoteOrder(known.Column, read);
        return read.Day is { } day ? NightName.Of(day) : text;
    }

    /// <summary>Says that a field could not be read.</summary>
    public void Fail(FindingKind kind, string field, params string[] words)
    {
        found.Add(kind.At(Subject.Piece(id, field), words));
        unreadable.Add(field);
    }

    /// <summary>Notes that the row's shape is a word that nobody can read, and counts as a box.</summary>
    /// <param name="shape">The shape as typed.</param>
    public void TakeAsBox(string shape)
    {
        if (!IsLeftAlone)
        {
            notes.TakeShape(shape, fields[PieceField.Shape].Column.Heading.Text, Subject.Piece(id, PieceField.Shape));
        }
    }

    private GridCell Cell(FieldColumn column) =>
        merged.RowOf(row.Number, column.Column) is var standing && standing == row.Number ? row.Cell(column.Column) : grid.Cell(standing, column.Column);

    private ColumnHabits HabitsOf(FieldColumn column, IReadOnlyList<int> rows)
    {
        var isDay = column.Field is PieceField.Due or PieceField.Night or PieceField.Done;
        var isNumber = column.Field is PieceField.Quantity or PieceField.Gates || HeadingWords.Piece.First(f => f.Field == column.Field).Dimension != Dimension.None;
        var habits = isDay || isNumber ? ColumnHabits.Of(grid, column.Column, rows, isDay) : default;
        return column.Field == PieceField.Sizes ? habits with { HasSizeAlone = HasSizeAlone(column.Column, rows) } : habits;
    }

    private void NoteOrder(FieldColumn column, DayText read)
    {
        if (read is { Ordered: true, Day: { } day } && !IsLeftAlone)
        {
            notes.TakeDay(column.Field, column.Heading.Text, row.Number, values.Shown(Cell(column)), Iso(day));
        }
    }

    private static bool IsFaulty(NumberReading reading, FieldLook look) =>
        reading.Outcome != ReadOutcome.Read
        || (reading.Value < 0 && look.Dimension != Dimension.Temperature)
        || (reading.Value == 0 && !look.MayBeZero)
        || reading.Value > look.Most;

    private static (FindingKind Kind, string[] Words) Fault(NumberReading reading, FieldLook look, string shown) => reading.Outcome switch
    {
        ReadOutcome.Error => (Catalogue.FormulaError, [shown, look.Called]),
        ReadOutcome.NoValue => (Catalogue.FormulaWithoutValue, [look.Called]),
        ReadOutcome.Date => (Catalogue.NumberIsDate, [shown, look.Called]),
        ReadOutcome.WrongUnit => (Catalogue.UnitWrong, [shown, look.Called, look.Unit]),
        ReadOutcome.AmbiguousUnit => (Catalogue.UnitInCellAmbiguous, [shown]),
        ReadOutcome.NotANumber when Estimate.Of(shown) is { } estimate => (Catalogue.NumberNotExact, [shown, estimate.What, look.Called, estimate.Example]),
        ReadOutcome.NotANumber => (look.Kind, [shown, NumberFault.Of(shown), look.Called]),
        _ when reading.Value < 0 => (Catalogue.ValueBelowZero, [shown, look.Called]),
        _ when reading.Value == 0 => (Catalogue.ValueZero, [look.Called]),
        _ => (Catalogue.ValueAbsurd, [shown, look.Called, $"{Round(look.Most)} {look.Unit}"]),
    };

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Round(double value) => value.ToString("#,0.######", CultureInfo.InvariantCulture);
}
