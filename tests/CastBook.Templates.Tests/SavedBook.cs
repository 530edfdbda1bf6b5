using System.IO.Compression;
using System.Xml.Linq;

namespace CastBook.Templates.Tests;

/// <summary>A book as it stands in a file, read without the library that made it.</summary>
internal sealed class SavedBook
{
    public static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace Rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private readonly List<string> strings;

    public SavedBook(byte[] bytes)
    {
        Bytes = bytes;
        using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
        foreach (var entry in zip.Entries)
        {
            using var part = entry.Open();
            using var copy = new MemoryStream();
            part.CopyTo(copy);
            Parts.Add(entry.FullName, copy.ToArray());
        }

        strings = [.. Xml("xl/sharedStrings.xml").Root!.Elements(Main + "si").Select(s => string.Concat(s.Descendants(Main + "t").Select(t => t.Value)))];
        var targets = Xml("xl/_rels/workbook.xml.rels").Root!.Elements().ToDictionary(r => (string)r.Attribute("Id")!, r => PartOf((string)r.Attribute("Target")!));
        foreach (var sheet in Xml("xl/workbook.xml").Descendants(Main + "sheet"))
        {
            Sheets.Add((string)sheet.Attribute("name")!, Xml(targets[(string)sheet.Attribute(Rel + "id")!]));
        }
    }

    public byte[] Bytes { get; }

    public Dictionary<string, byte[]> Parts { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, XDocument> Sheets { get; } = new(StringComparer.Ordinal);

    private static string PartOf(string target) => target.StartsWith('/') ? target[1..] : "xl/" + target;

    public static SavedBook Of(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return new SavedBook(stream.ToArray());
    }

    public static SavedBook Starter(StarterKind kind = StarterKind.Night, UnitHabit units = UnitHabit.Metric, bool withExamples = true) =>
        Of(s => StarterBooks.Write(s, kind, units, withExamples));

    public static SavedBook Demo() => Of(DemoNight.Write);

    public XDocument Xml(string part)
    {
        using var stream = new MemoryStream(Parts[part]);
        return XDocument.Load(stream);
    }

    /// <summary>What stands in a cell, words or digits as stored; empty where nothing does.</summary>
    public string Cell(string sheet, string reference)
    {
        var cell = Sheets[sheet].Descendants(Main + "c").FirstOrDefault(c => (string?)c.Attribute("r") == reference);
        return cell is null ? "" : Text(cell);
    }

    /// <summary>What stands in a row, from its first cell to its last.</summary>
    public List<string> Row(string sheet, int row) =>
        [.. Sheets[sheet].Descendants(Main + "row").Where(r => (int)r.Attribute("r")! == row).Elements(Main + "c").Select(Text)];

    /// <summary>What stands under a heading, down to the last row.</summary>
    public List<string> Under(string sheet, int headingRow, string heading)
    {
        var index = Row(sheet, headingRow).IndexOf(heading);
        var column = ((char)('A' + index)).ToString();
        var last = Sheets[sheet].Descendants(Main + "row").Max(r => (int)r.Attribute("r")!);
        return [.. Enumerable.Range(headingRow + 1, last - headingRow).Select(r => Cell(sheet, $"{column}{r}"))];
    }

    private string Text(XElement cell)
    {
        var value = (string?)cell.Element(Main + "v");
        return (string?)cell.Attribute("t") == "inlineStr" ? string.Concat(cell.Descendants(Main + "t").Select(t => t.Value))
            : value is null ? "" : (string?)cell.Attribute("t") == "s" ? strings[int.Parse(value, System.Globalization.CultureInfo.InvariantCulture)] : value;
    }
}
