using System.Globalization;
using System.IO.Compression;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>A workbook of a shop that never was, the same for the same seed: the list and much else in random places.</summary>
internal sealed class RandomBook
{
    internal const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    internal const string SpreadsheetType = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private readonly List<(string Name, byte[] Content)> parts = [];
    private readonly List<string> overrides = [];
    private readonly List<string> definedNames = [];
    private readonly List<(string Type, string Target, bool External)> workbookRelations = [];

    private RandomBook(int seed)
    {
        Random = new Random(seed);
        Scribe = new Scribe(Random);
        HasStyles = Chance(85);
    }

    public Random Random { get; }

    public Scribe Scribe { get; }

    public bool HasStyles { get; }

    /// <summary>Cells with formulas, as the calc chain lists them: sheet number and address.</summary>
    public List<(int Sheet, string Address)> Formulas { get; } = [];

    public SharedTexts Texts { get; } = new();

    public static byte[] Make(int seed) => new RandomBook(seed).Build();

    public bool Chance(int percent) => Random.Next(100) < percent;

    /// <summary>Adds a part with its content type; parts stand in the zip in the order of adding.</summary>
    public void Add(string name, byte[] content, string? type)
    {
        parts.Add((name, content));
        if (type is not null)
        {
            overrides.Add($"<Override PartName=\"/{name}\" ContentType=\"{type}\"/>");
        }
    }

    public void Name(string xml) => definedNames.Add(xml);

    public void RelateWorkbook(string type, string target) => workbookRelations.Add((type, target, false));

    /// <summary>The relationships of a part; ids count from 1 in order.</summary>
    public void AddRelations(string part, IReadOnlyList<(string Type, string Target, bool External)> relations)
    {
        var slash = part.LastIndexOf('/');
        Add($"{part[..(slash + 1)]}_rels/{part[(slash + 1)..]}.rels", Scribe.Plain(
            "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + string.Concat(relations.Select((r, i) =>
                $"<Relationship Id=\"rId{i + 1}\" Type=\"{(r.Type.Contains(':', StringComparison.Ordinal) ? r.Type : $"{Office}/{r.Type}")}\" Target=\"{r.Target}\"{(r.External ? " TargetMode=\"External\"" : "")}/>"))
            + "</Relationships>"), null);
    }

    private byte[] Build()
    {
        var count = Random.Next(1, 5);
        var list = Random.Next(count);
        var names = new List<string>();
        for (var i = 0; i < count; i++)
        {
            var name = i == list ? Pick("Orders", "Night & day", "Liste d'été", "pieces 1") : Pick("Prices", "Notes", "Shop", "Stock") + (i > list ? " 2" : "") + (i > list + 1 ? "b" : "");
            name = names.Contains(name) ? $"Sheet {i}" : name == "Shop 2" ? "Shop" : name;
            names.Add(names.Contains(name) ? $"Sheet {i}" : name);
        }

        for (var i = 0; i < count; i++)
        {
            var part = Random.Next(3) == 0 ? $"xl/worksheets/Blatt_{i + 1}.xml" : $"xl/worksheets/sheet{i + 1}.xml";
            workbookRelations.Add(("worksheet", Random.Next(4) == 0 ? "/" + part : part[3..], false));
            new RandomSheet(this, i + 1, names[i], part).Write(i == list);
        }

        AddRest(names);
        return Zip();
    }

    private string Pick(params string[] choices) => choices[Random.Next(choices.Length)];

    private void AddRest(List<string> names)
    {
        Add("xl/sharedStrings.xml", Scribe.Spreadsheet(Texts.ToXml()), SpreadsheetType + "sharedStrings+xml");
        RelateWorkbook("sharedStrings", "sharedStrings.xml");
        if (HasStyles)
        {
            Add("xl/styles.xml", Scribe.Spreadsheet(RandomParts.Styles), SpreadsheetType + "styles+xml");
            RelateWorkbook("styles", "styles.xml");
        }

        if (Formulas.Count > 0 && Chance(60))
        {
            Add("xl/calcChain.xml", Scribe.Spreadsheet(
                "<~calcChain {xmlns}>" + string.Concat(Formulas.Select(f => $"<~c r=\"{f.Address}\" i=\"{f.Sheet}\"/>")) + "</~calcChain>"), SpreadsheetType + "calcChain+xml");
            RelateWorkbook("calcChain", "calcChain.xml");
        }

        if (Chance(40))
        {
            Add("customXml/item1.xml", "<bench xmlns=\"urn:wrenmoor\">  kept\r\n</bench>"u8.ToArray(), null);
            RelateWorkbook("customXml", "../customXml/item1.xml");
        }

        Add("docProps/app.xml", Scribe.Plain("<Properties xmlns=\"http://schemas.openxmlformats.org/officeDocument/2006/extended-properties\"><Application>Shop</Application></Properties>"),
            "application/vnd.openxmlformats-officedocument.extended-properties+xml");
        Add("xl/workbook.xml", Scribe.Spreadsheet(Workbook(names)), SpreadsheetType + "sheet.main+xml");
        AddRelations("xl/workbook.xml", workbookRelations);
        AddRelations("", [("extended-properties", "docProps/app.xml", false), ("officeDocument", Chance(30) ? "/xl/workbook.xml" : "xl/workbook.xml", false)]);
    }

    private string Workbook(List<string> names) => $"<~workbook {{xmlns}}{(Scribe.IsStrict ? " conformance=\"strict\"" : "")}>"
        + (Chance(50) ? "<~workbookPr defaultThemeVersion=\"166925\"/>" : "")
        + (Chance(30) ? "<mc:AlternateContent xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\"><mc:Choice Requires=\"x15\" xmlns:x15=\"http://schemas.microsoft.com/office/spreadsheetml/2010/11/main\"><x15ac:absPath url=\"C:\\Shop\\\" xmlns:x15ac=\"http://schemas.microsoft.com/office/spreadsheetml/2010/11/ac\"/></mc:Choice></mc:AlternateContent>" : "")
        + (Chance(50) ? "<~bookViews><~workbookView xWindow=\"0\" yWindow=\"0\" activeTab=\"0\"/></~bookViews>" : "")
        + "<~sheets>" + string.Concat(names.Select((n, i) =>
            $"<~sheet name=\"{System.Security.SecurityElement.Escape(n)}\" sheetId=\"{((i + 1) * 3).ToString(CultureInfo.InvariantCulture)}\" r:id=\"rId{i + 1}\"/>")) + "</~sheets>"
        + (definedNames.Count > 0 ? "<~definedNames>" + string.Concat(definedNames) + "</~definedNames>" : "")
        + (Chance(50) ? "<~calcPr calcId=\"191029\"/>" : "")
        + (Chance(30) ? "<~extLst><~ext uri=\"{140A7094-0E35-4892-8432-C4D2E57EDEB5}\" xmlns:x15=\"http://schemas.microsoft.com/office/spreadsheetml/2010/11/main\"><x15:workbookPr chartTrackingRefBase=\"1\"/></~ext></~extLst>" : "")
        + "</~workbook>";

    private byte[] Zip()
    {
        var types = Scribe.Plain("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"xml\" ContentType=\"application/xml\"/><Default Extension=\"bin\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings\"/>"
            + (parts.Any(p => p.Name.EndsWith(".vml", StringComparison.Ordinal)) ? "<Default Extension=\"vml\" ContentType=\"application/vnd.openxmlformats-officedocument.vmlDrawing\"/>" : "")
            + string.Concat(overrides) + "</Types>");
        parts.Insert(Random.Next(2) == 0 ? 0 : parts.Count, ("[Content_Types].xml", types));
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts)
            {
                var entry = zip.CreateEntry(name, Chance(20) ? CompressionLevel.NoCompression : CompressionLevel.Fastest);
                entry.LastWriteTime = new DateTimeOffset(2025, 1, 1, 0, 0, 0, TimeSpan.Zero).AddMinutes(2 * Random.Next(100_000));
                using var part = entry.Open();
                part.Write(content);
            }
        }

        return stream.ToArray();
    }
}
