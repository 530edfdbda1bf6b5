using System.Globalization;
using System.Security.Cryptography;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Files;

/// <summary>Fills a workbook on disk: written beside it, flushed, checked, backed up, then moved into place in one step.</summary>
public static class BookFile
{
    private const int KeptBackups = 20;
    private const string StampFormat = "yyyy-MM-dd HHmmss";

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
        string path, string? outPath, bool dryRun, BookSettings settings, TimeProvider clock) =>
        Fill(path, outPath, dryRun, settings, clock, beforeCommit: null);

    /// <summary>Fills a workbook; something may happen between filling and putting it in place, as other programs do it.</summary>
    internal static (FillResult Result, string? Backup) Fill(
        string path, string? outPath, bool dryRun, BookSettings settings, TimeProvider clock, Action? beforeCommit)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(clock);
        var source = Resolve(path);
        var target = outPath is null ? source : Resolve(outPath);
        if (!dryRun && (OwnerFile.WhoHasOpen(target) ?? OwnerFile.WhoHasOpen(outPath ?? path)) is { } who)
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

            beforeCommit?.Invoke();
            return (result, Commit(source, target, temporary, hash, inPlace, clock));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw BookNotWrittenException.For(Catalogue.BookNotWritten, e, Path.GetFileName(target), e.Message);
        }
        catch (InvalidDataException e)
        {
            // A part that only writing looks into, such as notes.
            throw BookRefusedException.Damaged(e.Message.TrimEnd('.'), e);
        }
        finally
        {
            // Deleting where the folder itself is missing throws, and would hide why nothing was written.
            if (File.Exists(temporary))
            {
                File.Delete(temporary);
            }
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
        var stamp = clock.GetLocalNow().ToString(StampFormat, CultureInfo.InvariantCulture);
        var backup = Path.Combine(folder, $"{name} {stamp}{extension}");
        for (var number = 2; File.Exists(backup); number++)
        {
            backup = Path.Combine(folder, $"{name} {stamp} {number.ToString(CultureInfo.InvariantCulture)}{extension}");
        }

        File.Copy(target, backup);
        DeleteOld(folder, name, extension);
        return backup;
    }

    /// <summary>Deletes the oldest backups of a book beyond those kept; never those of a book called "night 2026-03-01" beside "night".</summary>
    private static void DeleteOld(string folder, string name, string extension)
    {
        var backups = Directory.GetFiles(folder)
            .Select(path => (Path: path, Age: Age(Path.GetFileName(path), name, extension)))
            .Where(b => b.Age is not null)
            .OrderBy(b => b.Age!.Value.Stamp, StringComparer.Ordinal).ThenBy(b => b.Age!.Value.Number);
        foreach (var old in backups.SkipLast(KeptBackups))
        {
            File.Delete(old.Path);
        }
    }

    /// <summary>When a backup was made, from its name: <c>night 2026-12-01 195400.xlsx</c>, or <c>… 195400 2.xlsx</c> for a second one; null for another file.</summary>
    private static (string Stamp, int Number)? Age(string file, string name, string extension)
    {
        if (!file.StartsWith(name + " ", StringComparison.Ordinal) || !file.EndsWith(extension, StringComparison.Ordinal)
            || file.Length < name.Length + 1 + StampFormat.Length + extension.Length)
        {
            return null;
        }

        var middle = file[(name.Length + 1)..^extension.Length];
        var stamp = middle[..StampFormat.Length];
        var rest = middle[StampFormat.Length..];
        var number = 1;
        return DateTime.TryParseExact(stamp, StampFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            && (rest.Length == 0 || (rest[0] == ' ' && int.TryParse(rest.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out number)))
            ? (stamp, number)
            : null;
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
