using System.Text;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Tests.Reading.Grid;

public sealed class SheetReaderTests
{
    private const string Open = $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\" xmlns:r=\"{BookBuilder.OfficeNamespace}\">";

    [Fact]
    public void Read_WhatStandsAroundTheCells_IsKept()
    {
        var grid = Grid("<sheetData/><autoFilter ref=\"A1:D9\"/><mergeCells><mergeCell ref=\"A1:C1\"/></mergeCells>"
            + "<conditionalFormatting sqref=\"A1\"><cfRule type=\"expression\" priority=\"7\"><formula>1</formula></cfRule></conditionalFormatting>"
            + "<tableParts><tablePart r:id=\"rId9\"/></tableParts>");

        grid.AutoFilter!.Value.ToString().ShouldBe("A1:D9");
        grid.Merges.ShouldHaveSingleItem().ToString().ShouldBe("A1:C1");
        grid.HighestPriority.ShouldBe(7);
        grid.TablePartIds.ShouldBe(["rId9"]);
        (grid.LastRow, grid.Rows.Count).ShouldBe((0, 0));
    }

    // Rows of three patterns, the first of them again; with gaps, and one without cells.
    [Fact]
    public void Read_RowsOfSeveralPatterns_KeepTheirOwn()
    {
        var grid = Grid("<sheetData><row r=\"1\"><c r=\"A1\" s=\"1\"><v>1</v></c><c r=\"C1\" s=\"2\"><v>2</v></c></row>"
            + "<row r=\"2\"><c r=\"B2\" s=\"1\"><v>3</v></c></row><row r=\"3\"></row>"
            + "<row r=\"4\"><c r=\"A4\" s=\"1\"><v>4</v></c><c r=\"C4\" s=\"3\"><v>5</v></c></row>"
            + "<row r=\"5\"><c r=\"A5\" s=\"1\"><v>6</v></c><c r=\"C5\" s=\"2\"><v>7</v></c></row></sheetData>");

        (int Row, int Column, double Number, int Style)[] cells = [(1, 1, 1, 1), (1, 3, 2, 2), (2, 2, 3, 1), (4, 1, 4, 1), (4, 3, 5, 3), (5, 1, 6, 1), (5, 3, 7, 2)];
        foreach (var (row, column, number, style) in cells)
        {
            grid.Cell(row, column).ShouldBe(new GridCell(CellKind.Number, number, null, style, false), $"row {row}, column {column}");
        }

        grid.Cell(1, 2).ShouldBe(default);
        grid.Cell(2, 1).ShouldBe(default);
        grid.Cell(3, 1).ShouldBe(default);
        new[] { 1, 2, 3, 4, 5 }.Select(grid.LastColumnOf).ShouldBe([3, 2, 0, 3, 3]);
    }

    // Formulas of a cell's own, which are read with their cells; shared ones and odd ones, which are not.
    [Fact]
    public void Read_FormulasOfEveryForm_AreTold()
    {
        var grid = Grid("<sheetData><row r=\"1\"><c r=\"A1\" s=\"3\"><f>B1&lt;2</f><v>4.5</v></c><c r=\"B1\" t=\"str\"><f>\"a\"</f><v>a&amp;b</v></c><c r=\"C1\" t=\"str\"><f>\"\"</f></c>"
            + "<c r=\"D1\"><f></f><v>1</v></c><c r=\"E1\"><f/><v>2</v></c><c r=\"F1\"><f t=\"shared\" si=\"0\"/><v>3</v></c><c r=\"G1\"><f>A1</f> <v>4</v></c>"
            + "<c r=\"H1\"><v>5</v><f>A1</f></c><c r=\"I1\"><f>A1</f><v/></c><c r=\"J1\"><v>6</v></c></row></sheetData>");

        grid.Cell(1, 1).ShouldBe(new GridCell(CellKind.Number, 4.5, null, 3, true));
        grid.Cell(1, 2).ShouldBe(new GridCell(CellKind.Text, 0, "a&b", 0, true));
        grid.Cell(1, 3).ShouldBe(new GridCell(CellKind.Text, 0, "", 0, true));
        Enumerable.Range(4, 5).Select(column => (grid.Cell(1, column).Number, grid.Cell(1, column).HasFormula)).ShouldBe([(1, true), (2, true), (3, true), (4, true), (5, true)]);
        grid.Cell(1, 9).ShouldBe(new GridCell(CellKind.Empty, 0, null, 0, true));
        grid.Cell(1, 10).ShouldBe(new GridCell(CellKind.Number, 6, null, 0, false));
    }

    [Fact]
    public void KeepOnly_HeadingsAndTwoColumns_ForgetsOtherValuesAndNoFormat()
    {
        var grid = Grid("<sheetData><row r=\"1\"><c r=\"A1\"><v>10</v></c><c r=\"B1\"><v>20</v></c></row>"
            + "<row r=\"2\"><c r=\"A2\" s=\"4\"><v>1</v></c><c r=\"B2\" s=\"5\"><f>A2</f><v>2</v></c><c r=\"C2\" s=\"6\"><v>3</v></c><c r=\"D2\"><v>4</v></c></row>"
            + "<row r=\"3\"><c r=\"D3\"><v>5</v></c></row></sheetData>");

        grid.KeepOnly(1, new HashSet<int> { 2, 4 });

        grid.Cell(1, 1).Number.ShouldBe(10);
        grid.Cell(1, 2).Number.ShouldBe(20);
        grid.Cell(2, 1).ShouldBe(new GridCell(CellKind.Empty, 0, null, 4, false));
        grid.Cell(2, 2).ShouldBe(new GridCell(CellKind.Number, 2, null, 5, true));
        grid.Cell(2, 3).ShouldBe(new GridCell(CellKind.Empty, 0, null, 6, false));
        grid.Cell(2, 4).Number.ShouldBe(4);
        grid.Cell(3, 4).Number.ShouldBe(5);
        grid.LastColumnOf(2).ShouldBe(4);
    }

    [Fact]
    public void Read_CellsOfEveryKind_KeepValueStyleAndFormula()
    {
        var grid = Grid("<sheetData><row r=\"3\"><c r=\"B3\" s=\"2\"><v>1.5</v></c><c r=\"C3\" t=\"b\"><v>1</v></c><c r=\"D3\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c>"
            + "<c r=\"F3\" t=\"str\"><f>\"\"</f><v></v></c><c r=\"G3\" s=\"1\"/><c r=\"H3\"><f>A1</f></c><c r=\"I3\" t=\"inlineStr\"><is><r><t>two </t></r><r><t>runs</t></r><rPh sb=\"0\" eb=\"1\"><t>no</t></rPh></is></c>"
            + "<c r=\"J3\"><v>3,5</v></c><c r=\"K3\"><v>1E400</v></c><c r=\"L3\" t=\"d\"><v>2026-03-03T12:00:00</v></c></row></sheetData>");

        grid.Cell(3, 2).ShouldBe(new GridCell(CellKind.Number, 1.5, null, 2, false));
        grid.Cell(3, 3).ShouldBe(new GridCell(CellKind.Boolean, 1, null, 0, false));
        grid.Cell(3, 4).ShouldBe(new GridCell(CellKind.Error, 0, "#DIV/0!", 0, true));
        grid.Cell(3, 5).ShouldBe(default);
        grid.Cell(3, 6).ShouldBe(new GridCell(CellKind.Text, 0, "", 0, true));
        grid.Cell(3, 7).ShouldBe(new GridCell(CellKind.Empty, 0, null, 1, false));
        grid.Cell(3, 8).ShouldBe(new GridCell(CellKind.Empty, 0, null, 0, true));
        grid.Cell(3, 9).Text.ShouldBe("two runs");
        grid.Cell(3, 10).Text.ShouldBe("3,5");
        grid.Cell(3, 11).Text.ShouldBe("1E400");
        grid.Cell(3, 12).ShouldBe(new GridCell(CellKind.Date, 46084.5, null, 0, false));
        grid.LastColumnOf(3).ShouldBe(12);
        grid.Cell(4, 2).ShouldBe(default);
    }

    [Fact]
    public void Read_Utf16PartWithPrefix_ReadsTheSame()
    {
        var xml = $"<?xml version=\"1.0\" encoding=\"UTF-16\"?><x:worksheet xmlns:x=\"{BookBuilder.MainNamespace}\"><x:sheetData><x:row><x:c t=\"inlineStr\"><x:is><x:t>Höhe</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>";
        using var book = new BookBuilder().Sheet("S", _ => { }).Build();
        using var utf16 = Replaced(book, "xl/worksheets/sheet1.xml", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(xml)]);
        using var package = BookPackage.Open(utf16);

        SheetReader.Read(package, package.Sheets[0], SharedStrings.None).Cell(1, 1).Text.ShouldBe("Höhe");
    }

    [Theory]
    [InlineData("<sheetData><row r=\"2\"><c r=\"B2\"/></row><row r=\"1\"/></sheetData>", "row 1, which is out of order")]
    [InlineData("<sheetData><row r=\"1\"><c r=\"B1\"/><c r=\"B1\"/></row></sheetData>", "cell B1 in row 1, which is out of order")]
    [InlineData("<sheetData><row r=\"1\"><c r=\"B2\"/></row></sheetData>", "cell B2 in row 1, which is out of order")]
    [InlineData("<sheetData><row r=\"1048577\"/></sheetData>", "row 1048577, which is out of order")]
    [InlineData("<sheetData><row r=\"1\"><c r=\"XFE1\"/></row></sheetData>", "cell XFE1 in row 1, which is out of order")]
    [InlineData("<sheetData><row></sheetData>", "sheet S")]
    public void Read_CellsOutOfOrderOrPlace_RefusesTheBook(string xml, string place) =>
        Should.Throw<BookRefusedException>(() => Grid(xml)).Finding.Seen.ShouldBe($"The workbook is damaged and cannot be read (at {place}).");

    [Fact]
    public void Read_TextLongerThanACell_RefusesTheBook() =>
        Should.Throw<BookRefusedException>(() => Grid($"<sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>{new string('a', 40_000)}</t></is></c></row></sheetData>"))
            .Finding.Id.ShouldBe("book-too-much");

    [Fact]
    public void Read_LongButLawfulText_IsWhole()
    {
        var text = string.Concat(Enumerable.Range(0, 6000).Select(i => (char)('a' + (i % 26))));

        Grid($"<sheetData><row r=\"1\"><c r=\"A1\" t=\"str\"><f>X</f><v>{text}</v></c><c r=\"B1\"><v>2</v></c></row></sheetData>").Cell(1, 1).Text.ShouldBe(text);
    }

    [Fact]
    public void Read_UpToARow_StopsThere()
    {
        using var book = new BookBuilder().Sheet("S", s => s.Row(1).Row(2).Row(3)).Build();
        using var package = BookPackage.Open(book);

        SheetReader.Read(package, package.Sheets[0], SharedStrings.None, 2).Rows.ShouldBe([1, 2]);
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("_x000D_", "\r")]
    [InlineData("a_x005F_x000D_b", "a_x000D_b")]
    [InlineData("_x00", "_x00")]
    [InlineData("_xZZZZ_", "_xZZZZ_")]
    public void Unescape_Text_GivesWhatItStandsFor(string text, string expected) => StringItems.Unescape(text).ShouldBe(expected);

    private static SheetGrid Grid(string content)
    {
        using var book = new BookBuilder().Sheet("S", _ => { }).Part("xl/worksheets/sheet1.xml", Open + content + "</worksheet>").Build();
        using var package = BookPackage.Open(book);
        return SheetReader.Read(package, package.Sheets[0], SharedStrings.None);
    }

    private static MemoryStream Replaced(MemoryStream book, string part, byte[] content)
    {
        var copy = new MemoryStream();
        copy.Write(book.ToArray());
        using (var zip = new System.IO.Compression.ZipArchive(copy, System.IO.Compression.ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.GetEntry(part)!.Delete();
            using var stream = zip.CreateEntry(part).Open();
            stream.Write(content);
        }

        copy.Position = 0;
        return copy;
    }
}
