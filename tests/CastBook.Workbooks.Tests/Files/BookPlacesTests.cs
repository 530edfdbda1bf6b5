using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Files;

/// <summary>Books in places and under names that programs trip over.</summary>
public sealed class BookPlacesTests : IDisposable
{
    private readonly BookFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("Isolde's night (2), 100 % #1 & more; $HOME `x` [a] {b} ~ ! @ + =.xlsx")]
    [InlineData("Gießliste März – Größe ½ 铸造 אב 🜚.xlsx")]
    [InlineData(" leading and trailing .xlsx")]
    [InlineData("night.2026.12.XLSX")]
    [InlineData("-out.xlsx")]
    public void Fill_OddName_IsFilledAndKeptAndRestored(string name)
    {
        var book = Path.Combine(folder.Path, name);
        File.Move(folder.Book(), book);
        var before = File.ReadAllBytes(book);

        Fill(book).ShouldNotBeNull();

        folder.Names.ShouldBe([".castbook", name], ignoreOrder: true);
        Fill(book).ShouldBeNull();
        BookFile.Restore(book, 1, new BookFolder.Clock());
        File.ReadAllBytes(book).ShouldBe(before);
    }

    [Fact]
    public void Fill_PathOfTwoHundredCharacters_IsFilled()
    {
        var deep = Directory.CreateDirectory(Path.Combine(folder.Path, new string('d', 90), new string('e', 90))).FullName;
        var book = Path.Combine(deep, "night.xlsx");
        File.Move(folder.Book(), book);

        book.Length.ShouldBeGreaterThan(200);
        Fill(book).ShouldNotBeNull();
    }

    [Fact]
    public void Fill_WriteProtectedBook_IsNotReplaced()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        new FileInfo(book).IsReadOnly = true;

        Should.Throw<BookNotWrittenException>(() => Fill(book)).Finding.ShouldSatisfyAllConditions(
            f => f.Id.ShouldBe(Catalogue.BookIsProtected.Id),
            f => f.Seen.ShouldBe("night.xlsx is write-protected."));

        File.ReadAllBytes(book).ShouldBe(before);
        new FileInfo(book).IsReadOnly = false;
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [UnixFact]
    public void Fill_ReaderHasTheBookOpen_ReadsTheOldOneToItsEnd()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        using var reader = new FileStream(book, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        var read = new byte[before.Length];
        reader.ReadExactly(read.AsSpan(0, 100));

        Fill(book).ShouldNotBeNull();

        reader.ReadExactly(read.AsSpan(100));
        read.ShouldBe(before);
    }

    [UnixFact]
    public void Fill_OfTwoNamesOfOneFile_TheOtherKeepsTheBookAsItWas()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        var other = Path.Combine(folder.Path, "other.xlsx");
        using (var link = System.Diagnostics.Process.Start("ln", [book, other]))
        {
            link.WaitForExit();
        }

        Fill(book).ShouldNotBeNull();

        File.ReadAllBytes(other).ShouldBe(before);
        File.ReadAllBytes(book).ShouldNotBe(before);
    }

    [Fact]
    public async Task Fill_ManyAtOnceOnOneBook_OneFillsItAndNobodyHarmsIt()
    {
        var book = folder.Book();
        var alone = Path.Combine(folder.Path, "alone", "night.xlsx");
        Directory.CreateDirectory(Path.GetDirectoryName(alone)!);
        File.Copy(book, alone);
        Fill(alone);

        var ended = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() =>
        {
            try
            {
                return Fill(book) is null ? "unchanged" : "filled";
            }
            catch (BookNotWrittenException e)
            {
                return e.Finding.Id;
            }
        })));

        ended.Count(e => e == "filled").ShouldBe(1);
        ended.ShouldAllBe(e => e == "filled" || e == "unchanged" || e == Catalogue.BookIsBusy.Id);
        (await File.ReadAllBytesAsync(book)).ShouldBe(await File.ReadAllBytesAsync(alone));
        folder.Names.ShouldBe([".castbook", "alone", "night.xlsx"]);
    }

    // Of many who find the name free at the same instant one gets it.
    [Fact]
    public async Task TryTake_ManyAtOnce_OneHoldsAtATime()
    {
        var book = folder.Book();
        var (inside, most, taken) = (0, 0, 0);
        for (var round = 0; round < 300; round++)
        {
            using var start = new Barrier(4);
            await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Factory.StartNew(
                () =>
                {
                    start.SignalAndWait();
                    using var held = BookLock.TryTake(book);
                    if (held is not null)
                    {
                        most = Math.Max(most, Interlocked.Increment(ref inside));
                        Interlocked.Increment(ref taken);
                        Thread.Sleep(1);
                        Interlocked.Decrement(ref inside);
                    }
                },
                CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
        }

        most.ShouldBe(1);
        taken.ShouldBeGreaterThanOrEqualTo(300);
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    private static string? Fill(string book) => BookFile.Fill(book, null, dryRun: false, BookSettings.None, new BookFolder.Clock()).Backup;
}
