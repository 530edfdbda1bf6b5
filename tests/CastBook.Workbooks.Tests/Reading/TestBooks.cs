using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Reading;

/// <summary>The workbooks that lie beside the tests.</summary>
internal static class TestBooks
{
    public static string PathOf(string name) => Path.Combine(AppContext.BaseDirectory, "Books", name);

    public static MemoryStream Open(string name) => new(File.ReadAllBytes(PathOf(name)));

    public static BookReading Read(string name) => BookReader.Read(Open(name), BookSettings.None, name);

    public static BookReading Read(MemoryStream book) => BookReader.Read(book, BookSettings.None);
}
