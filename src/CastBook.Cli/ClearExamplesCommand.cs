using System.CommandLine;
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
        var book = new Argument<string>("BOOK") { Description = "The workbook, made by castbook new. A backup goes into the folder .castbook beside it." };
        var command = new Command(
            "clear-examples",
            "Empty the example rows of a new workbook.\nA row that you changed stays.\n\nExample: castbook clear-examples casting-night.xlsx")
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
            errors.WriteLine($"castbook: there is no file '{book}'. Type the workbook's path, in quotes if it has blanks.");
            return ExitCode.Usage;
        }

        return FillCommand.Guarded(errors, () =>
        {
            var (rows, backup) = BookFile.Clear(book, StarterBooks.ExampleRows, clock);
            output.WriteLine($"{Path.GetFileName(book)}: {(rows.Cleared.Count == 0 ? "no example rows to take out" : $"example rows taken out: {Counts(rows.Cleared)}")}");
            if (rows.Kept.Count > 0)
            {
                output.WriteLine($"left, because something in them was changed: {Counts(rows.Kept)}");
            }

            if (backup is not null)
            {
                output.WriteLine($"the book as it was: .castbook/{Path.GetFileName(backup)}");
            }

            return ExitCode.Filled;
        });
    }

    private static string Counts(IReadOnlyList<(string Sheet, int Count)> rows) => string.Join(", ", rows.Select(r => $"{r.Sheet} {r.Count}"));
}
