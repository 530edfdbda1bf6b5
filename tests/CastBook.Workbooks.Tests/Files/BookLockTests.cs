using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Files;

/// <summary>One book, one filling at a time; what a cut-off run left behind is cleared, and keeps nobody out.</summary>
public sealed class BookLockTests : IDisposable
{
    private readonly BookFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Fill_BookHeldByAnother_IsNotWritten()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        using var other = BookLock.TryTake(book);

        var thrown = Should.Throw<BookNotWrittenException>(() => Fill(book));

        thrown.Finding.Id.ShouldBe(Catalogue.BookIsBusy.Id);
        thrown.Message.ShouldBe("night.xlsx is being filled by another CastBook just now. Two at once would overwrite each other, so nothing was written. Wait a moment and fill it again.");
        File.ReadAllBytes(book).ShouldBe(before);
        folder.Names.ShouldBe([".night.xlsx.busy", "night.xlsx"]);
    }

    [Fact]
    public void Fill_LockOfAProcessThatIsNoMore_IsTaken()
    {
        var book = folder.Book();
        using var gone = System.Diagnostics.Process.Start("dotnet", "--version");
        gone.WaitForExit();
        folder.File(".night.xlsx.busy", $"{Environment.MachineName} {gone.Id}\n");

        Fill(book).Changed.ShouldBeTrue();

        folder.Names.ShouldBe([".castbook", "night.xlsx"]);
    }

    [Theory]
    [InlineData(9, false)]
    [InlineData(11, true)]
    public void TryTake_LockOfAnotherComputer_IsTakenOnceItIsOlderThanAnyFilling(int minutes, bool taken)
    {
        var book = folder.Book();
        var file = folder.File(".night.xlsx.busy", "another-computer 17\n");
        File.SetLastWriteTimeUtc(file, DateTime.UtcNow.AddMinutes(-minutes));

        using var held = BookLock.TryTake(book);

        (held is not null).ShouldBe(taken);
    }

    [Fact]
    public void TakeAway_TakenBySomebodyMeanwhile_Stays()
    {
        var book = folder.Book();
        using var faster = BookLock.TryTake(book);
        var file = Path.Combine(folder.Path, ".night.xlsx.busy");
        var held = File.ReadAllText(file);

        BookLock.TakeAway(book, file, "another-computer 17").ShouldBeFalse();

        File.ReadAllText(file).ShouldBe(held);
        BookLock.TryTake(book).ShouldBeNull();
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(11, true)]
    public void TryTake_LeftLockThatAnotherIsTakingAway_IsLeftToThemUnlessTheyAreGone(int minutes, bool taken)
    {
        var book = folder.Book();
        var file = folder.File(".night.xlsx.busy", "another-computer 17\n");
        var other = folder.File(".night.xlsx.busy.left", "");
        File.SetLastWriteTimeUtc(file, DateTime.UtcNow.AddHours(-1));
        File.SetLastWriteTimeUtc(other, DateTime.UtcNow.AddMinutes(-minutes));

        BookLock.TryTake(book).ShouldBeNull();
        using var next = BookLock.TryTake(book);

        (next is not null).ShouldBe(taken);
    }

    [Fact]
    public void Dispose_LockThatIsSomebodyElsesNow_IsLeftToThem()
    {
        var book = folder.Book();
        BookLock.TryTake(book)!.ShouldSatisfyAllConditions(held =>
        {
            folder.File(".night.xlsx.busy", "another-computer 17");
            held.Dispose();
        });

        folder.Names.ShouldContain(".night.xlsx.busy");
    }

    [Fact]
    public async Task TryTake_ManyAtOnce_OneHasIt()
    {
        var book = folder.Book();
        var file = folder.File(".night.xlsx.busy", "another-computer 17\n");
        File.SetLastWriteTimeUtc(file, DateTime.UtcNow.AddHours(-1));
        using var start = new ManualResetEventSlim();

        var takers = Enumerable.Range(0, 8).Select(_ => Task.Factory.StartNew(
            () =>
            {
                start.Wait();
                return BookLock.TryTake(book);
            },
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default)).ToList();
        start.Set();

        var held = await Task.WhenAll(takers);
        held.Count(h => h is not null).ShouldBe(1);
        Array.ForEach(held, h => h?.Dispose());
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Fill_TemporaryFilesLeftByARunCutOff_AreClearedAndOthersAreNot()
    {
        var book = folder.Book();
        folder.File($".night.xlsx.{Guid.NewGuid():N}.tmp", "half");
        folder.File($".other.xlsx.{Guid.NewGuid():N}.tmp", "half");
        folder.File(".night.xlsx.mine.tmp", "somebody's");

        Fill(book);

        folder.Names.Count(n => n.EndsWith(".tmp", StringComparison.Ordinal)).ShouldBe(2);
        folder.Names.ShouldContain(".night.xlsx.mine.tmp");
        folder.Names.ShouldContain(n => n.StartsWith(".other.xlsx.", StringComparison.Ordinal));
    }

    private static FillResult Fill(string book) =>
        BookFile.Fill(book, null, dryRun: false, BookSettings.None, new BookFolder.Clock()).Result;
}
