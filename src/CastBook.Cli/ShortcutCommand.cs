using System.CommandLine;
using CastBook.Cli.Words;

namespace CastBook.Cli;

/// <summary><c>castbook shortcut BOOK</c>: a file to double-click that fills the book.</summary>
internal static class ShortcutCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var book = new Argument<string>("BOOK") { Description = ShortcutWords.Book };
        var system = new Option<string>("--for") { Description = ShortcutWords.ForSystem, HelpName = "SYSTEM", DefaultValueFactory = _ => ShortcutFile.ThisSystem };
        system.AcceptOnlyFromAmong([.. ShortcutFile.Systems]);
        var command = new Command("shortcut", ShortcutWords.Command) { book, system };
        command.SetAction(parsed => Run(parsed.GetValue(book)!, parsed.GetValue(system)!, output, errors));
        return command;
    }

    private static int Run(string book, string system, TextWriter output, TextWriter errors)
    {
        if (!File.Exists(book))
        {
            errors.WriteLine(ProgramWords.Complaint(SharedWords.NoBook(book)));
            return ExitCode.Usage;
        }

        try
        {
            var written = ShortcutFile.Write(Path.GetFullPath(book), system, ShortcutFile.ThisProgram);
            output.WriteLine(ShortcutWords.Written(Path.GetFileName(book), written.Select(f => Path.GetFileName(f))));
            if (system != ShortcutFile.ThisSystem)
            {
                output.WriteLine(ShortcutWords.OnlyThere);
            }

            return ExitCode.Filled;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(ProgramWords.Complaint(ShortcutWords.NotWritten(e.Message)));
            return ExitCode.NotWritten;
        }
    }
}
