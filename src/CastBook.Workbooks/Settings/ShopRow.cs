using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using UnitsNet;

namespace CastBook.Workbooks.Settings;

/// <summary>A row of one of the shop's sheets, read by field; what cannot be read becomes a finding and counts as not given.</summary>
internal sealed class ShopRow(ShopTable table, int row, string name)
{
    // Where nothing measures zero, zero is a slip.
    private static readonly HashSet<string> NeverZero = new(StringComparer.Ordinal)
    {
        ShopField.InsideDiameter, ShopField.Height, ShopField.Holds, ShopField.Powder, ShopField.Water, ShopField.SprueDiameter, ShopField.Cup,
        ShopField.Rated, ShopField.InsideWidth, ShopField.InsideDepth, ShopField.Power, ShopField.Density, ShopField.WaterPer100,
        ShopField.PowderDensity, ShopField.WorkingTime, ShopField.UpToDiameter, ShopField.UpToHeight, ShopField.TreeOnBase,
        ShopField.CubeMass, ShopField.CubeEdge, ShopField.CubeVolume,
    };

    /// <summary>The row's name.</summary>
    public string Name => name;

    /// <summary>The row on its sheet.</summary>
    public int SheetRow => row;

    public string? Text(string field)
    {
        if (!table.Fields.TryGetValue(field, out var column))
        {
            return null;
        }

        var cell = table.Grid.Cell(row, column.Column);
        if (cell.Kind == CellKind.Error || CellValues.HasNoValue(cell))
        {
            Fail(field, cell.Kind == CellKind.Error ? cell.Text ?? "" : "=…", "a value that is saved in the file");
            return null;
        }

        return table.Values.Text(cell);
    }

    public double? Number(string field)
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
            Fail(field, table.Values.Shown(cell), "a number" + (reading.Outcome == ReadOutcome.WrongUnit ? " in the unit of its column" : ""));
            return null;
        }

        var mayBeNegative = dimension == Dimension.Temperature;
        if ((reading.Value < 0 && !mayBeNegative) || (reading.Value == 0 && NeverZero.Contains(field)))
        {
            Fail(field, table.Values.Shown(cell), "a number above zero");
            return null;
        }

        return reading.Value;
    }

    public int? Count(string field)
    {
        var number = Number(field);
        if (number is { } value && (value != Math.Floor(value) || value > 10_000))
        {
            Fail(field, value.ToString("G12", CultureInfo.InvariantCulture), "a whole number");
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

    /// <summary>A difference of temperatures: a column in °F shifts no zero here.</summary>
    public TemperatureDelta? Step(string field)
    {
        if (Number(field) is not { } degrees)
        {
            return null;
        }

        var shift = table.Fields[field].Unit?.Offset ?? 0;
        return TemperatureDelta.FromDegreesCelsius(degrees - shift);
    }

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
    public void Fail(string field, string typed, string wanted) => table.Findings.Add(Catalogue.ShopValueUnreadable.At(
        new Subject(table.Sheet.Kind, name, field), typed, table.Fields[field].Heading.Text, wanted, $"{table.Sheet.Called} {name}"));

    /// <summary>Notes where every field of the row stands; the first row of a name stands for it.</summary>
    public void Map(CellMap cells)
    {
        if (cells.Find(new Subject(table.Sheet.Kind, name)) is not null)
        {
            return;
        }

        foreach (var (field, column) in table.Fields)
        {
            var cell = new CellRef(table.Part.Name, row, column.Column);
            cells.Add(new Subject(table.Sheet.Kind, name, field), cell);
            if (field == ShopField.Name)
            {
                cells.Add(new Subject(table.Sheet.Kind, name), cell);
            }
        }
    }
}
