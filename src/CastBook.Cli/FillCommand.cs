using System.CommandLine;
using CastBook.Planning.Findings;
using CastBook.Workbooks;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.KilnLogs;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Verifying;

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
        var book = new Argument<string>("BOOK") { Description = "The workbook (.xlsx, .xlsm), or a list as text (.csv, .tsv, .txt)." };
        var to = new Option<string?>("--out") { Description = "Write the filled workbook here and leave BOOK as it is.", HelpName = "PATH" };
        var night = new Option<string?>("--night") { Description = "Plan this night, written as in the Night column.", HelpName = "NIGHT" };
        var start = new Option<string?>("--start") { Description = "Weigh the first powder then, such as \"2026-11-25 20:00\".", HelpName = "HOUR" };
        var pourAt = new Option<string?>("--pour-at") { Description = "Pour the first flask then, and count every step back.", HelpName = "HOUR" };
        var calendar = new Option<string?>("--calendar") { Description = "Also write the steps as calendar events with alarms.", HelpName = "PATH" };
        var log = new Option<string?>("--kiln-log") { Description = "Lay the kiln's temperature log over the plan and its chart.", HelpName = "LOG" };
        var inHand = new Option<bool>("--metal-in-hand") { Description = "Plan no more than the metal in stock allows." };
        var dryRun = new Option<bool>("--dry-run") { Description = "Say what would be done and write nothing." };
        var json = new Option<bool>("--json") { Description = "Print the whole answer as JSON." };
        var strict = new Option<bool>("--strict") { Description = "Exit with 1 when something says stop." };
        var brief = new Option<bool>("--brief") { Description = "One line of what happened, and what says stop." };
        var undo = new Option<bool>("--undo") { Description = "Take everything of CastBook's out of BOOK again." };
        var command = new Command("fill", "Fill a workbook in place; a backup goes into .castbook.\nExample: castbook fill harbour-night.xlsx")
        {
            book, to, night, start, pourAt, calendar, log, inHand, dryRun, json, strict, brief, undo,
        };
        command.SetAction(parsed => (parsed.GetValue(undo) ? (Func<Request, TextWriter, TextWriter, TimeProvider, int>)Undo : Run)(
            new Request(parsed.GetValue(book)!, parsed.GetValue(to), parsed.GetValue(night), parsed.GetValue(start), parsed.GetValue(pourAt), parsed.GetValue(calendar), parsed.GetValue(log), parsed.GetValue(inHand), parsed.GetValue(dryRun), parsed.GetValue(json), parsed.GetValue(strict), parsed.GetValue(brief)),
            output,
            errors,
            clock));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if ((MistakeIn(request) ?? ClockOption.Mistake(request.Start, request.PourAt, clock.LocalTimeZone) ?? CalendarFile.Mistake(request.Calendar)) is { } mistake)
        {
            errors.WriteLine($"castbook: {mistake}");
            return ExitCode.Usage;
        }

        return Guarded(errors, () =>
        {
            using var watch = new SearchWatch(Console.IsErrorRedirected ? null : errors, clock);
            var settings = SettingsAround.Of(request.Book, clock) with
            {
                Search = watch.Search,
                Night = string.IsNullOrWhiteSpace(request.Night) ? null : request.Night,
                MetalInHandOnly = request.MetalInHand,
                Clock = ClockOption.Read(request.Start, request.PourAt, clock.LocalTimeZone),
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
            errors.WriteLine($"castbook: the workbook is filled, but the calendar '{calendar}' could not be written: {e.Message}");
            return false;
        }
    }

    private static int Undo(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var mistake = MistakeIn(request) ?? (request.Json ? "--undo has no answer as JSON; leave --json out." : null);
        if (mistake is not null)
        {
            errors.WriteLine($"castbook: {mistake}");
            return ExitCode.Usage;
        }

        return Guarded(errors, () =>
        {
            var (result, backup) = BookFile.Undo(request.Book, request.To, request.DryRun, clock, SettingsAround.Of(request.Book, clock).Caps);
            foreach (var line in UndoSummary.Lines(Path.GetFileName(request.Book), result))
            {
                output.WriteLine(line);
            }

            output.WriteLine(LastLine(request, "undone", backup));
            return ExitCode.Filled;
        });
    }

    /// <summary>Runs something that reads a workbook; what is wrong with it is said in one line.</summary>
    /// <param name="errors">Where it is said.</param>
    /// <param name="run">What to run.</param>
    internal static int Guarded(TextWriter errors, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (BookRefusedException e)
        {
            errors.WriteLine($"castbook: {e.Message}");
            return ExitCode.NotRead;
        }
        catch (Exception e) when (e is BookNotWrittenException or BrokenOutputException)
        {
            errors.WriteLine($"castbook: {e.Message}");
            return ExitCode.NotWritten;
        }
    }

    /// <summary>What is wrong with the paths; null where nothing is.</summary>
    private static string? MistakeIn(Request request)
    {
        if (!File.Exists(request.Book))
        {
            return $"there is no file '{request.Book}'. Type the workbook's path, in quotes if it has blanks.";
        }

        if (request.Log is { } log && !File.Exists(log))
        {
            return $"there is no file '{log}'. Type the log's path, in quotes if it has blanks.";
        }

        if (request.To is not { } to)
        {
            return null;
        }

        if (to.Length == 0 || Directory.Exists(to))
        {
            return $"'{to}' is no file. Type the path of the filled workbook after --out.";
        }

        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(to))))
        {
            return $"there is no folder for '{to}'.";
        }

        // Filling does not turn one kind of workbook into another, and office programs refuse a wrong extension. A file
        // that is no workbook at all gets its own sentence when it is read.
        var extension = TextFile.Is(request.Book) ? ".xlsx" : Path.GetExtension(request.Book);
        return !extension.StartsWith(".xls", StringComparison.OrdinalIgnoreCase) || Path.GetExtension(to).Equals(extension, StringComparison.OrdinalIgnoreCase)
            ? null
            : $"'{to}' must end in {extension}, as the workbook does.";
    }

    private static void Tell(Request request, FillResult result, string? backup, TextWriter output)
    {
        if (request.Json)
        {
            output.WriteLine(FillAnswerJson.Write(result));
            return;
        }

        var lines = Summary.Lines(Path.GetFileName(request.To ?? request.Book), result);
        foreach (var line in request.Brief ? lines.Take(1).Concat(lines.SkipWhile(l => !l.StartsWith("stop ", StringComparison.Ordinal))) : lines)
        {
            output.WriteLine(line);
        }

        if (!request.Brief)
        {
            output.WriteLine(LastLine(request, "filled", backup));
        }
    }

    /// <summary>Where the file is now.</summary>
    private static string LastLine(Request request, string done, string? backup) => request switch
    {
        { DryRun: true } => "dry run: nothing was written",
        { To: { } to } => $"{done}: {to}",
        _ when backup is not null => $"{done} in place; the book as it was: {Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(request.Book))!, backup)}",
        _ => "nothing had changed, so the file was left as it is",
    };

    private sealed record Request(string Book, string? To, string? Night, string? Start, string? PourAt, string? Calendar, string? Log, bool MetalInHand, bool DryRun, bool Json, bool Strict, bool Brief);
}
