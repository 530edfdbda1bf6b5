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

        Should.Throw<BookRefusedException>(() => TestBooks.Read(zip)).Finding.Id.ShouldBe("book-too-much");
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
