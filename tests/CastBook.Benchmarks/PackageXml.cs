using System.Globalization;
using System.Text;

namespace CastBook.Benchmarks;

/// <summary>The parts of a book that hold it together.</summary>
internal static class PackageXml
{
    public const string Declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n";
    public const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Packages = "http://schemas.openxmlformats.org/package/2006";
    private const string Type = "application/vnd.openxmlformats-officedocument.spreadsheetml";

    public static string RootRelationships { get; } =
        $"{Declaration}<Relationships xmlns=\"{Packages}/relationships\"><Relationship Id=\"rId1\" Type=\"{Office}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>";

    /// <summary>Formats 0 to 5: as typed, heading, whole, two digits, a day, one digit.</summary>
    public static string Styles { get; } =
        $"{Declaration}<styleSheet xmlns=\"{Main}\"><numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"#,##0.0\"/></numFmts>"
        + "<fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/><family val=\"2\"/></font><font><b/><sz val=\"11\"/><name val=\"Calibri\"/><family val=\"2\"/></font></fonts>"
        + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>"
        + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
        + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs><cellXfs count=\"6\">"
        + "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
        + "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/>"
        + Format(3) + Format(4) + Format(14) + Format(164)
        + "</cellXfs><cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles><dxfs count=\"0\"/></styleSheet>";

    public static string ContentTypes(int sheets) =>
        $"{Declaration}<Types xmlns=\"{Packages}/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
        + $"<Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"{Type}.sheet.main+xml\"/>"
        + Each(sheets, i => $"<Override PartName=\"/xl/worksheets/sheet{i}.xml\" ContentType=\"{Type}.worksheet+xml\"/>")
        + $"<Override PartName=\"/xl/styles.xml\" ContentType=\"{Type}.styles+xml\"/><Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"{Type}.sharedStrings+xml\"/></Types>";

    public static string Workbook(IEnumerable<string> names) =>
        $"{Declaration}<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><bookViews><workbookView activeTab=\"0\"/></bookViews><sheets>"
        + string.Concat(names.Select((name, i) => Text($"<sheet name=\"{name}\" sheetId=\"{i + 1}\" r:id=\"rId{i + 1}\"/>")))
        + "</sheets><calcPr calcId=\"191029\"/></workbook>";

    public static string WorkbookRelationships(int sheets) =>
        $"{Declaration}<Relationships xmlns=\"{Packages}/relationships\">"
        + Each(sheets, i => $"<Relationship Id=\"rId{i}\" Type=\"{Office}/worksheet\" Target=\"worksheets/sheet{i}.xml\"/>")
        + Text($"<Relationship Id=\"rId{sheets + 1}\" Type=\"{Office}/styles\" Target=\"styles.xml\"/>")
        + Text($"<Relationship Id=\"rId{sheets + 2}\" Type=\"{Office}/sharedStrings\" Target=\"sharedStrings.xml\"/></Relationships>");

    /// <summary>The name of a column, from 0.</summary>
    public static string Column(int index) => ((char)('A' + index)).ToString();

    private static string Each(int count, Func<int, FormattableString> text) =>
        Enumerable.Range(1, count).Aggregate(new StringBuilder(), (all, i) => all.Append(Text(text(i)))).ToString();

    private static string Format(int number) =>
        Text($"<xf numFmtId=\"{number}\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
