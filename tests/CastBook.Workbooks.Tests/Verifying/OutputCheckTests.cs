using System.IO.Compression;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Verifying;

public sealed class OutputCheckTests
{
    private const string Sheet = "xl/worksheets/sheet1.xml";
    private const string TwiceInRow = "<c r=\"A3\"><v>1</v></c><c r=\"A3\"><v>2</v></c>";

    [Fact]
    public void Run_BookAsEdited_IsSoundAndChanged() => Check(Plain(), Edits, _ => { }).ShouldBeTrue();

    [Fact]
    public void Run_NothingEdited_IsSoundAndUnchanged() => Check(Plain(), _ => { }, _ => { }).ShouldBeFalse();

    [Fact]
    public void Run_UntouchedPartAltered_IsFound() => Faults(Plain(), Edits, zip => Replace(zip, "xl/styles.xml", text => text.Replace("Calibri", "Arial", StringComparison.Ordinal)))
        .ShouldBe(["xl/styles.xml was altered."]);

    [Fact]
    public void Run_PartMissing_IsFound() => Faults(Plain().Part("xl/theme.xml", "<a/>"), Edits, zip => zip.GetEntry("xl/theme.xml")!.Delete())
        .ShouldBe(["xl/theme.xml is missing."]);

    [Theory]
    [InlineData("<v>4.5</v>", "<v>4.6</v>", "B2")]
    [InlineData(">hi<", ">ho<", "C2")]
    [InlineData("<c r=\"D2\"/>", "<c r=\"D2\"><v>1</v></c>", "D2")]
    [InlineData("<c r=\"D2\"/>", "", "D2")]
    public void Run_CellThatDoesNotSayWhatWasWritten_IsFound(string written, string planted, string cell) =>
        Faults(Plain(), Edits, zip => Replace(zip, Sheet, text =>
        {
            text.ShouldContain(written);
            return text.Replace(written, planted, StringComparison.Ordinal);
        })).ShouldBe([$"{Sheet}: cell {cell} was not written."]);

    [Fact]
    public void Run_NewFaultInATouchedSheet_IsFound() => Faults(Plain(), Edits, zip => Replace(zip, Sheet, text =>
            text.Replace("</sheetData>", "<row r=\"1\"/></sheetData>", StringComparison.Ordinal)))
        .ShouldBe(["Pieces: row 1 comes after row 2."]);

    [Fact]
    public void Run_FaultOfTheShopsOwn_IsNotBlamed()
    {
        var faulty = new BookBuilder().Sheet("Pieces", s => s.Row("Piece").Row("a").Row(new Cell(Xml: TwiceInRow)));

        Check(faulty, Edits, _ => { }).ShouldBeTrue();
    }

    [Fact]
    public void Run_FaultOfTheShopsOwnInASheetThatStaysAsItIs_IsNotBlamed()
    {
        // The edit says what the sheet says already, so the sheet is looked into and has not changed.
        var faulty = new BookBuilder().Sheet("Pieces", s => s.Row("Piece").Row("a").Row(new Cell(Xml: TwiceInRow)).Row(new Cell(Xml: "<c r=\"A4\"><v>4.5</v></c>")));

        Check(faulty, edits => edits.Sheet(Sheet).Set(4, 1, CellValue.Of(4.5), null), _ => { }).ShouldBeFalse();
    }

    [Fact]
    public void Run_RowsWithoutNumbers_AreCountedAsReadersDo()
    {
        var book = Plain().Part(Sheet, $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\"><sheetData><row/><row><c><v>1</v></c></row></sheetData></worksheet>");

        Check(book, Edits, _ => { }).ShouldBeTrue();
    }

    [Fact]
    public void Run_SheetOtherThanTheOneWatched_IsFound()
    {
        using var book = Plain().Build();
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        Edits(edits);
        var check = new OutputCheck(package, edits);
        using var output = new MemoryStream();
        PackageWriter.Write(package, edits, output, check.Watch);
        check.Run(output).ShouldBeTrue();
        using (var zip = new ZipArchive(output, ZipArchiveMode.Update, leaveOpen: true))
        {
            Replace(zip, Sheet, xml => xml.Replace("Otter", "Badger", StringComparison.Ordinal));
        }

        Should.Throw<BrokenOutputException>(() => check.Run(output)).Faults.ShouldBe([$"{Sheet} is not what was written."]);
    }

    [Fact]
    public void Watch_CellThatWasNotWritten_IsFound()
    {
        using var book = Plain().Build();
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        Edits(edits);
        var check = new OutputCheck(package, edits);
        using var output = new MemoryStream();
        PackageWriter.Write(package, edits, output, check.Watch);
        edits.Sheet(Sheet).Set(3, 1, CellValue.Of("later"), null);
        using var again = new MemoryStream(package.Read(Sheet));

        check.Watch(Sheet, again);

        Should.Throw<BrokenOutputException>(() => check.Run(output)).Faults.ShouldContain($"{Sheet}: cell A3 was not written.");
    }

    private static BookBuilder Plain() => new BookBuilder().Sheet("Pieces", s => s.Row("Piece", "Qty", "Alloy").Row("Otter ring", new Cell(6, Style: 3)));

    private static void Edits(BookEdits edits)
    {
        edits.Sheet(Sheet).Set(2, 2, CellValue.Of(4.5), null);
        edits.Sheet(Sheet).Set(2, 3, CellValue.Of("hi"), null);
        edits.Sheet(Sheet).Set(2, 4, CellValue.Empty, null);
    }

    private static IReadOnlyList<string> Faults(BookBuilder book, Action<BookEdits> edit, Action<ZipArchive> plant) =>
        Should.Throw<BrokenOutputException>(() => Check(book, edit, plant)).Faults;

    /// <summary>Writes the book with the edits, plants a fault into the output, and checks it.</summary>
    private static bool Check(BookBuilder builder, Action<BookEdits> edit, Action<ZipArchive> plant)
    {
        using var book = builder.Build();
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        edit(edits);
        using var output = new MemoryStream();
        PackageWriter.Write(package, edits, output);
        using (var zip = new ZipArchive(output, ZipArchiveMode.Update, leaveOpen: true))
        {
            plant(zip);
        }

        return new OutputCheck(package, edits).Run(output);
    }

    private static void Replace(ZipArchive zip, string part, Func<string, string> change)
    {
        var entry = zip.GetEntry(part)!;
        string text;
        using (var reader = new StreamReader(entry.Open()))
        {
            text = reader.ReadToEnd();
        }

        entry.Delete();
        using var writer = new StreamWriter(zip.CreateEntry(part).Open());
        writer.Write(change(text));
    }
}
