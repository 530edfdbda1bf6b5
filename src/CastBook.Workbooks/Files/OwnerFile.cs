using System.Text;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Files;

/// <summary>The little files that office programs put beside a workbook while it is open.</summary>
/// <remarks>
/// <c>~$name.xlsx</c> holds the owner's name as one length byte and text, then again in UTF-16;
/// <c>.~lock.name.xlsx#</c> holds it as the first of comma-separated fields.
/// A missing owner file does not prove that nobody has the workbook open.
/// </remarks>
public static class OwnerFile
{
    /// <summary>Who has the workbook open: a name, or <c>another program</c> where none can be read; null where no owner file stands beside it.</summary>
    /// <param name="workbookPath">Path of the workbook.</param>
    public static string? WhoHasOpen(string workbookPath)
    {
        ArgumentNullException.ThrowIfNull(workbookPath);
        var folder = Path.GetDirectoryName(Path.GetFullPath(workbookPath)) ?? "";
        var name = Path.GetFileName(workbookPath);
        string[] candidates = ["~$" + name, name.Length > 2 ? "~$" + name[2..] : "~$", $".~lock.{name}#"];
        foreach (var candidate in candidates.Select(c => Path.Combine(folder, c)).Where(File.Exists))
        {
            return NameIn(candidate) is { Length: > 0 } who ? who : RefusalWords.AnotherProgram;
        }

        return null;
    }

    /// <summary>Whether a file of this name is an owner file and no workbook.</summary>
    /// <param name="fileName">Name of the file, without its folder.</param>
    public static bool IsOwnerFile(string fileName)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        return fileName.StartsWith("~$", StringComparison.Ordinal)
            || (fileName.StartsWith(".~lock.", StringComparison.Ordinal) && fileName.EndsWith('#'));
    }

    private static string? NameIn(string ownerFile)
    {
        try
        {
            using var stream = new FileStream(ownerFile, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            Span<byte> bytes = stackalloc byte[256];
            var read = bytes[..stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
            return Path.GetFileName(ownerFile).StartsWith("~$", StringComparison.Ordinal)
                ? ShortName(read)
                : Encoding.UTF8.GetString(read).Split(',')[0].Trim();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The other program holds its owner file closed to everyone: that it exists is answer enough.
            return null;
        }
    }

    // The UTF-16 copy at byte 55 carries every script; the first copy is in the machine's own code page.
    private static string? ShortName(ReadOnlySpan<byte> bytes)
    {
        const int WideAt = 55;
        if (bytes.Length > WideAt && bytes[WideAt] is > 0 and <= 54 && bytes.Length >= WideAt + 2 + (2 * bytes[WideAt]))
        {
            return Encoding.Unicode.GetString(bytes.Slice(WideAt + 2, 2 * bytes[WideAt])).Trim();
        }

        return bytes.Length > 1 && bytes[0] < bytes.Length
            ? Encoding.Latin1.GetString(bytes.Slice(1, bytes[0])).Trim()
            : null;
    }
}
