namespace CastBook.Workbooks.Files;

/// <summary>Files in the making: beside what they will become, so that moving them there is one step, and named so that nobody takes them for a book.</summary>
public static class TemporaryFile
{
    /// <summary>A new name beside a file.</summary>
    /// <param name="target">Full path of what it will become.</param>
    public static string Beside(string target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return Path.Combine(Path.GetDirectoryName(target)!, $"{PrefixOf(target)}{Guid.NewGuid():N}.tmp");
    }

    /// <summary>Deletes what runs that were cut off left beside a file.</summary>
    /// <param name="target">Full path of the file; nobody may be making it just now.</param>
    public static void Sweep(string target)
    {
        ArgumentNullException.ThrowIfNull(target);
        var prefix = PrefixOf(target);
        foreach (var left in Directory.EnumerateFiles(Path.GetDirectoryName(target)!, ".*.tmp", new EnumerationOptions { AttributesToSkip = 0 })
            .Where(f => Path.GetFileName(f).StartsWith(prefix, StringComparison.Ordinal) && Path.GetFileName(f).Length == prefix.Length + 36))
        {
            File.Delete(left);
        }
    }

    /// <summary>Copies a file, and returns once the copy is on the disk.</summary>
    /// <param name="source">The file.</param>
    /// <param name="copy">Where the copy goes.</param>
    public static void Copy(string source, string copy)
    {
        File.Copy(source, copy, overwrite: true);
        using var written = new FileStream(copy, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        written.Flush(flushToDisk: true);
    }

    /// <summary>Writes a small file of text so that it is the old one or the new one, whole, whatever happens.</summary>
    /// <param name="target">Full path.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="newLine">What ends a line; the system's own where it is null.</param>
    public static void WriteLines(string target, IEnumerable<string> lines, string? newLine = null)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var temporary = Beside(target);
        using (var file = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
        {
            using (var writer = new StreamWriter(file, leaveOpen: true) { NewLine = newLine ?? Environment.NewLine })
            {
                foreach (var line in lines)
                {
                    writer.WriteLine(line);
                }
            }

            file.Flush(flushToDisk: true);
        }

        File.Move(temporary, target, overwrite: true);
    }

    private static string PrefixOf(string target) => $".{Path.GetFileName(target)}.";
}
