using System.Text;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class NoteDrawingTests
{
    private const string Button = "<v:shape id=\"_x0000_s2050\" type=\"#_x0000_t201\" o:button=\"t\"><v:textbox><div><font>Pour<br></font>now</div></v:textbox><x:ClientData ObjectType=\"Button\"><x:Row>4</x:Row><x:Column>1</x:Column></x:ClientData></v:shape>";
    private const string Note = "<v:shape id=\"_x0000_s2049\"><x:ClientData ObjectType=\"Note\"><x:Row>4</x:Row><x:Column>1</x:Column></x:ClientData></v:shape>";
    private const string Line = "<v:shape id=\"_x0000_s2048\" from=\"0\" />";
    private const string Head = "<xml xmlns:v=\"v\"><o:idmap v:ext=\"edit\" data=\"2\"/>";

    [Fact]
    public void Change_AddedNote_LeavesEveryOtherByteEvenWhatIsNoXml()
    {
        var changed = NoteDrawing.Change(Head + Button + Note + "</xml>", [], [(9, 3)]);

        changed.ShouldStartWith(Head + "<v:shapetype id=\"_x0000_t202\"");
        changed.ShouldEndWith("<x:Row>8</x:Row><x:Column>2</x:Column></x:ClientData></v:shape>" + Button + Note + "</xml>");
        // 2050 is the highest id of the drawing.
        changed.ShouldContain("<v:shape id=\"_x0000_s2051\"");
    }

    [Fact]
    public void Change_RemovedNote_TakesTheNoteOfThatCellOnly()
    {
        NoteDrawing.Change(Head + Line + Button + Note + "</xml>", [(5, 2)], []).ShouldBe(Head + Line + Button + "</xml>");
        NoteDrawing.Change(Head + Line + Note + "</xml>", [(5, 2)], []).ShouldBe(Head + Line + "</xml>");
        NoteDrawing.Change(Head + Note + "</xml>", [(5, 1), (15, 2), (4, 2)], []).ShouldBe(Head + Note + "</xml>");
    }

    [Fact]
    public void Change_SameNotesAgain_GivesTheSameDrawing()
    {
        (int Row, int Column)[] cells = [(5, 2), (6, 2), (7, 1)];
        var once = NoteDrawing.Change(Head + Button + "</xml>", [], cells);

        NoteDrawing.Change(once, cells, cells).ShouldBe(once);
    }

    [Fact]
    public void Change_EmptyDrawing_TakesIdsOfItsOwnBlock()
    {
        var drawing = NoteDrawing.Change(NoteDrawing.Empty(3), [], [(1, 1), (2, 1)]);

        drawing.ShouldContain("data=\"3\"");
        drawing.ShouldContain("id=\"_x0000_s3073\"");
        drawing.ShouldContain("id=\"_x0000_s3074\"");
        drawing.ShouldEndWith("</v:shape></xml>");
    }

    [Fact]
    public void Change_BookWithAButton_KeepsItsMarkupByteForByte()
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(TestBooks.Open("01_rich_excel365_like.xlsx"));
        var name = package.Parts.First(p => p.EndsWith(".vml", StringComparison.Ordinal) && package.Read(p).AsSpan().IndexOf("ObjectType=\"Button\""u8) > 0);
        var before = Encoding.Latin1.GetString(package.Read(name));

        var changed = NoteDrawing.Change(before, [], [(50, 1)]);

        var added = changed.Length - before.Length;
        var place = before.IndexOf("<v:shape ", StringComparison.Ordinal);
        added.ShouldBePositive();
        changed.Remove(place, added).ShouldBe(before);
        before.ShouldContain("<br>");
    }

    [Theory]
    [InlineData("<v:shape id=\"_x0000_s1025\" type=\"#button\"/>")]
    [InlineData("<v:shapetype id=\"_x0000_t202\"/>")]
    [InlineData("<v:shape\n id=\"_x0000_s1025\"><v:textbox/></v:shape>")]
    public void Change_OtherShapesBeforeANote_OnlyTheNoteGoes(string other)
    {
        var before = NoteDrawing.Empty(1).Replace("</xml>", other + "</xml>", StringComparison.Ordinal);
        var with = NoteDrawing.Change(before, [], [(3, 2)]);

        NoteDrawing.Without(with, [(3, 2)]).ShouldBe(before);
        NoteDrawing.Without(with, [(2, 3)]).ShouldBe(with);
    }

    [Fact]
    public void Change_ShapeThatNeverEnds_IsLeftAlone()
    {
        const string Broken = "<xml><v:shape id=\"_x0000_s1030\"><x:ClientData ObjectType=\"Note\"><x:Row>2</x:Row><x:Column>1</x:Column></xml>";

        NoteDrawing.Change(Broken, [(3, 2)], []).ShouldBe(Broken);
        NoteDrawing.Change(Broken, [], [(5, 1)]).ShouldContain("id=\"_x0000_s1031\"");
    }
}
