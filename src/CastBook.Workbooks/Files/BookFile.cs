using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Clearing;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sharing;
using CastBook.Workbooks.Undoing;

namespace CastBook.Workbooks.Files;

/// <summary>Fills a workbook on disk, or takes the filling out again: written beside it, flushed, checked, backed up, then moved into place in one step.</summary>
public static partial class BookFile
{
    /// <summary>The folder beside a book in which its backups lie, and what CastBook keeps for itself.</summary>
    public const string BackupFolder = ".castbook";

    /// <summary>Fills a workbook.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="outPath">Where the filled one goes; null for in place.</param>
    /// <param name="dryRun">Whether to only say what would be done.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <param name="clock">For the backup's name.</param>
    /// <returns>What was answered, and the backup's path where one was made.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    /// <exception cref="BookNotWrittenException">The filled workbook could not be put in its place.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook; nothing was written.</exception>
    public static (FillResult Result, string? Backup) Fill(
        string path, string? outPath, bool dryRun, BookSettings settings, TimeProvider clock) =>
        Fill(path, outPath, dryRun, settings, clock, beforeCommit: null);

    /// <summary>Fills a workbook; something may happen between filling and putting it in place, as other programs do it.</summary>
    internal static (FillResult Result, string? Backup) Fill(
        string path, string? outPath, bool dryRun, BookSettings settings, TimeProvider clock, Action? beforeCommit)
    {
        return Write(new Job(path, outPath, dryRun, clock, beforeCommit), Make);

        (FillResult Result, bool Changed) Make(FileStream book, FileStream output, string bookName)
        {
            var result = BookFiller.Fill(book, output, bookName, settings);
            return (result, result.Changed);
        }
    }

    /// <summary>Fills a copy of a workbook to see how each of its numbers comes to be; the workbook is only read.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <returns>What its cells come from.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    /// <exception cref="BookNotWrittenException">The copy could not be made.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook.</exception>
    public static BookExplanation Explain(string path, BookSettings settings)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Write(new Job(path, null, DryRun: true, TimeProvider.System, BeforeCommit: null), Make).Result;

        (BookExplanation, bool) Make(FileStream book, FileStream output, string bookName) => (BookFiller.Explain(book, output, bookName, settings), false);
    }

    /// <summary>Plans the night of a workbook, which is only read, as if all its flasks were still to be burnt out.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    /// <returns>The plan, and the units in which the shop wants its answers.</returns>
    public static (Planning.NightPlan Plan, Planning.Shops.ShopUnits Units) PlanBurnout(string path, BookSettings settings)
    {
        using var book = OpenSource(Resolve(path));
        return BookFiller.PlanBurnout(book, Path.GetFileName(path), settings);
    }

    /// <summary>Takes everything of CastBook's out of a workbook again.</summary>
    /// <remarks>
    /// While nobody has touched the book since CastBook wrote it last, it becomes the book it was before the first filling,
    /// byte for byte, out of the backups beside it. Otherwise all that bears CastBook's markers is taken out.
    /// </remarks>
    /// <param name="path">The workbook.</param>
    /// <param name="outPath">Where the result goes; null for in place.</param>
    /// <param name="dryRun">Whether to only say what would be done.</param>
    /// <param name="clock">For the backup's name.</param>
    /// <param name="caps">How much the book may ask of the machine; the usual where nothing is said.</param>
    /// <returns>What was taken out, and the backup's path where one was made.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    /// <exception cref="BookNotWrittenException">The result could not be put in its place.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook; nothing was written.</exception>
    public static (UndoResult Result, string? Backup) Undo(string path, string? outPath, bool dryRun, TimeProvider clock, Caps? caps = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Write(new Job(path, outPath, dryRun, clock, BeforeCommit: null), Make);

        (UndoResult Result, bool Changed) Make(FileStream book, FileStream output, string bookName)
        {
            var result = Backups.OriginalOf(book, caps) is { } original ? Restore(original, output) : BookUndo.Undo(book, output, bookName, caps);
            return (result, result.Changed);
        }
    }

    /// <summary>Makes a template for others of a workbook, which is only read.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="outPath">Where the template goes; no file may stand there.</param>
    /// <param name="wishes">What else may be shared.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <param name="clock">The clock.</param>
    /// <returns>What was kept and what was left behind.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read, or nobody can tell what may be shared.</exception>
    /// <exception cref="BookNotWrittenException">The template could not be put in its place.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook; nothing was written.</exception>
    public static ShareResult Share(string path, string outPath, ShareWishes wishes, BookSettings settings, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(outPath);
        if (File.Exists(outPath))
        {
            throw BookNotWrittenException.For(Catalogue.ShareTemplateExists, null, Path.GetFileName(outPath));
        }

        return Write(new Job(path, outPath, DryRun: false, clock, BeforeCommit: null), (book, output, _) => (BookShare.Share(book, output, wishes, settings), true)).Result;
    }

    /// <summary>Empties the rows of a workbook that stand exactly as given; a row in which anything was changed stays as it is.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="clock">For the backup's name.</param>
    /// <returns>What was cleared, and the backup's path where one was made.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    /// <exception cref="BookNotWrittenException">The result could not be put in its place.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook; nothing was written.</exception>
    public static (ClearedRows Cleared, string? Backup) Clear(string path, IReadOnlyList<KnownRow> rows, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(rows);
        return Write(
            new Job(path, null, DryRun: false, clock, BeforeCommit: null),
            (book, output, bookName) => RowClearing.Clear(book, output, bookName, rows));
    }

    /// <summary>Writes answers into a shop file.</summary>
    /// <param name="path">The shop file.</param>
    /// <param name="answers">The answers.</param>
    /// <param name="clock">For the backup's name.</param>
    /// <returns>Answers for which the file has no place, and the backup's path where one was made.</returns>
    /// <exception cref="BookRefusedException">The shop file cannot be read.</exception>
    /// <exception cref="BookNotWrittenException">The result could not be put in its place.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook; nothing was written.</exception>
    public static (IReadOnlyList<string> Left, string? Backup) Answer(string path, ShopAnswers answers, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(answers);
        return Write(
            new Job(path, null, DryRun: false, clock, BeforeCommit: null),
            (book, output, bookName) => ShopFileEdit.Write(book, output, bookName, answers));
    }

    private static UndoResult Restore(string original, FileStream output)
    {
        using var source = OpenSource(original);
        source.CopyTo(output);
        return new UndoResult(Changed: true, IsExact: true, [], []);
    }

    /// <summary>Whether a content is what CastBook wrote into a workbook, now or before.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="hash">The hash of the content, as <see cref="ContentHash"/> makes it.</param>
    public static bool Wrote(string path, UInt128 hash)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Backups.Knows(Resolve(path), hash);
    }

    /// <summary>The backups of a workbook, the newest first.</summary>
    /// <param name="path">The workbook; it may be gone itself.</param>
    /// <exception cref="BookRefusedException">The folder of backups cannot be looked into.</exception>
    public static IReadOnlyList<BookBackup> BackupsOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return BackupsAt(Resolve(path));
    }

    /// <summary>Puts a backup back in the workbook's place; what stood there becomes a backup first.</summary>
    /// <param name="path">The workbook; it may be gone itself.</param>
    /// <param name="number">Number of the backup, 1 being the newest.</param>
    /// <param name="clock">For the new backup's name.</param>
    /// <returns>The backup that was put back, and that of what stood there before, if anything did.</returns>
    /// <exception cref="BookRefusedException">The folder of backups cannot be looked into.</exception>
    /// <exception cref="BookNotWrittenException">There is no such backup, the workbook is open, or it could not be put in its place.</exception>
    public static (BookBackup Restored, string? Backup) Restore(string path, int number, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(clock);
        var target = Resolve(path);
        var name = Path.GetFileName(target);
        var backups = BackupsAt(target);
        if (number < 1 || number > backups.Count)
        {
            throw BookNotWrittenException.For(Catalogue.BackupNotThere, null, name, number.ToString(CultureInfo.InvariantCulture), backups.Count.ToString(CultureInfo.InvariantCulture));
        }

        if (OwnerFile.WhoHasOpen(target) is { } who)
        {
            throw BookNotWrittenException.For(Catalogue.BookIsOpen, null, name, who);
        }

        using var held = Hold(target);
        var chosen = backups[number - 1];
        var temporary = TemporaryFile.Beside(target);
        try
        {
            TemporaryFile.Copy(chosen.Path, temporary);
            var backup = File.Exists(target) ? Backups.Add(target, clock, chosen.Path) : null;
            BookSwap.Move(temporary, target);
            return (chosen, backup);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw BookNotWrittenException.For(Catalogue.BookNotWritten, e, name, e.Message);
        }
        finally
        {
            if (File.Exists(temporary))
            {
                File.Delete(temporary);
            }
        }
    }

    private static IReadOnlyList<BookBackup> BackupsAt(string target)
    {
        try
        {
            return Backups.Of(target);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.BackupsCannotBeRead.At(Subject.Book, Path.GetFileName(target), e.Message.TrimEnd('.')), e);
        }
    }
}
