using System.CommandLine;
using CastBook.Cli.Words;
using CastBook.Templates;
using CastBook.Workbooks.Files;

namespace CastBook.Cli;

/// <summary><c>castbook clear-examples BOOK</c>: empties the example rows of a new book that nobody changed.</summary>
internal static class ClearExamplesCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = NewWords.ClearBook };
        var command = new Command(
            "clear-examples",
            NewWords.ClearCommand)
        {
            book,
        };
        command.SetAction(parsed => Run(parsed.GetValue(book)!, output, errors, clock));
        return command;
    }

    private static int Run(string book, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (!File.Exists(book))
        {
            errors.WriteLine(ProgramWords.Complaint(SharedWords.NoBook(book)));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            var (rows, backup) = BookFile.Clear(book, StarterBooks.ExampleRows, clock);
            output.WriteLine(rows.Cleared.Count == 0 ? NewWords.NothingToClear(Path.GetFileName(book)) : NewWords.Cleared(Path.GetFileName(book), Counts(rows.Cleared)));
            if (rows.Kept.Count > 0)
            {
                output.WriteLine(NewWords.Kept(Counts(rows.Kept)));
            }

            if (backup is not null)
            {
                output.WriteLine(NewWords.Backup(Path.GetFileName(backup)));
            }

            return ExitCode.Filled;
        });
    }

    private static IEnumerable<string> Counts(IReadOnlyList<(string Sheet, int Count)> rows) => rows.Select(r => $"{r.Sheet} {r.Count}");
}
