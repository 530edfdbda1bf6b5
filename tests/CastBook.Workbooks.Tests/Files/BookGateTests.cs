using System.Text;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Files;

public sealed class BookGateTests
{
    [Theory]
    [InlineData("", "list.xlsx", "book-empty")]
    [InlineData("Piece;Qty\nPin;2", "list.csv", "book-csv")]
    [InlineData("Piece", "list.csv", "book-csv")]
    [InlineData("a note to self", "list.xlsx", "book-not-workbook")]
    [InlineData("a\0b", "list.xlsx", "book-not-workbook")]
    [InlineData("<svg/>", "list.xlsx", "book-not-workbook")]
    [InlineData("PK\u0003\u0004 cut short", "list.xlsx", "book-damaged")]
    public void Admit_OtherContent_IsRefused(string content, string name, string id)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(content));

        Should.Throw<BookRefusedException>(() => BookGate.Admit(stream, name)).Finding.Id.ShouldBe(id);
    }

    [Fact]
    public void Admit_Utf16Text_IsCsv()
    {
        using var stream = new MemoryStream([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("Piece\tQty\r\n")]);

        Should.Throw<BookRefusedException>(() => BookGate.Admit(stream)).Finding.Id.ShouldBe("book-csv");
    }

    [Theory]
    [InlineData("list.xls", true)]
    [InlineData("list.csv", true)]
    [InlineData("list", true)]
    [InlineData("list.XLSX", false)]
    [InlineData("list.xlsm", false)]
    [InlineData("", false)]
    public void Admit_WorkbookUnderAnotherName_IsRefused(string name, bool refused)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty"], ["Pin", 1]);

        if (refused)
        {
            Should.Throw<BookRefusedException>(() => BookGate.Admit(book, name)).Finding.Id.ShouldBe("book-wrong-extension");
        }
        else
        {
            Should.NotThrow(() => BookGate.Admit(book, name));
            book.Position.ShouldBe(0);
        }
    }

    [Theory]
    [InlineData("application/vnd.ms-excel.sheet.binary.macroEnabled.main", "book-binary")]
    [InlineData("application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml", "book-not-workbook")]
    public void Open_PackageOfAnotherKind_IsRefused(string contentType, string id)
    {
        using var book = new BookBuilder().Sheet("S", _ => { }).Part("[Content_Types].xml",
            $"<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Override PartName=\"/xl/workbook.xml\" ContentType=\"{contentType}\"/></Types>").Build();

        Should.Throw<BookRefusedException>(() => TestBooks.Read(book)).Finding.Id.ShouldBe(id);
    }

    [Fact]
    public void Open_OtherZip_IsNoWorkbook()
    {
        using var zip = BookBuilder.Zip([("readme.txt", "hello")]);

        Should.Throw<BookRefusedException>(() => TestBooks.Read(zip)).Finding.Id.ShouldBe("book-not-workbook");
    }

    [Fact]
    public void Open_TooManyEntries_IsRefused()
    {
        using var zip = BookBuilder.Zip([("[Content_Types].xml", "<Types/>"), .. Enumerable.Range(0, 10_001).Select(i => ($"a{i}", ""))]);

        var finding = Should.Throw<BookRefusedException>(() => TestBooks.Read(zip)).Finding;

        (finding.Id, finding.Seen).ShouldBe(("book-over-limit", "The file holds 10002 parts."));
        finding.Remedy.ShouldBe(
            "Copy the list into a new workbook and use that. If you know where the file comes from and want it read, "
            + "raise the limit in castbook.json beside it: \"limits\": { \"parts\": 20000 }.");
    }

    [Theory]
    [InlineData(2, 512, 1024, 200, "The file holds 8 parts.")]
    [InlineData(100, 1, 1024, 200, "The file holds a part of more than 1 MB.")]
    [InlineData(100, 512, 3, 200, "The file holds more than 3 MB in all.")]
    [InlineData(100, 512, 1024, 1, "The file holds a part that swells to more than 1 times what it takes in the file.")]
    public void Read_EachLimit_IsTheOneTheShopGives(int parts, int partMegabytes, int bookMegabytes, int timesPacked, string seen)
    {
        var many = timesPacked == 1 ? 70 : 2;
        using var book = new BookBuilder().Sheet("S", s => s.Row("Piece", "Qty", "Weight (g)").Row("Otter ring", 1, 2.5))
            .Part("xl/media/a.bin", new string('a', many << 20)).Part("xl/media/b.bin", new string('b', many << 20)).Build();
        var caps = new Caps { Parts = parts, PartMegabytes = partMegabytes, BookMegabytes = bookMegabytes, TimesPacked = timesPacked };
        using var output = new MemoryStream();

        Should.Throw<BookRefusedException>(() => BookFiller.Fill(book, output, "night.xlsx", new BookSettings { Caps = caps })).Finding.Seen.ShouldBe(seen);

        book.Position = 0;
        BookFiller.Fill(book, output, "night.xlsx", new BookSettings { Caps = new Caps { TimesPacked = 2_000 } }).Changed.ShouldBeTrue();
    }

    [Fact]
    public void Refusal_Message_IsOneReadableText()
    {
        var refusal = Should.Throw<BookRefusedException>(() => TestBooks.Read("15_password_fern.xlsx"));

        refusal.Message.ShouldBe("The workbook is protected by a password to open. Nothing was written. Save a copy without the password and use that.");
    }

    [Fact]
    public void Read_StreamThatCannotSeek_IsReadAllTheSame()
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty"], ["Pin", 1]);
        using var oneWay = new System.IO.Compression.DeflateStream(Packed(book), System.IO.Compression.CompressionMode.Decompress);

        BookReader.Read(oneWay, BookSettings.None).Night.Pieces.ShouldHaveSingleItem();
    }

    private static MemoryStream Packed(MemoryStream book)
    {
        var packed = new MemoryStream();
        using (var deflate = new System.IO.Compression.DeflateStream(packed, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
        {
            book.CopyTo(deflate);
        }

        packed.Position = 0;
        return packed;
    }
}
