using System.CommandLine;
using CastBook.Cli.Words;

namespace CastBook.Cli;

/// <summary><c>castbook completion SHELL</c>: a short script by which a shell completes CastBook's words, asking CastBook itself.</summary>
internal static class CompletionCommand
{
    private static readonly Dictionary<string, string> Scripts = new(StringComparer.Ordinal)
    {
        ["bash"] =
            """
            _castbook() {
                local IFS=$'\n'
                COMPREPLY=($(compgen -W "$(castbook "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
            }
            complete -o default -F _castbook castbook
            """,
        ["zsh"] =
            """
            _castbook() {
                local line="${(j: :)words[1,CURRENT]}"
                local words_offered=("${(@f)$(castbook "[suggest:${#line}]" "$line" 2>/dev/null)}")
                words_offered=(${words_offered:#})
                if (( $#words_offered )); then compadd -a words_offered; else _files; fi
            }
            compdef _castbook castbook
            """,
        ["fish"] =
            """
            complete -c castbook -a '(set -l line (commandline -cp); castbook "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null)'
            """,
        ["pwsh"] =
            """
            Register-ArgumentCompleter -Native -CommandName castbook -ScriptBlock {
                param($word, $line, $position)
                castbook "[suggest:$position]" "$line" 2>$null | Where-Object { $_ -like "$word*" } |
                    ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
            }
            """,
    };

    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    public static Command Make(TextWriter output)
    {
        var shell = new Argument<string>("SHELL") { Description = ProgramWords.CompletionShell, HelpName = "SHELL" };
        shell.AcceptOnlyFromAmong([.. Scripts.Keys]);
        var command = new Command(
            "completion",
            ProgramWords.Completion)
        {
            shell,
        };
        command.SetAction(parsed =>
        {
            output.WriteLine(Scripts[parsed.GetValue(shell)!]);
            return ExitCode.Filled;
        });
        return command;
    }
}
