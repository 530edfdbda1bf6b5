using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>What the rules look at, read once.</summary>
internal sealed class BookFacts
{
    private readonly Lazy<(int CellFormats, int Marks)> formats;
    private readonly Lazy<int> strings;
    private readonly Lazy<IReadOnlyList<TableFacts>> tables;

    /// <param name="package">The book.</param>
    /// <param name="sheetParts">The sheet parts to look into; the others are not ours and were not touched.</param>
    /// <param name="known">What is known of sheets already, by part.</param>
    public BookFacts(BookPackage package, IReadOnlyCollection<string> sheetParts, IReadOnlyDictionary<string, SheetFacts>? known = null)
    {
        Package = package;
        Sheets = [.. package.Sheets.Where(s => sheetParts.Contains(s.PartName, StringComparer.OrdinalIgnoreCase))
            .Select(s => known?.GetValueOrDefault(s.PartName) ?? SheetFacts.Read(package, s))];
        formats = new Lazy<(int, int)>(CountFormats);
        strings = new Lazy<int>(CountStrings);
        tables = new Lazy<IReadOnlyList<TableFacts>>(() => [.. package.Sheets.SelectMany(s => TableFacts.Of(package, s))]);
    }

    /// <summary>The book.</summary>
    public BookPackage Package { get; }

    /// <summary>The sheets looked into.</summary>
    public IReadOnlyList<SheetFacts> Sheets { get; }

    /// <summary>How many cell formats there are; a book without styles has one.</summary>
    public int CellFormats => formats.Value.CellFormats;

    /// <summary>How many differential formats there are.</summary>
    public int Marks => formats.Value.Marks;

    /// <summary>How many shared strings there are.</summary>
    public int Strings => strings.Value;

    /// <summary>The tables of all sheets.</summary>
    public IReadOnlyList<TableFacts> Tables => tables.Value;

    private (int CellFormats, int Marks) CountFormats()
    {
        if (Package.StylesPart is not { } name)
        {
            return (1, 0);
        }

        var part = new XmlPart(Package.Read(name));
        int Count(string section) => part.Child(part.Root, section) is { } element ? part.Children(element).Count : 0;
        return (Count("cellXfs"), Count("dxfs"));
    }

    private int CountStrings()
    {
        if (Package.SharedStringsPart is not { } name)
        {
            return 0;
        }

        using var part = Package.OpenPart(name);
        using var stream = XmlEncoding.ToUtf8(part);
        var scanner = new XmlScanner(stream);
        var count = 0;
        while (scanner.Next())
        {
            count += scanner.Kind != TagKind.End && scanner.LocalName.SequenceEqual("si"u8) ? 1 : 0;
            scanner.Drop();
        }

        return count;
    }
}
