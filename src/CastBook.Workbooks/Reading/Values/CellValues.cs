using System.Globalization;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Reads cells as numbers, texts, dates, and yes or no.</summary>
/// <param name="formats">The book's cell formats.</param>
/// <param name="date1904">Whether dates count from 1904.</param>
internal sealed class CellValues(NumberFormats formats, bool date1904)
{
    private const double MinutesPerDay = 24 * 60;

    private static readonly HashSet<string> NothingSaid = new(StringComparer.OrdinalIgnoreCase)
    {
        "", "-", "–", "—", "n/a", "na", "?", "tbc", "tbd",
    };

    private static readonly HashSet<string> YesWords = new(StringComparer.OrdinalIgnoreCase) { "yes", "y", "x", "true", "1", "ja", "✓", "✔" };

    private static readonly HashSet<string> NoWords = new(StringComparer.OrdinalIgnoreCase) { "no", "n", "false", "0", "nein" };

    /// <summary>Whether a cell says nothing: empty, or a dash.</summary>
    public static bool IsBlank(GridCell cell) =>
        cell.IsEmpty || (cell.Kind == CellKind.Text && NothingSaid.Contains(Clean(cell.Text)));

    /// <summary>Whether a cell is a formula whose value was not saved.</summary>
    public static bool HasNoValue(GridCell cell) => cell.Kind == CellKind.Empty && cell.HasFormula;

    /// <summary>Reads a cell as a number.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="dimension">What it must measure.</param>
    /// <param name="unit">The unit of its column; missing means the base unit.</param>
    /// <param name="sign">The decimal sign of its column.</param>
    public NumberReading Number(GridCell cell, Dimension dimension, CellUnit? unit, DecimalSign sign)
    {
        if (HasNoValue(cell))
        {
            return new NumberReading(ReadOutcome.NoValue, 0, "");
        }

        if (IsBlank(cell))
        {
            return new NumberReading(ReadOutcome.Missing, 0, "");
        }

        return cell.Kind switch
        {
            CellKind.Number => Numeric(cell, dimension, unit),
            CellKind.Text => FromText(Clean(cell.Text), dimension, unit, sign),
            CellKind.Error => new NumberReading(ReadOutcome.Error, 0, cell.Text ?? "an error"),
            _ => new NumberReading(ReadOutcome.NotANumber, 0, Shown(cell)),
        };
    }

    /// <summary>Reads a cell as text; null where it says nothing or shows an error.</summary>
    public string? Text(GridCell cell) =>
        IsBlank(cell) || cell.Kind is CellKind.Error or CellKind.Empty ? null : Shown(cell);

    /// <summary>Reads a cell as a day; null where it says nothing. The flag is false where it says something else.</summary>
    public (DateOnly? Day, bool Understood) Day(GridCell cell)
    {
        if (IsBlank(cell))
        {
            return (null, true);
        }

        var day = cell.Kind switch
        {
            CellKind.Number or CellKind.Date => IsoDate.Day(cell.Number, date1904),
            CellKind.Text => DayFromText(Clean(cell.Text)),
            _ => null,
        };
        return (day, day is not null);
    }

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
            CellKind.Text when YesWords.Contains(Clean(cell.Text)) => true,
            CellKind.Text when NoWords.Contains(Clean(cell.Text)) => false,
            _ => null,
        };
    }

    /// <summary>A cell as a person sees it, as far as the file says.</summary>
    public string Shown(GridCell cell) => cell.Kind switch
    {
        CellKind.Text or CellKind.Error => Clean(cell.Text),
        CellKind.Boolean => cell.Number != 0 ? "TRUE" : "FALSE",
        CellKind.Date => ShownDay(cell.Number),
        CellKind.Number => formats.IsDate(cell.Style) ? ShownDay(cell.Number) : cell.Number.ToString("G12", CultureInfo.InvariantCulture),
        _ => "",
    };

    /// <summary>Text on one line, without the blanks around it.</summary>
    public static string Clean(string? text) => text is null
        ? ""
        : text.Replace('\u00A0', ' ').Replace('\r', ' ').Replace('\n', ' ').Replace('\t', ' ').Trim();

    private string ShownDay(double serial) => IsoDate.Day(serial, date1904) is { } day
        ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : serial.ToString("G12", CultureInfo.InvariantCulture);

    private NumberReading Numeric(GridCell cell, Dimension dimension, CellUnit? unit)
    {
        if (formats.IsDate(cell.Style))
        {
            // A length of time may stand as a time of day; a date in any other column is a number that a program mistook.
            return dimension == Dimension.Time && cell.Number is >= 0 and < 10
                ? new NumberReading(ReadOutcome.Read, cell.Number * MinutesPerDay, Shown(cell))
                : new NumberReading(ReadOutcome.NotANumber, 0, ShownDay(cell.Number));
        }

        var number = dimension == Dimension.Percent && formats.IsPercent(cell.Style) ? cell.Number * 100 : cell.Number;
        return InBase(number, unit, Shown(cell), false);
    }

    private static NumberReading FromText(string text, Dimension dimension, CellUnit? unit, DecimalSign sign)
    {
        var number = NumberText.Read(text, sign);
        if (number.Outcome != NumberOutcome.Read)
        {
            var undecided = number.Outcome == NumberOutcome.Undecided;
            return new NumberReading(undecided ? ReadOutcome.Undecided : ReadOutcome.NotANumber, 0, text);
        }

        if (number.Unit is { } typed && typed.Dimension != dimension)
        {
            return new NumberReading(dimension == Dimension.None ? ReadOutcome.NotANumber : ReadOutcome.WrongUnit, 0, text);
        }

        return InBase(number.Value, number.Unit ?? unit, text, number.UsedComma);
    }

    private static NumberReading InBase(double number, CellUnit? unit, string typed, bool usedComma)
    {
        var value = unit?.ToBase(number) ?? number;
        return double.IsFinite(value)
            ? new NumberReading(ReadOutcome.Read, value, typed, usedComma)
            : new NumberReading(unit?.IsGramOrGrain == true ? ReadOutcome.AmbiguousUnit : ReadOutcome.NotANumber, 0, typed);
    }

    // Day before month or month before day cannot be told from 3/4/2026; only forms that can mean one day are read.
    private static DateOnly? DayFromText(string text)
    {
        string[] forms = ["yyyy-MM-dd", "d.M.yyyy", "d MMM yyyy", "d MMMM yyyy", "yyyy-MM-ddTHH:mm:ss"];
        return DateTime.TryParseExact(text, forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? DateOnly.FromDateTime(day)
            : null;
    }
}
