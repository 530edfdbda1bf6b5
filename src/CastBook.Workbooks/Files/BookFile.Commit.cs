using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Files;

/// <content>Puts a book that was made in its place: held, flushed, checked, backed up, moved in one step.</content>
public static partial class BookFile
{
    private static (T Result, string? Backup) Write<T>(Job job, Func<FileStream, FileStream, string, (T, bool)> make)
    {
        ArgumentNullException.ThrowIfNull(job.Path);
        ArgumentNullException.ThrowIfNull(job.Clock);
        var (path, outPath, dryRun) = (job.Path, job.OutPath, job.DryRun);
        var source = Resolve(path);
        var target = outPath is null ? source : Resolve(outPath);
        if (!dryRun && (OwnerFile.WhoHasOpen(target) ?? OwnerFile.WhoHasOpen(outPath ?? path)) is { } who)
        {
            throw BookNotWrittenException.For(Catalogue.BookIsOpen, null, Path.GetFileName(target), who);
        }

        using var held = dryRun ? null : Hold(target);
        var temporary = dryRun ? Path.GetTempFileName() : TemporaryFile.Beside(target);
        try
        {
            var (result, changed, hash) = MakeInto(source, temporary, Path.GetFileName(target), make);
            var inPlace = string.Equals(source, target, StringComparison.Ordinal);
            if (dryRun || (inPlace && !changed))
            {
                return (result, null);
            }

            job.BeforeCommit?.Invoke();
            return (result, Commit(source, target, temporary, hash, inPlace, job.Clock));
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

    // While the book is held nobody else has a temporary file of it in hand: what lies there was left by a run that was cut off.
    private static BookLock Hold(string target)
    {
        try
        {
            // Where only the folder counts for replacing a file, its own protection would be passed over.
            if (File.Exists(target) && new FileInfo(target).IsReadOnly)
            {
                throw BookNotWrittenException.For(Catalogue.BookIsProtected, null, Path.GetFileName(target));
            }

            var held = BookLock.TryTake(target) ?? throw BookNotWrittenException.For(Catalogue.BookIsBusy, null, Path.GetFileName(target));
            TemporaryFile.Sweep(target);
            return held;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw BookNotWrittenException.For(Catalogue.BookNotWritten, e, Path.GetFileName(target), e.Message);
        }
    }

    private static string Resolve(string path)
    {
        var full = Path.GetFullPath(path);
        return File.Exists(full) && File.ResolveLinkTarget(full, returnFinalTarget: true) is { } real ? real.FullName : full;
    }

    private static (T Result, bool Changed, UInt128 Hash) MakeInto<T>(
        string source, string temporary, string bookName, Func<FileStream, FileStream, string, (T, bool)> make)
    {
        using var book = OpenSource(source);
        using var output = new FileStream(temporary, FileMode.Create, FileAccess.ReadWrite, FileShare.None);
        var hash = ContentHash.Of(book);
        book.Position = 0;
        var (result, changed) = make(book, output, bookName);
        output.Flush(flushToDisk: true);
        return (result, changed, hash);
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

    private static string? Commit(string source, string target, string temporary, UInt128 hash, bool inPlace, TimeProvider clock)
    {
        RefuseIfChanged(source, hash);
        if (!OperatingSystem.IsWindows())
        {
            // A book keeps its owner; a new one belongs to whoever made it, and may be read by whoever may read what it was made of.
            if (File.Exists(target))
            {
                FileOwner.Keep(target, temporary);
            }

            File.SetUnixFileMode(temporary, File.GetUnixFileMode(File.Exists(target) ? target : source));
        }

        var backup = File.Exists(target) ? Backups.Add(target, clock) : null;
        if (inPlace && backup is not null)
        {
            // Copying a large book takes a while. What somebody saved meanwhile may be in no backup.
            RefuseIfChanged(source, hash);
            Backups.Remember(temporary, backup);
        }

        BookSwap.Move(temporary, target);
        return inPlace ? backup : null;
    }

    private static void RefuseIfChanged(string source, UInt128 hash)
    {
        using var now = OpenSource(source);
        if (ContentHash.Of(now) != hash)
        {
            throw BookNotWrittenException.For(Catalogue.BookChangedMeanwhile, null, Path.GetFileName(source));
        }
    }

    private sealed record Job(string Path, string? OutPath, bool DryRun, TimeProvider Clock, Action? BeforeCommit);
}
