using System.IO.Compression;
using System.Xml;

namespace CastBook.Benchmarks;

/// <summary>The cells of the list as stored, by reference, to check what was timed.</summary>
internal static class SavedCells
{
    private const string Sheet = "xl/worksheets/sheet1.xml";

    /// <summary>Reads them.</summary>
    /// <param name="book">The book.</param>
    public static Dictionary<string, string> Of(byte[] book)
    {
        using var zip = new ZipArchive(new MemoryStream(book), ZipArchiveMode.Read);
        using var part = zip.GetEntry(Sheet)!.Open();
        using var xml = XmlReader.Create(part);
        var cells = new Dictionary<string, string>(StringComparer.Ordinal);
        xml.ReadToFollowing("c", PackageXml.Main);
        while (!xml.EOF)
        {
            if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "c")
            {
                cells.Add(xml.GetAttribute("r")!, xml.ReadOuterXml()); // moves on to what follows the cell
            }
            else
            {
                xml.Read();
            }
        }

        return cells;
    }

    /// <summary>Requires that every cell of the book before stands unchanged in the book after.</summary>
    /// <exception cref="InvalidOperationException">One does not.</exception>
    public static void RequireEqual(Dictionary<string, string> before, Dictionary<string, string> after)
    {
        foreach (var (reference, cell) in before)
        {
            if (!after.TryGetValue(reference, out var now) || now != cell)
            {
                throw new InvalidOperationException($"Cell {reference} was {cell} and is {now ?? "missing"}: nothing was timed.");
            }
        }
    }
}
