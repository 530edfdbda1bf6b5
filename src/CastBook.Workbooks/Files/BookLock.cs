using System.Globalization;

namespace CastBook.Workbooks.Files;

/// <summary>
/// A small file beside a book, <c>.night.xlsx.busy</c>, that keeps two programs or two computers from filling it at once. It is
/// made in one step, which shared folders do too, and holds no longer than a while: who crashed does not keep the others out.
/// </summary>
internal sealed class BookLock : IDisposable
{
    private static readonly TimeSpan LongestFill = TimeSpan.FromMinutes(10);

    private readonly string file;
    private readonly string holder;

    private BookLock(string file, string holder) => (this.file, this.holder) = (file, holder);

    /// <summary>Takes the lock of a book; null while somebody else has it.</summary>
    /// <param name="book">Full path of the book.</param>
    public static BookLock? TryTake(string book)
    {
        var file = Path.Combine(Path.GetDirectoryName(book)!, $".{Path.GetFileName(book)}.busy");
        var holder = string.Create(CultureInfo.InvariantCulture, $"{Environment.MachineName} {Environment.ProcessId} {Guid.NewGuid():N}");
        for (var tries = 0; tries < 2; tries++)
        {
            if (TryMake(book, file, holder))
            {
                return new BookLock(file, holder);
            }

            if (HolderOf(file) is { } other && !(IsLeftBehind(book, file, other) && TakeAway(book, file, other)))
            {
                return null;
            }
        }

        return null;
    }

    // Written first and then given its name, which fails where the name is taken: a lock that says nothing of its holder, left by
    // one who was cut off between the two, would keep everybody out for a while.
    private static bool TryMake(string book, string file, string holder)
    {
        var made = TemporaryFile.Beside(book);
        File.WriteAllText(made, holder);
        try
        {
            return FreeName.TryGive(made, file);
        }
        catch (IOException)
        {
            // Somebody has it, or had it and swept this file away with what others left. Whether one may write here at all was seen before.
            return false;
        }
        finally
        {
            File.Delete(made);
        }
    }

    /// <summary>Takes a lock that was left behind away; one that somebody else has taken meanwhile stays.</summary>
    /// <param name="book">Full path of the book.</param>
    /// <param name="file">The lock's file.</param>
    /// <param name="leftBy">Who left it behind, as it says.</param>
    internal static bool TakeAway(string book, string file, string leftBy)
    {
        var only = $"{file}.left";
        try
        {
            // One at a time: of two that find it left behind, the slower one would take the lock of the faster one away. While this
            // one looks once more, nobody can take the lock, as its file is still there.
            using var held = new FileStream(only, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            if (HolderOf(file) != leftBy)
            {
                return false;
            }

            File.Delete(file);
            return true;
        }
        catch (IOException)
        {
            if (IsOld(book, only))
            {
                File.Delete(only);
            }

            return false;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (HolderOf(file) == holder)
        {
            File.Delete(file);
        }
    }

    private static string? HolderOf(string file)
    {
        try
        {
            return File.ReadAllText(file).Trim();
        }
        catch (IOException)
        {
            return null;
        }
    }

    private static bool IsLeftBehind(string book, string file, string holder) => IsOfADeadProcessHere(holder) || IsOld(book, file);

    // By the file system's clock on both sides, so that two computers need not agree on the time.
    private static bool IsOld(string book, string file)
    {
        var probe = TemporaryFile.Beside(book);
        try
        {
            File.WriteAllText(probe, "");
            return File.Exists(file) && File.GetLastWriteTimeUtc(probe) - File.GetLastWriteTimeUtc(file) > LongestFill;
        }
        catch (IOException)
        {
            return false;
        }
        finally
        {
            File.Delete(probe);
        }
    }

    private static bool IsOfADeadProcessHere(string holder)
    {
        if (holder.Split(' ') is not [var machine, var id, ..] || machine != Environment.MachineName
            || !int.TryParse(id, NumberStyles.None, CultureInfo.InvariantCulture, out var process))
        {
            return false;
        }

        try
        {
            using var alive = System.Diagnostics.Process.GetProcessById(process);
            return false;
        }
        catch (ArgumentException)
        {
            return true;
        }
    }
}
