using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Files;

public sealed class BookFileUndoTests : IDisposable
{
    private readonly BookFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Undo_NobodyTouchedTheBook_GivesItBackByteForByte()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        Fill(book);
        var filled = File.ReadAllBytes(book);

        var (result, backup) = Undo(book);

        result.IsExact.ShouldBeTrue();
        File.ReadAllBytes(book).ShouldBe(before);
        File.ReadAllBytes(backup!).ShouldBe(filled);
    }

    [Fact]
    public void Undo_BookCopiedAwayFromItsBackups_GoesByTheMarkers()
    {
        var book = folder.Book();
        Fill(book);
        Directory.Delete(Path.Combine(folder.Path, ".castbook"), recursive: true);

        var (result, backup) = Undo(book);

        (result.IsExact, result.Changed).ShouldBe((false, true));
        backup.ShouldNotBeNull();
    }

    [Fact]
    public void Undo_DryRun_WritesNothing()
    {
        var book = folder.Book();
        Fill(book);
        var filled = File.ReadAllBytes(book);

        BookFile.Undo(book, null, dryRun: true, new BookFolder.Clock()).Backup.ShouldBeNull();

        File.ReadAllBytes(book).ShouldBe(filled);
    }

    [Fact]
    public void Undo_ToAnotherPath_LeavesTheBookFilled()
    {
        var book = folder.Book();
        var before = File.ReadAllBytes(book);
        Fill(book);
        var filled = File.ReadAllBytes(book);
        var to = Path.Combine(folder.Path, "plain.xlsx");

        BookFile.Undo(book, to, dryRun: false, new BookFolder.Clock());

        File.ReadAllBytes(to).ShouldBe(before);
        File.ReadAllBytes(book).ShouldBe(filled);
    }

    private static void Fill(string book) => BookFile.Fill(book, null, dryRun: false, BookSettings.None, new BookFolder.Clock());

    private static (Workbooks.Undoing.UndoResult Result, string? Backup) Undo(string book) =>
        BookFile.Undo(book, null, dryRun: false, new BookFolder.Clock());
}
