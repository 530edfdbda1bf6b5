using CastBook.Cli.Tests.Watching;

namespace CastBook.Cli.Tests;

public sealed class RestoreCommandTests : IDisposable
{
    private readonly Watched folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Restore_ListsBackupsAndPutsOneBack()
    {
        var before = File.ReadAllBytes(folder.Book());
        Run("fill", "night.xlsx");

        var list = Run("restore", "night.xlsx").Output.Split(Environment.NewLine);
        list[0].ShouldBe("night.xlsx: 1 backup");
        list[1].ShouldMatch(@"^   1  \d{4}-\d\d-\d\d \d\d:\d\d:\d\d  +\d+ kB$");
        list[2].ShouldBe("to put one back, type its number too, such as: castbook restore \"night.xlsx\" 1");

        var run = Run("restore", "night.xlsx", "1");
        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        run.Output.ShouldMatch(@"^night.xlsx is again what it was on \d{4}-\d\d-\d\d at \d\d:\d\d:\d\d\r?\nwhat stood there is backup 1 now: .castbook.night ");
        File.ReadAllBytes(folder.Of("night.xlsx")).ShouldBe(before);
    }

    [Fact]
    public void Restore_NothingToPutBack_SaysSo()
    {
        folder.Book();

        var none = Run("restore", "night.xlsx");
        (none.ExitCode, none.Errors.TrimEnd()).ShouldBe(
            (2, "castbook: there is no backup of 'night.xlsx'. Backups lie in the folder .castbook beside a workbook that was filled in place."));
        Run("fill", "night.xlsx");
        var wrong = Run("restore", "night.xlsx", "4");
        (wrong.ExitCode, wrong.Errors.TrimEnd()).ShouldBe((
            4, "castbook: There is no backup number 4 of night.xlsx; they are numbered 1 to 1, the newest first. Nothing was put back. Type castbook restore and the book's name to see them all."));
    }

    private CastBookRun Run(params string[] words) => CastBookRun.In(folder.Path, words);
}
