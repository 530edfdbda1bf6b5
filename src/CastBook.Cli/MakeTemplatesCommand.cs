using System.CommandLine;
using CastBook.Cli.Words;
using CastBook.Templates;

namespace CastBook.Cli;

/// <summary><c>castbook make-templates FOLDER</c>: writes the repository's templates anew. Not shown in the help: it is for developers.</summary>
internal static class MakeTemplatesCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    public static Command Make(TextWriter output)
    {
        var folder = new Argument<string>("FOLDER") { Description = ProgramWords.TemplatesFolder };
        var command = new Command("make-templates", ProgramWords.Templates) { folder };
        command.Hidden = true;
        command.SetAction(parsed =>
        {
            TemplateMaker.MakeAll(parsed.GetValue(folder)!);
            output.WriteLine(ProgramWords.TemplatesWritten(parsed.GetValue(folder)!));
            return ExitCode.Filled;
        });
        return command;
    }
}
