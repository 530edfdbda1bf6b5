using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>The well-known ways to spoil somebody's workbook while writing into it, one test or more each, numbered as a list to tick off.</summary>
public sealed class PitfallTests
{
    private const string Sheet = "xl/worksheets/sheet1.xml";
    private const string Rich = "01_rich_excel365_like.xlsx";

    private static readonly string[] PlainHeadings = ["Piece", "Qty", "Weight", "Metal"];

    [Fact]
    public void P01_LineEndsTabsAndReturns_AreKeptAsTheyAreWritten()
    {
        const string Validation = "<dataValidations count=\"1\"><dataValidation type=\"list\" prompt=\"one&#10;two&#9;three\" sqref=\"A2\"><formula1>\"a,b\"</formula1></dataValidation></dataValidations>";

        var xml = Xml(Fill(Plain(s => s.Row(new Cell(Xml: "<c r=\"{r}\" t=\"inlineStr\"><is><t>long&#13;\r\nring</t></is></c>"), 1, 2.5, "sterling").After(Validation))));

        xml.ShouldContain("prompt=\"one&#10;two&#9;three\"");
        xml.ShouldContain("<t>long&#13;\r\nring</t>");
    }

    [Fact]
    public void P02_StrictBook_GetsStrictNamespacesAndRelationships()
    {
        using var package = Open(Fill(File.ReadAllBytes(TestBooks.PathOf("04_strict_iso29500.xlsx"))));

        var relations = package.Sheets.SelectMany(s => package.Relationships(s.PartName)).Concat(package.Relationships(package.WorkbookPart)).ToList();
        relations.ShouldContain(r => r.Is("comments"));
        relations.ShouldAllBe(r => !r.Type.StartsWith("http://schemas.openxmlformats.org/", StringComparison.Ordinal));
        foreach (var sheet in package.Sheets)
        {
            RawXml.TextOf(package.Read(sheet.PartName)).ShouldContain("http://purl.oclc.org/ooxml/spreadsheetml/main");
        }
    }

    [Fact]
    public void P03_PartsUnderOtherNamesAndCases_AreFoundByRelationship()
    {
        var book = Planted.In(Plain(), "xl/_rels/workbook.xml.rels", content =>
            Bytes(Text(content).Replace("worksheets/sheet1.xml", "/XL/Worksheets/SHEET1.xml", StringComparison.Ordinal)));

        var filled = Fill(book);

        BookDiff.Of(book, filled).Losses.ShouldBeEmpty();
        Xml(filled).ShouldContain("castbook:");
    }

    [Fact]
    public void P04_CellsWithoutReferences_AreCountedAndOursStandBesideThem()
    {
        var book = Planted.In(Plain(), Sheet, content => Bytes(System.Text.RegularExpressions.Regex.Replace(Text(content), " r=\"[A-Z]*[0-9]+\"", "")));

        var filled = Filled.From(book);

        filled.Row("Sheet1", 1).ShouldBe([.. PlainHeadings, "Metal each (g)", "Metal (g)", "Flask", "Mix", "Burnout (h)", "Checks"]);
        filled["Sheet1", "J2"].ShouldBeOfType<string>().ShouldStartWith("stop: ");
        BookDiff.Of(book, filled.Bytes).Losses.ShouldBeEmpty();
    }

    [Fact]
    public void P05_NoteDrawing_StandsBeforeTablesAndExtensions()
    {
        var xml = Xml(Fill(Plain(s => s.After("<pageMargins left=\"1\" right=\"1\" top=\"1\" bottom=\"1\" header=\"0\" footer=\"0\"/>").Table("A1:D3", PlainHeadings))));

        InOrder(xml, "<cols>", "<sheetData>", "<conditionalFormatting ", "<pageMargins ", "<legacyDrawing ", "<tableParts ");
    }

    [Theory]
    [InlineData(65_480)]
    [InlineData(64_990)]
    public void P06_BookFullOfFormats_GetsNoMoreThanItHolds(int formats)
    {
        const string Format = "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>";
        var book = Planted.In(Plain(), "xl/styles.xml", content => Bytes(Text(content).Replace(
            "<cellXfs count=\"4\">", $"<cellXfs count=\"{formats + 4}\">" + string.Concat(Enumerable.Repeat(Format, formats)), StringComparison.Ordinal)));

        var filled = Fill(book);

        var styles = RawXml.Read(Part(filled, "xl/styles.xml")).All().First(e => e.LocalName == "cellXfs");
        styles.Elements.Count().ShouldBeLessThanOrEqualTo(65_490);
        styles["count"].ShouldBe(styles.Elements.Count().ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void P07_TextThatLooksLikeAnEscapeOrAFormula_StaysText()
    {
        var filled = Filled.From(Nights.WholeBuilder(s => s.Row("Tarn", "_x005F_x000D_ =clasp ", 1, 2.3, "harbour resin", "house sterling", 24, 12, 6, null)).Build());

        filled.SheetXml("Trees").ShouldContain("_x005F_x000D_ =clasp");
        filled.SheetXml("Trees").ShouldNotContain("<f>");
    }

    [Fact]
    public void P08_FormulasOfTheShop_AreNeitherMovedNorReplaced()
    {
        var book = File.ReadAllBytes(TestBooks.PathOf(Rich));
        var filled = Fill(book, Rich);

        Formulas(Xml(filled)).ShouldBe(Formulas(Xml(book)));
        Part(filled, "xl/calcChain.xml").ShouldBe(Part(book, "xl/calcChain.xml"));
    }

    [Fact]
    public void P09_BookWithFormulas_IsComputedAnewWhenOpened_OneWithoutIsNot()
    {
        Text(Part(Fill(File.ReadAllBytes(TestBooks.PathOf(Rich)), Rich), "xl/workbook.xml")).ShouldContain("<calcPr calcId=\"191029\" fullCalcOnLoad=\"1\"/>");
        Text(Part(Fill(Plain()), "xl/workbook.xml")).ShouldNotContain("fullCalcOnLoad");
    }

    [Fact]
    public void P10_Table_IsWidenedInAllPlacesAndItsTotalsRowIsLeftAlone()
    {
        var filled = Fill(Plain(s => s.Row("Total", 26, null, null).Table("A1:D4", PlainHeadings, totals: true)));

        var table = RawXml.Read(Part(filled, "xl/tables/table1.xml")).Element("table")!;
        table["ref"].ShouldBe("A1:J4");
        table.Element("autoFilter")!["ref"].ShouldBe("A1:J3");
        var columns = table.Element("tableColumns")!;
        columns["count"].ShouldBe("10");
        columns.Elements.Select(c => c["name"]).ShouldBe(Filled.From(filled).Row("Sheet1", 1));
        columns.Elements.Select(c => c["id"]).ShouldBeUnique();
        Xml(filled).ShouldNotContain("r=\"E4\"");
    }

    [Fact]
    public void P11_NotesOnABookWithout_GetAllThatNotesNeed()
    {
        var filled = Fill(Plain());
        using var package = Open(filled);
        var relations = package.Relationships(Sheet);

        var notes = RawXml.Read(package.Read(relations.Single(r => r.Is("comments")).Target)).All().Count(e => e.LocalName == "comment");
        var drawing = relations.Single(r => r.Is("vmlDrawing"));
        notes.ShouldBeGreaterThan(0);
        Text(package.Read(drawing.Target)).Split("ObjectType=\"Note\"").Length.ShouldBe(notes + 1);
        Xml(filled).ShouldContain($"r:id=\"{drawing.Id}\"/>");
        package.ContentType(drawing.Target).ShouldBe("application/vnd.openxmlformats-officedocument.vmlDrawing");
    }

    [Fact]
    public void P12_HiddenRowsMergesAndWhatWeDoNotKnow_AreKept()
    {
        var book = File.ReadAllBytes(TestBooks.PathOf(Rich));
        var filled = Fill(book, Rich);

        var xml = Xml(filled);
        xml.ShouldContain("<row r=\"16\" spans=\"1:15\" hidden=\"1\" x14ac:dyDescent=\"0.35\">");
        xml.ShouldContain("<c r=\"O9\" t=\"e\" vm=\"1\"><v>#VALUE!</v></c>");
        xml.ShouldContain("<c r=\"B21\" t=\"str\" cm=\"1\">");
        xml.Split("AlternateContent").Length.ShouldBe(Xml(book).Split("AlternateContent").Length);
        Part(filled, "docProps/core.xml").ShouldBe(Part(book, "docProps/core.xml"));
    }

    [Fact]
    public void P13_MacroBook_KeepsItsContentType()
    {
        const string Name = "06b_libreoffice_macro_ext.xlsm";
        var book = File.ReadAllBytes(TestBooks.PathOf(Name));
        using var before = Open(book);
        using var after = Open(Fill(book, Name));

        after.ContentType(after.WorkbookPart).ShouldBe(before.ContentType(before.WorkbookPart));
        after.ContentType(after.WorkbookPart).ShouldContain("macroEnabled");
    }

    private static byte[] Plain(Action<SheetBuilder>? more = null) => new BookBuilder().Sheet("Sheet1", s =>
    {
        s.Row(PlainHeadings).Row("Otter ring", 6, 2.1, "sterling").Row("Fern stud", 20, 0.3, "sterling");
        more?.Invoke(s);
    }).Build().ToArray();

    private static byte[] Fill(byte[] book, string name = "night.xlsx") => Filled.From(book, name).Bytes;

    private static BookPackage Open(byte[] book) => BookPackage.Open(new MemoryStream(book));

    private static byte[] Part(byte[] book, string part)
    {
        using var package = Open(book);
        return package.Read(part);
    }

    private static string Xml(byte[] book) => Text(Part(book, Sheet));

    private static string Text(byte[] part) => Encoding.UTF8.GetString(part);

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static List<string> Formulas(string xml) => [.. RawXml.Read(Bytes(xml)).All().Where(e => e.LocalName == "c" && e.Element("f") is not null)
        .Select(c => $"{c["r"]} {string.Concat(c.Element("f")!.Attributes.Select(a => a.Raw))} {c.InnerText}")];

    private static void InOrder(string xml, params string[] pieces)
    {
        var places = pieces.Select(p => xml.IndexOf(p, StringComparison.Ordinal)).ToList();
        places.ShouldAllBe(at => at >= 0);
        places.ShouldBeInOrder();
    }
}
