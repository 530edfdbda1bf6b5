using System.Globalization;
using CastBook.Workbooks.Undoing;

namespace CastBook.Workbooks.Files;

/// <summary>The folder <c>.castbook</c> beside a book: dated copies of it, and which of them came before what CastBook wrote.</summary>
internal static class Backups
{
    private const int Kept = 20;
    private const string StampFormat = "yyyy-MM-dd HHmmss";

    /// <summary>A line for each book written: the hash of what was written, a blank, and the name of the backup made then.</summary>
    private const string WrittenFile = "written.txt";

    /// <summary>Copies a book into the folder of backups, and deletes the oldest beyond those kept.</summary>
    /// <param name="target">The book.</param>
    /// <param name="clock">For the backup's name.</param>
    /// <returns>The backup.</returns>
    public static string Add(string target, TimeProvider clock)
    {
        var folder = FolderOf(target);
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

    /// <summary>Remembers what a book became, so that it is known again while nobody else has touched it.</summary>
    /// <param name="written">The book as written, not in its place yet.</param>
    /// <param name="backup">The book as it was.</param>
    public static void Remember(string written, string backup)
    {
        var folder = Path.GetDirectoryName(backup)!;
        var lines = Lines(folder).Where(l => File.Exists(Path.Combine(folder, l.Backup))).Append((Hash: HashOf(written), Backup: Path.GetFileName(backup)));
        File.WriteAllLines(Path.Combine(folder, WrittenFile), [.. lines.Select(l => $"{l.Hash} {l.Backup}")]);
    }

    /// <summary>The backup that is the book before CastBook first filled it; null where somebody touched the book since it was written, or the backup is gone.</summary>
    /// <param name="book">The book; stands at its start again.</param>
    public static string? OriginalOf(FileStream book)
    {
        var folder = FolderOf(book.Name);
        var lines = Lines(folder).ToLookup(l => l.Hash, l => Path.Combine(folder, l.Backup), StringComparer.Ordinal);
        var known = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<string>([HashOf(book)]);
        book.Position = 0;
        while (open.TryDequeue(out var hash))
        {
            foreach (var backup in lines[hash].Where(b => known.Add(b) && File.Exists(b)))
            {
                var before = HashOf(backup);
                if (lines.Contains(before))
                {
                    // Written by CastBook itself: what came before that?
                    open.Enqueue(before);
                }
                else if (IsClean(backup))
                {
                    return backup;
                }
            }
        }

        return null;
    }

    private static string FolderOf(string book) => Path.Combine(Path.GetDirectoryName(book)!, ".castbook");

    private static string HashOf(string file)
    {
        using var stream = File.OpenRead(file);
        return HashOf(stream);
    }

    private static bool IsClean(string file)
    {
        using var stream = File.OpenRead(file);
        return BookUndo.IsClean(stream);
    }

    private static string HashOf(Stream stream) => ContentHash.Of(stream).ToString("x32", CultureInfo.InvariantCulture);

    private static IEnumerable<(string Hash, string Backup)> Lines(string folder)
    {
        var file = Path.Combine(folder, WrittenFile);
        return File.Exists(file)
            ? [.. File.ReadAllLines(file).Select(l => l.Split(' ', 2)).Where(l => l.Length == 2).Select(l => (l[0], l[1]))]
            : [];
    }

    /// <summary>Deletes the oldest backups of a book beyond those kept; never those of a book called "night 2026-03-01" beside "night".</summary>
    private static void DeleteOld(string folder, string name, string extension)
    {
        var backups = Directory.GetFiles(folder)
            .Select(path => (Path: path, Age: Age(Path.GetFileName(path), name, extension)))
            .Where(b => b.Age is not null)
            .OrderBy(b => b.Age!.Value.Stamp, StringComparer.Ordinal).ThenBy(b => b.Age!.Value.Number);
        foreach (var old in backups.SkipLast(Kept))
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
}
