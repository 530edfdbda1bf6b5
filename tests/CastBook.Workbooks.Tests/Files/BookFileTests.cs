using System.Runtime.Versioning;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Files;

public sealed class BookFileTests : IDisposable
{
    private readonly BookFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Fill_InPlace_KeepsTheBookAsItWasInABackup()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);

        var (result, backup) = Fill(book);

        result.Changed.ShouldBeTrue();
        backup.ShouldBe(Path.Combine(folder.Path, ".castbook", "night 2026-12-01 195400.xlsx"));
        File.ReadAllBytes(backup!).ShouldBe(before);
        File.ReadAllBytes(book).ShouldNotBe(before);
        folder.Names.ShouldBe([".castbook", "night.xlsx"]);
    }

    [Fact]
    public void Fill_NothingToChange_LeavesTheFileAndMakesNoBackup()
    {
        var book = folder.Book();
        Fill(book);
        Directory.Delete(Path.Combine(folder.Path, ".castbook"), recursive: true);
        var before = File.ReadAllBytes(book);
        var written = File.GetLastWriteTimeUtc(book);

        var (result, backup) = Fill(book);

        (result.Changed, backup).ShouldBe((false, null));
        File.ReadAllBytes(book).ShouldBe(before);
        File.GetLastWriteTimeUtc(book).ShouldBe(written);
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Fill_ToAnotherPath_LeavesTheBookAsItIs()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        var to = Path.Combine(folder.Path, "filled.xlsx");

        Fill(book, to).Backup.ShouldBeNull();

        File.ReadAllBytes(book).ShouldBe(before);
        File.ReadAllBytes(to).ShouldNotBe(before);
        folder.Names.ShouldBe(["filled.xlsx", "night.xlsx"]);
    }

    [Fact]
    public void Fill_ToAnotherPathThatExists_KeepsWhatStoodThere()
    {
        var book = folder.Book();
        var to = folder.File("filled.xlsx", "what stood there");

        Fill(book, to);

        File.ReadAllText(Path.Combine(folder.Path, ".castbook", "filled 2026-12-01 195400.xlsx")).ShouldBe("what stood there");
    }

    [Fact]
    public void Fill_FilledBookToAnotherPath_WritesItThereAllTheSame()
    {
        var book = folder.Book();
        Fill(book);
        Directory.CreateDirectory(Path.Combine(folder.Path, "copy"));
        var to = Path.Combine(folder.Path, "copy", "night.xlsx");

        Fill(book, to).Result.Changed.ShouldBeFalse();

        File.ReadAllBytes(to).ShouldBe(File.ReadAllBytes(book));
    }

    [Fact]
    public void Fill_DryRun_WritesNothingAnywhere()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        var temporary = Temporary();

        Fill(book, dryRun: true).Result.Changed.ShouldBeTrue();
        Fill(book, Path.Combine(folder.Path, "out.xlsx"), dryRun: true);

        File.ReadAllBytes(book).ShouldBe(before);
        folder.Names.ShouldBe(["night.xlsx"]);
        Temporary().Except(temporary).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("~$night.xlsx")]
    [InlineData("~$ght.xlsx")]
    [InlineData(".~lock.night.xlsx#")]
    public void Fill_BookIsOpen_SaysWhoHasItAndWritesNothing(string ownerFile)
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        folder.File(ownerFile, ownerFile[0] == '~' ? "\u0005Bench" : "Bench,host,1");

        var refusal = Should.Throw<BookNotWrittenException>(() => Fill(book));

        refusal.Finding.Id.ShouldBe("book-is-open");
        refusal.Finding.Seen.ShouldBe("night.xlsx is open; Bench has it.");
        File.ReadAllBytes(book).ShouldBe(before);
        folder.Names.ShouldBe([ownerFile, "night.xlsx"], ignoreOrder: true);
        Fill(book, dryRun: true).Result.Changed.ShouldBeTrue();
    }

    [Fact]
    public void Fill_BookIsOpenUnderItsLink_IsNoticed()
    {
        folder.Book();
        Directory.CreateDirectory(Path.Combine(folder.Path, "desk"));
        var link = Path.Combine(folder.Path, "desk", "link.xlsx");
        File.CreateSymbolicLink(link, Path.Combine("..", "night.xlsx"));
        folder.File(Path.Combine("desk", "~$link.xlsx"), "\u0005Bench");

        Should.Throw<BookNotWrittenException>(() => Fill(link));
    }

    [Fact]
    public void Fill_Link_FillsTheFileItLeadsTo()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        var link = Path.Combine(folder.Path, "link.xlsx");
        File.CreateSymbolicLink(link, "night.xlsx");

        Fill(link);

        new FileInfo(link).LinkTarget.ShouldBe("night.xlsx");
        File.ReadAllBytes(book).ShouldNotBe(before);
        File.Exists(Path.Combine(folder.Path, ".castbook", "night 2026-12-01 195400.xlsx")).ShouldBeTrue();
    }

    [UnixFact]
    [UnsupportedOSPlatform("windows")]
    public void Fill_BookWithAModeOfItsOwn_KeepsIt()
    {
        const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;
        var book = folder.Book();
        File.SetUnixFileMode(book, Mode);

        var (_, backup) = Fill(book);

        File.GetUnixFileMode(book).ShouldBe(Mode);
        File.GetUnixFileMode(backup!).ShouldBe(Mode);
    }

    [Fact]
    public void Fill_ManyDays_KeepsTheNewestAndTheFirstOfEachDayOfThisBookOnly()
    {
        var book = folder.Book();
        var backups = Path.Combine(folder.Path, ".castbook");
        for (var number = 1; number <= 30; number++)
        {
            folder.File(Path.Combine(".castbook", $"night 2026-10-{number:00} 200000.xlsx"), "old");
            folder.File(Path.Combine(".castbook", $"night 2026-10-{number:00} 210000.xlsx"), "old");
        }

        // Fills of one second are told apart by a number, and 10 comes after 9.
        foreach (var name in (string[])["night 2026-12-01 195400.xlsx", "night 2026-12-01 195400 2.xlsx", "night 2026-03-01 2026-11-01 200000.xlsx", "night 2026-01-01 notes.xlsx", "nights 2026-01-01 200000.xlsx"])
        {
            folder.File(Path.Combine(".castbook", name), "old");
        }

        var (_, backup) = Fill(book);

        Path.GetFileName(backup).ShouldBe("night 2026-12-01 195400 3.xlsx");
        var left = Directory.GetFiles(backups, "*night*").Select(Path.GetFileName).ToList();
        // Three of today, the 17 before them, the first of each day before those, and three that are no backups of this book.
        left.Count.ShouldBe(3 + 17 + 22 + 3);
        left.ShouldContain("night 2026-10-01 200000.xlsx");
        left.ShouldNotContain("night 2026-10-01 210000.xlsx");
        left.ShouldContain("night 2026-10-30 210000.xlsx");
        left.ShouldContain("night 2026-03-01 2026-11-01 200000.xlsx");
        left.ShouldContain("night 2026-01-01 notes.xlsx");
        left.ShouldContain("nights 2026-01-01 200000.xlsx");
        left.ShouldContain("night 2026-12-01 195400 3.xlsx");
    }

    [Fact]
    public void Fill_ManyTimesInOneSecond_TheFirstOfTheDayStaysAndThoseAfterItGo()
    {
        var book = folder.Book();
        folder.File(Path.Combine(".castbook", "night 2026-12-01 195400.xlsx"), "old");
        foreach (var number in Enumerable.Range(2, 20))
        {
            folder.File(Path.Combine(".castbook", $"night 2026-12-01 195400 {number}.xlsx"), "old");
        }

        Fill(book);

        Directory.GetFiles(Path.Combine(folder.Path, ".castbook"), "*.xlsx").Select(Path.GetFileName)
            .ShouldBe(Enumerable.Range(3, 20).Select(number => $"night 2026-12-01 195400 {number}.xlsx").Append("night 2026-12-01 195400.xlsx"), ignoreOrder: true);
    }

    [Fact]
    public void Fill_SavedBySomebodyMeanwhile_IsNotOverwritten()
    {
        var book = folder.Book();

        var refusal = Should.Throw<BookNotWrittenException>(() => BookFile.Fill(
            book, null, dryRun: false, BookSettings.None, new BookFolder.Clock(), beforeCommit: () => File.WriteAllText(book, "saved meanwhile")));

        refusal.Finding.Id.ShouldBe("book-changed-meanwhile");
        File.ReadAllText(book).ShouldBe("saved meanwhile");
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Fill_SavedBySomebodyWhileItsBackupIsMade_IsNotOverwritten()
    {
        var book = folder.Book();

        var refusal = Should.Throw<BookNotWrittenException>(() => BookFile.Fill(
            book, null, dryRun: false, BookSettings.None, new SavingClock(() => File.WriteAllText(book, "saved meanwhile"))));

        refusal.Finding.Id.ShouldBe("book-changed-meanwhile");
        File.ReadAllText(book).ShouldBe("saved meanwhile");
        folder.Names.ShouldBe([".castbook", "night.xlsx"]);
    }

    [Theory]
    [InlineData("not a workbook")]
    [InlineData("")]
    public void Fill_NoWorkbook_IsRefusedAndLeavesNothingBehind(string content)
    {
        var book = folder.File("night.xlsx", content);

        Should.Throw<BookRefusedException>(() => Fill(book));

        File.ReadAllText(book).ShouldBe(content);
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Fill_NotesThatCannotBeRead_AreRefusedAsDamage()
    {
        var book = folder.Book(b => b
            .Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships([("rId1", "comments", "../comments1.xml")]))
            .Part("xl/comments1.xml", "<!-- cut off"));

        Should.Throw<BookRefusedException>(() => Fill(book)).Finding.Seen.ShouldBe("The workbook is damaged and cannot be read (at a part that ends inside a comment or a text block).");
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [Fact]
    public void Fill_NoFolderForTheOutput_SaysSo()
    {
        var book = folder.Book();

        Should.Throw<BookNotWrittenException>(() => Fill(book, Path.Combine(folder.Path, "nowhere", "out.xlsx"))).Finding.Id.ShouldBe("book-not-written");
    }

    // The words of the system stand behind the name.
    [Fact]
    public void Fill_BookIsAFolder_SaysThatItCannotBeOpened()
    {
        var book = Directory.CreateDirectory(Path.Combine(folder.Path, "night.xlsx")).FullName;

        var finding = Should.Throw<BookRefusedException>(() => Fill(book)).Finding;

        finding.Seen.ShouldBe($"night.xlsx cannot be opened: {Should.Throw<UnauthorizedAccessException>(() => File.ReadAllBytes(book)).Message}");
        finding.Id.ShouldBe("book-cannot-be-opened");
    }

    [Fact]
    public void Fill_OutputIsAFolder_SaysSoAndLeavesNothingBehind()
    {
        var book = folder.Book();
        Directory.CreateDirectory(Path.Combine(folder.Path, "out.xlsx"));

        Should.Throw<BookNotWrittenException>(() => Fill(book, Path.Combine(folder.Path, "out.xlsx")));

        folder.Names.ShouldBe(["night.xlsx", "out.xlsx"]);
    }

    private static (FillResult Result, string? Backup) Fill(string path, string? outPath = null, bool dryRun = false) =>
        BookFile.Fill(path, outPath, dryRun, BookSettings.None, new BookFolder.Clock());

    private static HashSet<string> Temporary() => [.. Directory.GetFiles(Path.GetTempPath(), "tmp*.tmp")];

    // The clock is asked for the name of the backup: the book was looked at once more just before.
    private sealed class SavingClock(Action save) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow()
        {
            save();
            return new(2026, 12, 1, 19, 54, 0, TimeSpan.Zero);
        }
    }
}
