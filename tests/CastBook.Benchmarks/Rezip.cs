using System.IO.Compression;

namespace CastBook.Benchmarks;

/// <summary>The floor: what any program pays that opens a book and saves it, whatever it does in between.</summary>
internal static class Rezip
{
    /// <summary>Inflates and deflates every part.</summary>
    /// <param name="book">The book.</param>
    /// <returns>The book again.</returns>
    public static byte[] Run(byte[] book)
    {
        using var output = new MemoryStream(book.Length);
        using var input = new MemoryStream(book);
        Run(input, output);
        return output.ToArray();
    }

    /// <summary>Inflates and deflates every part.</summary>
    /// <param name="book">The book.</param>
    /// <param name="output">Where the book goes again.</param>
    public static void Run(Stream book, Stream output)
    {
        using var source = new ZipArchive(book, ZipArchiveMode.Read, leaveOpen: true);
        using var target = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true);
        foreach (var part in source.Entries)
        {
            using var from = part.Open();
            using var to = target.CreateEntry(part.FullName, CompressionLevel.Optimal).Open();
            from.CopyTo(to);
        }
    }
}
