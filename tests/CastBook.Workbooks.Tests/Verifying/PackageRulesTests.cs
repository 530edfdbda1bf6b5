using System.Text;
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
        ComputedColumns.All.Select(c => c.GetType())
            .ShouldBe(typeof(ComputedColumn).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(ComputedColumn)) && !t.IsAbstract), ignoreOrder: true);
        ComputedColumns.All[^1].ShouldBeOfType<ChecksColumn>();
        ComputedColumns.All.Select(c => c.OwnName).ShouldBeUnique();
        ComputedColumns.All.Select(c => c.Heading).ShouldBeUnique();
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
    [InlineData("<sheetData/><pageMargins/><conditionalFormatting/>", "Pieces: conditionalFormatting stands in the wrong place.")]
    [InlineData("<sheetData/><legacyDrawing/><legacyDrawing/>", "Pieces: legacyDrawing stands in the wrong place.")]
    [InlineData("<sheetData/><mergeCells><mergeCell ref=\"A1:B3\"/><mergeCell ref=\"D1:E1\"/><mergeCell ref=\"B3:C4\"/></mergeCells>", "Pieces: the merged ranges A1:B3 and B3:C4 overlap.")]
    [InlineData("<sheetData/><conditionalFormatting sqref=\"A1\"><cfRule type=\"expression\" dxfId=\"1\" priority=\"1\"/></conditionalFormatting>", "Pieces: a conditional format uses the format 1, which is not there.")]
    public void Faults_ElementsPlanted_AreFound(string elements, string fault) => FaultsOfSheet(elements).ShouldBe([fault]);

    [Theory]
    [InlineData("<sheetData/><mergeCells><mergeCell ref=\"A1:B2\"/><mergeCell ref=\"C1:D2\"/><mergeCell ref=\"A3:D3\"/></mergeCells>")]
    [InlineData("<sheetData/><conditionalFormatting/><conditionalFormatting/><ext:unknown/><pageMargins/>")]
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
    [InlineData(" ref=\"A1:B3\" totals", " ref=\"A1:C3\" totals", "The table Table1 is 3 columns wide and lists 2.", "The filter of the table Table1 does not lie on it.")]
    [InlineData("count=\"2\"", "count=\"3\"", "The table Table1 is 2 columns wide and lists 2.")]
    [InlineData("id=\"2\" name=\"Qty\"", "id=\"1\" name=\"Qty\"", "The table Table1 has two columns of one name or id.")]
    [InlineData("name=\"Qty\"", "name=\"PIECE\"", "The table Table1 has two columns of one name or id.", "The table Table1 calls its column 2 \"PIECE\" and its heading cell says \"Qty\".")]
    [InlineData("name=\"Qty\"", "name=\"Number\"", "The table Table1 calls its column 2 \"Number\" and its heading cell says \"Qty\".")]
    [InlineData("<autoFilter ref=\"A1:B3\"/>", "<autoFilter ref=\"A1:A3\"/>", "The filter of the table Table1 does not lie on it.")]
    [InlineData(" ref=\"A1:B3\" totals", " totals", "The table Table1 has no range or no columns.")]
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
        using var book = Sound().Part("xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\" xmlns:ext=\"u\">{elements}</worksheet>").Build();
        return FaultsOf(book);
    }

    private static IReadOnlyList<string> FaultsOf(MemoryStream book)
    {
        book.Position = 0;
        using var package = BookPackage.Open(book);
        return PackageRules.Faults(new BookFacts(package, [.. package.Sheets.Select(s => s.PartName)]));
    }
}
