using System.Globalization;
using CastBook.Workbooks.Undoing;

namespace CastBook.Workbooks.Files;

/// <summary>The folder <c>.castbook</c> beside a book: dated copies of it, and which of them came before what CastBook wrote.</summary>
internal static class Backups
{
    private const int Kept = 20;
    private const int DaysKept = 30;
    private const string StampFormat = "yyyy-MM-dd HHmmss";

    /// <summary>A line for each book written: the hash of what was written, a blank, and the name of the backup made then.</summary>
    private const string WrittenFile = "written.txt";

    /// <summary>Copies a book into the folder of backups, and deletes old ones beyond those kept: the newest, and the first of each day.</summary>
    /// <param name="target">The book.</param>
    /// <param name="clock">For the backup's name.</param>
    /// <param name="needed">A backup that must not be deleted; null for none.</param>
    /// <returns>The backup.</returns>
    public static string Add(string target, TimeProvider clock, string? needed = null)
    {
        var folder = FolderOf(target);
        Directory.CreateDirectory(folder);
        var name = Path.GetFileNameWithoutExtension(target);
        var extension = Path.GetExtension(target);
        // The names tell the order, so a clock that was set back does not count: the newest stays the newest.
        var made = clock.GetLocalNow().DateTime;
        var number = 1;
        if (Aged(folder, name, extension) is [.., var newest] && newest.Made > made)
        {
            (made, number) = (newest.Made, newest.Number);
        }

        var stamp = made.ToString(StampFormat, CultureInfo.InvariantCulture);
        string backup;
        do
        {
            backup = Path.Combine(folder, number == 1 ? $"{name} {stamp}{extension}" : $"{name} {stamp} {number.ToString(CultureInfo.InvariantCulture)}{extension}");
            number++;
        }
        while (File.Exists(backup));
        // Under another name first: a copy that was cut off must not look like a backup.
        TemporaryFile.Sweep(backup);
        var temporary = TemporaryFile.Beside(backup);
        TemporaryFile.Copy(target, temporary);
        File.Move(temporary, backup);
        DeleteOld(folder, name, extension, needed);
        return backup;
    }

    /// <summary>The backups of a book, the newest first.</summary>
    /// <param name="book">Full path of the book.</param>
    public static IReadOnlyList<BookBackup> Of(string book)
    {
        var folder = FolderOf(book);
        return Directory.Exists(folder)
            ? [.. Aged(folder, Path.GetFileNameWithoutExtension(book), Path.GetExtension(book)).Select(b => new BookBackup(b.Path, b.Made, new FileInfo(b.Path).Length)).Reverse()]
            : [];
    }

    /// <summary>Remembers what a book became, so that it is known again while nobody else has touched it.</summary>
    /// <param name="written">The book as written, not in its place yet.</param>
    /// <param name="backup">The book as it was.</param>
    public static void Remember(string written, string backup)
    {
        // Added at the end, as a folder may hold thousands of books; a line that was cut off is no hash of anything.
        File.AppendAllLines(Path.Combine(Path.GetDirectoryName(backup)!, WrittenFile), [$"{HashOf(written)} {Path.GetFileName(backup)}"]);
    }

    /// <summary>Whether a content is what CastBook wrote into a book that has backups, now or before.</summary>
    /// <param name="book">Full path of the book.</param>
    /// <param name="hash">The hash of the content, as <see cref="ContentHash"/> makes it.</param>
    public static bool Knows(string book, UInt128 hash)
    {
        var written = Said(hash);
        return Lines(FolderOf(book)).Any(l => l.Hash == written);
    }

    /// <summary>The backup that is the book before CastBook first filled it; null where somebody touched the book since it was written, or the backup is gone.</summary>
    /// <param name="book">The book; stands at its start again.</param>
    /// <param name="caps">How much a book may ask of the machine.</param>
    public static string? OriginalOf(FileStream book, Caps? caps)
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
                else if (IsClean(backup, caps))
                {
                    return backup;
                }
            }
        }

        return null;
    }

    private static string FolderOf(string book) => Path.Combine(Path.GetDirectoryName(book)!, BookFile.BackupFolder);

    private static string HashOf(string file)
    {
        using var stream = File.OpenRead(file);
        return HashOf(stream);
    }

    private static bool IsClean(string file, Caps? caps)
    {
        using var stream = File.OpenRead(file);
        return BookUndo.IsClean(stream, caps);
    }

    private static string HashOf(Stream stream) => Said(ContentHash.Of(stream));

    private static string Said(UInt128 hash) => hash.ToString("x32", CultureInfo.InvariantCulture);

    private static IEnumerable<(string Hash, string Backup)> Lines(string folder)
    {
        var file = Path.Combine(folder, WrittenFile);
        return File.Exists(file)
            ? [.. File.ReadAllLines(file).Select(l => l.Split(' ', 2)).Where(l => l.Length == 2).Select(l => (l[0], l[1]))]
            : [];
    }

    /// <summary>Deletes the oldest backups of a book beyond those kept; never those of a book called "night 2026-03-01" beside "night".</summary>
    private static void DeleteOld(string folder, string name, string extension, string? needed)
    {
        var backups = Aged(folder, name, extension);
        var days = backups.GroupBy(b => b.Made.Date).TakeLast(DaysKept).Select(day => day.First().Path);
        // The first of all is the book as it was before CastBook came: it stays for good.
        var kept = backups.TakeLast(Kept).Select(b => b.Path).Concat(days).Append(backups[0].Path).Append(needed).ToHashSet(StringComparer.Ordinal);
        var gone = backups.Where(b => !kept.Contains(b.Path)).Select(b => b.Path).ToList();
        gone.ForEach(File.Delete);
        if (gone.Count > 0)
        {
            var left = Lines(folder).Where(l => File.Exists(Path.Combine(folder, l.Backup))).ToList();
            TemporaryFile.WriteLines(Path.Combine(folder, WrittenFile), left.Select(l => $"{l.Hash} {l.Backup}"));
        }
    }

    private static List<Dated> Aged(string folder, string name, string extension) =>
        [.. Directory.GetFiles(folder).Select(path => Age(path, name, extension)).OfType<Dated>().OrderBy(b => b.Made).ThenBy(b => b.Number)];

    /// <summary>When a backup was made, from its name: <c>night 2026-12-01 195400.xlsx</c>, or <c>… 195400 2.xlsx</c> for a second one; null for another file.</summary>
    private static Dated? Age(string path, string name, string extension)
    {
        var file = Path.GetFileName(path);
        if (!file.StartsWith(name + " ", StringComparison.Ordinal) || !file.EndsWith(extension, StringComparison.Ordinal)
            || file.Length < name.Length + 1 + StampFormat.Length + extension.Length)
        {
            return null;
        }

        var middle = file[(name.Length + 1)..^extension.Length];
        var rest = middle[StampFormat.Length..];
        var number = 1;
        return DateTime.TryParseExact(middle[..StampFormat.Length], StampFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var made)
            && (rest.Length == 0 || (rest[0] == ' ' && int.TryParse(rest.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out number)))
            ? new Dated(path, made, number)
            : null;
    }

    private sealed record Dated(string Path, DateTime Made, int Number);
}
