using System.Xml.Linq;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class CellValueTests
{
    [Theory]
    [InlineData("a < b & \"c\"", "a &lt; b &amp; \"c\"")]
    [InlineData("\u0001bell\u0007\uFFFE", "bell")]
    [InlineData("a\tb\nc", "a\tb\nc")]
    [InlineData("a\r\nb", "a&#13;\nb")]
    [InlineData("_x000D_ literal", "_x005F_x000D_ literal")]
    [InlineData("_x000d_", "_x005F_x000d_")]
    [InlineData("_x00G0_ and _x000", "_x00G0_ and _x000")]
    [InlineData("x_x0041__x0042_", "x_x005F_x0041__x005F_x0042_")]
    [InlineData("\U0001F48D", "\U0001F48D")]
    public void EscapeCell_Text_ReadsBackAsTyped(string text, string escaped) => XmlText.EscapeCell(text).ShouldBe(escaped);

    [Fact]
    public void EscapeAttribute_LineBreaksAndQuotes_SurviveAReader()
    {
        var escaped = XmlText.EscapeAttribute("a\r\n\t\"<&'");

        escaped.ShouldBe("a&#13;&#10;&#9;&quot;&lt;&amp;'");
        XElement.Parse($"<a n=\"{escaped}\"/>").Attribute("n")!.Value.ShouldBe("a\r\n\t\"<&'");
    }

    [Theory]
    [InlineData("&lt;&gt;&amp;&quot;&apos;", "<>&\"'")]
    [InlineData("&#65;&#x42;&#x1F48D;", "AB\U0001F48D")]
    [InlineData("&unknown; &#xD800; &#x; & alone", "&unknown; &#xD800; &#x; & alone")]
    public void Unescape_Entities_GiveTheirCharacters(string raw, string text) => XmlText.Unescape(raw).ShouldBe(text);

    [Fact]
    public void ToXml_Number_IsWrittenWithAllItsDigitsAndAPoint()
    {
        CellValue.Of(0.1 + 0.2).ToXml(7, 3, null, "").ShouldBe("<c r=\"C7\"><v>0.30000000000000004</v></c>");
        CellValue.Of(45.75).ToXml(7, 28, 4, "x:").ShouldBe("<x:c r=\"AB7\" s=\"4\"><x:v>45.75</x:v></x:c>");
        CellValue.Of(45.75).ToXml(7, 28, 0, "").ShouldBe("<c r=\"AB7\"><v>45.75</v></c>");
    }

    [Fact]
    public void ToXml_Text_StaysAnInlineStringWhateverItBeginsWith()
    {
        CellValue.Of("=1+1").ToXml(1, 1, 2, "").ShouldBe("<c r=\"A1\" s=\"2\" t=\"inlineStr\"><is><t>=1+1</t></is></c>");
        CellValue.Of(" Otter ").ToXml(1, 1, null, "x:").ShouldBe("<x:c r=\"A1\" t=\"inlineStr\"><x:is><x:t xml:space=\"preserve\"> Otter </x:t></x:is></x:c>");
        CellValue.Of("a\nb").ToXml(1, 1, null, "").ShouldContain("xml:space=\"preserve\"");
    }

    [Fact]
    public void ToXml_Empty_KeepsTheFormatOnly()
    {
        CellValue.Of("").ShouldBe(CellValue.Empty);
        CellValue.Of((double?)null).IsEmpty.ShouldBeTrue();
        CellValue.Empty.ToXml(2, 2, 5, "").ShouldBe("<c r=\"B2\" s=\"5\"/>");
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Of_NumberNoCellCanHold_Throws(double number) => Should.Throw<ArgumentOutOfRangeException>(() => CellValue.Of(number));
}
