using System.CommandLine;
using CastBook.Templates;

namespace CastBook.Cli;

/// <summary><c>castbook make-templates FOLDER</c>: writes the repository's templates anew. Not shown in the help: it is for developers.</summary>
internal static class MakeTemplatesCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    public static Command Make(TextWriter output)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder templates." };
        var command = new Command("make-templates", "Write the templates anew.") { folder };
        command.Hidden = true;
        command.SetAction(parsed =>
        {
            TemplateMaker.MakeAll(parsed.GetValue(folder)!);
            output.WriteLine($"templates written to {parsed.GetValue(folder)}");
            return ExitCode.Filled;
        });
        return command;
    }
}
