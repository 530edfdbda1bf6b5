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

    private BookLock(string file) => this.file = file;

    /// <summary>Takes the lock of a book; null while somebody else has it.</summary>
    /// <param name="book">Full path of the book.</param>
    public static BookLock? TryTake(string book)
    {
        var file = Path.Combine(Path.GetDirectoryName(book)!, $".{Path.GetFileName(book)}.busy");
        for (var tries = 0; tries < 2; tries++)
        {
            try
            {
                using var made = new StreamWriter(new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.Read));
                made.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Environment.MachineName} {Environment.ProcessId}"));
                return new BookLock(file);
            }
            catch (IOException) when (File.Exists(file))
            {
                if (!IsLeftBehind(file))
                {
                    return null;
                }

                // Renamed first: of two that find it left behind only one can.
                var aside = $"{file}.{Guid.NewGuid():N}.tmp";
                try
                {
                    File.Move(file, aside);
                    File.Delete(aside);
                }
                catch (IOException)
                {
                    return null;
                }
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => File.Delete(file);

    // By the file system's clock on both sides, so that two computers need not agree on the time.
    private static bool IsLeftBehind(string file)
    {
        var probe = $"{file}.{Guid.NewGuid():N}.tmp";
        try
        {
            if (IsOfADeadProcessHere(file))
            {
                return true;
            }

            File.WriteAllText(probe, "");
            return File.GetLastWriteTimeUtc(probe) - File.GetLastWriteTimeUtc(file) > LongestFill;
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

    private static bool IsOfADeadProcessHere(string file)
    {
        if (File.ReadAllText(file).Trim().Split(' ') is not [var machine, var id] || machine != Environment.MachineName
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
