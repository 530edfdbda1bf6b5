using System.Text.RegularExpressions;

namespace CastBook.Cli.Tests;

/// <summary>What the README shows is what the program does.</summary>
public sealed partial class ReadmeTests
{
    internal static readonly string Repository = Up(AppContext.BaseDirectory);

    /// <summary>The demo night that the README fills.</summary>
    internal static string DemoNight => Path.Combine(Repository, "templates", "wrenmoor-night", "wrenmoor-night.xlsx");

    [Fact]
    public void MainCommand_FillsACopyOfTheDemoAndPrintsWhatTheReadmeShows()
    {
        var blocks = CodeBlock().Matches(File.ReadAllText(Path.Combine(Repository, "README.md"))).Select(m => m.Groups[1].Value.Trim()).ToList();
        var command = blocks.Single(b => b.Contains(" fill templates/", StringComparison.Ordinal));
        var shown = blocks[blocks.IndexOf(command) + 1];
        var folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            var words = command[(command.IndexOf(" -- ", StringComparison.Ordinal) + 4)..].Split(' ')
                .Select(w => w.StartsWith("templates/", StringComparison.Ordinal) ? Path.Combine(Repository, w) : w);

            var run = CastBookRun.In(folder, [.. words]);

            run.ExitCode.ShouldBe(0, run.Errors);
            run.Output.ReplaceLineEndings("\n").ShouldStartWith(shown.ReplaceLineEndings("\n"));
            File.Exists(Path.Combine(folder, "my-night.xlsx")).ShouldBeTrue();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Explain_TellsWhatTheReadmeShows()
    {
        var blocks = CodeBlock().Matches(File.ReadAllText(Path.Combine(Repository, "README.md"))).Select(m => m.Groups[1].Value.Trim()).ToList();
        var at = blocks.FindIndex(b => b.StartsWith("castbook explain ", StringComparison.Ordinal));
        var cell = blocks[at].Split('"')[1];

        var run = CastBookRun.In(Repository, ["explain", DemoNight, cell]);

        run.ExitCode.ShouldBe(0, run.Errors);
        run.Output.ReplaceLineEndings("\n").ShouldStartWith(blocks[at + 1].ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Options_OfTheReadme_AreThoseOfTheHelp()
    {
        var readme = Option().Matches(File.ReadAllText(Path.Combine(Repository, "README.md"))).Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal);
        var help = CastBookRun.In(Repository, ["fill", "--help"]).Output;

        readme.ShouldBe(HelpOption().Matches(help).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal));
    }

    private static string Up(string folder) =>
        File.Exists(Path.Combine(folder, "CastBook.sln")) ? folder : Up(Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar))!);

    [GeneratedRegex("```\\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex("^\\| `(--[a-z-]+)", RegexOptions.Multiline)]
    private static partial Regex Option();

    [GeneratedRegex("--[a-z-]+")]
    private static partial Regex HelpOption();
}
