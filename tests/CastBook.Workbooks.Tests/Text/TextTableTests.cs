using System.Text;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Text;

namespace CastBook.Workbooks.Tests.Text;

public sealed class TextTableTests
{
    [Fact]
    public void Read_CommasQuotesAndALineBreakInside_GivesTheCellsAsTyped()
    {
        var rows = File("23_utf8bom_comma_quotes.csv");

        rows[0].ShouldBe(["Piece", "Qty", "Wax weight, g", "Metal", "Note"]);
        rows[1][4].ReplaceLineEndings("\n").ShouldBe("two parts,\nsolder after");

        // The formula stands in the file without quotes around it, so its comma parts it in two; both halves stay text.
        rows[2][4].ShouldBe("=HYPERLINK(\"http://example.invalid\"");
        rows[3][2].ShouldBe("3,1");
    }

    [Fact]
    public void Read_SeparatorLine_IsObeyedAndNoRow() =>
        File("25_sep_line.csv").ShouldBe([["Piece", "Qty", "Wax g"], ["Oar pin", "5", "1,33"]]);

    [Theory]
    [InlineData("Piece;Qty;Wax g\nPin;2;1,5\nCup;3;2,5\n")]
    [InlineData("Piece\tQty\tWax g\nPin\t2\t1,5\nCup\t3\t2,5\n")]
    [InlineData("Piece|Qty|Wax g\r\nPin|2|1,5\r\nCup|3|2,5\r\n")]
    [InlineData("Piece,Qty,Wax g\nPin,2,\"1,5\"\nCup,3,\"2,5\"\n")]
    public void Read_AnyUsualSeparator_IsFound(string text) =>
        TextTable.Read(text).ShouldBe([["Piece", "Qty", "Wax g"], ["Pin", "2", "1,5"], ["Cup", "3", "2,5"]]);

    [Fact]
    public void Read_TitlesAndBlankLines_AreRowsOfTheirOwn() =>
        TextTable.Read("\nList of December\n\nPiece;Qty\nPin;2\n").Select(r => r.Length).ShouldBe([1, 1, 1, 2, 2]);

    [Theory]
    [InlineData("utf-8", true)]
    [InlineData("utf-8", false)]
    [InlineData("utf-16", true)]
    [InlineData("utf-16", false)]
    [InlineData("utf-16BE", true)]
    [InlineData("utf-16BE", false)]
    [InlineData("windows-1252", false)]
    public void Decode_EveryUsualEncoding_GivesTheText(string name, bool mark)
    {
        const string Text = "Stück;Größe\n2;5 €";
        var encoding = CodePagesEncodingProvider.Instance.GetEncoding(name) ?? Encoding.GetEncoding(name);

        TextDecoder.Decode([.. mark ? encoding.GetPreamble() : [], .. encoding.GetBytes(Text)]).ShouldBe(Text);
    }

    private static IReadOnlyList<string[]> File(string name) => TextTable.Read(TextDecoder.Decode(System.IO.File.ReadAllBytes(TestBooks.PathOf(name))));
}
