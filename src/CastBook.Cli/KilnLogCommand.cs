using System.CommandLine;
using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.KilnLogs;
using CastBook.Workbooks.Reports;

namespace CastBook.Cli;

/// <summary><c>castbook kiln-log BOOK LOG</c>: what the kiln did, beside what it should have done.</summary>
internal static class KilnLogCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = "The workbook of the night (.xlsx or .xlsm). It is only read." };
        var log = new Argument<string>("LOG") { Description = "The kiln's log: a time and a temperature a row (.csv, .tsv or .txt). It is only read." };
        var load = new Option<int?>("--load") { Description = "The kiln load it is of, by its number on the Kiln sheet.", HelpName = "NUMBER" };
        var column = new Option<string?>("--column") { Description = "The heading of the column with the kiln's temperature, where it is not found by itself.", HelpName = "HEADING" };
        var night = new Option<string?>("--night") { Description = "Plan this night, as with fill.", HelpName = "NIGHT" };
        var command = new Command(
            "kiln-log",
            "Lay a kiln's temperature log over the plan.\nWhich hold was not reached, by how much, and what the core of the moulds saw.\n\nExample: castbook kiln-log harbour-night.xlsx front-kiln.csv")
        {
            book, log, load, column, night,
        };
        command.SetAction(parsed => Run(
            new Request(parsed.GetValue(book)!, parsed.GetValue(log)!, parsed.GetValue(load), parsed.GetValue(column), parsed.GetValue(night)), output, errors, clock));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (new[] { request.Book, request.Log }.FirstOrDefault(f => !File.Exists(f)) is { } missing)
        {
            errors.WriteLine($"castbook: there is no file '{missing}'. Type its path, in quotes if it has blanks.");
            return ExitCode.Usage;
        }

        return FillCommand.Guarded(errors, () =>
        {
            var settings = SettingsAround.Of(request.Book, clock) with { Night = string.IsNullOrWhiteSpace(request.Night) ? null : request.Night };
            var (log, heading, leftOut) = KilnLogReader.Read(request.Log, request.Column, clock.LocalTimeZone);
            var night = BookFile.PlanBurnout(request.Book, settings).Clock;
            if (Mistake(night, log, request.Load) is { } mistake)
            {
                errors.WriteLine($"castbook: {mistake}");
                return ExitCode.Usage;
            }

            output.WriteLine(About(request.Log, log, heading, leftOut));
            foreach (var line in KilnLogText.Lines(KilnLogCheck.Compare(LoggedLoad.Of(night!, log, request.Load)!, log), log))
            {
                output.WriteLine(line);
            }

            return ExitCode.Filled;
        });
    }

    private static string? Mistake(NightClock? night, KilnLog log, int? load) => night is not { Loads.Count: > 0 }
        ? "this night has no kiln load to compare with: see the Checks sheet of the filled book."
        : LoggedLoad.Of(night, log, load) is not null ? null
        : load is { } asked ? string.Create(CultureInfo.InvariantCulture, $"there is no load {asked}; this night has {night.Loads.Count}.")
        : string.Create(CultureInfo.InvariantCulture, $"this night has {night.Loads.Count} kiln loads; say which one the log is of, such as --load 1.");

    private static string About(string path, KilnLog log, string heading, int leftOut)
    {
        var readings = string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(path)}: {log.Readings.Count:#,0} readings{(heading.Length > 0 ? $" under \"{heading}\"" : "")}");
        var left = leftOut > 0 ? string.Create(CultureInfo.InvariantCulture, $", {leftOut:#,0} rows left out") : "";
        var takes = string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(log.Takes.Hours):0} h {log.Takes.ToTimeSpan().Minutes:00}");
        return log.Begins is null ? $"{readings}{left}, {takes}" : $"{readings}{left}, {log.When(UnitsNet.Duration.Zero)} to {log.When(log.Takes)} ({takes})";
    }

    private sealed record Request(string Book, string Log, int? Load, string? Column, string? Night);
}
