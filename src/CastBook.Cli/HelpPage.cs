using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using CastBook.Cli.Words;

namespace CastBook.Cli;

/// <summary>Help that fits a screen: of the program a line a command, of a command all there is.</summary>
internal sealed class HelpPage : SynchronousCommandLineAction
{
    /// <summary>The narrowest terminal in use.</summary>
    public const int Width = 80;

    private readonly HelpAction ofCommand = new() { MaxWidth = Width };

    /// <summary>Whether help is given for a command line that lacks something: it is what people ask for then.</summary>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        ArgumentNullException.ThrowIfNull(parseResult);
        if (parseResult.CommandResult.Command is not RootCommand root)
        {
            return ofCommand.Invoke(parseResult);
        }

        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine(root.Description);
        output.WriteLine();
        var commands = root.Subcommands.Where(c => !c.Hidden).ToList();
        var longest = commands.Max(c => c.Name.Length);
        foreach (var command in commands)
        {
            output.WriteLine($"  {command.Name.PadRight(longest)}  {command.Description!.Split('\n')[0]}");
        }

        output.WriteLine();
        output.WriteLine(ProgramWords.Example);
        output.WriteLine(ProgramWords.HelpOfCommands);
        return ExitCode.Filled;
    }
}
