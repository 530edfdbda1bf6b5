using System.CommandLine;
using CastBook.Cli.Words;
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
        var book = new Argument<string>("BOOK") { Description = RestoreWords.Book };
        var number = new Argument<int?>("NUMBER") { Description = RestoreWords.Number, Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("restore", RestoreWords.Command) { book, number };
        command.SetAction(parsed => Run(parsed.GetValue(book)!, parsed.GetValue(number), output, errors, clock));
        return command;
    }

    private static int Run(string book, int? number, TextWriter output, TextWriter errors, TimeProvider clock) => Guarded.Run(errors, () =>
    {
        var name = Path.GetFileName(book);
        var backups = BookFile.BackupsOf(book);
        if (backups.Count == 0)
        {
            errors.WriteLine(ProgramWords.Complaint(RestoreWords.NoBackup(book)));
            return ExitCode.Usage;
        }

        if (number is not { } wanted)
        {
            output.WriteLine(RestoreWords.Backups(name, backups.Count));
            for (var i = 0; i < backups.Count; i++)
            {
                output.WriteLine(RestoreWords.Backup(i + 1, backups[i].Made, Math.Max(1, backups[i].Length / 1000)));
            }

            output.WriteLine(RestoreWords.HowToPutBack(book));
            return ExitCode.Filled;
        }

        var (restored, backup) = BookFile.Restore(book, wanted, clock);
        output.WriteLine(RestoreWords.PutBack(name, restored.Made));
        output.WriteLine(backup is null ? RestoreWords.NothingStoodThere : RestoreWords.KeptAsFirst(Path.Combine(BookFile.BackupFolder, Path.GetFileName(backup))));
        return ExitCode.Filled;
    });
}
