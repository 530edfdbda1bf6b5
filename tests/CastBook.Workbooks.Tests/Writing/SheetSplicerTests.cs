using System.Text;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Tests.Xml;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class SheetSplicerTests
{
    public static TheoryData<string> Workbooks =>
    [
        "01_rich_excel365_like.xlsx", "03_chart_pivot_slicer_totals.xlsx", "04_strict_iso29500.xlsx", "06b_libreoffice_macro_ext.xlsm",
        "07_exceljs_webform.xlsx", "09_sheetjs_export.xlsx", "11_spreadcheetah_noref.xlsx", "14_openxmlsdk_minimal.xlsx",
        "hostile/h04_huge_dimension.xlsx", "hostile/h13_no_cell_refs.xlsx", "hostile/h16_formula_injection_text.xlsx",
    ];

    [Theory]
    [MemberData(nameof(Workbooks))]
    public void Apply_NoEdits_CopiesEverySheetByteForByte(string name)
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(TestBooks.Open(name));
        package.Sheets.ShouldNotBeEmpty();
        foreach (var sheet in package.Sheets)
        {
            var part = package.Read(sheet.PartName);

            Splice(part, new SheetEdits()).ShouldBe(part, sheet.Name);
        }
    }

    [Fact]
    public void Apply_CellsThatStand_KeepTheirFormatAndTheirNeighbours() => ShouldBecome(
        """<row r="2" ht="20"><c r="A2" s="5" t="s"><v>3</v></c><c r="B2" s='7' cm="1"><f>1+1</f><v>2</v></c> <c r="C2" s="9"/></row>""",
        """<row r="2" ht="20"><c r="A2" s="5" t="s"><v>3</v></c><c r="B2" s="7"><v>4.5</v></c> <c r="C2" s="9" t="inlineStr"><is><t>hi</t></is></c></row>""",
        (2, 2, CellValue.Of(4.5)), (2, 3, CellValue.Of("hi")));

    [Fact]
    public void Apply_CellsBeforeBetweenAndAfter_StandInOrder() => ShouldBecome(
        """<row r="2"><c r="B2"><v>1</v></c><c r="D2"><v>2</v></c></row>""",
        """<row r="2"><c r="A2" s="8"><v>10</v></c><c r="B2"><v>1</v></c><c r="C2" s="8"><v>11</v></c><c r="D2"><v>2</v></c><c r="E2" s="8"><v>12</v></c><c r="AA2" s="8"/></row>""",
        (2, 27, CellValue.Empty), (2, 5, CellValue.Of(12)), (2, 1, CellValue.Of(10)), (2, 3, CellValue.Of(11)));

    [Fact]
    public void Apply_RowsBeforeBetweenAndAfter_StandInOrder() => ShouldBecome(
        """<row r="2"><c r="A2"/></row><row r="4"/>""",
        """<row r="1"><c r="A1" s="8"><v>1</v></c></row><row r="2"><c r="A2"/></row><row r="3"><c r="A3" s="8"><v>3</v></c></row><row r="4"/><row r="5"><c r="A5" s="8"><v>5</v></c></row><row r="7"><c r="A7" s="8"><v>7</v></c></row>""",
        (7, 1, CellValue.Of(7)), (5, 1, CellValue.Of(5)), (3, 1, CellValue.Of(3)), (1, 1, CellValue.Of(1)));

    [Theory]
    [InlineData("<row r=\"3\" s=\"2\" />", "<row r=\"3\" s=\"2\"><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    [InlineData("<row r=\"3\" spans=\"1:1\"></row>", "<row r=\"3\" spans=\"1:2\"><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    [InlineData("<row r=\"3\" spans=\"1:5\"></row>", "<row r=\"3\" spans=\"1:5\"><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    [InlineData("<row r=\"2\"></row><row r=\"3\"><c r=\"A3\" t=\"s\"><v>0</v></c></row >", "<row r=\"2\"></row><row r=\"3\"><c r=\"A3\" t=\"s\"><v>0</v></c><c r=\"B3\" s=\"8\"><v>1</v></c></row >")]
    [InlineData("<row r=\"3\"><c r=\"A3\"><f>A2</f><v>2</v></c></row ><row r=\"4\"><c r=\"A4\"/></row>", "<row r=\"3\"><c r=\"A3\"><f>A2</f><v>2</v></c><c r=\"B3\" s=\"8\"><v>1</v></c></row ><row r=\"4\"><c r=\"A4\"/></row>")]
    [InlineData("<row r=\"3\"><c r=\"A3\"/><!-- </row> <c r=\"A3\"/> --></row>", "<row r=\"3\"><c r=\"A3\"/><!-- </row> <c r=\"A3\"/> --><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    [InlineData("<row r=\"3\"><c r=\"A3\"/><c r=\"C3\"><v>5</v></c></row>", "<row r=\"3\"><c r=\"A3\"/><c r=\"B3\" s=\"8\"><v>1</v></c><c r=\"C3\"><v>5</v></c></row>")]
    [InlineData("<row r=\"3\"><c r=\"A3\"/><c r=\"B3\" s=\"6\"><v>5</v></c></row>", "<row r=\"3\"><c r=\"A3\"/><c r=\"B3\" s=\"6\"><v>1</v></c></row>")]
    [InlineData("<row r=\"3\"><c r=\"A3\" t=\"str\"><v>&lt;c r=</v></c></row>", "<row r=\"3\"><c r=\"A3\" t=\"str\"><v>&lt;c r=</v></c><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    [InlineData("<row r=\"3\"><extLst><ext/></extLst></row>", "<row r=\"3\"><c r=\"B3\" s=\"8\"><v>1</v></c><extLst><ext/></extLst></row>")]
    [InlineData("<row r=\"3\"><c r=\"A3\"/><extLst/></row>", "<row r=\"3\"><c r=\"A3\"/><c r=\"B3\" s=\"8\"><v>1</v></c><extLst/></row>")]
    [InlineData("<row/><row></row><row><c><v>1</v></c><c s=\"6\"><v>2</v></c><c/></row>", "<row/><row></row><row><c><v>1</v></c><c r=\"B3\" s=\"6\"><v>1</v></c><c/></row>")]
    [InlineData("<!-- <row r=\"9\"> --><row r='2'/>", "<!-- <row r=\"9\"> --><row r='2'/><row r=\"3\"><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    [InlineData("", "<row r=\"3\"><c r=\"B3\" s=\"8\"><v>1</v></c></row>")]
    public void Apply_OddRow_TakesTheCell(string before, string after) => ShouldBecome(before, after, (3, 2, CellValue.Of(1)));

    [Fact]
    public void Apply_EmptySheetData_IsOpened() => Splice("<worksheet><sheetData  /><x/></worksheet>", Cells((1, 1, CellValue.Of(1))))
        .ShouldBe("<worksheet><sheetData  ><row r=\"1\"><c r=\"A1\" s=\"8\"><v>1</v></c></row></sheetData><x/></worksheet>");

    [Fact]
    public void Apply_PrefixedSheet_WritesItsPrefix()
    {
        var edits = Cells((1, 1, CellValue.Of("a")), (2, 1, CellValue.Of(2)));
        edits.Insert("mergeCells", "<~mergeCells><~mergeCell ref=\"A1:B1\"/></~mergeCells>");

        Splice("<x:worksheet xmlns:x=\"u\"><x:sheetData><x:row r=\"1\"><x:c r=\"A1\"/></x:row></x:sheetData></x:worksheet>", edits).ShouldBe(
            "<x:worksheet xmlns:x=\"u\"><x:sheetData><x:row r=\"1\"><x:c r=\"A1\" t=\"inlineStr\"><x:is><x:t>a</x:t></x:is></x:c></x:row>"
            + "<x:row r=\"2\"><x:c r=\"A2\" s=\"8\"><x:v>2</x:v></x:c></x:row></x:sheetData>"
            + "<x:mergeCells><x:mergeCell ref=\"A1:B1\"/></x:mergeCells></x:worksheet>");
    }

    [Fact]
    public void Apply_Inserts_StandInTheOrderOfTheFormat()
    {
        var edits = new SheetEdits();
        edits.Insert("legacyDrawing", "<~legacyDrawing/>");
        edits.Insert("conditionalFormatting", "<~conditionalFormatting n=\"ours\"/>");
        edits.Insert("cols", "<~cols/>");

        Splice("<worksheet><sheetViews/><sheetData/><mergeCells/><conditionalFormatting/><pageMargins/><tableParts/></worksheet>", edits).ShouldBe(
            "<worksheet><sheetViews/><cols/><sheetData/><mergeCells/><conditionalFormatting n=\"ours\"/><conditionalFormatting/><pageMargins/><legacyDrawing/><tableParts/></worksheet>");
        Splice("<worksheet><sheetData/></worksheet>", edits).ShouldBe(
            "<worksheet><cols/><sheetData/><conditionalFormatting n=\"ours\"/><legacyDrawing/></worksheet>");
    }

    [Fact]
    public void Apply_ChangeOrInsert_ChangesWhatStandsAndElseInserts()
    {
        var edits = new SheetEdits();
        edits.ChangeOrInsert("cols", element => [.. element, .. "<!---->"u8], "<~cols n=\"new\"/>");

        Splice("<worksheet><cols><col/></cols><sheetData/></worksheet>", edits).ShouldBe("<worksheet><cols><col/></cols><!----><sheetData/></worksheet>");
        Splice("<worksheet><sheetData/></worksheet>", edits).ShouldBe("<worksheet><cols n=\"new\"/><sheetData/></worksheet>");
    }

    [Fact]
    public void Apply_ChangeToNothing_RemovesEachElementOfTheName()
    {
        var edits = new SheetEdits();
        edits.Change("conditionalFormatting", element => element.AsSpan().IndexOf("ours"u8) < 0 ? element : null);

        Splice("<worksheet><sheetData/><conditionalFormatting>ours</conditionalFormatting><conditionalFormatting>theirs</conditionalFormatting></worksheet>", edits)
            .ShouldBe("<worksheet><sheetData/><conditionalFormatting>theirs</conditionalFormatting></worksheet>");
    }

    [Fact]
    public void Set_TheSameCellTwice_TheLastWordWins()
    {
        var edits = Cells((1, 2, CellValue.Of(1)), (1, 1, CellValue.Of(2)), (1, 2, CellValue.Of(3)));

        Collected(edits, 1).Select(c => (c.Column, c.Value.Number)).ShouldBe([(1, 2d), (2, 3d)]);
    }

    [Fact]
    public void Apply_WideEncodedPart_BecomesUtf8WithTheEdit()
    {
        byte[] wide = [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("<?xml version=\"1.0\" encoding=\"utf-16\"?><worksheet><sheetData/></worksheet>")];

        Encoding.UTF8.GetString(Splice(wide, Cells((1, 1, CellValue.Of("ß"))))).ShouldBe(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?><worksheet><sheetData><row r=\"1\"><c r=\"A1\" s=\"8\" t=\"inlineStr\"><is><t>ß</t></is></c></row></sheetData></worksheet>");
    }

    [Fact]
    public void Apply_TextLongerThanItsBuffer_IsWrittenWhole()
    {
        var text = new string('ß', 5_000);

        Splice("<worksheet><sheetData/></worksheet>", Cells((1, 1, CellValue.Of(text)))).ShouldContain($"<t>{text}</t>");
    }

    private static void ShouldBecome(string before, string after, params (int Row, int Column, CellValue Value)[] cells)
    {
        const string Head = "<?xml version=\"1.0\"?>\r\n<worksheet><dimension ref=\"A1\"/><sheetData>";
        const string Tail = "</sheetData><pageMargins left=\"0.7\"/></worksheet>\r\n<!-- end -->";

        Splice(Head + before + Tail, Cells(cells)).ShouldBe(Head + after + Tail);
    }

    private static List<CellEdit> Collected(SheetEdits edits, int row)
    {
        var cells = new List<CellEdit>();
        edits.Collect(row, cells);
        return cells;
    }

    private static SheetEdits Cells(params (int Row, int Column, CellValue Value)[] cells)
    {
        var edits = new SheetEdits();
        foreach (var (row, column, value) in cells)
        {
            edits.Set(row, column, value, newStyle: 8);
        }

        return edits;
    }

    private static string Splice(string sheet, SheetEdits edits) => Encoding.UTF8.GetString(Splice(Encoding.UTF8.GetBytes(sheet), edits));

    // Few bytes at a time and all at once must come to the same: rows that are in the buffer as a whole go another way.
    private static byte[] Splice(byte[] sheet, SheetEdits edits)
    {
        var slowly = Splice(sheet, 11, edits);
        Splice(sheet, sheet.Length, edits).ShouldBe(slowly, Encoding.UTF8.GetString(slowly));
        return slowly;
    }

    private static byte[] Splice(byte[] sheet, int atOnce, SheetEdits edits)
    {
        using var source = new SlowStream(sheet, atOnce);
        using var output = new MemoryStream();
        SheetSplicer.Apply(source, output, edits);
        return output.ToArray();
    }

    // The choice holds controls, which stand behind the drawing of notes.
    [Fact]
    public void Apply_InsertBesideAlternatives_StandsBeforeTheirContent()
    {
        const string Controls = "<mc:AlternateContent><mc:Choice Requires=\"x14\"><controls><control/></controls></mc:Choice></mc:AlternateContent>";
        var edits = new SheetEdits();
        edits.ChangeOrInsert("legacyDrawing", old => old, "<~legacyDrawing/>");
        using var output = new MemoryStream();

        SheetSplicer.Apply(new MemoryStream(Encoding.UTF8.GetBytes($"<worksheet><sheetData/>{Controls}<tableParts/></worksheet>")), output, edits);

        Encoding.UTF8.GetString(output.ToArray()).ShouldBe($"<worksheet><sheetData/><legacyDrawing/>{Controls}<tableParts/></worksheet>");
    }

    [Theory]
    [InlineData("ISO-8859-1", 0xDF)]
    [InlineData("windows-1252", 0x80)]
    public void Apply_PartInAnotherEncoding_IsWrittenInUtf8(string encoding, byte letter)
    {
        byte[] part = [.. Encoding.ASCII.GetBytes($"<?xml version='1.0' encoding='{encoding}'?><worksheet><sheetData><row r=\"1\"><c r=\"A1\" t=\"str\"><v>"), letter,
            .. "</v></c></row></sheetData></worksheet>"u8];
        var edits = new SheetEdits();
        edits.Set(2, 1, CellValue.Of("ü"), null);
        using var output = new MemoryStream();

        SheetSplicer.Apply(new MemoryStream(part), output, edits);

        var text = Encoding.UTF8.GetString(output.ToArray());
        text.ShouldStartWith("<?xml version='1.0' encoding=\"UTF-8\"?>");
        text.ShouldContain($"<v>{(letter == 0x80 ? '€' : 'ß')}</v>");
        text.ShouldContain("<t>ü</t>");
    }
}
