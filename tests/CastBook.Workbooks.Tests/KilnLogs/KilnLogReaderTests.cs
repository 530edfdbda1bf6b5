using System.Globalization;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.KilnLogs;

namespace CastBook.Workbooks.Tests.KilnLogs;

/// <summary>Logs as controllers and loggers write them.</summary>
public sealed class KilnLogReaderTests
{
    private static readonly TimeZoneInfo NewYork = TimeZoneInfo.FindSystemTimeZoneById("America/New_York");

    private static string Told(string text, string? column = null, TimeZoneInfo? zone = null)
    {
        var (log, heading, leftOut) = KilnLogReader.Read(text, "front-kiln.csv", column, zone ?? TimeZoneInfo.Utc);
        var begins = log.Begins?.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? "-";
        return FormattableString.Invariant($"{begins}|{heading}|{leftOut}|") + string.Join(' ', log.Readings.Select(r => FormattableString.Invariant($"{r.After.Minutes:0.##}:{r.Kiln.DegreesCelsius:0.##}")));
    }

    [Theory]
    [InlineData("Time,Temperature (°C)\n2026-11-25 23:50,20\n2026-11-26 00:10,148.5\n", "2026-11-25 23:50|Temperature (°C)|0|0:20 20:148.5")]
    [InlineData("Zeit;Temperatur [°C]\n25.11.2026 23:50:00;20,5\n26.11.2026 00:10:30;148,25\n", "2026-11-25 23:50|Temperatur [°C]|0|0:20.5 20.5:148.25")]
    [InlineData("Date,Time,SP,PV\n11/25/2026,11:50 PM,150,20\n11/26/2026,12:10 AM,150,148\n", "2026-11-25 23:50|PV|0|0:20 20:148")]
    [InlineData("Date\tTime\tTemp F\n05/11/2026\t22:00\t68\n06/11/2026\t01:00\t302\n", "2026-11-05 22:00|Temp F|0|0:20 180:150")]
    [InlineData("Elapsed (min);Kiln °C\n0;20\n30,5;149\n", "-|Kiln °C|0|0:20 30.5:149")]
    [InlineData("time_s,temp_c\n0,20\n90,22\n", "-|temp_c|0|0:20 1.5:22")]
    [InlineData("timestamp,celsius\n1795650600,20\n1795651800,149\n", "2026-11-25 23:50|celsius|0|0:20 20:149")]
    [InlineData("Logger 7, kitchen shelf\n\nTime,Set temp,Kiln temp\n22:00,149,20\n23:30,149,149\n00:30,371,371\n", "-|Kiln temp|0|0:20 90:149 150:371")]
    [InlineData("2026-11-25T23:50:00Z;20\n2026-11-26T00:10:00Z;149\n", "2026-11-25 23:50||0|0:20 20:149")]
    [InlineData("Time,Temp\n22:00,20\n22:10,----\n22:20,40\n22:20,41\n", "-|Temp|2|0:20 20:40")]
    [InlineData("timestamp,celsius\n1795650600000,20\n1795651800000,149\n", "2026-11-25 23:50|celsius|0|0:20 20:149")]
    [InlineData("timestamp,celsius\n1795650600,20\n1795651800,149\n179565180000000000,149\n", "2026-11-25 23:50|celsius|1|0:20 20:149")]
    [InlineData("Time,Temp\n22:00,-999\n22:10,20\n22:20,-999.9\n22:30,40\n", "-|Temp|2|0:20 20:40")]
    public void Read_LogsOfManyWriters_GivesTimesAndTemperatures(string text, string told) => Told(text).ShouldBe(told);

    [Fact]
    public void Read_ColumnIsNamed_TakesIt() =>
        Told("Time,Front temp,Back temp\n22:00,20,21\n22:20,40,43\n", "back TEMP").ShouldBe("-|Back temp|0|0:21 20:43");

    // Clocks went back on 4 November 2007 at 02:00: two hours lie between the first 01:30 and 02:30.
    [Fact]
    public void Read_ClocksGoBack_HoursAreThoseThatPassed() =>
        Told("Time,Temp\n2007-11-04 00:30,20\n2007-11-04 01:30,30\n2007-11-04 01:10,40\n2007-11-04 02:30,50\n", zone: NewYork)
            .ShouldBe("2007-11-04 00:30|Temp|0|0:20 60:30 100:40 180:50");

    [Theory]
    [InlineData("a,b,c,d\n1,2,3,4\n", null, "front-kiln.csv has no row of headings in which one names a time and one a temperature. Nothing was compared. Give the columns headings such as \"Time\" and \"Temperature (°C)\", or name the second one with --column.")]
    [InlineData("Time,Temp\n22:00,20\n22:20,40\n", "Core", "front-kiln.csv has no column \"Core\" beside a column of times. Nothing was compared. Type its heading after --column as it stands in the file, in quotes.")]
    [InlineData("Time,Temp\n0,20\n30,40\n", null, "front-kiln.csv has fewer than two rows with a time and a temperature. Nothing was compared. Write times as 2026-11-25 22:40 or 22:40:00; a column of plain numbers needs its unit in its heading: \"Time (min)\".")]
    [InlineData("Time,Temp\n22:00,68\n23:00,1350\n", null, "front-kiln.csv goes up to 1,350 under \"Temp\", which is hotter than a burnout kiln in °C. Nothing was compared: it may be in °F. Write the unit into the heading: \"Temperature (°F)\".")]
    public void Read_NoLog_SaysWhatToDo(string text, string? column, string sentence) =>
        Should.Throw<BookRefusedException>(() => KilnLogReader.Read(text, "front-kiln.csv", column, TimeZoneInfo.Utc)).Message.ShouldBe(sentence);

    // 300 °F read as 300 °C would say of a mould that is not dry that it has been burnt out.
    [Theory]
    [InlineData("Time,Temp\n22:00,20\n22:10,40\n", "Temp")]
    [InlineData("22:00,20\n22:10,40\n", "")]
    [InlineData("Time,Temp\n22:00,20 °C\n22:10,40 °C\n", null)]
    [InlineData("Time,Temp (°F)\n22:00,68\n22:10,104\n", null)]
    public void Read_NoUnitNamed_IsRemembered(string text, string? heading) =>
        KilnLogReader.Read(text, "front-kiln.csv", null, TimeZoneInfo.Utc).Log.WithoutUnit.ShouldBe(heading);

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-8")]
    [InlineData("windows-1252")]
    public void Read_FileInUsualEncodings_IsReadAndLeftAsItIs(string encoding)
    {
        var bytes = System.Text.CodePagesEncodingProvider.Instance.GetEncoding(encoding) is { } page ? page.GetBytes("Zeit;Ofen °C\n22:00;20,5\n22:30;149\n")
            : [.. System.Text.Encoding.GetEncoding(encoding).GetPreamble(), .. System.Text.Encoding.GetEncoding(encoding).GetBytes("Zeit;Ofen °C\n22:00;20,5\n22:30;149\n")];
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, bytes);

            var (log, heading, _) = KilnLogReader.Read(path, null, TimeZoneInfo.Utc);

            (heading, log.Readings.Count, log.Readings[0].Kiln.DegreesCelsius).ShouldBe(("Ofen °C", 2, 20.5));
            File.ReadAllBytes(path).ShouldBe(bytes);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
