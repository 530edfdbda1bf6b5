using System.CommandLine;
using CastBook.Cli.Words;
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
        var book = new Argument<string>("BOOK") { Description = KilnLogWords.Book };
        var log = new Argument<string>("LOG") { Description = KilnLogWords.Log };
        var load = new Option<int?>("--load") { Description = KilnLogWords.Load, HelpName = "NUMBER" };
        var column = new Option<string?>("--column") { Description = KilnLogWords.Column, HelpName = "HEADING" };
        var night = new Option<string?>("--night") { Description = SharedWords.Night, HelpName = "NIGHT" };
        var command = new Command(
            "kiln-log",
            KilnLogWords.Command)
        {
            book, log, load, column, night,
        };
        command.SetAction(parsed => Run(
            new Request(parsed.GetValue(book)!, parsed.GetValue(log)!, parsed.GetValue(load), parsed.GetValue(column), parsed.GetValue(night)), output, errors, clock));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (MistakeIn(request) is { } typed)
        {
            errors.WriteLine(ProgramWords.Complaint(typed));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            var settings = SettingsAround.Of(request.Book, clock) with { Night = string.IsNullOrWhiteSpace(request.Night) ? null : request.Night };
            var (log, heading, leftOut) = KilnLogReader.Read(request.Log, request.Column, clock.LocalTimeZone);
            var (plan, units) = BookFile.PlanBurnout(request.Book, settings);
            var night = plan.Clock;
            if (Mistake(night, log, request.Load) is { } mistake)
            {
                errors.WriteLine(ProgramWords.Complaint(mistake));
                return ExitCode.Usage;
            }

            output.WriteLine(About(request.Log, log, heading, leftOut));
            foreach (var line in KilnLogText.Lines(KilnLogCheck.Compare(LoggedLoad.Of(night!, log, request.Load)!, log, units.Temperature), log, units.Temperature))
            {
                output.WriteLine(line);
            }

            return ExitCode.Filled;
        });
    }

    private static string? MistakeIn(Request request) =>
        !File.Exists(request.Book) ? SharedWords.NoBook(request.Book)
        : !File.Exists(request.Log) ? SharedWords.NoLog(request.Log)
        : null;

    private static string? Mistake(NightClock? night, KilnLog log, int? load) => night is not { Loads.Count: > 0 }
        ? KilnLogWords.NoLoads
        : LoggedLoad.Of(night, log, load) is not null ? null
        : load is { } asked ? KilnLogWords.NoSuchLoad(asked, night.Loads.Count)
        : KilnLogWords.WhichLoad(night.Loads.Count);

    private static string About(string path, KilnLog log, string heading, int leftOut)
    {
        var takes = KilnLogWords.Takes(Math.Floor(log.Takes.Hours), log.Takes.ToTimeSpan().Minutes);
        var when = log.Begins is null ? takes : KilnLogWords.FromTo(log.When(UnitsNet.Duration.Zero), log.When(log.Takes), takes);
        return KilnLogWords.Read(Path.GetFileName(path), log.Readings.Count, heading, leftOut, when);
    }

    private sealed record Request(string Book, string Log, int? Load, string? Column, string? Night);
}
