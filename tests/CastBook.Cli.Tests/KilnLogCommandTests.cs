using System.Globalization;
using System.Text;

namespace CastBook.Cli.Tests;

/// <summary>A kiln's log beside the plan of its load.</summary>
public sealed class KilnLogCommandTests : IDisposable
{
    private const string Book = "wrenmoor-night.xlsx";

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // The demo's first load: 150 °C, held 1.5 h from arrival, 370 held 2 h, 732 held 3 h, then down to 540. Here the top holds an hour.
    [Fact]
    public void KilnLog_HoldCutShort_IsSaidAndNothingIsWritten()
    {
        WriteBookAndLog();
        var before = File.ReadAllBytes(Path.Combine(folder, "front.csv"));

        var run = CastBookRun.In(folder, ["kiln-log", Book, "front.csv"], "TZ=UTC");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        var lines = run.Output.TrimEnd().Split('\n').Select(l => l.TrimEnd()).ToList();
        lines[0].ShouldBe("front.csv: 9 readings under \"Ofen °C\", Thu 3 Dec, 21:30 to Fri 4 Dec, 10:30 (13 h 00)");
        lines[1].ShouldStartWith("load 1: flasks ");
        lines.Single(l => l.StartsWith("  stage 3", StringComparison.Ordinal)).ShouldStartWith("  stage 3   732 °C  held 1 h of 3 h, short by 2 h; core ");
        lines.ShouldContain(l => l.StartsWith("check By its log the kiln held stage 3, 732 °C, for 1 h instead of 3 h; ", StringComparison.Ordinal));
        File.ReadAllBytes(Path.Combine(folder, "front.csv")).ShouldBe(before);
        Directory.GetFileSystemEntries(folder).Length.ShouldBe(2);
    }

    // The same log on the chart of the Kiln sheet: nine points from its begin, and the short hold among the checks.
    [Fact]
    public void Fill_WithTheKilnsLog_DrawsItOverTheProgramme()
    {
        WriteBookAndLog();

        var run = CastBookRun.In(folder, ["fill", Book, "--out", "drawn.xlsx", "--kiln-log", "front.csv"], "TZ=UTC");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        using var zip = System.IO.Compression.ZipFile.OpenRead(Path.Combine(folder, "drawn.xlsx"));
        var charts = zip.Entries.Where(e => e.FullName.StartsWith("xl/charts/", StringComparison.Ordinal)).Select(e => new StreamReader(e.Open()).ReadToEnd()).ToList();
        var drawn = charts.Where(c => c.Contains("<c:v>kiln by its log</c:v>", StringComparison.Ordinal)).ShouldHaveSingleItem();
        drawn.ShouldContain("Load 1: kiln, and the core of flask A");
        var measured = drawn[drawn.IndexOf("kiln by its log", StringComparison.Ordinal)..];
        measured.ShouldContain("<c:ptCount val=\"9\"/>");
        var checks = CastBookRun.In(folder, ["fill", Book, "--dry-run", "--json", "--kiln-log", "front.csv"], "TZ=UTC");
        checks.Output.ShouldContain("log-hold-short");
        CastBookRun.In(folder, ["fill", Book, "--dry-run", "--kiln-log", "gone.csv"], "TZ=UTC").Errors.Trim()
            .ShouldBe("castbook: there is no file 'gone.csv'. Type the log's path, in quotes if it has blanks.");
    }

    [Theory]
    [InlineData(2, "castbook: there is no load 9; this night has 2. Type a number from 1 to 2 after --load.", Book, "hours.csv", "--load", "9")]
    [InlineData(2, "castbook: this night has 2 kiln loads; say which one the log is of, such as --load 1.", Book, "hours.csv")]
    [InlineData(2, "castbook: there is no file 'gone.csv'. Type the log's path, in quotes if it has blanks.", Book, "gone.csv")]
    [InlineData(3, "castbook: empty.csv has no row of headings in which one names a time and one a temperature.", Book, "empty.csv")]
    public void KilnLog_CommandOrFileIsWrong_SaysWhy(int code, string error, params string[] words)
    {
        File.Copy(Path.Combine(ReadmeTests.Repository, "templates", "wrenmoor-night", Book), Path.Combine(folder, Book));
        File.WriteAllText(Path.Combine(folder, "hours.csv"), "Time,Temp\n21:30,20\n23:00,150\n");
        File.WriteAllText(Path.Combine(folder, "empty.csv"), "");

        var run = CastBookRun.In(folder, ["kiln-log", .. words]);

        (run.ExitCode, run.Output).ShouldBe((code, ""));
        run.Errors.ShouldStartWith(error);
    }

    private void WriteBookAndLog()
    {
        File.Copy(Path.Combine(ReadmeTests.Repository, "templates", "wrenmoor-night", Book), Path.Combine(folder, Book));
        var log = new StringBuilder("Zeit;Ofen °C\n");
        foreach (var (minutes, celsius) in ((double, double)[])[(0, 20), (60, 150), (150, 150), (252, 370), (372, 370), (493, 732), (553, 732), (670, 540), (780, 540)])
        {
            log.AppendLine(CultureInfo.InvariantCulture, $"{new DateTime(2037, 12, 3, 21, 30, 0, DateTimeKind.Unspecified).AddMinutes(minutes):dd.MM.yyyy HH:mm};{celsius}");
        }

        File.WriteAllText(Path.Combine(folder, "front.csv"), log.ToString());
    }
}
