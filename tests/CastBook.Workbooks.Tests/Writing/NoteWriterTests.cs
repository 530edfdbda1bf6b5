using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class NoteWriterTests
{
    private const string Comments = "xl/comments1.xml";
    private const string Drawing = "xl/drawings/vmlDrawing1.vml";
    private const string Stop = "CastBook stop: B2 says 12O.5.";
    private const string Theirs = "<comment ref=\"A2\" authorId=\"0\"><text><r><t>CastBook says too heavy,</t></r><r><t> ask at the bench</t></r></text></comment>";
    private const string OldOurs = "<comment ref=\"B2\" authorId=\"0\"><text><t>CastBook check: old</t></text></comment>";

    [Fact]
    public void Write_SheetWithoutNotes_GetsNotesDrawingAndBothRelationships()
    {
        using var book = Book(null);
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);

        new NoteWriter(package, edits).Write(package.Sheets[0], null, new Dictionary<(int, int), string> { [(2, 2)] = Stop, [(1, 3)] = "CastBook note: <c>" });

        var parts = edits.Finish();
        var comments = Encoding.UTF8.GetString(parts[Comments]);
        comments.ShouldContain("<authors><author>CastBook</author></authors>");
        comments.IndexOf("ref=\"C1\"", StringComparison.Ordinal).ShouldBeLessThan(comments.IndexOf("ref=\"B2\"", StringComparison.Ordinal));
        comments.ShouldContain("CastBook note: &lt;c&gt;</t>");
        Encoding.UTF8.GetString(parts[Drawing]).ShouldContain("<x:Row>1</x:Row><x:Column>1</x:Column>");
        var relations = Encoding.UTF8.GetString(parts["xl/worksheets/_rels/sheet1.xml.rels"]);
        relations.ShouldContain("/comments\" Target=\"../comments1.xml\"");
        relations.ShouldContain("/vmlDrawing\" Target=\"../drawings/vmlDrawing1.vml\"");
        var types = Encoding.UTF8.GetString(parts["[Content_Types].xml"]);
        types.ShouldContain("<Default Extension=\"vml\"");
        types.ShouldContain("<Override PartName=\"/xl/comments1.xml\"");
        edits.Sheet(package.Sheets[0].PartName).Inserts.ShouldHaveSingleItem().Xml.ShouldContain("<~legacyDrawing xmlns:r=");
    }

    [Fact]
    public void Write_ShopsNoteStands_IsUntouchedAndOursGivesWay()
    {
        var comments = Written(Theirs, [((2, 1), Stop)]);

        comments.ShouldBeNull();
    }

    [Fact]
    public void Write_NoteOfOursIsDue_ReplacesTheOldOneOnly()
    {
        var comments = Written(Theirs + OldOurs, [((2, 2), Stop)]);

        comments.ShouldNotBeNull();
        comments.ShouldContain("<author>Wrenmoor Foundry</author><author>CastBook</author>");
        comments.ShouldContain(Theirs + "<comment ref=\"B2\" authorId=\"1\">");
        comments.ShouldContain(Stop);
        comments.ShouldNotContain("check: old");
    }

    [Fact]
    public void Write_NoteOfOursIsNoLongerDue_IsTakenAway()
    {
        var comments = Written(OldOurs + Theirs, []);

        comments.ShouldNotBeNull();
        comments.ShouldContain($"<commentList>{Theirs}</commentList>");
    }

    [Fact]
    public void Write_SameNotesAgain_TouchesNoPart() => Written(OldOurs + Theirs, [((2, 2), "CastBook check: old")]).ShouldBeNull();

    [Fact]
    public void Write_TwiceWithOddText_GivesTheSameParts()
    {
        ((int, int), string)[] due = [((2, 2), "CastBook stop: \"_x000D_\" & <b>\r\nsecond line"), ((3, 1), Stop)];
        var once = Written(Theirs, due);

        once.ShouldNotBeNull();
        var list = once[(once.IndexOf("<commentList>", StringComparison.Ordinal) + 13)..once.IndexOf("</commentList>", StringComparison.Ordinal)];
        (Written(list, due, "<author>Wrenmoor Foundry</author><author>CastBook</author>") ?? once).ShouldBe(once);
    }

    /// <summary>The notes part as written; null where it was not touched.</summary>
    private static string? Written(string comments, ((int Row, int Column) Cell, string Text)[] due, string authors = "<author>Wrenmoor Foundry</author>")
    {
        using var book = Book(comments, authors);
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        new NoteWriter(package, edits).Write(package.Sheets[0], "rId2", due.ToDictionary(d => d.Cell, d => d.Text));
        return edits.Finish().TryGetValue(Comments, out var part) ? Encoding.UTF8.GetString(part) : null;
    }

    private static MemoryStream Book(string? comments, string authors = "")
    {
        var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece"));
        return comments is null ? book.Build() : book
            .Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships([("rId1", "comments", "../comments1.xml"), ("rId2", "vmlDrawing", "../drawings/vmlDrawing1.vml")]))
            .Part(Comments, $"<comments xmlns=\"{BookBuilder.MainNamespace}\"><authors>{authors}</authors><commentList>{comments}</commentList></comments>")
            .Part(Drawing, NoteDrawing.Empty(1)).Build();
    }
}
