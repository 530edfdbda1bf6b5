using System.CommandLine;
using CastBook.Cli.Words;
using CastBook.Templates;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sharing;

namespace CastBook.Cli;

/// <summary><c>castbook share BOOK --out TEMPLATE</c>: a template for others of a shop's own book.</summary>
internal static class ShareCommand
{
    private const string Extension = ".xlsx";

    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = SharedWords.BookOnlyRead };
        var to = new Option<string>("--out") { Description = ShareWords.Out, HelpName = "TEMPLATE", Required = true };
        var keep = new Option<string[]>("--keep") { Description = ShareWords.Keep, HelpName = "SHEET", DefaultValueFactory = _ => [] };
        var command = new Command(
            "share",
            ShareWords.Command)
        {
            book, to, keep,
        };
        command.SetAction(parsed => Run(parsed.GetValue(book)!, parsed.GetValue(to)!, parsed.GetValue(keep)!, output, errors, clock));
        return command;
    }

    private static int Run(string book, string to, string[] keep, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (MistakeIn(book, to) is { } mistake)
        {
            errors.WriteLine(ProgramWords.Complaint(mistake));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            Tell(book, to, BookFile.Share(book, to, new ShareWishes(keep, StarterTexts.All), SettingsAround.Of(book, clock), clock), output);
            return ExitCode.Filled;
        });
    }

    private static string? MistakeIn(string book, string to) =>
        !File.Exists(book) ? SharedWords.NoBook(book)
        : TextFile.Is(book) ? ShareWords.IsText(book)
        : !string.Equals(Path.GetExtension(to), Extension, StringComparison.OrdinalIgnoreCase) ? ShareWords.NoMacros(Extension)
        : null;

    private static void Tell(string book, string to, ShareResult result, TextWriter output)
    {
        output.WriteLine(ShareWords.Made(Path.GetFileName(to), Path.GetFileName(book)));
        foreach (var line in result.Kept.Select(ShareWords.Kept).Concat(result.Removed.Select(ShareWords.LeftOut)).Concat(result.LeftSheets.Select(ShareWords.LeftOutSheet)))
        {
            output.WriteLine(line);
        }

        if (result.LeftSheets.Count > 0)
        {
            output.WriteLine(ShareWords.HowToKeep);
        }

        if (result.Words.Count > 0)
        {
            output.WriteLine(ShareWords.LeftOutWords(SettingsFile.NamingHeadings(result.Words)));
        }

        if (result.UnknownHeadings.Count > 0)
        {
            output.WriteLine(ShareWords.ReadHeadings(result.UnknownHeadings));
        }
    }
}
