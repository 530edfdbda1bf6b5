using System.Diagnostics;
using System.Text.RegularExpressions;
using CastBook.Workbooks.Tests;

namespace CastBook.Cli.Tests;

/// <summary>Every command that the README names can be typed as it stands there; what it links to is there.</summary>
public sealed partial class ReadmeCommandsTests : IDisposable
{
    private const int LargestPicture = 60_000;

    private static readonly string Readme = File.ReadAllText(Path.Combine(ReadmeTests.Repository, "README.md")).ReplaceLineEndings("\n");

    private readonly string folder = Directory.CreateTempSubdirectory().FullName;

    [Fact]
    public void Commands_OfTheProgram_AllSucceedInTheOrderOfTheReadme()
    {
        var night = Path.Combine(ReadmeTests.Repository, "templates", "wrenmoor-night", "wrenmoor-night.xlsx");
        Directory.CreateDirectory(Path.Combine(folder, "Casting nights"));
        foreach (var copy in new[] { "harbour-night.xlsx", "my-night.xlsx", Path.Combine("Casting nights", "first.xlsx") })
        {
            File.Copy(night, Path.Combine(folder, copy));
        }

        File.WriteAllText(Path.Combine(folder, "list.csv"), "Piece,Qty,Weight (g),Alloy\nOtter ring,2,4.5,sterling silver\n");
        File.WriteAllText(Path.Combine(folder, "front-kiln.csv"), "Time,Kiln °C\n2037-12-03 21:30,20\n2037-12-03 23:00,150\n");
        var commands = Typed().ToList();

        var failed = commands.Select(c => (Command: c, Run: Run(c))).Where(r => r.Run.ExitCode != 0).Select(r => $"{r.Command}: {r.Run.Errors}").ToList();

        failed.ShouldBeEmpty();
        commands.Select(c => c.Split(' ')[1]).Distinct().Order(StringComparer.Ordinal).ShouldBe(
            ["--version", "adopt", "clear-examples", "completion", "explain", "fill", "kiln-log", "new", "restore", "share", "shortcut", "status", "watch"], ignoreOrder: true);
    }

    [Fact]
    public void Commands_OfTheRuntime_AreKnownOnesThatTheBuildMachineRuns()
    {
        var machine = File.ReadAllText(Path.Combine(ReadmeTests.Repository, ".ci", "run"));

        // What costs many minutes the build machine runs when it is asked to.
        Lines().Where(l => l.StartsWith("dotnet ", StringComparison.Ordinal) && !l.Contains(" fill ", StringComparison.Ordinal))
            .Where(l => !machine.Contains(l.Replace("-o castbook", "-o \"$out\"", StringComparison.Ordinal).Replace("--global", "--tool-path \"$out/tool\"", StringComparison.Ordinal)
                .Replace("--add-source castbook", "--add-source \"$out\"", StringComparison.Ordinal), StringComparison.Ordinal))
            .ShouldBeEmpty();
    }

    [UnixFact(linuxAlone: true)]
    public void Service_LinesForLinux_WriteAUnitThatStartsTheWatcher()
    {
        var lines = Lines().Where(l => l.StartsWith("mkdir ", StringComparison.Ordinal) || l.StartsWith("printf ", StringComparison.Ordinal)).ToList();
        var start = new ProcessStartInfo("bash") { WorkingDirectory = folder };
        start.Environment["HOME"] = folder;
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(string.Join('\n', lines));

        using var shell = Process.Start(start)!;
        shell.WaitForExit();

        lines.Count.ShouldBe(2);
        File.ReadAllLines(Path.Combine(folder, ".config", "systemd", "user", "castbook.service")).ShouldBe(
            ["[Service]", "Type=notify", $"ExecStart={folder}/castbook/castbook watch \"{folder}/Casting nights\"", "Restart=on-failure", "[Install]", "WantedBy=default.target"]);
    }

    [Fact]
    public void Links_LeadToFiles_AndPicturesAreSmall()
    {
        var links = Link().Matches(Readme).Select(m => m.Groups[1].Value).Where(l => !l.Contains("://", StringComparison.Ordinal)).ToList();

        links.Where(l => !File.Exists(Path.Combine(ReadmeTests.Repository, l))).ShouldBeEmpty();
        links.Where(l => l.EndsWith(".png", StringComparison.Ordinal)).ShouldBe(
            ["templates/pictures/pieces.png", "templates/pictures/night-plan.png", "templates/pictures/trees.png", "templates/pictures/kiln.png"]);
        links.Where(l => l.EndsWith(".png", StringComparison.Ordinal) && new FileInfo(Path.Combine(ReadmeTests.Repository, l)).Length > LargestPicture).ShouldBeEmpty();
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private CastBookRun Run(string command)
    {
        var words = Word().Matches(command).Select(m => m.Value.Trim('"')).Skip(1).ToList();
        if (words[0] == "share")
        {
            File.Delete(Path.Combine(folder, words[^1]));
        }

        // A watcher goes on for ever otherwise.
        return CastBookRun.In(folder, words[0] == "watch" ? [.. words, "--once"] : [.. words]);
    }

    private static IEnumerable<string> Typed() =>
        Typing().Matches(Readme).Select(m => m.Groups[1].Success ? m.Groups[1].Value : m.Groups[2].Value);

    private static IEnumerable<string> Lines() =>
        Readme.Split("```").Where((_, i) => i % 2 == 1).SelectMany(b => b.Split('\n')).Select(l => l.Trim()).Where(l => l.Length > 0);

    // A line of a block, or words between backticks.
    [GeneratedRegex("^ *(castbook .+)$|`(castbook [^`]+)`", RegexOptions.Multiline)]
    private static partial Regex Typing();

    [GeneratedRegex("\"[^\"]*\"|[^ \"]+")]
    private static partial Regex Word();

    [GeneratedRegex("\\]\\(([^)#]+)\\)")]
    private static partial Regex Link();
}
