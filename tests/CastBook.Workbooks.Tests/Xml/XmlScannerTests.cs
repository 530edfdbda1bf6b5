using System.Text;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Tests.Xml;

public sealed class XmlScannerTests
{
    [Theory]
    [InlineData("<a><!-- <b> --><c/></a>", "a c/ /a")]
    [InlineData("<a><![CDATA[<b>]]]]><c/></a>", "a c/ /a")]
    [InlineData("<?xml version=\"1.0\"?><?castbook <b> ?><a/>", "a/")]
    [InlineData("<a x=\"1>2\"><b y='>\"/>'/></a>", "a b/ /a")]
    [InlineData("<x:a\r\n\tv = '1' ><x:b /></x:a >", "a b/ /a")]
    [InlineData("\uFEFF<a>1 &gt; 0</a><!-- end -->", "a /a")]
    public void Next_OddButValidMarkup_FindsTheTags(string xml, string tags) => TagsOf(new XmlScanner(Encoding.UTF8.GetBytes(xml))).ShouldBe(tags);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Keep_SmallChunks_CopiesByteForByte(int atOnce)
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(TestBooks.Open("01_rich_excel365_like.xlsx"));
        var part = package.Read("xl/worksheets/sheet1.xml");
        using var source = new SlowStream(part, atOnce);
        var scanner = new XmlScanner(source);
        using var copy = new MemoryStream();

        while (scanner.Next())
        {
            scanner.Keep(copy);
        }

        scanner.Keep(copy);
        copy.ToArray().ShouldBe(part);
    }

    [Fact]
    public void Next_PartLargerThanItsBuffer_FindsTheSameTags()
    {
        // 100,000 characters of text, an attribute and a comment of as many: each longer than what is read at once.
        var big = new string('x', 100_000);
        var xml = Encoding.UTF8.GetBytes($"<a><b>{big}</b><c v=\"{big}>\"/><!--{big}<d>--><e/></a>");
        using var source = new SlowStream(xml, 5_000);
        var scanner = new XmlScanner(source);

        TagsOf(scanner, drop: true).ShouldBe("a b /b c/ e/ /a");
    }

    [Fact]
    public void Start_AfterTheBufferMoved_StillCountsFromTheFirstByte()
    {
        var big = new string('x', 70_000);
        using var source = new SlowStream(Encoding.UTF8.GetBytes($"<a><b>{big}</b><c/></a>"), 4_000);
        var scanner = new XmlScanner(source);
        while (scanner.Next() && scanner.Kind != TagKind.Empty)
        {
            scanner.Drop();
        }

        (scanner.Start, scanner.End).ShouldBe((70_010, 70_014));
    }

    [Theory]
    [InlineData("<!DOCTYPE a><a/>")]
    [InlineData("<a><!ENTITY x \"y\"></a>")]
    [InlineData("<a")]
    [InlineData("<a b=\">")]
    [InlineData("<a><!-- never closed")]
    public void Next_DocumentTypeOrEndInsideATag_IsRefused(string xml)
    {
        var scanner = new XmlScanner(Encoding.UTF8.GetBytes(xml));

        Should.Throw<InvalidDataException>(() => TagsOf(scanner));
    }

    [Fact]
    public void TakeElement_NestedElement_GivesItWholeAndHandsNothingOn()
    {
        var scanner = new XmlScanner("<a><b><b>1</b></b><c/></a>"u8.ToArray());
        using var copy = new MemoryStream();
        scanner.Next();
        scanner.Keep(copy);
        scanner.Next();

        Encoding.UTF8.GetString(scanner.TakeElement()).ShouldBe("<b><b>1</b></b>");
        scanner.Next();
        scanner.KeepBefore(copy);
        Encoding.UTF8.GetString(copy.ToArray()).ShouldBe("<a>");
        scanner.LocalName.SequenceEqual("c"u8).ShouldBeTrue();
    }

    [Theory]
    [InlineData("<c r=\"A1\" s='3'/>", "s", "3")]
    [InlineData("<c r=\"A1\" xs=\"1\" s=\"3\">", "s", "3")]
    [InlineData("<c\n\ts = \"3\" />", "s", "3")]
    [InlineData("<c x=\"s='4'\" s=\"3\">", "s", "3")]
    [InlineData("<c r=\"A1\" />", "s", null)]
    [InlineData("<c>", "s", null)]
    [InlineData("<c a:s=\"1\">", "s", null)]
    [InlineData("<c a:s=\"1\">", "a:s", "1")]
    public void TryGet_Attribute_IsFoundByItsWholeName(string tag, string name, string? value)
    {
        var found = TagAttributes.TryGet(Encoding.UTF8.GetBytes(tag), Encoding.UTF8.GetBytes(name), out var raw);

        (found ? Encoding.UTF8.GetString(raw) : null).ShouldBe(value);
    }

    [Theory]
    [InlineData("<c s=\"12\">", 12)]
    [InlineData("<c s=\"12x\">", null)]
    [InlineData("<c s=\"\">", null)]
    public void Number_Attribute_IsWholeOrNone(string tag, int? number) =>
        TagAttributes.Number(Encoding.UTF8.GetBytes(tag), "s"u8).ShouldBe(number);

    private static string TagsOf(XmlScanner scanner, bool drop = false)
    {
        var tags = new List<string>();
        while (scanner.Next())
        {
            var name = Encoding.UTF8.GetString(scanner.LocalName);
            tags.Add(scanner.Kind switch { TagKind.End => "/" + name, TagKind.Empty => name + "/", _ => name });
            if (drop)
            {
                scanner.Drop();
            }
        }

        return string.Join(' ', tags);
    }
}
