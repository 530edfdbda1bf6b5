using System.Text;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Tests.Writing;
using CastBook.Workbooks.Verifying;

namespace CastBook.Workbooks.Tests.Verifying;

public sealed class PackageRulesTests
{
    private const string Cell = "<c r=\"{r}\"><v>1</v></c>";

    [Theory]
    [MemberData(nameof(SheetSplicerTests.Workbooks), MemberType = typeof(SheetSplicerTests))]
    public void Faults_SoundBook_IsSilent(string name)
    {
        using var book = TestBooks.Open(name);

        FaultsOf(book).ShouldBeEmpty();
    }

    [Fact]
    public void Faults_PlainBookOfTheTests_IsSilent()
    {
        using var book = Sound().Build();

        FaultsOf(book).ShouldBeEmpty();
    }

    [Fact]
    public void All_ListsEveryRule() => PackageRules.All.Select(r => r.GetType())
        .ShouldBe(typeof(PackageRule).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(PackageRule)) && !t.IsAbstract), ignoreOrder: true);

    [Fact]
    public void All_ListsEveryComputedColumn()
    {
        var all = ComputedColumns.All(ShopUnits.Of(new Planning.Shops.Settings()));
        all.Select(c => c.GetType())
            .ShouldBe(typeof(ComputedColumn).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(ComputedColumn)) && !t.IsAbstract), ignoreOrder: true);
        all[^1].ShouldBeOfType<ChecksColumn>();
        all.Select(c => c.OwnName).ShouldBeUnique();
        all.Select(c => c.Heading).ShouldBeUnique();
    }

    [Theory]
    [InlineData("<row r=\"2\"/><row r=\"2\"/>", "Pieces: row 2 comes after row 2.")]
    [InlineData("<row r=\"2\"/><row r=\"1\"/>", "Pieces: row 1 comes after row 2.")]
    [InlineData("<row/><row/><row r=\"2\"/>", "Pieces: row 2 comes after row 2.")]
    [InlineData("<row r=\"1\"><c r=\"B1\"/><c r=\"A1\"/></row>", "Pieces: cell A1 comes after B1.")]
    [InlineData("<row r=\"1\"><c r=\"B1\"/><c r=\"B1\"/></row>", "Pieces: cell B1 comes after B1.")]
    [InlineData("<row r=\"1\"><c r=\"A2\"/></row>", "Pieces: cell A2 stands in row 1.")]
    [InlineData("<row r=\"1\"><c r=\"A1\" s=\"6\"/></row>", "Pieces: a cell uses the format 6, which is not there.")]
    [InlineData("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>2</v></c></row>", "Pieces: a cell uses the shared text 2, which is not there.")]
    public void Faults_CellsPlanted_AreFound(string rows, string fault) => FaultsOfSheet($"<sheetData>{rows}</sheetData>").ShouldBe([fault]);

    [Theory]
    [InlineData("<sheetData/><cols/>", "Pieces: cols stands in the wrong place.")]
    [InlineData("<sheetData/><pageMargins/><conditionalFormatting sqref=\"A1\"><cfRule type=\"containsBlanks\" priority=\"1\"/></conditionalFormatting>", "Pieces: conditionalFormatting stands in the wrong place.")]
    [InlineData("<sheetData/><legacyDrawing/><legacyDrawing/>", "Pieces: legacyDrawing stands in the wrong place.")]
    [InlineData("<sheetData/><mergeCells><mergeCell ref=\"A1:B3\"/><mergeCell ref=\"D1:E1\"/><mergeCell ref=\"B3:C4\"/></mergeCells>", "Pieces: the merged ranges A1:B3 and B3:C4 overlap.")]
    [InlineData("<sheetData/><conditionalFormatting sqref=\"A1\"><cfRule type=\"expression\" dxfId=\"1\" priority=\"1\"/></conditionalFormatting>", "Pieces: a conditional format uses the format 1, which is not there.")]
    public void Faults_ElementsPlanted_AreFound(string elements, string fault) => FaultsOfSheet(elements).ShouldBe([fault]);

    [Theory]
    [InlineData("<sheetData/><mergeCells><mergeCell ref=\"A1:B2\"/><mergeCell ref=\"C1:D2\"/><mergeCell ref=\"A3:D3\"/></mergeCells>")]
    [InlineData("<sheetData/><conditionalFormatting sqref=\"A1\"><cfRule type=\"containsBlanks\" priority=\"1\"/></conditionalFormatting><conditionalFormatting sqref=\"A1\"><cfRule type=\"containsBlanks\" priority=\"1\"/></conditionalFormatting><ext:unknown/><pageMargins/>")]
    public void Faults_ElementsInOrder_AreNone(string elements) => FaultsOfSheet(elements).ShouldBeEmpty();

    [Theory]
    [InlineData("<sheet name=\"Pieces\" sheetId=\"1\" r:id=\"rId1\"/><sheet name=\"PIECES\" sheetId=\"2\" r:id=\"rId2\"/>", "The sheet name \"PIECES\" is too long or used twice.")]
    [InlineData("<sheet name=\"Pieces\" sheetId=\"1\" r:id=\"rId1\"/><sheet name=\"Other\" sheetId=\"1\" r:id=\"rId2\"/>", "The sheet Other has the id of another sheet.")]
    [InlineData("<sheet name=\"A name of thirty-two characters..\" sheetId=\"1\" r:id=\"rId1\"/>", "The sheet name \"A name of thirty-two characters..\" is too long or used twice.")]
    public void Faults_SheetsPlanted_AreFound(string sheets, string fault)
    {
        using var book = Sound().Part("xl/workbook.xml", $"<workbook xmlns=\"{BookBuilder.MainNamespace}\" xmlns:r=\"{BookBuilder.OfficeNamespace}\"><sheets>{sheets}</sheets></workbook>").Build();

        FaultsOf(book).ShouldBe([fault]);
    }

    [Fact]
    public void Faults_NamesPlanted_AreFound()
    {
        using var book = Sound().Name("Rate", "1").Name("RATE", "2").Name("Rate", "3", localSheet: 0).Name("Area", "4", localSheet: 1).Build();

        FaultsOf(book).ShouldBe(["The name Rate is defined twice.", "The name Area belongs to a sheet that is not there."]);
    }

    [Fact]
    public void Faults_RelationshipsPlanted_AreFound()
    {
        using var book = Sound().Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships(
            [("rId1", "image", "../media/gone.png"), ("rId2", "styles", "../styles.xml"), ("rId2", "styles", "../styles.xml")])).Build();

        FaultsOf(book).ShouldBe(
            ["xl/worksheets/sheet1.xml leads to xl/media/gone.png, which is missing.", "xl/worksheets/sheet1.xml uses the relationship rId2 twice."]);
    }

    [Fact]
    public void Faults_PartWithoutContentType_IsFound()
    {
        using var book = Sound().Part("xl/media/ring.png", "x").Build();

        FaultsOf(book).ShouldBe(["xl/media/ring.png has no content type."]);
    }

    [Fact]
    public void Faults_NotesWithoutDrawing_AreFound()
    {
        var notes = Sound().Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships([("rId1", "comments", "../comments1.xml")]))
            .Part("xl/comments1.xml", "<comments/>");
        using var book = notes.Build();

        FaultsOf(book).ShouldBe(["Pieces: notes without the drawing that shows them."]);
    }

    [Theory]
    [InlineData("<sheetData/><legacyDrawing r:id=\"rId9\"/>", "Pieces: an element leads to the relationship rId9, which is not there.")]
    [InlineData("<cols><col min=\"1\" max=\"3\"/><col min=\"3\" max=\"4\"/></cols><sheetData/>", "Pieces: the widths of the columns 3 to 4 overlap others.")]
    [InlineData("<sheetData/><conditionalFormatting sqref=\"A1\"/>", "Pieces: a conditional format has no rule.")]
    [InlineData("<sheetData/><conditionalFormatting><cfRule type=\"containsBlanks\" priority=\"1\"/></conditionalFormatting>", "Pieces: a conditional format has no cells.")]
    [InlineData("<sheetData/><conditionalFormatting sqref=\"A1\"><cfRule type=\"containsBlanks\" priority=\"0\"/></conditionalFormatting>", "Pieces: a conditional format has no priority of 1 or more.")]
    [InlineData("<sheetData/><conditionalFormatting sqref=\"A1\"><cfRule type=\"expression\" priority=\"1\"><formula>N(&quot;a)</formula></cfRule></conditionalFormatting>", "Pieces: conditionalFormatting has a formula that is not whole: N(\"a)")]
    [InlineData("<sheetData/><dataValidations count=\"1\"><dataValidation type=\"list\" sqref=\"A1\"><formula1>Alloys[Name</formula1></dataValidation></dataValidations>", "Pieces: dataValidations has a formula that is not whole: Alloys[Name")]
    [InlineData("<sheetData/><dataValidations count=\"1\"><dataValidation type=\"list\"><formula1>\"a\"</formula1></dataValidation></dataValidations>", "Pieces: a data validation has no cells.")]
    [InlineData("<sheetData/><dataValidations count=\"2\"><dataValidation sqref=\"A1\"/></dataValidations>", "Pieces: dataValidations has nothing in it or another count than it says.")]
    [InlineData("<sheetData/><mergeCells/>", "Pieces: mergeCells has nothing in it or another count than it says.")]
    [InlineData("<sheetData/><extLst/><extLst/>", "Pieces: extLst stands in the wrong place.")]
    [InlineData("<sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><v>1</v></c></row></sheetData>", "Pieces: cell A1 is a text of its own and has a value.")]
    [InlineData("<sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>a</t></is><v>1</v></c></row></sheetData>", "Pieces: cell A1 is a text of its own and has a value.")]
    [InlineData("<sheetData><row r=\"1\"><c r=\"A1\"><f t=\"shared\" si=\"3\"/><v>1</v></c></row></sheetData>", "Pieces: no cell spells out the shared formula 3.")]
    public void Faults_SheetPlanted_AreFound(string elements, string fault) => FaultsOfSheet(elements).ShouldBe([fault]);

    [Fact]
    public void Faults_SharedFormulaSpelledOut_IsNone() => FaultsOfSheet(
        "<sheetData><row r=\"1\"><c r=\"A1\"><f t=\"shared\" ref=\"A1:B1\" si=\"3\">1+1</f><v>2</v></c><c r=\"B1\"><f t=\"shared\" si=\"3\"/><v>2</v></c></row></sheetData>").ShouldBeEmpty();

    [Theory]
    [InlineData(255, 0)]
    [InlineData(256, 1)]
    public void Faults_ListOfChoices_HasALongestLength(int length, int faults) => FaultsOfSheet(
        $"<sheetData/><dataValidations count=\"1\"><dataValidation type=\"list\" sqref=\"A1\"><formula1>\"{new string('a', length)}\"</formula1></dataValidation></dataValidations>")
        .ShouldBe(Enumerable.Repeat("Pieces: a list of choices is longer than 255 characters.", faults));

    [Theory]
    [InlineData("[a]")]
    [InlineData("a:b")]
    [InlineData("what?")]
    [InlineData("a/b")]
    [InlineData("'a")]
    public void Faults_SheetNameOfForbiddenCharacters_IsFound(string name)
    {
        using var book = new BookBuilder().Sheet(name, s => s.Row("Piece")).Build();

        FaultsOf(book).ShouldBe([$"The sheet name \"{name}\" has a character that no sheet name can have."]);
    }

    [Theory]
    [InlineData("", "The name Area stands for a formula that is not whole.")]
    [InlineData("SUM('A)", "The name Area stands for a formula that is not whole.")]
    [InlineData("SUM(A", "The name Area stands for a formula that is not whole.")]
    [InlineData("SUM(Table1[a'[b])", null)]
    public void Faults_NameOfBrokenFormula_IsFound(string text, string? fault)
    {
        using var book = Sound().Name("Area", text).Build();

        FaultsOf(book).ShouldBe(fault is null ? [] : [fault]);
    }

    [Fact]
    public void Faults_FilterElsewhereThanItsName_IsFound()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece").After("<autoFilter ref=\"A1:B3\"/>"))
            .Name("_xlnm._FilterDatabase", "Pieces!$A$1:$B$2", localSheet: 0).Build();

        FaultsOf(book).ShouldBe(["Pieces: the filter and its hidden name cover different cells."]);
    }

    [Fact]
    public void Faults_NotesPlanted_AreFound()
    {
        const string shape = "<v:shape id=\"a\"><x:ClientData ObjectType=\"Note\"><x:Row>0</x:Row><x:Column>1</x:Column></x:ClientData></v:shape>";
        using var book = Sound()
            .Part("xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\" xmlns:r=\"{BookBuilder.OfficeNamespace}\"><sheetData/><legacyDrawing r:id=\"rId2\"/></worksheet>")
            .Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships([("rId1", "comments", "../comments1.xml"), ("rId2", "vmlDrawing", "../drawing1.xml")]))
            .Part("xl/comments1.xml", "<comments><commentList><comment ref=\"B1\"/><comment ref=\"A2\"/></commentList></comments>")
            .Part("xl/drawing1.xml", $"<xml xmlns:v=\"v\" xmlns:x=\"x\">{shape}{shape}</xml>").Build();

        FaultsOf(book).ShouldBe(["Pieces: two shapes of notes have one id.", "Pieces: the note at A2 has no shape."]);
    }

    [Theory]
    [InlineData("<cellXfs count=\"1\"><xf fontId=\"1\"/></cellXfs>", "A cell format has a fontId that is not there.")]
    [InlineData("<cellXfs count=\"1\"><xf numFmtId=\"164\"/></cellXfs>", "A cell format has a numFmtId that is not there.")]
    [InlineData("<cellXfs count=\"2\"><xf/></cellXfs>", "The cellXfs of the styles say another count than they have.")]
    [InlineData("<cellXfs count=\"1\"><xf/></cellXfs><borders/>", "xl/styles.xml: borders stands in the wrong place or twice.")]
    public void Faults_StylesPlanted_AreFound(string sections, string fault)
    {
        using var book = Sound().Part("xl/styles.xml", $"<styleSheet xmlns=\"{BookBuilder.MainNamespace}\"><fonts count=\"1\"><font/></fonts>{sections}</styleSheet>").Build();

        FaultsOf(book).ShouldBe([fault]);
    }

    [Theory]
    [InlineData("A1:B3", "D1:E3", "Table2", "1", "The table Table2 has the id of another table.")]
    [InlineData("A1:B3", "D1:E3", "TABLE1", "2", "The table TABLE1 has the name of something else.")]
    [InlineData("A1:B3", "D1:E3", "rate", "2", "The table rate has the name of something else.")]
    [InlineData("A1:B3", "B3:C4", "Table2", "2", "The tables Table1 and Table2 overlap.")]
    public void Faults_TablesPlanted_AreFound(string first, string second, string name, string id, string fault)
    {
        static string Table(string range, string name, string id) =>
            $"<table xmlns=\"{BookBuilder.MainNamespace}\" id=\"{id}\" displayName=\"{name}\" ref=\"{range}\"><tableColumns count=\"2\"><tableColumn id=\"1\" name=\"a\"/><tableColumn id=\"2\" name=\"b\"/></tableColumns></table>";
        using var book = Sound().Name("Rate", "1")
            .Part("xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\"><sheetData/></worksheet>")
            .Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships([("rId1", "table", "../tables/table1.xml"), ("rId2", "table", "../tables/table2.xml")]))
            .Part("xl/tables/table1.xml", Table(first, "Table1", "1")).Part("xl/tables/table2.xml", Table(second, name, id)).Build();

        FaultsOf(book).ShouldBe([fault]);
    }

    [Theory]
    [InlineData(" ref=\"A1:B3\" totals", " ref=\"A1:C3\" totals", "The table Table1 is 3 columns wide and lists 2.", "The filter of the table Table1 does not lie on it.")]
    [InlineData("count=\"2\"", "count=\"3\"", "The table Table1 is 2 columns wide and lists 2.")]
    [InlineData("id=\"2\" name=\"Qty\"", "id=\"1\" name=\"Qty\"", "The table Table1 has two columns of one name or id.")]
    [InlineData("name=\"Qty\"", "name=\"PIECE\"", "The table Table1 has two columns of one name or id.", "The table Table1 calls its column 2 \"PIECE\" and its heading cell says \"Qty\".")]
    [InlineData("name=\"Qty\"", "name=\"Number\"", "The table Table1 calls its column 2 \"Number\" and its heading cell says \"Qty\".")]
    [InlineData("<autoFilter ref=\"A1:B3\"/>", "<autoFilter ref=\"A1:A3\"/>", "The filter of the table Table1 does not lie on it.")]
    [InlineData(" ref=\"A1:B3\" totals", " totals", "The table Table1 has no range or no columns.")]
    [InlineData("name=\"Qty\"", "name=\"Qty\" dataDxfId=\"9\"", "The table Table1 uses a format that is not there.")]
    [InlineData("name=\"Qty\"", "name=\"\"", "The table Table1 calls its column 2 \"\" and its heading cell says \"Qty\".", "The table Table1 has a column without a name.")]
    public void Faults_TablePlanted_AreFound(string sound, string planted, params string[] faults)
    {
        static BookBuilder Tabled() => new BookBuilder().Sheet("Pieces", s => s.Row("Piece", "Qty").Row("a", 1).Row("b", 2).Table("A1:B3", ["Piece", "Qty"]));
        using var before = Tabled().Build();
        using var package = BookPackage.Open(before);
        var table = Encoding.UTF8.GetString(package.Read("xl/tables/table1.xml"));
        table.ShouldContain(sound);
        using var book = Tabled().Part("xl/tables/table1.xml", table.Replace(sound, planted, StringComparison.Ordinal)).Build();

        FaultsOf(before).ShouldBeEmpty();
        FaultsOf(book).ShouldBe(faults);
    }

    private static BookBuilder Sound() => new BookBuilder().Sheet("Pieces", s => s.Row("Piece", new Cell(Xml: Cell)));

    private static IReadOnlyList<string> FaultsOfSheet(string elements)
    {
        using var book = Sound().Part("xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\" xmlns:r=\"{BookBuilder.OfficeNamespace}\" xmlns:ext=\"u\">{elements}</worksheet>").Build();
        return FaultsOf(book);
    }

    private static IReadOnlyList<string> FaultsOf(MemoryStream book)
    {
        book.Position = 0;
        using var package = BookPackage.Open(book);
        return PackageRules.Faults(new BookFacts(package, [.. package.Sheets.Select(s => s.PartName)]));
    }
}
