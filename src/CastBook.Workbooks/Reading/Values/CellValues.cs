using System.Buffers;
using System.Globalization;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Reads cells as numbers, texts, dates, and yes or no.</summary>
/// <param name="formats">The book's cell formats.</param>
/// <param name="date1904">Whether dates count from 1904.</param>
internal sealed class CellValues(NumberFormats formats, bool date1904)
{
    private static readonly char[] Around = [' ', '\u200B', '\uFEFF', '\u200E', '\u200F', '\u202F', '\u2009'];
    private static readonly SearchValues<char> Unclean = SearchValues.Create("\u00A0\r\n\t\u200B\uFEFF\u200E\u200F\u202F\u2009");

    private const double MinutesPerDay = 24 * 60;

    /// <summary>Whether a cell says nothing: empty, or a dash.</summary>
    public static bool IsBlank(GridCell cell) =>
        cell.IsEmpty || (cell.Kind == CellKind.Text && CellWords.Nothing.Contains(Clean(cell.Text)));

    /// <summary>Whether a cell says that what belongs there is not known, or not yet.</summary>
    public static bool SaysNotKnown(GridCell cell) => cell.Kind == CellKind.Text && CellWords.NotKnown.Contains(Clean(cell.Text));

    /// <summary>Whether a cell is a formula whose value was not saved.</summary>
    public static bool HasNoValue(GridCell cell) => cell.Kind == CellKind.Empty && cell.HasFormula;

    /// <summary>Reads a cell as a number.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="dimension">What it must measure; a cell that measures nothing is a count.</param>
    /// <param name="unit">The unit of its column; missing means the base unit.</param>
    /// <param name="column">What its column settles about the signs in numbers.</param>
    public NumberReading Number(GridCell cell, Dimension dimension, CellUnit? unit, NumberSigns column) => cell.Kind switch
    {
        CellKind.Number => Numeric(cell, dimension, unit),
        CellKind.Empty => new NumberReading(cell.HasFormula ? ReadOutcome.NoValue : ReadOutcome.Missing),
        CellKind.Text => IsBlank(cell) ? new NumberReading(ReadOutcome.Missing) : FromText(cell.Text, dimension, unit, column),
        CellKind.Error => new NumberReading(ReadOutcome.Error),
        CellKind.Date => new NumberReading(ReadOutcome.Date),
        _ => new NumberReading(ReadOutcome.NotANumber),
    };

    /// <summary>Reads a cell as text; null where it says nothing or shows an error.</summary>
    public string? Text(GridCell cell) =>
        IsBlank(cell) || cell.Kind is CellKind.Error or CellKind.Empty ? null : Shown(cell);

    /// <summary>Reads a cell as text, with the hour of a date that has one.</summary>
    /// <param name="cell">The cell.</param>
    public string? TextWithHour(GridCell cell)
    {
        // A date without an hour does not mean midnight.
        var hasHour = Math.Round((cell.Number - Math.Floor(cell.Number)) * MinutesPerDay) > 0 || (cell.Kind == CellKind.Number && formats.ShowsHour(cell.Style));
        return IsDate(cell) && hasHour ? DayAndHour(cell.Number) ?? Text(cell) : Text(cell);
    }

    /// <summary>The day and hour of a serial number, the hour alone of one below 1; missing where it is none.</summary>
    /// <param name="serial">The number.</param>
    public string? DayAndHour(double serial)
    {
        if (serial is > 0 and < 1)
        {
            return ShownDay(serial);
        }

        var minutes = Math.Round((serial - Math.Floor(serial)) * MinutesPerDay, MidpointRounding.AwayFromZero);
        return serial >= 1 && IsoDate.Day(serial, date1904) is { } day
            ? day.ToDateTime(TimeOnly.MinValue).AddMinutes(minutes).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)
            : null;
    }

    /// <summary>Reads a cell as a day.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="column">What its column settles about day and month.</param>
    public DayText Day(GridCell cell, DayOrders column) => cell.Kind switch
    {
        // A bare number such as 20261224 is a day written without signs, as no serial number is that high.
        CellKind.Number when cell.Number is >= 19000101 and <= 99991231 => DayText.Read(Shown(cell), column),
        CellKind.Number or CellKind.Date => new DayText(IsoDate.Day(cell.Number, date1904)),
        CellKind.Text => DayText.Read(Clean(cell.Text), column),
        _ => default,
    };

    /// <summary>Whether a cell is a date, not a number that happens to be one.</summary>
    public bool IsDate(GridCell cell) => cell.Kind == CellKind.Date || (cell.Kind == CellKind.Number && formats.IsDate(cell.Style));

    /// <summary>Reads a cell as yes or no; null where it says neither.</summary>
    public static bool? YesOrNo(GridCell cell)
    {
        if (IsBlank(cell))
        {
            return false;
        }

        return cell.Kind switch
        {
            CellKind.Boolean => cell.Number != 0,
            CellKind.Number when cell.Number is 0 or 1 => cell.Number != 0,
            CellKind.Text when CellWords.Yes.Contains(Clean(cell.Text)) => true,
            CellKind.Text when CellWords.No.Contains(Clean(cell.Text)) => false,
            _ => null,
        };
    }

    /// <summary>A cell as a person sees it, as far as the file says.</summary>
    public string Shown(GridCell cell) => cell.Kind switch
    {
        CellKind.Text or CellKind.Error => Clean(cell.Text),
        CellKind.Boolean => cell.Number != 0 ? "TRUE" : "FALSE",
        CellKind.Date => ShownDay(cell.Number),
        CellKind.Number when formats.IsDate(cell.Style) => ShownDay(cell.Number),
        CellKind.Number when formats.IsPercent(cell.Style) => Plain(cell.Number * 100) + " %",
        CellKind.Number => Plain(cell.Number),
        _ => "",
    };

    /// <summary>Text on one line, without the blanks around it.</summary>
    public static string Clean(string? text)
    {
        if (text is null)
        {
            return "";
        }

        // Nearly every text is clean already, and long lists hold many.
        return text.Length > 0 && text[0] != ' ' && text[^1] != ' ' && !text.AsSpan().ContainsAny(Unclean)
            ? text
            : text.Replace('\u00A0', ' ').Replace('\r', ' ').Replace('\n', ' ').Replace('\t', ' ').Trim(Around);
    }

    // Less than a day is a time of day.
    private string ShownDay(double serial) => serial is > 0 and < 1
        ? TimeOnly.MinValue.AddMinutes(Math.Round(serial * MinutesPerDay, MidpointRounding.AwayFromZero)).ToString("HH:mm", CultureInfo.InvariantCulture)
        : IsoDate.Day(serial, date1904) is { } day
        ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : Plain(serial);

    private static string Plain(double number) => number.ToString("G12", CultureInfo.InvariantCulture);

    private NumberReading Numeric(GridCell cell, Dimension dimension, CellUnit? unit)
    {
        if (cell.Style == 0)
        {
            return InBase(cell.Number, unit, NumberAssumptions.None);
        }

        if (formats.IsDate(cell.Style))
        {
            // A length of time may stand as a time of day; a date in any other column is a number that a program mistook.
            return dimension == Dimension.Time && cell.Number is >= 0 and < 10
                ? new NumberReading(ReadOutcome.Read, cell.Number * MinutesPerDay, cell.Number * MinutesPerDay)
                : new NumberReading(ReadOutcome.Date);
        }

        if (!formats.IsPercent(cell.Style))
        {
            return InBase(cell.Number, unit, NumberAssumptions.None);
        }

        // 0.02 that shows 2 %; in any other column nobody meant a percentage.
        return dimension == Dimension.Percent ? InBase(cell.Number * 100, unit, NumberAssumptions.None) : new NumberReading(ReadOutcome.NotANumber);
    }

    private static NumberReading FromText(string? text, Dimension dimension, CellUnit? unit, NumberSigns column)
    {
        var number = dimension == Dimension.None ? NumberText.ReadCount(text, column) : NumberText.Read(text, column);
        if (number.Outcome != NumberOutcome.Read)
        {
            return new NumberReading(number.Outcome == NumberOutcome.Undecided ? ReadOutcome.Undecided : ReadOutcome.NotANumber);
        }

        if (number.Unit is not { } typed)
        {
            return InBase(number.Value, unit, number.Assumed);
        }

        if (typed.Dimension != dimension)
        {
            return new NumberReading(ReadOutcome.WrongUnit);
        }

        // NaN, the factor of a unit that may be one of two, differs from itself: such a unit never counts as the heading's.
        var isOwn = typed.Factor != (unit?.Factor ?? 1) || typed.Offset != (unit?.Offset ?? 0);
        var assumed = !isOwn ? NumberAssumptions.None : typed.IsPlainOunce ? NumberAssumptions.PlainOunce : NumberAssumptions.OwnUnit;
        return InBase(number.Value, typed, number.Assumed | assumed);
    }

    private static NumberReading InBase(double number, CellUnit? unit, NumberAssumptions assumed)
    {
        var value = unit?.ToBase(number) ?? number;
        assumed |= unit?.IsPlainLiquid == true ? NumberAssumptions.PlainLiquid : NumberAssumptions.None;
        return double.IsFinite(value)
            ? new NumberReading(ReadOutcome.Read, value, number, assumed) { Shift = unit?.Offset ?? 0 }
            : new NumberReading(unit?.IsGramOrGrain == true ? ReadOutcome.AmbiguousUnit : ReadOutcome.NotANumber);
    }
}
