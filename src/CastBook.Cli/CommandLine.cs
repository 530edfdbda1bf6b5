using System.CommandLine;
using System.CommandLine.Help;
using CastBook.Cli.Words;

namespace CastBook.Cli;

/// <summary>The commands and how words on the command line become one of them.</summary>
internal static class CommandLine
{
    /// <summary>Runs a command line.</summary>
    /// <param name="arguments">The words.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] arguments, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var root = Root(arguments, output, errors, clock);
        if (Meant(arguments, root) is not { } words)
        {
            errors.WriteLine(ProgramWords.Complaint(ProgramWords.NoCommand(arguments[0], root.Subcommands.Where(c => !c.Hidden).Select(c => c.Name))));
            return ExitCode.Usage;
        }

        var parsed = root.Parse(words);
        if (parsed.Errors.Count > 0)
        {
            foreach (var mistake in CommandMistakes.Of(parsed, words))
            {
                errors.WriteLine(ProgramWords.Complaint(mistake));
            }

            errors.WriteLine(ProgramWords.Complaint(ProgramWords.SeeHelp(parsed.CommandResult.Command == root ? "fill" : parsed.CommandResult.Command.Name)));
            return ExitCode.Usage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false });
        }
#pragma warning disable CA1031 // Do not catch general exception types: the outermost place, and its own code would read as "something says stop".
        catch (Exception e)
#pragma warning restore CA1031
        {
            errors.WriteLine(ProgramWords.Complaint(ProgramWords.Bug($"{e}")));
            return ExitCode.NotWritten;
        }
    }

    private static RootCommand Root(string[] arguments, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var root = new RootCommand(ProgramWords.Program)
        {
            FillCommand.Make(output, errors, clock),
            ExplainCommand.Make(output, errors, clock),
            WatchCommand.Make(output, errors, clock),
            KilnLogCommand.Make(output, errors, clock),
            StatusCommand.Make(output, errors, clock),
            RestoreCommand.Make(output, errors, clock),
            ShareCommand.Make(output, errors, clock),
            ShortcutCommand.Make(output, errors),
            NewCommand.Make(output, errors),
            AdoptCommand.Make(output, errors, clock),
            ClearExamplesCommand.Make(output, errors, clock),
            CompletionCommand.Make(output),
            MakeTemplatesCommand.Make(output),
        };
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpPage();
        if (arguments.Length > 0 && IsOfShell(arguments[0]))
        {
            // The words of Windows are understood, and offered by no shell.
            foreach (var word in help.Aliases.Where(a => a.StartsWith('/')).ToList())
            {
                help.Aliases.Remove(word);
            }
        }

        return root;
    }

    /// <summary>The words as a command: nothing asks for help, and a file alone is filled. Null where the first word is neither a command nor a file.</summary>
    private static string[]? Meant(string[] arguments, RootCommand root) => arguments switch
    {
        [] => ["--help"],
        ["help", .. var about] => [.. about.Take(1), "--help"],
        [var first, ..] when !IsBarePath(first, root) => arguments,
        [var first, ..] => Path.HasExtension(first) || Path.Exists(first) ? ["fill", .. arguments] : null,
    };

    /// <summary>A file dropped on the program: the first word is no command, no option and no question of a shell that completes words.</summary>
    private static bool IsBarePath(string word, RootCommand root) =>
        !word.StartsWith('-') && !IsOfShell(word) && !root.Subcommands.Any(c => c.Name == word);

    private static bool IsOfShell(string word) => word.StartsWith("[suggest", StringComparison.Ordinal);
}
