using System.CommandLine;

namespace CastBook.Cli;

/// <summary><c>castbook shortcut BOOK</c>: a file to double-click that fills the book.</summary>
internal static class ShortcutCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var book = new Argument<string>("BOOK") { Description = "The workbook." };
        var system = new Option<string>("--for") { Description = "windows, macos or linux.", HelpName = "SYSTEM", DefaultValueFactory = _ => ShortcutFile.ThisSystem };
        system.AcceptOnlyFromAmong([.. ShortcutFile.Systems]);
        var command = new Command("shortcut", "Write a file to double-click that fills a workbook.\nIts window stays open where something says stop.\n\nExample: castbook shortcut harbour-night.xlsx") { book, system };
        command.SetAction(parsed => Run(parsed.GetValue(book)!, parsed.GetValue(system)!, output, errors));
        return command;
    }

    private static int Run(string book, string system, TextWriter output, TextWriter errors)
    {
        if (!File.Exists(book))
        {
            errors.WriteLine($"castbook: there is no file '{book}'. Type the workbook's path, in quotes if it has blanks.");
            return ExitCode.Usage;
        }

        try
        {
            var written = ShortcutFile.Write(Path.GetFullPath(book), system, ShortcutFile.ThisProgram);
            output.WriteLine($"double-click to fill {Path.GetFileName(book)}: {string.Join(" or ", written.Select(Path.GetFileName))}");
            if (system != ShortcutFile.ThisSystem)
            {
                output.WriteLine("It names the book and the program where they lie on this computer; make it anew on the other.");
            }

            return ExitCode.Filled;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"castbook: the shortcut could not be written: {e.Message}");
            return ExitCode.NotWritten;
        }
    }
}
