using CastBook.Cli.Watching;
using CastBook.Planning.Findings;

namespace CastBook.Cli.Tests.Watching;

public sealed class WatchedFolderTests : IDisposable
{
    private readonly Watched watched = new();

    public void Dispose() => watched.Dispose();

    [Fact]
    public void Look_BookPutThere_IsFilledOnceItLiesStill()
    {
        var book = watched.Book();
        var before = File.ReadAllBytes(book);

        watched.Look().ShouldBe(1);
        File.ReadAllBytes(book).ShouldBe(before);
        watched.Clock.Now += WatchedFolder.Still;
        watched.Look().ShouldBe(0);

        File.ReadAllBytes(book).ShouldNotBe(before);
        watched.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: 4 rows read, ");
        watched.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Look_OwnWritingSeen_FillsNothingAgain()
    {
        watched.Book();
        watched.LookTwice();
        watched.Said.Length.ShouldBe(1);

        for (var look = 0; look < 5; look++)
        {
            watched.LookTwice().ShouldBe(0);
        }

        watched.Said.ShouldBeEmpty();
        watched.Backups("night").ShouldBe(1);
    }

    [Fact]
    public void Look_BookSavedByTheShop_IsFilledAgain()
    {
        watched.Book();
        watched.LookTwice();
        watched.Book();
        watched.LookTwice();

        watched.Said.Length.ShouldBe(2);
        watched.Backups("night").ShouldBe(2);
    }

    [Fact]
    public void Look_OnlyTouched_IsNotFilledAgain()
    {
        var book = watched.Book();
        watched.LookTwice();
        File.SetLastWriteTimeUtc(book, DateTime.UtcNow.AddMinutes(3));
        watched.LookTwice();

        watched.Said.Length.ShouldBe(1);
        watched.Backups("night").ShouldBe(1);
    }

    [Fact]
    public void Look_AfterARestart_NothingIsDoneTwice()
    {
        watched.Book();
        watched.LookTwice();
        watched.Restart();

        watched.Look().ShouldBe(0);
        watched.Said.Length.ShouldBe(1);
    }

    [Fact]
    public void Look_LedgerLostOrSpoilt_BooksAreLookedAtAfreshAndLeftAsTheyAre()
    {
        var book = watched.Book();
        watched.LookTwice();
        var filled = File.ReadAllBytes(book);
        File.WriteAllText(watched.Of(Path.Combine(".castbook", "watched.txt")), "night.xlsx\tFilled\tspoilt\n\0\0\0");
        watched.Restart();

        watched.LookTwice();

        File.ReadAllBytes(book).ShouldBe(filled);
        watched.Said[^1].ShouldEndWith("; it was filled already");
        watched.Backups("night").ShouldBe(1);
    }

    [Fact]
    public void Look_SlowCopy_WaitsForItsEnd()
    {
        var whole = File.ReadAllBytes(watched.Book());
        var book = watched.Of("night.xlsx");
        File.Delete(book);
        foreach (var length in new[] { whole.Length / 4, whole.Length / 2, whole.Length - 1 })
        {
            File.WriteAllBytes(book, whole[..length]);
            watched.LookTwice().ShouldBe(1);
        }

        // Even where the copy pauses for long, no half book is touched: it is no workbook yet.
        watched.Said.ShouldBeEmpty();
        File.WriteAllBytes(book, whole);
        watched.LookTwice().ShouldBe(0);
        watched.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: 4 rows read, ");
    }

    [Fact]
    public void Look_FileThatNeverBecomesAWorkbook_IsSaidOnceAndLeft()
    {
        File.WriteAllText(watched.Of("night.xlsx"), "not a workbook");
        watched.LookTwice().ShouldBe(1);
        watched.Clock.Now += TimeSpan.FromMinutes(1);
        watched.Look().ShouldBe(0);
        watched.LookTwice().ShouldBe(0);

        watched.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: The file is not a workbook. ");
        File.ReadAllText(watched.Of("night.xlsx")).ShouldBe("not a workbook");
    }

    [Fact]
    public void Look_BookIsOpen_WaitsSaysWhoOnceAndFillsWhenItIsClosed()
    {
        var book = watched.Book();
        var before = File.ReadAllBytes(book);
        File.WriteAllText(watched.Of(".~lock.night.xlsx#"), "Isolde,bench,,");
        watched.LookTwice();
        watched.LookTwice();

        File.ReadAllBytes(book).ShouldBe(before);
        watched.Said.ShouldBe(["night.xlsx: Isolde has it open; it is filled when it is closed"]);

        File.Delete(watched.Of(".~lock.night.xlsx#"));
        watched.LookTwice();
        watched.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: 4 rows read, ");
    }

    // Each write into the folder may bring the next look, which would then never end.
    [Fact]
    public void Look_BookIsStillOpen_WritesNothing()
    {
        watched.Book();
        File.WriteAllText(watched.Of(".~lock.night.xlsx#"), "Isolde,bench,,");
        watched.LookTwice();
        var list = watched.Of(Path.Combine(".castbook", "watched.txt"));
        var before = File.ReadAllText(list);
        File.Delete(list);

        watched.LookTwice();
        File.Exists(list).ShouldBeFalse();

        File.Delete(watched.Of(".~lock.night.xlsx#"));
        watched.LookTwice();
        File.ReadAllText(list).ShouldNotBe(before);
    }

    // What a scanner of viruses holds closed for a moment says nothing of the book itself.
    [Fact]
    public void Look_BookThatCannotBeOpened_IsTriedAgainInAMinute()
    {
        watched.Book();
        using var said = new StringWriter();
        var tries = 0;
        var folder = new WatchedFolder(watched.Path, subFolders: false, said, watched.Clock, book => tries++ == 0
            ? throw new Workbooks.Files.BookRefusedException(Catalogue.BookCannotBeOpened.At(Subject.Book, "night.xlsx", "it is held."))
            : Workbooks.Files.BookFile.Fill(book, null, dryRun: false, Workbooks.Settings.BookSettings.None, watched.Clock));
        for (var look = 0; look < 3; look++)
        {
            folder.Look(CancellationToken.None);
            watched.Clock.Now += WatchedFolder.Still;
        }

        tries.ShouldBe(1);
        watched.Clock.Now += TimeSpan.FromMinutes(1);
        folder.Look(CancellationToken.None);
        watched.Clock.Now += WatchedFolder.Still;
        folder.Look(CancellationToken.None);
        tries.ShouldBe(2);
        said.ToString().ShouldContain("night.xlsx: 4 rows read, ");
    }

    [Theory]
    [InlineData("night.xlsx", true)]
    [InlineData("december/night.XLSM", true)]
    [InlineData(".castbook/watched.txt", false)]
    [InlineData(".castbook/night 2026-12-01 195400.xlsx", false)]
    [InlineData(".night.xlsx.0123.tmp", false)]
    [InlineData("~$night.xlsx", false)]
    [InlineData("castbook.log", false)]
    public void MayBeBook_OwnFilesAndThoseOfOfficePrograms_AreNone(string name, bool expected) =>
        FolderLook.MayBeBook(name.Replace('/', Path.DirectorySeparatorChar)).ShouldBe(expected);

    [Fact]
    public void Look_HeldByAnotherComputer_IsLeftToIt()
    {
        watched.Book();
        File.WriteAllText(watched.Of(".night.xlsx.busy"), "another-computer 17\n");
        watched.LookTwice().ShouldBe(1);
        watched.Said.ShouldBeEmpty();

        File.Delete(watched.Of(".night.xlsx.busy"));
        watched.LookTwice().ShouldBe(0);
        watched.Said.Length.ShouldBe(1);
    }

    [Fact]
    public void Look_TwoComputersOnOneFolder_EachBookIsFilledOnce()
    {
        foreach (var number in Enumerable.Range(1, 6))
        {
            watched.Book($"night {number}.xlsx");
        }

        using var second = new StringWriter();
        var other = new WatchedFolder(watched.Path, subFolders: false, second, watched.Clock);
        watched.Look();
        other.Look(CancellationToken.None);
        watched.Clock.Now += WatchedFolder.Still;
        Parallel.Invoke(() => watched.Look(), () => other.Look(CancellationToken.None));
        watched.LookTwice();
        other.Look(CancellationToken.None);

        Enumerable.Range(1, 6).ShouldAllBe(number => watched.Backups($"night {number}") == 1);
        watched.Names.ShouldBe(Enumerable.Range(1, 6).Select(number => $"night {number}.xlsx"));
    }

    [Fact]
    public void Look_FilesThatAreNoBooks_AreNeverTouched()
    {
        string[] names = ["~$night.xlsx", ".night.xlsx", "night.castbook.xlsx", "night.xlsx.tmp", "list.csv", "photo.jpg"];
        foreach (var name in names)
        {
            File.WriteAllText(watched.Of(name), "as it was");
        }

        watched.LookTwice().ShouldBe(0);

        watched.Said.ShouldBeEmpty();
        names.ShouldAllBe(name => File.ReadAllText(watched.Of(name)) == "as it was");
    }

    [Theory]
    [InlineData("night (Isolde's conflicted copy 2026-12-01).xlsx")]
    [InlineData("night-safeBackup-0001.xlsx")]
    [InlineData("night (1).xlsx")]
    [InlineData("night-BENCH-4711.xlsx")]
    public void Look_TwoCopiesOfOneBook_AreReportedAndNeitherIsFilled(string copy)
    {
        var (one, other) = (File.ReadAllBytes(watched.Book()), File.ReadAllBytes(watched.Book(copy)));
        watched.LookTwice();
        watched.LookTwice();

        watched.Said.ShouldBe([$"{copy} and night.xlsx: two copies of one book. Neither is filled. Keep the right one under the book's name and move the other away"]);
        (File.ReadAllBytes(watched.Of("night.xlsx")), File.ReadAllBytes(watched.Of(copy))).ShouldSatisfyAllConditions(both => both.Item1.ShouldBe(one), both => both.Item2.ShouldBe(other));

        File.Delete(watched.Of(copy));
        watched.LookTwice();
        watched.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: 4 rows read, ");
    }

    [Theory]
    [InlineData("night-before-christmas.xlsx")]
    [InlineData("night two.xlsx")]
    [InlineData("morning (1).xlsx")]
    public void Look_BooksThatOnlyLookAlike_AreBothFilled(string name)
    {
        watched.Book();
        watched.Book(name);
        watched.LookTwice();

        watched.Said.Length.ShouldBe(2);
    }

    [Fact]
    public void Look_BookGoneBetweenLooks_IsForgotten()
    {
        var book = watched.Book();
        watched.Look();
        File.Delete(book);
        watched.Clock.Now += WatchedFolder.Still;

        watched.Look().ShouldBe(0);
        watched.Said.ShouldBeEmpty();
        Ledger.Of(watched.Path).Entries.ShouldBeEmpty();
    }

    [Fact]
    public void Look_FolderAwayForAWhile_IsSaidOnceAndFilledWhenItIsBack()
    {
        watched.Book();
        var away = watched.Path + "-away";
        Directory.Move(watched.Path, away);
        watched.LookTwice().ShouldBe(0);
        watched.LookTwice().ShouldBe(0);
        watched.Said.ShouldHaveSingleItem().ShouldStartWith("this folder cannot be looked at: ");

        Directory.Move(away, watched.Path);
        watched.LookTwice().ShouldBe(0);
        watched.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: 4 rows read, ");
    }

    // Somebody who saves in the very moment behind ours has saved something of theirs.
    [Fact]
    public void Look_SavedRightBehindTheFill_IsFilledAgain()
    {
        watched.Book();
        using var said = new StringWriter();
        var fills = 0;
        var folder = new WatchedFolder(watched.Path, subFolders: false, said, watched.Clock, book =>
        {
            var filled = Workbooks.Files.BookFile.Fill(book, null, dryRun: false, Workbooks.Settings.BookSettings.None, watched.Clock);
            if (fills++ == 0)
            {
                watched.Book();
            }

            return filled;
        });
        for (var look = 0; look < 8; look++)
        {
            folder.Look(CancellationToken.None);
            watched.Clock.Now += WatchedFolder.Still;
        }

        fills.ShouldBe(2);
        Workbooks.Files.BookFile.Fill(watched.Of("night.xlsx"), null, dryRun: true, Workbooks.Settings.BookSettings.None, watched.Clock).Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Look_FaultOfOursWithOneBook_IsSaidOnceAndTheOthersAreFilled()
    {
        watched.Book("a.xlsx");
        watched.Book("b.xlsx");
        using var said = new StringWriter();
        var folder = new WatchedFolder(watched.Path, subFolders: false, said, watched.Clock, book => Path.GetFileName(book) == "a.xlsx"
            ? throw new InvalidOperationException("what nobody thought of")
            : Workbooks.Files.BookFile.Fill(book, null, dryRun: false, Workbooks.Settings.BookSettings.None, watched.Clock));
        for (var look = 0; look < 4; look++)
        {
            folder.Look(CancellationToken.None);
            watched.Clock.Now += WatchedFolder.Still;
        }

        var lines = said.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        lines.Length.ShouldBe(2);
        lines[0].ShouldEndWith("  a.xlsx: Bug in CastBook, please report it: InvalidOperationException, what nobody thought of");
        lines[1].ShouldContain("  b.xlsx: 4 rows read, ");
    }

    [Fact]
    public void Look_SubFolders_OnlyByChoice()
    {
        using var deep = new Watched(subFolders: true);
        watched.Book("2026/night.xlsx");
        deep.Book("2026/night.xlsx");

        (watched.LookTwice(), deep.LookTwice()).ShouldBe((0, 0));

        watched.Said.ShouldBeEmpty();
        deep.Said.ShouldHaveSingleItem().ShouldStartWith("night.xlsx: 4 rows read, ");
        // Backups of books lie in folders that are not looked into.
        deep.LookTwice();
        deep.Said.ShouldBeEmpty();
    }

    [Fact]
    public void Look_ClockSetBack_StillFills()
    {
        watched.Book();
        watched.LookTwice();
        watched.Book();
        watched.Look();
        watched.Clock.Now -= TimeSpan.FromDays(400);
        watched.LookTwice();

        watched.Said.Length.ShouldBe(2);
    }

    [Fact]
    public void Look_ToldToStop_EndsBetweenTwoBooks()
    {
        watched.Book("a.xlsx");
        watched.Book("b.xlsx");
        using var stop = new CancellationTokenSource();
        using var output = new StopsAfterALine(stop);
        var folder = new WatchedFolder(watched.Path, subFolders: false, output, watched.Clock);
        folder.Look(stop.Token);
        watched.Clock.Now += WatchedFolder.Still;

        folder.Look(stop.Token);

        (watched.Backups("a"), watched.Backups("b")).ShouldBe((1, 0));
    }

    // A day of arrivals: every few minutes a book comes, and some are saved again.
    [Fact]
    public void Look_ADayOfArrivals_EachIsFilledOnceForEachTimeItWasSaved()
    {
        var saved = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var hour = 0; hour < 24; hour++)
        {
            var name = $"night {hour % 7}";
            watched.Book(name + ".xlsx");
            saved[name] = saved.GetValueOrDefault(name) + 1;
            for (var look = 0; look < 4; look++)
            {
                watched.Clock.Now += TimeSpan.FromMinutes(15);
                watched.Look();
            }
        }

        watched.Said.Length.ShouldBe(24);
        saved.ShouldAllBe(s => watched.Backups(s.Key) == s.Value);
    }

    private sealed class StopsAfterALine(CancellationTokenSource stop) : StringWriter
    {
        public override void WriteLine(string? value) => stop.Cancel();
    }
}
