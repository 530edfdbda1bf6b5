using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace CastBook.Benchmarks;

/// <summary>
/// A large book as an office program writes it, the same on every machine: shared strings, styles, cell references, row
/// spans, one column of formulas with their values. 20 columns; the list is a plain one.
/// </summary>
internal static class LargeBook
{
    /// <summary>The number of rows that the benchmark is about.</summary>
    public const int UsualRows = 10_000;

    /// <summary>As many rows as a shop of many years may have.</summary>
    public const int ManyRows = 100_000;

    /// <summary>Columns of the list.</summary>
    public const int Columns = 20;

    /// <summary>The rows that words on the command line ask for: <c>many</c>, else the usual number.</summary>
    public static int RowsIn(string[] words) => words.Contains("many") ? ManyRows : UsualRows;

    /// <summary>Makes the book.</summary>
    /// <param name="rows">Rows of the list.</param>
    /// <param name="withFlasks">Whether the shop's flasks are in the book, so that the night can be planned.</param>
    public static byte[] Make(int rows, bool withFlasks)
    {
        var strings = new StringTable();
        List<(string Name, string Xml)> sheets =
        [
            ("Pieces", PiecesXml.Make(rows, strings)),
            ("Alloys", ShopSheetXml.Make(strings, ShopRows.Alloys)),
            ("Materials", ShopSheetXml.Make(strings, ShopRows.Materials)),
        ];
        if (withFlasks)
        {
            sheets.Add(("Flasks", ShopSheetXml.Make(strings, ShopRows.Flasks)));
            sheets.Add(("Crucibles", ShopSheetXml.Make(strings, ShopRows.Crucibles)));
            sheets.Add(("Investments", ShopSheetXml.Make(strings, ShopRows.Investments)));
            sheets.Add(("Schedules", ShopSheetXml.Make(strings, ShopRows.Schedules)));
            sheets.Add(("Shop", ShopSheetXml.Make(strings, ShopRows.Settings)));
        }

        return Zip(sheets, strings);
    }

    private static byte[] Zip(List<(string Name, string Xml)> sheets, StringTable strings)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "[Content_Types].xml", PackageXml.ContentTypes(sheets.Count));
            Add(zip, "_rels/.rels", PackageXml.RootRelationships);
            Add(zip, "xl/workbook.xml", PackageXml.Workbook(sheets.Select(s => s.Name)));
            Add(zip, "xl/_rels/workbook.xml.rels", PackageXml.WorkbookRelationships(sheets.Count));
            for (var i = 0; i < sheets.Count; i++)
            {
                Add(zip, string.Create(CultureInfo.InvariantCulture, $"xl/worksheets/sheet{i + 1}.xml"), sheets[i].Xml);
            }

            Add(zip, "xl/styles.xml", PackageXml.Styles);
            Add(zip, "xl/sharedStrings.xml", strings.ToXml());
        }

        return bytes.ToArray();
    }

    private static void Add(ZipArchive zip, string name, string text)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = new DateTimeOffset(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
        using var part = entry.Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }
}
