using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.KilnLogs;

/// <summary>Which columns of a kiln's log say when and how hot.</summary>
/// <param name="FirstRow">The first row below the headings, from 0.</param>
/// <param name="Times">The columns of the time: one, or day and hour.</param>
/// <param name="Temperature">The column of the temperature.</param>
/// <param name="Heading">The heading of that column; empty where the log has none.</param>
/// <param name="Unit">The unit that heading names; missing where it names none.</param>
/// <param name="MinutesEach">How many minutes a plain number in the time's column is; missing where its heading does not say.</param>
internal sealed record LogColumns(int FirstRow, IReadOnlyList<int> Times, int Temperature, string Heading, CellUnit? Unit, double? MinutesEach)
{
    private const int RowsLookedAt = 60;

    private static readonly string[] TimeWords =
        ["time", "date", "datetime", "timestamp", "elapsed", "day", "hour", "clock", "zeit", "uhrzeit", "datum", "tag", "date/time", "heure", "jour", "temps", "hora", "fecha", "ora", "data"];

    private static readonly string[] MeasuredWords = ["temp", "pv", "process", "actual", "measured", "kiln", "ist", "thermocouple", "tc"];
    private static readonly string[] OtherWords = ["set", "sp", "setpoint", "soll", "sollwert", "target", "consigne", "output", "power", "ambient", "%", "core"];
    private static readonly string[] Seconds = ["s", "sec", "secs", "second", "seconds"];
    private static readonly string[] Minutes = ["min", "mins", "minute", "minutes"];
    private static readonly string[] Hours = ["h", "hr", "hrs", "hour", "hours", "std"];

    /// <summary>Finds the columns; missing where nothing says which they are.</summary>
    /// <param name="rows">The rows of the log.</param>
    /// <param name="column">The heading of the temperature's column, where somebody named it.</param>
    public static LogColumns? Find(IReadOnlyList<string[]> rows, string? column)
    {
        for (var row = 0; row < Math.Min(rows.Count, RowsLookedAt); row++)
        {
            var tokens = Array.ConvertAll(rows[row], Tokens);
            var times = Where(tokens, IsTime);
            var temperature = column is null
                ? Where(tokens, t => IsTemperature(t) && !IsTime(t)).FirstOrDefault(-1)
                : Array.FindIndex(rows[row], h => h.Trim().Equals(column.Trim(), StringComparison.OrdinalIgnoreCase));
            if (times.Count > 0 && temperature >= 0)
            {
                times.Remove(temperature);
                return new LogColumns(row + 1, [.. times.Take(2)], temperature, rows[row][temperature].Trim(), UnitIn(tokens[temperature]), EachIn(tokens[times[0]]));
            }
        }

        return column is null ? WithoutHeadings(rows) : null;
    }

    // Time and temperature, or day, time and temperature, and nothing else.
    private static LogColumns? WithoutHeadings(IReadOnlyList<string[]> rows) => rows.FirstOrDefault(r => r.Length > 1) switch
    {
        { Length: 2 } => new LogColumns(0, [0], 1, "", null, null),
        { Length: 3 } first when LogTime.IsDay(first[0]) => new LogColumns(0, [0, 1], 2, "", null, null),
        _ => null,
    };

    private static List<int> Where(string[][] tokens, Func<string[], bool> isOne)
    {
        var found = new List<int>();
        for (var i = 0; i < tokens.Length; i++)
        {
            if (isOne(tokens[i]))
            {
                found.Add(i);
            }
        }

        return found;
    }

    private static bool IsTime(string[] tokens) => tokens.Length is > 0 and < 5 && tokens.Any(TimeWords.Contains) && !tokens.Any(t => t.StartsWith("temper", StringComparison.Ordinal));

    private static bool IsTemperature(string[] tokens) => tokens.Length is > 0 and < 6 && !tokens.Any(OtherWords.Contains)
        && (UnitIn(tokens) is not null || tokens.Any(t => MeasuredWords.Contains(t) || t.StartsWith("temper", StringComparison.Ordinal)));

    private static CellUnit? UnitIn(string[] tokens)
    {
        foreach (var token in tokens)
        {
            var known = token switch { "degc" or "celsius" or "c" => "°C", "degf" or "fahrenheit" or "f" => "°F", _ => token };
            if (CellUnit.TryParse(known, out var unit) && unit.Dimension == Dimension.Temperature)
            {
                return unit;
            }
        }

        return null;
    }

    private static double? EachIn(string[] tokens) =>
        tokens.Any(Minutes.Contains) ? 1
        : tokens.Any(Seconds.Contains) ? 1 / 60.0
        : tokens.Any(Hours.Contains) ? 60
        : null;

    private static string[] Tokens(string heading) =>
        heading.ToLowerInvariant().Split([' ', '(', ')', '[', ']', '.', ',', ':', '_', '-', '#', '\u00A0'], StringSplitOptions.RemoveEmptyEntries);
}
