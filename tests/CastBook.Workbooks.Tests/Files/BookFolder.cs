namespace CastBook.Workbooks.Tests.Files;

/// <summary>A folder of its own for one test, deleted afterwards.</summary>
internal sealed class BookFolder : IDisposable
{
    public BookFolder() => Path = Directory.CreateTempSubdirectory("castbook-test-").FullName;

    public string Path { get; }

    /// <summary>What stands in the folder, in order of names.</summary>
    public IEnumerable<string> Names => Directory.GetFileSystemEntries(Path).Select(p => System.IO.Path.GetFileName(p)).Order(StringComparer.Ordinal);

    /// <summary>Puts a small workbook with one piece into the folder.</summary>
    public string Book(Func<BookBuilder, BookBuilder>? more = null)
    {
        var builder = new BookBuilder().Sheet("Pieces", s => s
            .Row("Piece", "Qty", "Wax weight (g)", "Alloy").Row("Otter ring", 6, 4.35, "Sterling 925"));
        using var book = (more?.Invoke(builder) ?? builder).Build();
        var path = System.IO.Path.Combine(Path, "night.xlsx");
        System.IO.File.WriteAllBytes(path, book.ToArray());
        return path;
    }

    /// <summary>Puts a file of text into the folder.</summary>
    public string File(string name, string content)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        System.IO.File.WriteAllText(path, content);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    /// <summary>A clock that stands at 2026-12-01 19:54.</summary>
    internal sealed class Clock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(2026, 12, 1, 19, 54, 0, TimeSpan.Zero);
    }
}
