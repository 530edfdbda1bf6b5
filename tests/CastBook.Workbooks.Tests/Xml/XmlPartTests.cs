using System.Text;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Tests.Xml;

public sealed class XmlPartTests
{
    [Fact]
    public void Children_AmongCommentsAndText_AreTheElementsInOrder()
    {
        var part = Part("<?xml version=\"1.0\"?>\r\n<a> <!-- <no/> --><b><b/></b>t<x:c/><![CDATA[<no/>]]></a>");

        part.Children(part.Root).Select(part.Text).ShouldBe(["<b><b/></b>", "<x:c/>"]);
        part.Children(part.Root)[1].LocalName.ShouldBe("c");
        part.Child(part.Root, "b")!.Value.IsEmptyTag.ShouldBeFalse();
        part.Child(part.Root, "no").ShouldBeNull();
    }

    [Theory]
    [InlineData("<a/>", "<a n=\"&lt;&quot;&#10;\"/>")]
    [InlineData("<a />", "<a  n=\"&lt;&quot;&#10;\"/>")]
    [InlineData("<a>t</a>", "<a n=\"&lt;&quot;&#10;\">t</a>")]
    [InlineData("<a n='old' m=\"1\"></a>", "<a n='&lt;&quot;&#10;' m=\"1\"></a>")]
    public void SetAttribute_PresentOrNot_ChangesNothingElse(string before, string after)
    {
        var part = Part(before);

        part.SetAttribute(part.Root, "n", "<\"\n");

        Text(part).ShouldBe(after);
        var written = Part(after);
        written.Attribute(written.Root, "n").ShouldBe("<\"\n");
    }

    [Fact]
    public void SetAttribute_ToTheValueItHas_EditsNothing()
    {
        var part = Part("<a n=\"1\"/>");

        part.SetAttribute(part.Root, "n", "1");

        part.IsEdited.ShouldBeFalse();
    }

    [Theory]
    [InlineData("<a/>", "<a><b/><c/></a>")]
    [InlineData("<a x=\"1\" />", "<a x=\"1\" ><b/><c/></a>")]
    [InlineData("<x:a></x:a>", "<x:a><b/><c/></x:a>")]
    [InlineData("<x:a\n/>", "<x:a\n><b/><c/></x:a>")]
    [InlineData("<a>t</a>", "<a>t<b/><c/></a>")]
    public void Append_Twice_StandsInOrderAtTheEnd(string before, string after)
    {
        var part = Part(before);

        part.Append(part.Root, "<b/>");
        part.Append(part.Root, "<c/>");

        part.IsEdited.ShouldBeTrue();
        Text(part).ShouldBe(after);
    }

    [Fact]
    public void ToBytes_EditsInAnyOrder_StandWhereTheyBelong()
    {
        var part = Part("<a><b/><c/><d/></a>");
        var children = part.Children(part.Root);

        part.Append(part.Root, "<d2/>");
        part.Replace(children[1], "");
        part.InsertBefore(children[1], "<c1/>");
        part.InsertBefore(children[1], "<c2/>");
        part.SetAttribute(part.Root, "n", "1");
        part.InsertBefore(children[2], "<c3/>");

        Text(part).ShouldBe("<a n=\"1\"><b/><c1/><c2/><c3/><d/><d2/></a>");
    }

    [Theory]
    [InlineData("<x:a xmlns:x=\"u\"/>", "x:", "<x:b><x:t>~</x:t></x:b>")]
    [InlineData("<a/>", "", "<b><t>~</t></b>")]
    public void Own_Element_GetsThePartsPrefix(string xml, string prefix, string own)
    {
        var part = Part(xml);

        part.Prefix.ShouldBe(prefix);
        part.Own("<~b><~t>~</~t></~b>").ShouldBe(own);
    }

    [Fact]
    public void InnerText_OfAnElement_IsWhatStandsBetweenItsTags()
    {
        var part = Part("<a><b>1<i>2</i></b><c/></a>");

        part.InnerText(part.Child(part.Root, "b")!.Value).ShouldBe("1<i>2</i>");
        part.InnerText(part.Child(part.Root, "c")!.Value).ShouldBe("");
    }

    [Fact]
    public void New_WithoutARoot_IsRefused() => Should.Throw<InvalidDataException>(() => Part("<!-- nothing -->"));

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void ToUtf8_WidePart_BecomesUtf8WithItsTextKept(bool bigEndian, bool mark)
    {
        var encoding = new UnicodeEncoding(bigEndian, mark);
        byte[] wide = [.. encoding.GetPreamble(), .. encoding.GetBytes("<?xml version=\"1.0\" encoding='UTF-16'?><a n=\"Gießliste\"/>")];

        var expected = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><a n=\"Gießliste\"/>";

        Encoding.UTF8.GetString(XmlEncoding.ToUtf8(wide)).ShouldBe(expected);
        using var slow = new SlowStream(wide, 3);
        using var stream = XmlEncoding.ToUtf8(slow);
        using var reader = new StreamReader(stream);
        reader.ReadToEnd().ShouldBe(expected);
    }

    [Theory]
    [InlineData("\uFEFF<a>ß</a>")]
    [InlineData("<a/>")]
    [InlineData("<a")]
    [InlineData("")]
    public void ToUtf8_Utf8Part_StaysByteForByte(string xml)
    {
        var bytes = Encoding.UTF8.GetBytes(xml);

        XmlEncoding.ToUtf8(bytes).ShouldBe(bytes);
        using var slow = new SlowStream(bytes, 1);
        using var stream = XmlEncoding.ToUtf8(slow);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        copy.ToArray().ShouldBe(bytes);
    }

    internal static XmlPart Part(string xml) => new(Encoding.UTF8.GetBytes(xml));

    internal static string Text(XmlPart part) => Encoding.UTF8.GetString(part.ToBytes());
}
