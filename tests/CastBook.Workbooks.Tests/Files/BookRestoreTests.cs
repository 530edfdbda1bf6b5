using System.Runtime.Versioning;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Files;

public sealed class BookRestoreTests : IDisposable
{
    private readonly BookFolder folder = new();
    private readonly SetClock clock = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Restore_FilledBook_IsTheBookAsItWasAndTheFilledOneIsABackup()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        Fill(book);
        var filled = File.ReadAllBytes(book);
        clock.Now = clock.Now.AddMinutes(1);

        var (restored, backup) = BookFile.Restore(book, 1, clock);

        restored.Made.ShouldBe(new DateTime(2026, 12, 1, 19, 54, 0));
        File.ReadAllBytes(book).ShouldBe(before);
        File.ReadAllBytes(backup!).ShouldBe(filled);
        BookFile.BackupsOf(book).Select(b => Path.GetFileName(b.Path)).ShouldBe(["night 2026-12-01 195500.xlsx", "night 2026-12-01 195400.xlsx"]);
        folder.Names.ShouldBe([".castbook", "night.xlsx"]);
    }

    [Fact]
    public void Restore_BookThatIsGone_IsThereAgain()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        Fill(book);
        File.Delete(book);

        BookFile.Restore(book, 1, clock).Backup.ShouldBeNull();

        File.ReadAllBytes(book).ShouldBe(before);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void Restore_NumberThatIsNotThere_SaysWhichAre(int number)
    {
        var book = folder.Book();
        Fill(book);
        var filled = File.ReadAllBytes(book);

        Should.Throw<BookNotWrittenException>(() => BookFile.Restore(book, number, clock)).Finding.Seen
            .ShouldBe($"There is no backup number {number} of night.xlsx; they are numbered 1 to 1, the newest first.");
        File.ReadAllBytes(book).ShouldBe(filled);
    }

    [Fact]
    public void Restore_BookIsOpen_SaysWhoHasItAndLeavesIt()
    {
        var book = folder.Book();
        Fill(book);
        folder.File(".~lock.night.xlsx#", "Isolde,bench,,");

        Should.Throw<BookNotWrittenException>(() => BookFile.Restore(book, 1, clock)).Finding.Seen.ShouldBe("night.xlsx is open; Isolde has it.");
    }

    [Fact]
    public void Fill_ClockSetBack_TheNewestBackupIsStillTheNewest()
    {
        var book = folder.Book();
        Fill(book);
        File.WriteAllBytes(book, Other());
        clock.Now = clock.Now.AddYears(-5);

        Fill(book);

        BookFile.BackupsOf(book).Select(b => Path.GetFileName(b.Path)).ShouldBe(["night 2026-12-01 195400 2.xlsx", "night 2026-12-01 195400.xlsx"]);
        File.ReadAllBytes(BookFile.BackupsOf(book)[0].Path).ShouldBe(Other());
    }

    [UnixFact(notAsRoot: true)]
    [UnsupportedOSPlatform("windows")]
    public void BackupsOf_FolderThatMayNotBeRead_IsRefusedWithItsReason()
    {
        var book = folder.Book();
        Fill(book);
        var backups = Path.Combine(folder.Path, ".castbook");
        File.SetUnixFileMode(backups, UnixFileMode.None);

        try
        {
            foreach (var refused in (Exception[])[Should.Throw<BookRefusedException>(() => BookFile.BackupsOf(book)), Should.Throw<BookRefusedException>(() => BookFile.Restore(book, 1, clock))])
            {
                refused.Message.ShouldMatch(
                    "^The backups of night.xlsx in the folder .castbook cannot be looked at: .+. Nothing was put back. Ask for the right to read that folder and what is in it.$");
            }
        }
        finally
        {
            File.SetUnixFileMode(backups, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void Add_ManyNights_KeepsTheFirstOfAllTheFirstOfEachDayAndTheNewest()
    {
        var book = folder.Book();
        for (var day = 0; day < 40; day++)
        {
            for (var hour = 0; hour < 3; hour++)
            {
                Backups.Add(book, clock);
                clock.Now = clock.Now.AddHours(1);
            }

            clock.Now = clock.Now.AddHours(21);
        }

        var made = BookFile.BackupsOf(book).Select(b => b.Made).ToList();
        // The newest are those of six days and two of a seventh; with its first, 24 more days have theirs; and the first of all.
        made.Count.ShouldBe(20 + 24 + 1);
        made[^1].ShouldBe(new DateTime(2026, 12, 1, 19, 54, 0));
        made[^2].ShouldBe(new DateTime(2026, 12, 11, 19, 54, 0));
        made.Take(20).Select(m => m.Hour).ShouldBe(Enumerable.Range(0, 20).Select(i => 21 - (i % 3)));
    }

    private static byte[] Other()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece", "Qty", "Wax weight (g)", "Alloy").Row("Gull stud", 2, 0.46, "Sterling 925")).Build();
        return book.ToArray();
    }

    private void Fill(string book) => BookFile.Fill(book, null, dryRun: false, BookSettings.None, clock);

    private sealed class SetClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 12, 1, 19, 54, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
