using System.CommandLine;
using System.Text.Json;
using CastBook.Cli.Adopting;
using CastBook.Cli.Words;
using CastBook.Planning.Findings;
using CastBook.Templates;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Settings;

namespace CastBook.Cli;

/// <summary><c>castbook adopt BOOK</c>: a first talk with a book of the shop's own.</summary>
internal static class AdoptCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = AdoptWords.Book };
        var sheet = new Option<bool>("--sheet") { Description = AdoptWords.Sheet };
        var command = new Command(
            "adopt",
            AdoptWords.Command)
        {
            book, sheet,
        };
        command.SetAction(parsed => Run(
            parsed.GetValue(book)!, parsed.GetValue(sheet) || Console.IsInputRedirected ? null : Console.In, output, errors, clock));
        return command;
    }

    /// <summary>Talks about a book.</summary>
    /// <param name="book">The workbook.</param>
    /// <param name="input">Where answers are typed; missing where nobody can, and a shop file is made to fill in.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    internal static int Run(string book, TextReader? input, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (!File.Exists(book))
        {
            errors.WriteLine(ProgramWords.Complaint(SharedWords.NoBook(book)));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            var settings = SettingsAround.Of(book, clock);
            var look = BookLook.At(book, settings);
            ColumnTalk.Tell(Path.GetFileName(book), look, output);
            try
            {
                Write(book, look, settings, input is null ? null : new Prompt(input, output), output, clock);
                output.WriteLine(AdoptWords.FillNext(Path.GetFileName(book)));
                return ExitCode.Filled;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
            {
                errors.WriteLine(ProgramWords.Complaint(AdoptWords.NotWritten(e.Message)));
                return ExitCode.NotWritten;
            }
        });
    }

    private static void Write(string book, BookLook look, BookSettings settings, Prompt? prompt, TextWriter output, TimeProvider clock)
    {
        var headings = prompt is null ? [] : ColumnTalk.Ask(prompt, look, settings.Columns);
        var files = new AdoptedFiles(Path.GetDirectoryName(Path.GetFullPath(book))!, output, clock);
        var answers = new ShopAnswers();
        string? shop = null;
        if (prompt is null)
        {
            shop = WriteQuestions(look, settings, files, answers, output);
        }
        else
        {
            look = headings.Count == 0 ? look : BookLook.At(book, settings with { Columns = ColumnTalk.With(headings, settings.Columns) });
            answers = new ShopTalk(prompt, look, headings.ContainsKey(PieceField.PatternMass)).Ask();
            if (!answers.IsEmpty && settings.ShopFile is { } known)
            {
                files.ChangeShop(known, answers);
            }
            else if (!answers.IsEmpty)
            {
                shop = files.WriteShop(made => StarterBooks.WriteShop(made, answers, look.Units));
            }
        }

        if (shop is not null || headings.Count > 0)
        {
            files.WriteSettings(shop, headings);
        }
        else if (prompt is not null && answers.IsEmpty)
        {
            output.WriteLine(look.File is null ? AdoptWords.NothingAnswered : AdoptWords.NothingChanged);
        }
    }

    private static string? WriteQuestions(BookLook look, BookSettings settings, AdoptedFiles files, ShopAnswers answers, TextWriter output)
    {
        if (settings.ShopFile is { } known)
        {
            output.WriteLine(AdoptWords.IsShopFile(Path.GetFileName(known)));
            return null;
        }

        var open = ShopTalk.Open(look);
        if (open.IsEmpty)
        {
            output.WriteLine(AdoptWords.NothingOpen);
            return null;
        }

        NamedLines.Add(look, answers);
        return files.WriteShop(made => StarterBooks.WriteQuestions(made, answers, open, look.Units));
    }
}
