using System.CommandLine;
using System.Globalization;
using CastBook.Workbooks.Files;

namespace CastBook.Cli;

/// <summary><c>castbook restore BOOK</c>: the backups of a book, and one of them put back.</summary>
internal static class RestoreCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = "The workbook; it may be gone itself." };
        var number = new Argument<int?>("NUMBER") { Description = "Which backup to put back; without it they are listed.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("restore", "List the backups of a workbook, or put one back in its place.\nWhat stands there becomes a backup first, so nothing is lost.\n\nExample: castbook restore harbour-night.xlsx 1") { book, number };
        command.SetAction(parsed => Run(parsed.GetValue(book)!, parsed.GetValue(number), output, errors, clock));
        return command;
    }

    private static int Run(string book, int? number, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var name = Path.GetFileName(book);
        var backups = BookFile.BackupsOf(book);
        if (backups.Count == 0)
        {
            errors.WriteLine($"castbook: there is no backup of '{book}'. Backups lie in the folder .castbook beside a workbook that was filled in place.");
            return ExitCode.Usage;
        }

        if (number is not { } wanted)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {backups.Count} {(backups.Count == 1 ? "backup" : "backups")}, the newest first"));
            for (var i = 0; i < backups.Count; i++)
            {
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i + 1,4}  {backups[i].Made:yyyy-MM-dd HH:mm:ss}  {Math.Max(1, backups[i].Length / 1000),6} kB"));
            }

            return ExitCode.Filled;
        }

        try
        {
            var (restored, backup) = BookFile.Restore(book, wanted, clock);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} is again what it was on {restored.Made:yyyy-MM-dd} at {restored.Made:HH:mm:ss}"));
            output.WriteLine(backup is null ? "there was no file in its place" : $"what stood there is backup 1 now: {Path.Combine(".castbook", Path.GetFileName(backup))}");
            return ExitCode.Filled;
        }
        catch (BookNotWrittenException e)
        {
            errors.WriteLine($"castbook: {e.Message}");
            return ExitCode.NotWritten;
        }
    }
}
