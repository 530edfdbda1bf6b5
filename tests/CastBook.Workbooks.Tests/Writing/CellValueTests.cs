using System.Globalization;
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

    // What the runtime writes of a number is the shortest that reads back as it.
    [Fact]
    public void ToXml_AnyNumber_IsWrittenAsTheRuntimeWritesIt()
    {
        var random = new Random(5);
        double[] odd = [0, -0.0, 0.001, -0.001, 0.0005, 0.1, 0.10000000000000002, 1, -7, 10, 100.5, 999_999_999.999, -999_999_999.999, 1e9, 1_000_000_000.25, 1e15, 1e16, 1e-5, 2.5e-7, double.MaxValue, double.Epsilon, 4503599627370496.5];
        double[] some = [.. Enumerable.Range(0, 20_000).Select(i => Math.Round((random.NextDouble() - 0.3) * Math.Pow(10, i % 11), i % 5))];
        foreach (var number in odd.Concat(some).Concat(some.Select(Math.BitIncrement)))
        {
            CellValue.Of(number).ToXml(1, 1, null, "").ShouldBe($"<c r=\"A1\"><v>{number.ToString("R", CultureInfo.InvariantCulture)}</v></c>");
        }
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
