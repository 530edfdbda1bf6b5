using System.Text;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Tests.Fidelity;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>What is said of the book around the list: protection, signature, links to other books, the print area.</summary>
public sealed class SurroundingsTests
{
    private const string List = "Harbour list";
    private const string Relationships = "http://schemas.openxmlformats.org/package/2006/relationships/";

    [Fact]
    public void Fill_ListProtected_IsFilledAndSaid()
    {
        var filled = Filled.From(Nights.WholeBuilder(s => s.After("<sheetProtection sheet=\"1\" objects=\"1\"/>")).Build());

        filled[List, "K5"].ShouldBe(20.72);
        filled.SheetXml(List).ShouldContain("<sheetProtection sheet=\"1\" objects=\"1\"/>");
        Text(filled, "sheet-protected").ShouldBe(
            "The sheet Harbour list is protected; CastBook writes into the file and left the protection as it is. "
            + "In your spreadsheet program nothing can be typed into the cells CastBook added or asks for there, and the rows cannot be sorted. "
            + "Unprotect Harbour list when you want to type there.");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_ProtectionSwitchedOff_SaysNothing() =>
        Filled.From(Nights.WholeBuilder(s => s.After("<sheetProtection sheet=\"0\"/>")).Build()).Ids.ShouldNotContain("sheet-protected");

    [Fact]
    public void Fill_StructureProtected_SheetsAreAddedAndItIsSaid()
    {
        var filled = Filled.From(Planted.In(Nights.Whole().ToArray(), "xl/workbook.xml", xml =>
            Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(xml).Replace("<sheets>", "<workbookProtection lockStructure=\"1\"/><sheets>", StringComparison.Ordinal))));

        filled.Sheets.ShouldContain("Checks");
        Text(filled, "structure-protected").ShouldBe(
            "The structure of the workbook is protected; CastBook writes into the file and left the protection as it is. "
            + "In your spreadsheet program the sheets, CastBook's among them, cannot be moved, renamed or deleted. "
            + "Unprotect the workbook when you want to do that.");
    }

    [Fact]
    public void Fill_Signed_IsRefusedBeforeAnythingIsWritten()
    {
        using var book = Nights.WholeBuilder().Part("_rels/.rels",
            $"<Relationships xmlns=\"{Relationships[..^1]}\"><Relationship Id=\"rId1\" Type=\"{BookBuilder.OfficeNamespace}/officeDocument\" Target=\"xl/workbook.xml\"/>"
            + $"<Relationship Id=\"rId2\" Type=\"{Relationships}digital-signature/origin\" Target=\"_xmlsignatures/origin.sigs\"/></Relationships>").Build();

        Should.Throw<BookRefusedException>(() => Filled.From(book)).Message.ShouldBe(
            "The workbook is digitally signed. Anything written into it would break the signature, so nothing was written. "
            + "Save a copy without the signature and fill that.");
    }

    [Theory]
    [InlineData("'Harbour list'!$A$1:$J$40", true)]
    [InlineData("'Harbour list'!$A$1:$J$40,'Harbour list'!$A$50:$P$60", false)]
    [InlineData("OFFSET('Harbour list'!$A$1,0,0,9,9)", false)]
    public void Fill_PrintArea_SaysWhereItLeavesOurColumnsOut(string area, bool isSaid)
    {
        var filled = Filled.From(Nights.WholeBuilder().Name("_xlnm.Print_Area", area, localSheet: 0, hidden: false).Build());

        filled.Ids.Contains("print-area-without-columns").ShouldBe(isSaid);
        if (isSaid)
        {
            Text(filled, "print-area-without-columns").ShouldBe(
                "The print area of Harbour list ends before CastBook's columns, and was left as it is. "
                + "They are on the screen and not on paper. Widen the print area if you want them printed.");
        }
    }

    [Fact]
    public void Fill_LinksToOtherBooks_AreMentionedOnce()
    {
        var filled = Filled.From(Reading.TestBooks.Open("01_rich_excel365_like.xlsx"));

        filled.Ids.Count(id => id == "external-links").ShouldBe(1);
        filled.Again().Ids.Count(id => id == "external-links").ShouldBe(1);
    }

    private static string Text(Filled filled, string id)
    {
        var finding = filled.Result.Findings.Single(f => f.Id == id);
        return $"{finding.Seen} {finding.Why} {finding.Remedy}";
    }
}
