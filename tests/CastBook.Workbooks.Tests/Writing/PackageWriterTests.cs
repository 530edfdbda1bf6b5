using System.IO.Compression;
using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class PackageWriterTests
{
    [Theory]
    [MemberData(nameof(SheetSplicerTests.Workbooks), MemberType = typeof(SheetSplicerTests))]
    [InlineData("hostile/h08_zip_slip_names.xlsx")]
    public void Write_NoEdits_GivesTheSameEntriesInTheSameOrder(string name)
    {
        using var book = TestBooks.Open(name);
        using var package = BookPackage.Open(book);
        using var output = new MemoryStream();

        PackageWriter.Write(package, new BookEdits(package), output);

        using var written = new ZipArchive(output, ZipArchiveMode.Read);
        written.Entries.Select(Facts).ShouldBe(package.Archive.Entries.Select(Facts));
    }

    [Fact]
    public void Write_FolderEntriesAndAttributes_AreKept()
    {
        using var book = BookBuilder.Pieces(["Piece"]);
        using (var zip = new ZipArchive(book, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.CreateEntry("xl/media/").ExternalAttributes = 0x10;
            zip.GetEntry("xl/styles.xml")!.ExternalAttributes = 0x20;
        }

        book.Position = 0;
        using var package = BookPackage.Open(book);
        using var output = new MemoryStream();

        PackageWriter.Write(package, new BookEdits(package), output);

        using var written = new ZipArchive(output, ZipArchiveMode.Read);
        written.Entries.Select(Facts).ShouldBe(package.Archive.Entries.Select(Facts));
        written.Entries.Select(e => e.FullName).ShouldContain("xl/media/");
    }

    [Fact]
    public void Write_ReplacedAndAddedParts_StandInPlaceAndAtTheEnd()
    {
        using var book = BookBuilder.Pieces(["Piece"]);
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        edits.Replace("XL/styles.xml", "<styleSheet/>"u8.ToArray());
        edits.AddPart("xl/castbook#.xml", "<a/>"u8.ToArray(), "a/b").ShouldBe("xl/castbook1.xml");
        edits.AddPart("xl/castbook#.xml", "<b/>"u8.ToArray(), "a/b").ShouldBe("xl/castbook2.xml");
        edits.Relate("xl/workbook.xml", "styles", "xl/castbook1.xml").ShouldBe("rId3");
        edits.Relate("xl/castbook2.xml", "image", "media/x.png").ShouldBe("rId1");
        using var output = new MemoryStream();

        PackageWriter.Write(package, edits, output);

        using var written = new ZipArchive(output, ZipArchiveMode.Read);
        written.Entries.Select(e => e.FullName).ShouldBe([.. package.Parts, "xl/castbook1.xml", "xl/castbook2.xml", "xl/_rels/castbook2.xml.rels"]);
        Text(written, "xl/styles.xml").ShouldBe("<styleSheet/>");
        Text(written, "xl/_rels/castbook2.xml.rels").ShouldContain("Target=\"../media/x.png\"");
        Text(written, "[Content_Types].xml").ShouldContain("<Override PartName=\"/xl/castbook2.xml\" ContentType=\"a/b\"/></Types>");
        // No clock goes into a book.
        written.GetEntry("xl/castbook1.xml")!.LastWriteTime.Year.ShouldBe(1980);
    }

    [Fact]
    public void Finish_RelationshipsWrittenAsOneTag_TakesSeveral()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece"))
            .Part("xl/worksheets/_rels/sheet1.xml.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"/>").Build();
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        edits.Relate("xl/worksheets/sheet1.xml", "comments", "xl/comments1.xml");
        edits.Relate("xl/worksheets/sheet1.xml", "vmlDrawing", "xl/drawings/vmlDrawing1.vml");

        var relations = Encoding.UTF8.GetString(edits.Finish()["xl/worksheets/_rels/sheet1.xml.rels"]);

        relations.ShouldContain("Target=\"../comments1.xml\"/><Relationship Id=\"rId2\"");
        relations.ShouldEndWith("Target=\"../drawings/vmlDrawing1.vml\"/></Relationships>");
    }

    [Fact]
    public void HandOver_SheetKeptUnderAnotherName_TakesItsRelationshipsAlong()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece"))
            .Part("xl/worksheets/_rels/sheet1.xml.rels", BookBuilder.Relationships([("rId1", "comments", "../comments1.xml")])).Build();
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);

        edits.HandOver("xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml");
        edits.Relate("xl/worksheets/sheet1.xml", "vmlDrawing", "xl/drawings/vmlDrawing1.vml");

        var parts = edits.Finish();
        Encoding.UTF8.GetString(parts["xl/worksheets/_rels/sheet2.xml.rels"]).ShouldContain("comments1.xml");
        Encoding.UTF8.GetString(parts["xl/worksheets/_rels/sheet1.xml.rels"]).ShouldNotContain("comments1.xml");
        Encoding.UTF8.GetString(parts["xl/worksheets/_rels/sheet1.xml.rels"]).ShouldContain("vmlDrawing1.vml");
    }

    private static (string Name, uint Crc, long Length, DateTimeOffset Time, int Attributes) Facts(ZipArchiveEntry entry) =>
        (entry.FullName, entry.Crc32, entry.Length, entry.LastWriteTime, entry.ExternalAttributes);

    private static string Text(ZipArchive archive, string part)
    {
        using var reader = new StreamReader(archive.GetEntry(part)!.Open());
        return reader.ReadToEnd();
    }
}
