using System.Text;
using System.Xml.Linq;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class WorkbookEditsTests
{
    [Theory]
    [InlineData("<calcPr calcId=\"1\"/><extLst/>", "<definedNames>{0}</definedNames><calcPr calcId=\"1\" fullCalcOnLoad=\"1\"/><extLst/>")]
    [InlineData("<calcPr fullCalcOnLoad=\"0\"/>", "<definedNames>{0}</definedNames><calcPr fullCalcOnLoad=\"1\"/>")]
    [InlineData("<definedNames/><pivotCaches/>", "<definedNames>{0}</definedNames><calcPr fullCalcOnLoad=\"1\"/><pivotCaches/>")]
    [InlineData("<externalReferences/><extLst/>", "<externalReferences/><definedNames>{0}</definedNames><calcPr fullCalcOnLoad=\"1\"/><extLst/>")]
    [InlineData("", "<definedNames>{0}</definedNames><calcPr fullCalcOnLoad=\"1\"/>")]
    public void Finish_NamesAndRecalculation_StandInTheOrderOfTheFormat(string after, string expected)
    {
        var workbook = Edited(Workbook(after), edits =>
        {
            edits.Name(OwnName.Flask, new CellRef("Night's list", 4, 28));
            edits.RecalculateOnLoad(new FillRecord());
        });

        workbook.ShouldBe(Workbook(expected.Replace("{0}", "<definedName name=\"CastBook_Flask\" hidden=\"1\">'Night''s list'!$AB$4</definedName>", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Pieces!$C$4", true)]
    [InlineData("#REF!", false)]
    [InlineData("Pieces!#REF!", false)]
    [InlineData("Gone!$A$1", false)]
    public void Name_ThatStands_IsLeftOnlyWhileItLeadsToACell(string text, bool isLeft)
    {
        var names = $"<definedNames><definedName name=\"a\">1</definedName><definedName name=\"CastBook_Flask\" hidden=\"1\">{text}</definedName></definedNames>";

        Edited(Workbook(names), edits => edits.Name(OwnName.Flask, new CellRef("Pieces", 4, 9)))
            .ShouldBe(isLeft ? null : Workbook(names.Replace(text, "Pieces!$I$4", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Night plan", "Night plan")]
    [InlineData("pieces", "pieces (CastBook 2)")]
    [InlineData("A shop's own very long sheet name (kept)", "A shop's own very long sheet na")]
    public void FreeSheetName_Taken_GetsAnEndingAndFitsTheFormat(string wanted, string free)
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece")).Sheet("PIECES (CastBook)", s => s.Row("x")).Build();
        using var package = BookPackage.Open(book);
        var edits = new WorkbookEdits(package, new BookEdits(package));

        edits.FreeSheetName(wanted).ShouldBe(free);
        edits.AddSheet(free, "<worksheet/>"u8.ToArray());
        edits.FreeSheetName(wanted).ShouldNotBe(free);
        edits.FreeSheetName(wanted).Length.ShouldBeLessThanOrEqualTo(31);
    }

    [Theory]
    [InlineData("07_exceljs_webform.xlsx")]
    [InlineData("04_strict_iso29500.xlsx")]
    [InlineData("14_openxmlsdk_minimal.xlsx")]
    public void AddSheet_AnyWriter_IsASheetThatReadersFind(string name)
    {
        using var book = TestBooks.Open(name);
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        var workbook = new WorkbookEdits(package, edits);

        var added = workbook.AddSheet("Night plan", Encoding.UTF8.GetBytes($"<worksheet xmlns=\"{edits.Dialect.Spreadsheet}\"><sheetData/></worksheet>"));
        workbook.Finish();
        using var output = new MemoryStream();
        PackageWriter.Write(package, edits, output);
        using var written = BookPackage.Open(output);

        added.Index.ShouldBe(package.AllSheetNames.Count);
        written.Sheets[^1].ShouldBe(added);
        written.ContentType(added.PartName).ShouldEndWith("worksheet+xml");
        written.Sheets.Count.ShouldBe(package.Sheets.Count + 1);
        XDocument.Parse(Encoding.UTF8.GetString(written.Read(written.WorkbookPart)).TrimStart('\uFEFF'))
            .Descendants().Where(e => e.Name.LocalName == "sheet").Select(e => (string)e.Attribute("sheetId")!).ShouldBeUnique();
    }

    [Fact]
    public void Filter_HiddenName_OfThatSheetOnlyIsWidened()
    {
        const string Names = "<definedNames><definedName name=\"_xlnm._FilterDatabase\" localSheetId=\"1\" hidden=\"1\">Other!$A$1:$B$9</definedName>"
            + "<definedName name=\"_xlnm._FilterDatabase\" localSheetId=\"0\" hidden=\"1\">Pieces!$A$1:$B$9</definedName></definedNames>";

        Edited(Workbook(Names), edits => edits.Filter(new SheetPart("Pieces", "xl/worksheets/sheet1.xml", 0, false), new CellRange(1, 1, 9, 6)))
            .ShouldBe(Workbook(Names.Replace("Pieces!$A$1:$B$9", "Pieces!$A$1:$F$9", StringComparison.Ordinal)));
    }

    private static string Workbook(string after) =>
        $"<workbook xmlns=\"{BookBuilder.MainNamespace}\" xmlns:r=\"{BookBuilder.OfficeNamespace}\"><sheets><sheet name=\"Pieces\" sheetId=\"1\" r:id=\"rId1\"/></sheets>{after}</workbook>";

    /// <summary>The workbook part as edited; null where it was not touched.</summary>
    private static string? Edited(string workbook, Action<WorkbookEdits> edit)
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece")).Part("xl/workbook.xml", workbook).Build();
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        var sut = new WorkbookEdits(package, edits);
        edit(sut);
        sut.Finish();
        return edits.Finish().TryGetValue("xl/workbook.xml", out var part) ? Encoding.UTF8.GetString(part) : null;
    }
}
