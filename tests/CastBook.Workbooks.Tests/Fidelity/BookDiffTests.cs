using System.Text;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>The comparison itself: it must notice every kind of loss, in a filled book that has none.</summary>
public sealed class BookDiffTests
{
    private const string Rich = "01_rich_excel365_like.xlsx";
    private const string Sheet = "xl/worksheets/sheet1.xml";

    private static readonly byte[] RichBook = File.ReadAllBytes(TestBooks.PathOf(Rich));
    private static readonly byte[] RichFilled = Filled.From(RichBook, Rich).Bytes;

    [Theory]
    [InlineData(Sheet, " outlineLevelRow=\"1\"", "")]
    [InlineData(Sheet, " ca=\"1\"", "")]
    [InlineData(Sheet, " vm=\"1\"", "")]
    [InlineData(Sheet, "<v>4.35</v>", "<v>4.350</v>")]
    [InlineData(Sheet, "<c r=\"M6\" s=\"12\"/>", "")]
    [InlineData(Sheet, "<c r=\"C1\" s=\"10\"/><c r=\"D1\" s=\"10\"/>", "<c r=\"D1\" s=\"10\"/><c r=\"C1\" s=\"10\"/>")]
    [InlineData(Sheet, "<c r=\"B22\" t=\"str\"><v>resin</v></c>", "<c r=\"B22\" t=\"str\"><f/><v>resin</v></c>")]
    [InlineData(Sheet, "<printOptions horizontalCentered=\"1\" gridLines=\"1\"/>", "<printOptions gridLines=\"1\" horizontalCentered=\"1\"/>")]
    [InlineData(Sheet, "<printOptions horizontalCentered=\"1\" gridLines=\"1\"/>", "")]
    [InlineData(Sheet, "prompt=\"wax or resin\"", "prompt='wax or resin'")]
    [InlineData(Sheet, "<ignoredError sqref=\"O12\"", "<ignoredError  sqref=\"O12\"")]
    [InlineData(Sheet, "<xm:f>Lists!$A$2:$A$6</xm:f>", "<xm:f>Lists!$A$2:$A$5</xm:f>")]
    [InlineData(Sheet, "priority=\"2\"", "priority=\"20\"")]
    [InlineData(Sheet, "width=\"26.453125\"", "width=\"26.45\"")]
    [InlineData(Sheet, "</sheetData>", "</sheetData>\n")]
    [InlineData(Sheet, "</sheetData>", "</sheetData><!---->")]
    [InlineData(Sheet, "<row r=\"5\" spans=\"1:15\"", "<row r=\"5\" spans=\"2:15\"")]
    [InlineData("xl/comments1.xml", "sprue on the back face", "sprue on the back face ")]
    [InlineData("xl/comments1.xml", " xr:uid=\"{B0000000-0001-4000-8000-000000000001}\"", "")]
    [InlineData("xl/drawings/vmlDrawing1.vml", "<x:Visible/>", "")]
    [InlineData("xl/drawings/vmlDrawing1.vml", "<br></br>", "<br/>")]
    [InlineData("xl/workbook.xml", "<definedName name=\"Resin_density\">1.12</definedName>", "")]
    [InlineData("xl/workbook.xml", "Prices!$A$1:$C$6", "Prices!$A$1:$C$5")]
    [InlineData("xl/workbook.xml", " comment=\"for drop-downs\"", "")]
    [InlineData("xl/workbook.xml", "<sheet name=\"Prices\"", "<sheet name=\"Extra\" sheetId=\"77\" r:id=\"rId1\"/><sheet name=\"Prices\"")]
    [InlineData("xl/styles.xml", "<cellXfs count", "<cellXfs  count")]
    [InlineData("xl/styles.xml", "<fonts", "<numFmts><numFmt numFmtId=\"7\" formatCode=\"0\"/></numFmts><fonts")]
    [InlineData("[Content_Types].xml", "<Default Extension=\"png\" ContentType=\"image/png\"/>", "")]
    [InlineData("xl/_rels/workbook.xml.rels", "Id=\"rId15\"", "Id=\"rId150\"")]
    [InlineData("xl/theme/theme1.xml", "<a:theme ", "<a:theme  ")]
    [InlineData("docProps/core.xml", "<cp:coreProperties ", "<cp:coreProperties  ")]
    public void Of_LossPlanted_IsNoticed(string part, string text, string planted) => BookDiff.Of(RichBook, Planted.In(RichFilled, part, content =>
    {
        var xml = Encoding.UTF8.GetString(content);
        xml.ShouldContain(text);
        return Encoding.UTF8.GetBytes(Once(xml, text, planted));
    })).Losses.ShouldNotBeEmpty();

    [Fact]
    public void Of_PartLeftOut_IsNoticed() => BookDiff.Of(RichBook, Planted.In(RichFilled, "xl/charts/colors1.xml", _ => null))
        .Losses.ShouldContain(l => l.StartsWith("entry xl/charts/colors1.xml of ", StringComparison.Ordinal));

    [Fact]
    public void Of_BinaryPartChanged_IsNoticed() => BookDiff.Of(RichBook, Planted.In(RichFilled, "xl/media/image1.png", content => [.. content, 0]))
        .Losses.ShouldBe(["xl/media/image1.png was altered"]);

    [Fact]
    public void Of_OtherTimeStamp_IsNoticed()
    {
        var output = new MemoryStream(RichFilled.ToArray());
        using (var zip = new System.IO.Compression.ZipArchive(output, System.IO.Compression.ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.GetEntry("xl/styles.xml")!.LastWriteTime = new DateTimeOffset(2020, 2, 2, 2, 2, 2, TimeSpan.Zero);
        }

        BookDiff.Of(RichBook, output.ToArray()).Losses.Single().ShouldStartWith("entry xl/styles.xml of ");
    }

    // A carriage return, a line end within an attribute, a blank at the end: what XML readers fold in silence.
    [Theory]
    [InlineData("\r\n", "\n")]
    [InlineData("&#13;", "")]
    [InlineData("&#10;", " ")]
    [InlineData("edge  </t>", "edge</t>")]
    [InlineData(" <c r=\"B4\"", "<c r=\"B4\"")]
    public void Of_WhatReadersFold_IsNoticed(string text, string planted)
    {
        var odd = Planted.In(Nights.Whole().ToArray(), Sheet, content => Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(content)
            .Replace("<c r=\"B4\"", " <c r=\"B4\"", StringComparison.Ordinal)
            .Replace("all of it for Friday", "all of it&#13;\r\nfor Friday edge  ", StringComparison.Ordinal)
            .Replace("</sheetData>", "</sheetData><dataValidations count=\"1\"><dataValidation prompt=\"one&#10;two\" sqref=\"A1\"/></dataValidations>", StringComparison.Ordinal)));
        var filled = Filled.From(odd).Bytes;

        BookDiff.Of(odd, filled).Losses.ShouldBeEmpty();
        BookDiff.Of(odd, Planted.In(filled, Sheet, content => Encoding.UTF8.GetBytes(Once(Encoding.UTF8.GetString(content), text, planted))))
            .Losses.ShouldNotBeEmpty();
    }

    // What stands in our own column is ours to change, but not the shop's words there, nor a formula, nor a format.
    [Theory]
    [InlineData("<c r=\"K5\" s=\"3\"><v>7</v></c>", "K5 held \"7\"")]
    [InlineData("<c r=\"K5\" s=\"3\"/>", "K5 had the format 3")]
    [InlineData("<c r=\"K5\"><f>1+1</f></c>", "K5 held \"1+1\"")]
    public void Of_ShopsCellInANewColumnOfOurs_IsNoticed(string cell, string loss)
    {
        var filled = Filled.From(Nights.Whole()).Bytes;
        var before = Planted.In(Nights.Whole().ToArray(), Sheet, content => Encoding.UTF8.GetBytes(
            Encoding.UTF8.GetString(content).Replace("</row><row r=\"6\">", cell + "</row><row r=\"6\">", StringComparison.Ordinal)));

        BookDiff.Of(before, filled).Losses.ShouldContain(l => l.Contains(loss, StringComparison.Ordinal));
    }

    private static string Once(string text, string old, string fresh)
    {
        var at = text.IndexOf(old, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0);
        return string.Concat(text.AsSpan(0, at), fresh, text.AsSpan(at + old.Length));
    }
}
