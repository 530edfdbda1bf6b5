using System.Diagnostics;
using CastBook.Workbooks.Tests;

namespace CastBook.Cli.Tests.Watching;

/// <summary>The watching program as it is started, with the real clock.</summary>
public sealed class WatchCommandTests : IDisposable
{
    private readonly Watched watched = new();

    public void Dispose() => watched.Dispose();

    [Fact]
    public void Once_FillsWhatIsReadyAndEnds()
    {
        watched.Book();
        watched.Book("morning.xlsx");

        var run = CastBookRun.In(watched.Path, ["watch", ".", "--once"]);

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(2);
        (watched.Backups("night"), watched.Backups("morning")).ShouldBe((1, 1));
        File.ReadAllText(watched.Of("castbook.log")).ShouldBe(run.Output);

        CastBookRun.In(watched.Path, ["watch", ".", "--once"]).Output.ShouldBe("");
    }

    [UnixFact]
    public void Watch_BookPutThereLater_IsFilledAndTheStateIsToldAndAnEndIsClean()
    {
        using var watch = CastBookRun.Start(watched.Path, ["watch", ".", "--every", "1"]);
        watch.StandardOutput.ReadLine()!.ShouldEndWith("  watching this folder, a full look every 1 s");
        watched.Book();
        watch.StandardOutput.ReadLine()!.ShouldContain("  night.xlsx: 4 rows read, ");
        CastBookRun.In(watched.Path, ["status", "."]).Output.Split('\n').ShouldSatisfyAllConditions(
            lines => lines[0].ShouldStartWith($"watched by {Environment.MachineName}, last sign of life "),
            lines => lines[1].ShouldStartWith("filled "),
            lines => lines[1].ShouldContain("  night.xlsx: 4 rows read, "));

        Process.Start("kill", ["-TERM", $"{watch.Id}"]).WaitForExit();

        watch.StandardOutput.ReadToEnd().TrimEnd().ShouldEndWith("  watching ended");
        watch.WaitForExit();
        watch.ExitCode.ShouldBe(0);
        watched.Names.ShouldBe(["night.xlsx"]);
        CastBookRun.In(watched.Path, ["status", "."]).Output.Split('\n')[0].TrimEnd().ShouldBe("not watched");
    }

    [Theory]
    [InlineData("castbook: there is no folder 'gone'. Type the folder's path, in quotes if it has blanks.", "watch", "gone")]
    [InlineData("castbook: there is no folder 'gone'. Type the folder's path, in quotes if it has blanks.", "status", "gone")]
    [InlineData("castbook: --every takes a number of seconds from 1 to 3600.", "watch", ".", "--every", "0")]
    public void Watch_WrongWords_SaysSo(string says, params string[] words)
    {
        var run = CastBookRun.In(watched.Path, words);

        (run.ExitCode, run.Errors.TrimEnd(), run.Output).ShouldBe((2, says, ""));
    }

    [Fact]
    public void Status_NothingSeenYet_SaysSo()
    {
        var run = CastBookRun.In(watched.Path, ["status", "."]);

        run.Output.Split(Environment.NewLine).ShouldBe(["not watched", "no workbook has been looked at here yet", ""]);
    }
}
