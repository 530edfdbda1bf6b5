using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;

namespace CastBook.Benchmarks;

/// <summary>What each row of the large book takes, worked out from the book itself and nothing of the product.</summary>
internal static class LargeBookMetal
{
    private static readonly Dictionary<string, double> AlloyDensities = ShopRows.Alloys.Skip(1).ToDictionary(a => (string)a[0]!, a => Convert.ToDouble(a[1], CultureInfo.InvariantCulture));
    private static readonly Dictionary<string, double> MaterialDensities = ShopRows.Materials.Skip(1).ToDictionary(m => (string)m[0]!, m => Convert.ToDouble(m[2], CultureInfo.InvariantCulture));

    /// <summary>The sheet row and the metal of one piece, in g.</summary>
    /// <param name="rows">How many rows the book has.</param>
    public static List<(int Row, double MetalEachGrams)> Rows(int rows)
    {
        using var zip = new ZipArchive(new MemoryStream(LargeBook.Make(rows, withFlasks: false)), ZipArchiveMode.Read);
        XNamespace main = PackageXml.Main;
        using var stringsPart = zip.GetEntry("xl/sharedStrings.xml")!.Open();
        using var sheetPart = zip.GetEntry("xl/worksheets/sheet1.xml")!.Open();
        var strings = XDocument.Load(stringsPart).Root!.Elements().Select(s => s.Value).ToList();
        var answers = new List<(int, double)>();
        foreach (var row in XDocument.Load(sheetPart).Descendants(main + "row").Skip(1))
        {
            var cells = row.Elements().ToDictionary(c => ((string)c.Attribute("r")!)[..1], c => c.Element(main + "v")!.Value);
            var material = strings[int.Parse(cells["E"], CultureInfo.InvariantCulture)];
            var alloy = strings[int.Parse(cells["F"], CultureInfo.InvariantCulture)];
            var weight = double.Parse(cells["D"], CultureInfo.InvariantCulture);
            answers.Add(((int)row.Attribute("r")!, weight / MaterialDensities[material] * AlloyDensities[alloy]));
        }

        return answers;
    }
}
