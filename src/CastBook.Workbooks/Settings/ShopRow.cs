using System.Collections.Frozen;
using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Settings;

/// <summary>A row of one of the shop's sheets, read by field; what cannot be read becomes a finding and counts as not given.</summary>
/// <param name="table">The sheet.</param>
/// <param name="row">The row on it.</param>
/// <param name="name">Its name.</param>
/// <param name="below">The line of the same name in the shop file, which is read where this one is blank; missing where there is none.</param>
internal sealed class ShopRow(ShopTable table, int row, string name, ShopRow? below = null)
{
    // Where nothing measures zero, zero is a slip.
    private static readonly HashSet<string> NeverZero = new(StringComparer.Ordinal)
    {
        ShopField.InsideDiameter, ShopField.Height, ShopField.Holds, ShopField.Powder, ShopField.Water, ShopField.SprueDiameter, ShopField.Cup,
        ShopField.Rated, ShopField.InsideWidth, ShopField.InsideDepth, ShopField.Power, ShopField.Density, ShopField.WaterPer100,
        ShopField.PowderDensity, ShopField.WorkingTime, ShopField.UpToDiameter, ShopField.UpToHeight, ShopField.TreeOnBase,
        ShopField.CubeMass, ShopField.CubeEdge, ShopField.CubeVolume, ShopField.Rate,
    };

    // A line over one of the shop file's learns what cannot be read in that.
    private readonly HashSet<string> unreadable = below?.unreadable ?? new HashSet<string>(StringComparer.Ordinal);

    /// <summary>The fields read so far in which something stands that cannot be read.</summary>
    public IReadOnlySet<string> Unreadable => unreadable.Count == 0 ? FrozenSet<string>.Empty : unreadable;

    /// <summary>The row's name.</summary>
    public string Name => name;

    /// <summary>The row on its sheet.</summary>
    public int SheetRow => row;

    /// <summary>The same row under a name that is written in another way.</summary>
    /// <param name="other">The name.</param>
    public ShopRow Named(string other) => new(table, row, other);

    /// <summary>The same row over the line of its name in the shop file.</summary>
    /// <param name="file">That line.</param>
    public ShopRow Over(ShopRow file) => new(table, row, name, file);

    /// <summary>Whether its cell of a field says anything.</summary>
    /// <param name="field">The field.</param>
    public bool Says(string field) => Cell(field) is { } cell && (!CellValues.IsBlank(cell) || CellValues.HasNoValue(cell));

    /// <summary>Whether it says nothing but its name, as a line does in which a question is not answered yet.</summary>
    public bool IsBare => table.Fields.Keys.All(f => f == ShopField.Name || !Says(f));

    /// <summary>Whether both lines say a field, and not the same.</summary>
    /// <param name="file">The line in the shop file.</param>
    /// <param name="field">The field.</param>
    public bool Contradicts(ShopRow file, string field) => Says(field) && file.Says(field) && Meant(field) != file.Meant(field);

    /// <summary>Whether both lines say the same of every field.</summary>
    /// <param name="file">The line in the shop file.</param>
    public bool SaysTheSame(ShopRow file) =>
        table.Sheet.Columns.All(c => Says(c.Field) == file.Says(c.Field) && !Contradicts(file, c.Field));

    /// <summary>A field as a sentence quotes it.</summary>
    /// <param name="field">The field.</param>
    public string Shown(string field) => table.Values.Shown(Cell(field)!.Value);

    /// <summary>A field as a sentence quotes it, from the shop file where the book is blank; missing where neither says anything.</summary>
    /// <param name="field">The field.</param>
    public string? Typed(string field) => Lower(field) is { } lower ? lower.Typed(field) : Says(field) ? Shown(field) : null;

    /// <summary>Its own number of a field in base units, whether it may be or not; null where it is none.</summary>
    /// <param name="field">The field, of which it says something.</param>
    public double? Measured(string field)
    {
        var number = table.Values.Number(
            Cell(field)!.Value, table.DimensionOf(field), table.Fields[field].Unit ?? ShopTable.UsualUnit(field), table.SignsOf(field));
        return number.Outcome == ReadOutcome.Read ? number.Value : null;
    }

    public string? Text(string field)
    {
        if (Lower(field) is { } lower)
        {
            return lower.Text(field);
        }

        if (!table.Fields.TryGetValue(field, out var column))
        {
            return null;
        }

        var cell = table.Grid.Cell(row, column.Column);
        if (cell.Kind == CellKind.Error || CellValues.HasNoValue(cell))
        {
            Fail(field, cell.Kind == CellKind.Error ? cell.Text ?? "" : "=…", WantedWords.SavedValue);
            return null;
        }

        return table.Values.Text(cell);
    }

    public double? Number(string field) => Lower(field) is { } lower ? lower.Number(field) : Read(field)?.Value;

    private NumberReading? Read(string field)
    {
        if (!table.Fields.TryGetValue(field, out var column))
        {
            return null;
        }

        var dimension = table.DimensionOf(field);
        var cell = table.Grid.Cell(row, column.Column);
        var reading = table.Values.Number(cell, dimension, column.Unit ?? ShopTable.UsualUnit(field), table.SignsOf(field));
        if (reading.Outcome is ReadOutcome.Missing)
        {
            return null;
        }

        if (reading.Outcome != ReadOutcome.Read)
        {
            Fail(field, table.Values.Shown(cell), reading.Outcome == ReadOutcome.WrongUnit ? WantedWords.NumberInColumnsUnit : WantedWords.AnyNumber);
            return null;
        }

        var mayBeNegative = dimension == Dimension.Temperature;
        if ((reading.Value < 0 && !mayBeNegative) || (reading.Value == 0 && NeverZero.Contains(field)))
        {
            Fail(field, table.Values.Shown(cell), WantedWords.NumberAboveZero);
            return null;
        }

        if (reading.Assumed.HasFlag(NumberAssumptions.PlainLiquid))
        {
            table.SayLiquid(new Subject(table.Sheet.Kind, name, field), table.Values.Shown(cell), reading.Value);
        }

        if (reading.Assumed.HasFlag(NumberAssumptions.PlainOunce) || (column.Unit is { IsPlainOunce: true } && !reading.Assumed.HasFlag(NumberAssumptions.OwnUnit)))
        {
            table.SayOunce(new Subject(table.Sheet.Kind, name, field), table.Values.Shown(cell), reading.Value);
        }

        return reading;
    }

    public int? Count(string field)
    {
        var number = Number(field);
        if (number is { } value && (value != Math.Floor(value) || value > 10_000))
        {
            Fail(field, value.ToString("G12", CultureInfo.InvariantCulture), WantedWords.AnyWholeNumber);
            return null;
        }

        return (int?)number;
    }

    public Length? Length(string field) => Number(field) is { } mm ? UnitsNet.Length.FromMillimeters(mm) : null;

    public Mass? Mass(string field) => Number(field) is { } grams ? UnitsNet.Mass.FromGrams(grams) : null;

    public Volume? Volume(string field) => Number(field) is { } ml ? UnitsNet.Volume.FromMilliliters(ml) : null;

    public Temperature? Temperature(string field) => Number(field) is { } degrees ? UnitsNet.Temperature.FromDegreesCelsius(degrees) : null;

    public Density? Density(string field) => Number(field) is { } density ? UnitsNet.Density.FromGramsPerCubicCentimeter(density) : null;

    public Duration? Minutes(string field) => Number(field) is { } minutes ? Duration.FromMinutes(minutes) : null;

    public Ratio? Percent(string field) => Number(field) is { } percent ? Ratio.FromPercent(percent) : null;

    /// <summary>A difference of temperatures: °F, of the column or of the cell, shifts no zero here.</summary>
    /// <param name="field">The field.</param>
    public TemperatureDelta? Step(string field) =>
        Lower(field) is { } lower ? lower.Step(field) : Read(field)?.StepOrNull is { } degrees ? TemperatureDelta.FromDegreesCelsius(degrees) : null;

    /// <summary>One of a few words; what is none of them becomes a finding.</summary>
    /// <param name="field">The field.</param>
    /// <param name="choices">What the words mean.</param>
    /// <param name="named">How a sentence names the choices.</param>
    public T? Choice<T>(string field, Func<string, T?> choices, string named)
        where T : struct
    {
        if (Text(field) is not { } text)
        {
            return null;
        }

        var choice = choices(text);
        if (choice is null)
        {
            Fail(field, text, named);
        }

        return choice;
    }

    /// <summary>Says that a value could not be read.</summary>
    /// <param name="field">Its field.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="wanted">What it should be: <c>a number</c>.</param>
    public void Fail(string field, string typed, string wanted)
    {
        if (Lower(field) is { } lower)
        {
            lower.Fail(field, typed, wanted);
            return;
        }

        var kind = table.Sheet.Kind == SubjectKind.Schedule ? Catalogue.ScheduleValueUnreadable : Catalogue.ShopValueUnreadable;
        Fail(kind, field, typed, table.Fields[field].Heading.Text, wanted, $"{table.Sheet.Called} {name}");
    }

    /// <summary>Says in words of its own that a value could not be read.</summary>
    /// <param name="kind">What is found.</param>
    /// <param name="field">Its field.</param>
    /// <param name="values">The values for its texts.</param>
    public void Fail(FindingKind kind, string field, params string[] values)
    {
        unreadable.Add(field);
        Say(kind, field, values);
    }

    /// <summary>Says something of one of its fields.</summary>
    /// <param name="kind">What is found.</param>
    /// <param name="field">The field.</param>
    /// <param name="values">The values for its texts.</param>
    public void Say(FindingKind kind, string field, params string[] values)
    {
        if (Lower(field) is { } lower)
        {
            lower.Say(kind, field, values);
            return;
        }

        table.Findings.Add(kind.At(new Subject(table.Sheet.Kind, name, field), values));
    }

    /// <summary>Notes where every field of the row stands that is not read from the shop file; the first row of a name stands for it.</summary>
    public void Map(CellMap cells)
    {
        if (cells.Find(new Subject(table.Sheet.Kind, name)) is not null)
        {
            return;
        }

        foreach (var (field, column) in table.Fields.Where(f => Lower(f.Key)?.Says(f.Key) != true))
        {
            var cell = new CellRef(table.Part.Name, row, column.Column);
            cells.Add(new Subject(table.Sheet.Kind, name, field), cell);
            if (field == ShopField.Name)
            {
                cells.Add(new Subject(table.Sheet.Kind, name), cell);
            }
        }
    }

    // What the book says of one thing may leave nothing of what the shop file says of it: powder weighed for another height.
    private ShopRow? Lower(string field) =>
        below is null || Says(field) || table.Sheet.Bonds.Any(b => b.Fields.Contains(field) && b.IsBroken(this, below)) ? null : below;

    private GridCell? Cell(string field) => table.Fields.TryGetValue(field, out var column) ? table.Grid.Cell(row, column.Column) : null;

    // In base units where it is a number, so that two sheets in different units may say the same.
    private string Meant(string field) =>
        Measured(field) is { } number ? number.ToString("G9", CultureInfo.InvariantCulture) : ShopWords.Key(Shown(field));
}
