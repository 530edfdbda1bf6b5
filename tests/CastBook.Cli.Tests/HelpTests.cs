namespace CastBook.Cli.Tests;

public sealed class HelpTests
{
    private static readonly Lazy<string[]> Names = new(() =>
        [.. Help().Split('\n').Where(l => l.StartsWith("  ", StringComparison.Ordinal)).Select(l => l.Trim().Split(' ')[0])]);

    [Fact]
    public void NoArguments_PrintTheHelp()
    {
        Help().ShouldBe(Help("--help"));
        Help("help").ShouldBe(Help("--help"));
        Help("help", "fill").ShouldBe(Help("fill", "--help"));
        Names.Value.ShouldContain("fill");
        Names.Value.ShouldNotContain("make-templates");
    }

    /// <summary>The smallest screen in use: 24 lines of 80.</summary>
    [Fact]
    public void Help_OfTheProgramAndEveryCommand_FitsAScreenAndHasAnExample()
    {
        Names.Value.Length.ShouldBeGreaterThan(8);
        foreach (var words in Names.Value.Select(n => new[] { n, "--help" }).Prepend(["--help"]))
        {
            var lines = Help(words).TrimEnd().Split('\n');

            lines.Length.ShouldBeLessThanOrEqualTo(24, words[0]);
            lines.ShouldAllBe(l => l.TrimEnd().Length <= 80, words[0]);
            lines.ShouldContain(l => l.Trim().StartsWith("Example: castbook ", StringComparison.Ordinal), words[0]);
        }
    }

    [Theory]
    [InlineData("castbook ", "fill")]
    [InlineData("castbook cle", "clear-examples")]
    [InlineData("castbook new ", "results")]
    [InlineData("castbook fill --dr", "--dry-run")]
    [InlineData("castbook shortcut a.xlsx --for ", "macos")]
    public void Suggest_ALineBegun_OffersTheRest(string line, string offered) =>
        Help($"[suggest:{line.Length}]", line).Split('\n').Select(l => l.TrimEnd()).ShouldContain(offered);

    [Theory]
    [InlineData("castbook ")]
    [InlineData("castbook fill ")]
    public void Suggest_WordsOfWindows_AreUnderstoodAndNotOffered(string line)
    {
        var offered = Help($"[suggest:{line.Length}]", line).Split('\n').Select(l => l.TrimEnd()).ToList();

        offered.ShouldContain("--help");
        offered.ShouldNotContain(l => l.StartsWith('/'));
        Help("fill", "/?").ShouldBe(Help("fill", "--help"));
    }

    [Theory]
    [InlineData("bash", "complete -o default -F _castbook castbook")]
    [InlineData("zsh", "compdef _castbook castbook")]
    [InlineData("fish", "complete -c castbook -a '(set -l line (commandline -cp); castbook \"[suggest:\"(string length -- \"$line\")\"]\" \"$line\" 2>/dev/null)'")]
    [InlineData("pwsh", "Register-ArgumentCompleter -Native -CommandName castbook -ScriptBlock {")]
    public void Completion_OfAShell_IsAScriptThatAsksCastBook(string shell, string line)
    {
        var script = Help("completion", shell).Split('\n').Select(l => l.TrimEnd()).ToList();

        script.ShouldContain(line);
        script.ShouldContain(l => l.Contains("[suggest:", StringComparison.Ordinal));
    }

    private static string Help(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        CommandLine.Run(words, output, errors, TimeProvider.System).ShouldBe(0, errors.ToString());
        return output.ToString();
    }
}
