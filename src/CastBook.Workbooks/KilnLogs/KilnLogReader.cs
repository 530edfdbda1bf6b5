using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Text;
using UnitsNet;

namespace CastBook.Workbooks.KilnLogs;

/// <summary>Reads a kiln's log in separated text: a time and a temperature a row. It is only read.</summary>
public static class KilnLogReader
{
    // No kiln of a casting shop is hotter: such numbers are degrees Fahrenheit, or no temperatures.
    private const double MostCelsius = 1000;

    // No workshop is colder: loggers write -999 and the like where the sensor says nothing.
    private const double LeastCelsius = -50;

    /// <summary>Reads a log.</summary>
    /// <param name="path">The file.</param>
    /// <param name="column">The heading of the temperature's column; missing to have it found.</param>
    /// <param name="zone">The zone in which the shop's clocks run.</param>
    /// <returns>The log, the heading its temperatures stand under, and how many rows were left out.</returns>
    /// <exception cref="BookRefusedException">The file cannot be read, or is no log.</exception>
    public static (KilnLog Log, string Heading, int LeftOut) Read(string path, string? column, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(zone);
        return Read(TextDecoder.Decode(TextFile.Bytes(path)), Path.GetFileName(path), column, zone);
    }

    /// <summary>Reads the text of a log.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">The file's name.</param>
    /// <param name="column">The heading of the temperature's column; missing to have it found.</param>
    /// <param name="zone">The zone in which the shop's clocks run.</param>
    internal static (KilnLog Log, string Heading, int LeftOut) Read(string text, string name, string? column, TimeZoneInfo zone)
    {
        var rows = TextTable.Read(text);
        var columns = LogColumns.Find(rows, column)
            ?? throw BookRefusedException.For(column is null ? Catalogue.LogColumnsNotFound : Catalogue.LogColumnMissing, name, column ?? "");
        var wanted = Math.Max(columns.Temperature, columns.Times.Max());
        var full = rows.Skip(columns.FirstRow).Where(r => r.Length > wanted && r.Any(c => c.Trim().Length > 0)).ToList();

        // 05/11 and 06/11 are one night apart in one of the two orders, and a month in the other.
        var orders = new[] { DayOrders.DayFirst, DayOrders.MonthFirst }.Select(order => Readings(full, columns, new LogTime(zone, order, columns.MinutesEach)));
        var (readings, begins) = orders.OrderByDescending(o => o.Readings.Count).ThenBy(o => o.Readings.Count == 0 ? 0 : o.Readings[^1].After.Minutes).First();
        if (readings.Count < 2)
        {
            throw BookRefusedException.For(Catalogue.LogHasNoReadings, name);
        }

        if (readings.Max(r => r.Kiln.DegreesCelsius) > MostCelsius)
        {
            throw BookRefusedException.For(Catalogue.LogTooHot, name, Say(readings.Max(r => r.Kiln.DegreesCelsius)), columns.Heading);
        }

        var withoutUnit = columns.Unit is null && !full.Exists(r => NumberText.Read(r[columns.Temperature], NumberSigns.DecimalPoint).Unit is not null) ? columns.Heading : null;
        return (new KilnLog(readings, begins) { WithoutUnit = withoutUnit }, columns.Heading, rows.Skip(columns.FirstRow).Count(r => r.Any(c => c.Trim().Length > 0)) - readings.Count);
    }

    // A reading that stands before the one above it was written by a clock that was put back, or is noise.
    private static (List<KilnReading> Readings, DateTime? Begins) Readings(List<string[]> rows, LogColumns columns, LogTime time)
    {
        var signs = rows.Select(r => NumberText.SignsOf(r[columns.Temperature])).FirstOrDefault(s => s != NumberSigns.None, NumberSigns.DecimalPoint);
        var readings = new List<KilnReading>();
        double? first = null;
        foreach (var row in rows)
        {
            var number = NumberText.Read(row[columns.Temperature], signs);
            var celsius = (number.Unit ?? columns.Unit)?.ToBase(number.Value) ?? number.Value;
            if (number.Outcome != NumberOutcome.Read || (number.Unit is { } typed && typed.Dimension != Dimension.Temperature) || celsius < LeastCelsius
                || time.Next(string.Join(' ', columns.Times.Select(c => row[c].Trim()))) is not { } minutes)
            {
                continue;
            }

            first ??= minutes;
            var after = Duration.FromMinutes(minutes - first.Value);
            if (readings.Count == 0 || after > readings[^1].After)
            {
                readings.Add(new KilnReading(after, Temperature.FromDegreesCelsius(celsius)));
            }
        }

        return (readings, time.Begins);
    }

    private static string Say(double degrees) => Math.Round(degrees).ToString("#,0", System.Globalization.CultureInfo.InvariantCulture);
}
