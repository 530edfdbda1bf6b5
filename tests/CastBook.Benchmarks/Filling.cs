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
        BookFiller.Fill(input, output, BookName, BookSettings.None);
        return output.ToArray();
    }
}
