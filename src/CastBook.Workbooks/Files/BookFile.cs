using System.Globalization;
using System.Security.Cryptography;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Files;

/// <summary>Fills a workbook on disk: written beside it, flushed, checked, backed up, then moved into place in one step.</summary>
public static class BookFile
{
    private const int KeptBackups = 20;
    private static readonly TimeSpan[] Waits = [TimeSpan.FromMilliseconds(200), TimeSpan.FromMilliseconds(500), TimeSpan.FromSeconds(1)];

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
        string path, string? outPath, bool dryRun, BookSettings settings, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(clock);
        var source = Resolve(path);
        var target = outPath is null ? source : Resolve(outPath);
        if (!dryRun && OwnerFile.WhoHasOpen(target) is { } who)
        {
            throw BookNotWrittenException.For(Catalogue.BookIsOpen, null, Path.GetFileName(target), who);
        }

        var temporary = dryRun
            ? Path.GetTempFileName()
            : Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}.tmp");
        try
        {
            var (result, hash) = FillInto(source, temporary, Path.GetFileName(target), settings);
            var inPlace = string.Equals(source, target, StringComparison.Ordinal);
            if (dryRun || (inPlace && !result.Changed))
            {
                return (result, null);
            }

            return (result, Commit(source, target, temporary, hash, inPlace, clock));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw BookNotWrittenException.For(Catalogue.BookNotWritten, e, Path.GetFileName(target), e.Message);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    private static string Resolve(string path)
    {
        var full = Path.GetFullPath(path);
        return File.Exists(full) && File.ResolveLinkTarget(full, returnFinalTarget: true) is { } real ? real.FullName : full;
    }

    private static (FillResult Result, byte[] Hash) FillInto(string source, string temporary, string bookName, BookSettings settings)
    {
        using var book = OpenSource(source);
        using var output = new FileStream(temporary, FileMode.Create, FileAccess.ReadWrite, FileShare.None);
        var hash = SHA256.HashData(book);
        book.Position = 0;
        var result = BookFiller.Fill(book, output, bookName, settings);
        output.Flush(flushToDisk: true);
        return (result, hash);
    }

    private static FileStream OpenSource(string source)
    {
        try
        {
            return new FileStream(source, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, 1 << 16);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.BookCannotBeOpened.At(Subject.Book, Path.GetFileName(source), e.Message), e);
        }
    }

    private static string? Commit(string source, string target, string temporary, byte[] hash, bool inPlace, TimeProvider clock)
    {
        using (var now = OpenSource(source))
        {
            if (!SHA256.HashData(now).AsSpan().SequenceEqual(hash))
            {
                throw BookNotWrittenException.For(Catalogue.BookChangedMeanwhile, null, Path.GetFileName(source));
            }
        }

        if (File.Exists(target) && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
        }

        var backup = File.Exists(target) ? BackUp(target, clock) : null;
        Move(temporary, target);
        return inPlace ? backup : null;
    }

    private static string BackUp(string target, TimeProvider clock)
    {
        var folder = Path.Combine(Path.GetDirectoryName(target)!, ".castbook");
        Directory.CreateDirectory(folder);
        var name = Path.GetFileNameWithoutExtension(target);
        var extension = Path.GetExtension(target);
        var stamp = clock.GetLocalNow().ToString("yyyy-MM-dd HHmmss", CultureInfo.InvariantCulture);
        var backup = Path.Combine(folder, $"{name} {stamp}{extension}");
        for (var number = 2; File.Exists(backup); number++)
        {
            backup = Path.Combine(folder, $"{name} {stamp} {number.ToString(CultureInfo.InvariantCulture)}{extension}");
        }

        File.Copy(target, backup);
        // "name 2026-12-01 195400.xlsx" sorts by age; other books of the folder have other names.
        foreach (var old in Directory.GetFiles(folder, $"{name} ????-??-?? ??????*{extension}").Order(StringComparer.Ordinal).SkipLast(KeptBackups))
        {
            File.Delete(old);
        }

        return backup;
    }

    /// <summary>Moves in one step; a virus scanner or an indexer may hold the target for a moment, so it is tried again.</summary>
    private static void Move(string temporary, string target)
    {
        foreach (var wait in Waits)
        {
            try
            {
                File.Move(temporary, target, overwrite: true);
                return;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                Thread.Sleep(wait);
            }
        }

        File.Move(temporary, target, overwrite: true);
    }
}
