using System.Globalization;
using System.Text.RegularExpressions;
using ClosedXML.Excel;

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
    public void Lines_BeforeAndAfter_AreThoseOfTheDemoFilled()
    {
        using var filled = new XLWorkbook(Path.Combine(Repository, "templates", "casting-night", "filled.xlsx"));
        var list = filled.Worksheet("Pieces");
        var headings = list.CellsUsed(c => c.GetString() == "Piece").First().WorksheetRow();
        var columns = headings.CellsUsed().ToDictionary(c => c.GetString(), c => c.Address.ColumnNumber);
        var section = Section().Match(File.ReadAllText(Path.Combine(Repository, "README.md"))).Value;

        string[] shown = [];
        var lines = 0;
        foreach (var cells in section.Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Select(l => l.Trim('|', '\r').Split('|', StringSplitOptions.TrimEntries)))
        {
            if (cells.Contains("…"))
            {
                shown = cells;
            }
            else if (!cells[0].StartsWith('-'))
            {
                var row = list.Column(columns["Piece"]).CellsUsed(c => c.GetString() == cells[0]).Single().WorksheetRow();
                foreach (var (heading, text) in shown.Zip(cells).Skip(1).Where(c => c.First != "…"))
                {
                    Shown(row.Cell(columns[heading]), text).ShouldBe(text, $"{cells[0]}, {heading}");
                }

                lines++;
            }
        }

        lines.ShouldBe(6);
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

    // A number with as many decimals as the README shows of it.
    private static string Shown(IXLCell cell, string text) =>
        cell.DataType == XLDataType.Number ? cell.GetDouble().ToString($"F{text.SkipWhile(c => c != '.').Skip(1).Count()}", CultureInfo.InvariantCulture) : cell.GetString();

    private static string Up(string folder) =>
        File.Exists(Path.Combine(folder, "CastBook.sln")) ? folder : Up(Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar))!);

    [GeneratedRegex("```\\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex("## A sheet before and after.*?\\n## ", RegexOptions.Singleline)]
    private static partial Regex Section();

    [GeneratedRegex("^\\| `(--[a-z-]+)", RegexOptions.Multiline)]
    private static partial Regex Option();

    [GeneratedRegex("--[a-z-]+")]
    private static partial Regex HelpOption();
}
