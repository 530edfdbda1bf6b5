using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Tests.Files;

public sealed class BookSwapTests : IDisposable
{
    private readonly BookFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Move_TargetHeldForAMoment_IsTriedAgain()
    {
        var (made, book) = (folder.File(".made.tmp", "new"), folder.File("night.xlsx", "old"));
        var tries = 0;
        var waited = TimeSpan.Zero;

        BookSwap.Move(made, book, (from, to) => File.Move(++tries < 4 ? throw new IOException("held") : from, to, overwrite: true), pause => waited += pause);

        (File.ReadAllText(book), tries, waited).ShouldBe(("new", 4, TimeSpan.FromSeconds(1.7)));
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Move_TargetHeldForGood_LeavesItAndPutsTheNewOneBeside()
    {
        var (made, book) = (folder.File(".made.tmp", "new"), folder.File("night.xlsx", "old"));

        var thrown = Should.Throw<BookNotWrittenException>(() => BookSwap.Move(made, book, (_, _) => throw new UnauthorizedAccessException("Access to the path is denied."), _ => { }));

        thrown.Message.ShouldBe(
            "night.xlsx could not be replaced: Access to the path is denied. The file is as it was. What was made lies beside it as night.castbook.xlsx. "
            + "Close what holds night.xlsx and fill it again, or take night.castbook.xlsx in its place.");
        File.ReadAllText(book).ShouldBe("old");
        File.ReadAllText(Path.Combine(folder.Path, "night.castbook.xlsx")).ShouldBe("new");
        folder.Names.ShouldBe(["night.castbook.xlsx", "night.xlsx"]);
    }
}
