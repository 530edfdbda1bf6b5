using System.CommandLine;
using CastBook.Cli.Words;
using CastBook.Planning.Findings;
using CastBook.Workbooks;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.KilnLogs;
using CastBook.Workbooks.Reports;

namespace CastBook.Cli;

/// <summary><c>castbook fill BOOK</c>: the main job.</summary>
internal static class FillCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = FillWords.Book };
        var to = new Option<string?>("--out") { Description = FillWords.Out, HelpName = "PATH" };
        var night = new Option<string?>("--night") { Description = FillWords.Night, HelpName = "NIGHT" };
        var start = new Option<string?>("--start") { Description = FillWords.Start, HelpName = "HOUR" };
        var pourAt = new Option<string?>("--pour-at") { Description = FillWords.PourAt, HelpName = "HOUR" };
        var calendar = new Option<string?>("--calendar") { Description = FillWords.Calendar, HelpName = "PATH" };
        var log = new Option<string?>("--kiln-log") { Description = FillWords.KilnLog, HelpName = "LOG" };
        var inHand = new Option<bool>("--metal-in-hand") { Description = FillWords.MetalInHand };
        var dryRun = new Option<bool>("--dry-run") { Description = FillWords.DryRun };
        var json = new Option<bool>("--json") { Description = FillWords.Json };
        var strict = new Option<bool>("--strict") { Description = FillWords.Strict };
        var brief = new Option<bool>("--brief") { Description = FillWords.Brief };
        var undo = new Option<bool>("--undo") { Description = FillWords.Undo };
        var command = new Command("fill", FillWords.Command)
        {
            book, to, night, start, pourAt, calendar, log, inHand, dryRun, json, strict, brief, undo,
        };
        command.SetAction(parsed => (parsed.GetValue(undo) ? (Func<Request, TextWriter, TextWriter, TimeProvider, int>)Undo : Run)(
            new Request(
                parsed.GetValue(book)!, parsed.GetValue(to), parsed.GetValue(night), parsed.GetValue(start), parsed.GetValue(pourAt), parsed.GetValue(calendar),
                parsed.GetValue(log), parsed.GetValue(inHand), parsed.GetValue(dryRun), parsed.GetValue(json), parsed.GetValue(strict), parsed.GetValue(brief)),
            output,
            errors,
            clock));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if ((MistakeIn(request) ?? ClockOption.Mistake(request.Start, request.PourAt, clock.LocalTimeZone) ?? CalendarFile.Mistake(request.Calendar)) is { } mistake)
        {
            errors.WriteLine(ProgramWords.Complaint(mistake));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            using var watch = new SearchWatch(Console.IsErrorRedirected ? null : errors, clock);
            watch.Read(request.Book);
            var settings = SettingsAround.Of(request.Book, clock) with
            {
                Search = watch.Search,
                Night = string.IsNullOrWhiteSpace(request.Night) ? null : request.Night,
                MetalInHandOnly = request.MetalInHand,
                Clock = ClockOption.Read(request.Start, request.PourAt, clock.LocalTimeZone),
                Hour = ClockOption.Either(request.Start, request.PourAt),
                Log = request.Log is { } log ? KilnLogReader.Read(log, column: null, clock.LocalTimeZone).Log : null,
            };
            var isText = TextFile.Is(request.Book);
            var (result, backup) = isText
                ? (TextFile.Fill(request.Book, request.To, request.DryRun, settings, clock), null)
                : BookFile.Fill(request.Book, request.To, request.DryRun, settings, clock);
            Tell(isText ? request with { To = request.To ?? TextFile.BookBeside(request.Book) } : request, result, backup, output);
            if (request is { Calendar: { } calendar, DryRun: false } && !WroteCalendar(calendar, request, result, clock, request.Json ? errors : output, errors))
            {
                return ExitCode.NotWritten;
            }

            return request.Strict && result.Findings.Any(f => f.Severity == Severity.Stop) ? ExitCode.Stops : ExitCode.Filled;
        });
    }

    // The book is filled already, and stays so.
    private static bool WroteCalendar(string calendar, Request request, FillResult result, TimeProvider clock, TextWriter notes, TextWriter errors)
    {
        try
        {
            notes.WriteLine(CalendarFile.Write(calendar, result.Plan, Path.GetFileName(request.Book), result.Night.Shop.Settings, clock.GetUtcNow()));
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(ProgramWords.Complaint(CalendarWords.NotWritten(calendar, e.Message)));
            return false;
        }
    }

    private static int Undo(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var mistake = MistakeIn(request) ?? (request.Json ? FillWords.UndoWithoutJson : null);
        if (mistake is not null)
        {
            errors.WriteLine(ProgramWords.Complaint(mistake));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            var (result, backup) = BookFile.Undo(request.Book, request.To, request.DryRun, clock, SettingsAround.Of(request.Book, clock).Caps);
            foreach (var line in UndoSummary.Lines(Path.GetFileName(request.Book), result))
            {
                output.WriteLine(line);
            }

            output.WriteLine(LastLine(request, backup, FillWords.UndoneTo, FillWords.UndoneInPlace));
            return ExitCode.Filled;
        });
    }

    /// <summary>What is wrong with the paths; null where nothing is.</summary>
    private static string? MistakeIn(Request request)
    {
        if (!File.Exists(request.Book))
        {
            return SharedWords.NoBook(request.Book);
        }

        if (request.Log is { } log && !File.Exists(log))
        {
            return SharedWords.NoLog(log);
        }

        if (request.To is not { } to)
        {
            return null;
        }

        if (to.Length == 0 || Directory.Exists(to))
        {
            return FillWords.OutIsNoFile(to);
        }

        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(to))))
        {
            return SharedWords.NoFolderFor(to, "--out");
        }

        // Filling does not turn one kind of workbook into another, and office programs refuse a wrong extension. A file
        // that is no workbook at all gets its own sentence when it is read.
        var extension = TextFile.Is(request.Book) ? ".xlsx" : Path.GetExtension(request.Book);
        return !extension.StartsWith(".xls", StringComparison.OrdinalIgnoreCase) || Path.GetExtension(to).Equals(extension, StringComparison.OrdinalIgnoreCase)
            ? null
            : FillWords.OutMustEndIn(to, extension);
    }

    private static void Tell(Request request, FillResult result, string? backup, TextWriter output)
    {
        if (request.Json)
        {
            output.WriteLine(FillAnswerJson.Write(result));
            return;
        }

        var name = Path.GetFileName(request.To ?? request.Book);
        foreach (var line in request.Brief ? Summary.Brief(name, result) : Summary.Lines(name, result))
        {
            output.WriteLine(line);
        }

        if (!request.Brief)
        {
            output.WriteLine(LastLine(request, backup, FillWords.FilledTo, FillWords.FilledInPlace));
        }
    }

    /// <summary>Where the file is now.</summary>
    private static string LastLine(Request request, string? backup, Func<string, string> to, Func<string, string> inPlace) => request switch
    {
        { DryRun: true } => FillWords.WroteNothing,
        { To: { } path } => to(path),
        _ when backup is not null => inPlace(Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(request.Book))!, backup)),
        _ => FillWords.Unchanged,
    };

    private sealed record Request(
        string Book, string? To, string? Night, string? Start, string? PourAt, string? Calendar, string? Log,
        bool MetalInHand, bool DryRun, bool Json, bool Strict, bool Brief);
}
