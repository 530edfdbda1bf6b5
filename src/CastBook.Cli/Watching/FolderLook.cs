using System.Text.RegularExpressions;
using CastBook.Workbooks.Files;

namespace CastBook.Cli.Watching;

/// <summary>A full look at a folder: the workbooks in it, and those of which a program that keeps folders in step made two.</summary>
internal static partial class FolderLook
{
    // Set on files of which only the name lies here while the content lies elsewhere; opening them would fetch them.
    private const FileAttributes Elsewhere = FileAttributes.Offline | (FileAttributes)0x0040_0000 | (FileAttributes)0x0004_0000;

    /// <summary>Looks.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="subFolders">Whether folders in it are looked into too.</param>
    /// <returns>The workbooks by name, and the copies in conflict with the book they were made of.</returns>
    public static (IReadOnlyList<SeenBook> Books, IReadOnlyList<(SeenBook Copy, SeenBook? Of)> Conflicts) At(string folder, bool subFolders)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = subFolders, IgnoreInaccessible = true, AttributesToSkip = Elsewhere | FileAttributes.System };
        var books = new DirectoryInfo(folder).EnumerateFiles("*", options)
            .Where(f => MayBeBook(Path.GetRelativePath(folder, f.FullName)))
            .Select(Seen).OfType<SeenBook>()
            .OrderBy(b => b.Path, StringComparer.Ordinal).ToList();
        var byPath = books.ToDictionary(b => b.Path, StringComparer.Ordinal);
        var conflicts = books.Select(b => (Copy: b, Of: ConflictOf(b, byPath)))
            .Where(c => c.Of is not null || Named().IsMatch(c.Copy.Name)).ToList();
        var aside = conflicts.SelectMany(c => new[] { c.Copy, c.Of }).OfType<SeenBook>().ToHashSet();
        return ([.. books.Where(b => !aside.Contains(b))], conflicts);
    }

    /// <summary>Whether a file may be a book, by its name: none of the little files of CastBook and of office programs.</summary>
    /// <param name="name">Its name, with the folders between it and the watched one.</param>
    public static bool MayBeBook(string name) =>
        Path.GetExtension(name).ToUpperInvariant() is ".XLSX" or ".XLSM"
        && !OwnerFile.IsOwnerFile(Path.GetFileName(name))
        && !Path.GetFileNameWithoutExtension(name).EndsWith(BookSwap.BesideMark, StringComparison.OrdinalIgnoreCase)
        && !name.Split(Path.DirectorySeparatorChar).Any(part => part.StartsWith('.'));

    // A file may be gone again before it is looked at.
    private static SeenBook? Seen(FileInfo file)
    {
        try
        {
            return new SeenBook(file.FullName, file.Length, file.LastWriteTimeUtc);
        }
        catch (IOException)
        {
            return null;
        }
    }

    private static SeenBook? ConflictOf(SeenBook copy, Dictionary<string, SeenBook> books)
    {
        var stem = Path.GetFileNameWithoutExtension(copy.Name);
        var match = Suffix().Match(stem);
        var original = match.Success ? Path.Combine(Path.GetDirectoryName(copy.Path)!, stem[..match.Index] + Path.GetExtension(copy.Name)) : "";
        return books.GetValueOrDefault(original);
    }

    // "night (Ann's conflicted copy 2026-12-01)", "night-safeBackup-0001", "night (1)", and with the computer's name in
    // capitals, "night-DESKTOP-4711": only where the book without it lies beside.
    [GeneratedRegex(@"((?i: \([^)]*conflicted copy[^)]*\)|-safeBackup-\d+)| \(\d+\)|-[A-Z][A-Z0-9]*(-[A-Z0-9]+)+)$")]
    private static partial Regex Suffix();

    [GeneratedRegex(@"( \([^)]*conflicted copy[^)]*\)|-safeBackup-\d+)\.", RegexOptions.IgnoreCase)]
    private static partial Regex Named();
}
