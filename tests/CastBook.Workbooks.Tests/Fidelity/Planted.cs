using System.IO.Compression;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>A book with one part changed, everything else as it is.</summary>
internal static class Planted
{
    public static byte[] In(byte[] book, string part, Func<byte[], byte[]?> change) => Rezip(book, (name, content) => name == part ? change(content) : content);

    /// <summary>The book zipped anew, order and time stamps kept; a part for which <paramref name="change"/> gives null is left out.</summary>
    public static byte[] Rezip(byte[] book, Func<string, byte[], byte[]?> change)
    {
        var output = new MemoryStream();
        using (var source = new ZipArchive(new MemoryStream(book)))
        using (var target = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in source.Entries)
            {
                using var content = new MemoryStream();
                using (var stream = entry.Open())
                {
                    stream.CopyTo(content);
                }

                if (change(entry.FullName, content.ToArray()) is { } changed)
                {
                    var copy = target.CreateEntry(entry.FullName);
                    (copy.LastWriteTime, copy.ExternalAttributes) = (entry.LastWriteTime, entry.ExternalAttributes);
                    using var stream = copy.Open();
                    stream.Write(changed);
                }
            }
        }

        return output.ToArray();
    }
}
