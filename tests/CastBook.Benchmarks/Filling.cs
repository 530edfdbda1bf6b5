using CastBook.Workbooks;
using CastBook.Workbooks.Settings;

namespace CastBook.Benchmarks;

/// <summary>The job itself, in memory.</summary>
internal static class Filling
{
    private const string BookName = "large.xlsx";

    /// <summary>Fills a book.</summary>
    /// <param name="book">The book.</param>
    /// <returns>The filled book.</returns>
    public static byte[] Run(byte[] book)
    {
        using var input = new MemoryStream(book, writable: false);
        using var output = new MemoryStream(book.Length * 2);
        Run(input, output);
        return output.ToArray();
    }

    /// <summary>Fills a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="output">Where the filled book goes.</param>
    public static void Run(Stream book, Stream output) => BookFiller.Fill(book, output, BookName, BookSettings.None);
}
