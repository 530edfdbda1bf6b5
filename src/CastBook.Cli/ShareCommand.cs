using System.CommandLine;
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
        var book = new Argument<string>("BOOK") { Description = "The workbook (.xlsx or .xlsm). It is only read." };
        var to = new Option<string>("--out") { Description = "Write the template here; no file may stand there yet.", HelpName = "TEMPLATE", Required = true };
        var keep = new Option<string[]>("--keep") { Description = "Keep this sheet too, with all in it; may be given again.", HelpName = "SHEET", DefaultValueFactory = _ => [] };
        var command = new Command(
            "share",
            "Make a template for others of a workbook.\nIts headings, formats, lists and settings stay; rows, customers, prices, stock,\nnotes, names, macros and all else go. It says what it kept and what it left out.\n\nExample: castbook share harbour-night.xlsx --out our-template.xlsx")
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
            errors.WriteLine($"castbook: {mistake}");
            return ExitCode.Usage;
        }

        return FillCommand.Guarded(errors, () =>
        {
            Tell(book, to, BookFile.Share(book, to, new ShareWishes(keep, StarterTexts.All), SettingsAround.Of(book, clock), clock), output);
            return ExitCode.Filled;
        });
    }

    private static string? MistakeIn(string book, string to) =>
        !File.Exists(book) ? $"there is no file '{book}'. Type the workbook's path, in quotes if it has blanks."
        : TextFile.Is(book) ? $"'{book}' is a list as text and holds nothing but rows. Fill it, then share the workbook it becomes."
        : !string.Equals(Path.GetExtension(to), Extension, StringComparison.OrdinalIgnoreCase) ? $"a template has no macros: type a name that ends in {Extension} after --out."
        : null;

    private static void Tell(string book, string to, ShareResult result, TextWriter output)
    {
        output.WriteLine($"{Path.GetFileName(to)}: a template made of {Path.GetFileName(book)}, which is as it was");
        Tell("kept", result.Kept, output);
        Tell("left out", result.Removed, output);
        Tell("left out sheet", result.LeftSheets, output);
        if (result.LeftSheets.Count > 0)
        {
            output.WriteLine("a sheet that may be passed on with all that stands in it: --keep and its name");
        }

        if (result.Words.Count > 0)
        {
            output.WriteLine($"left out  your own words for headings; whoever uses it needs them in a castbook.json beside it: {SettingsFile.NamingHeadings(result.Words)}");
        }

        if (result.UnknownHeadings.Count > 0)
        {
            output.WriteLine($"read these headings through, only you know what they mean: {string.Join(", ", result.UnknownHeadings.Select(h => $"\"{h}\""))}");
        }
    }

    private static void Tell(string what, IReadOnlyList<string> lines, TextWriter output)
    {
        foreach (var line in lines)
        {
            output.WriteLine($"{what}  {line}");
        }
    }
}
