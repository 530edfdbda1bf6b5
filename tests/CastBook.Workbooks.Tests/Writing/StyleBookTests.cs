using System.Text;
using System.Xml.Linq;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class StyleBookTests
{
    [Theory]
    [MemberData(nameof(SheetSplicerTests.Workbooks), MemberType = typeof(SheetSplicerTests))]
    public void ToBytes_AfterAppending_EveryOldFormatStandsWhereItStood(string name)
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(TestBooks.Open(name));
        var before = package.StylesPart is { } part ? package.Read(part) : StyleBook.Smallest(BookBuilder.MainNamespace);
        var styles = new StyleBook(before);

        var format = styles.Format(CellLook.Number(CellLook.Grams));
        var beside = styles.Beside(0, CellLook.Whole, alignRight: true);
        var mark = styles.Mark(Severity.Stop);

        var old = XDocument.Load(new MemoryStream(before)).Root!;
        var grown = XDocument.Load(new MemoryStream(styles.ToBytes())).Root!;
        foreach (var section in old.Elements())
        {
            var same = grown.Element(section.Name)!.Elements().Take(section.Elements().Count());
            same.Select(e => e.ToString()).ShouldBe(section.Elements().Select(e => e.ToString()), section.Name.LocalName);
        }

        var ns = grown.Name.Namespace;
        grown.Element(ns + "cellXfs")!.Elements().ElementAt(format).Attribute("fontId").ShouldNotBeNull();
        grown.Element(ns + "cellXfs")!.Elements().ElementAt(beside).Element(ns + "alignment")!.Attribute("horizontal")!.Value.ShouldBe("right");
        grown.Element(ns + "dxfs")!.Elements().ElementAt(mark).Element(ns + "fill").ShouldNotBeNull();
        grown.Elements().Where(e => e.Attribute("count") is not null && e.Name.LocalName is not "colors")
            .ShouldAllBe(e => e.Elements().Count() == (int)e.Attribute("count")!);
    }

    [Fact]
    public void Format_TheSameRequestTwice_GivesTheSameIndexAndAddsNothing()
    {
        var styles = new StyleBook(StyleBook.Smallest("u"));
        int[] first = [styles.Format(CellLook.Title), styles.Beside(0, CellLook.Grams, true), styles.Mark(Severity.Check)];
        var once = styles.ToBytes();

        var again = new StyleBook(once);
        int[] second = [again.Format(CellLook.Title), again.Beside(0, CellLook.Grams, true), again.Mark(Severity.Check)];

        second.ShouldBe(first);
        again.IsEdited.ShouldBeFalse();
        again.ToBytes().ShouldBe(once);
    }

    [Fact]
    public void ToBytes_SectionsMissing_AreAddedInTheOrderOfTheFormat()
    {
        var styles = new StyleBook("<styleSheet xmlns=\"u\"><cellXfs count=\"1\"><xf/></cellXfs><extLst/></styleSheet>"u8.ToArray());

        styles.Format(CellLook.Big(CellLook.Grams));
        styles.Format(CellLook.Heading);
        styles.Mark(Severity.Note);

        XDocument.Parse(Encoding.UTF8.GetString(styles.ToBytes())).Root!.Elements().Select(e => e.Name.LocalName)
            .ShouldBe(["numFmts", "fonts", "fills", "borders", "cellXfs", "dxfs", "extLst"]);
    }

    [Fact]
    public void Format_BookWithoutFontsOrFills_LeavesPlainCellsPlain()
    {
        // Cells of the book mean font 0 and fill 0; fills 0 and 1 are "none" and "gray125" in every program.
        var styles = new StyleBook("<styleSheet xmlns=\"u\"/>"u8.ToArray());

        var format = styles.Format(CellLook.Heading);

        XNamespace u = "u";
        var root = XDocument.Parse(Encoding.UTF8.GetString(styles.ToBytes())).Root!;
        format.ShouldBe(1);
        var ours = root.Element(u + "cellXfs")!.Elements().ElementAt(1);
        ((int)ours.Attribute("fontId")!).ShouldBe(1);
        ((int)ours.Attribute("fillId")!).ShouldBe(2);
        ((int)ours.Attribute("borderId")!).ShouldBe(0);
    }

    [Fact]
    public void Beside_ShopsFormat_KeepsFontFillAndProtection()
    {
        var styles = new StyleBook(Encoding.UTF8.GetBytes(
            "<x:styleSheet xmlns:x=\"u\"><x:borders count=\"2\"><x:border/><x:border><x:left style=\"thick\"/><x:top style=\"thin\"/></x:border></x:borders>"
            + "<x:cellXfs count=\"1\"><x:xf numFmtId=\"4\" fontId=\"7\" fillId=\"5\" borderId=\"1\" xfId=\"0\"><x:protection locked=\"0\"/></x:xf></x:cellXfs><x:dxfs count=\"0\"/></x:styleSheet>"));

        styles.Beside(0, null, alignRight: true).ShouldBe(1);
        styles.Mark(Severity.Note).ShouldBe(0);

        var text = Encoding.UTF8.GetString(styles.ToBytes());
        text.ShouldContain("<x:borders count=\"3\"><x:border/><x:border><x:left style=\"thick\"/><x:top style=\"thin\"/></x:border>"
            + "<x:border><x:left style=\"thin\"><x:color rgb=\"FF2F6F73\"/></x:left><x:top style=\"thin\"/></x:border></x:borders>");
        text.ShouldContain("<x:xf numFmtId=\"4\" fontId=\"7\" fillId=\"5\" borderId=\"2\" xfId=\"0\" applyBorder=\"1\" applyAlignment=\"1\">"
            + "<x:alignment horizontal=\"right\" indent=\"1\"/><x:protection locked=\"0\"/></x:xf></x:cellXfs>");
        text.ShouldContain("<x:dxfs count=\"1\"><x:dxf>");
    }

    [Fact]
    public void Beside_NumberFormatOfTheBook_IsUsedAgain()
    {
        var styles = new StyleBook(Encoding.UTF8.GetBytes(
            "<styleSheet xmlns=\"u\"><numFmts count=\"2\"><numFmt numFmtId=\"170\" formatCode=\"#,##0\"/><numFmt numFmtId=\"180\" formatCode=\"0.0&quot; g&quot;\"/></numFmts>"
            + "<cellXfs count=\"1\"><xf numFmtId=\"0\"/></cellXfs></styleSheet>"));

        styles.Beside(0, "#,##0", null);
        styles.Beside(0, "0.0\" g\"", null);
        styles.Beside(0, "0.000", null);
        styles.Beside(0, "General", null);

        var text = Encoding.UTF8.GetString(styles.ToBytes());
        text.ShouldContain("<numFmts count=\"3\">");
        text.ShouldContain("<numFmt numFmtId=\"181\" formatCode=\"0.000\"/></numFmts>");
        foreach (var id in (int[])[170, 180, 181, 0])
        {
            text.ShouldContain($"<xf numFmtId=\"{id}\" borderId=\"1\" applyBorder=\"1\" applyNumberFormat=\"1\"/>");
        }
    }
}
