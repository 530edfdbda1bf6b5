using System.Text.RegularExpressions;
using CastBook.Workbooks.Tests;

namespace CastBook.Cli.Tests.Trials;

/// <summary>What becomes of tests on systems that they are not for.</summary>
public sealed partial class SystemsTests
{
    /// <summary>A test that returns early is counted as passed, although it has looked at nothing.</summary>
    [Fact]
    public void Tests_OfOtherSystems_AreSkippedAndDoNotReturn()
    {
        var folder = Path.Combine(ReadmeTests.Repository, "tests");
        var sources = Directory.EnumerateDirectories(folder, "CastBook.*").SelectMany(d => Directory.EnumerateFiles(d, "*.cs", SearchOption.AllDirectories))
            .Where(f => !Path.GetRelativePath(folder, f).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj")).ToList();

        sources.Count.ShouldBeGreaterThan(200);
        sources.Where(f => EarlyReturn().IsMatch(File.ReadAllText(f))).ShouldBeEmpty();
    }

    [Fact]
    public void UnixFact_OnLinux_RunsEverything()
    {
        if (OperatingSystem.IsLinux())
        {
            new[] { new UnixFactAttribute().Skip, new UnixFactAttribute(linuxAlone: true).Skip, new UnixTheoryAttribute().Skip }.ShouldAllBe(s => s == null);
        }
        else
        {
            new UnixFactAttribute(linuxAlone: true).Skip.ShouldBe("Runs on Linux.");
        }
    }

    [GeneratedRegex(@"if \([^)\n]*OperatingSystem\.[^\n]*\s*\{\s*return;")]
    private static partial Regex EarlyReturn();
}
