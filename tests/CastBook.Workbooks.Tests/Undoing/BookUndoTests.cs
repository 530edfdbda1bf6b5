using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Tests.Witnesses;
using CastBook.Workbooks.Undoing;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Undoing;

/// <summary>Everything of CastBook's out of a book again, by its markers.</summary>
public sealed class BookUndoTests
{
    public static TheoryData<string> Books => NothingIsLostTests.Books;

    [Theory]
    [MemberData(nameof(Books))]
    public void Undo_FilledBook_GivesEveryPartBack(string name)
    {
        var before = File.ReadAllBytes(TestBooks.PathOf(name));

        var after = Undo(Filled.From(before, name).Bytes, name).Bytes;

        BookDiff.Of(before, after).Losses.ShouldBeEmpty();
        Validator.NewMessages(before, after).ShouldBeEmpty();
        Different(before, after).Where(part => part != "xl/styles.xml" && !IsStylesOfOurs(before, part)).ShouldBeEmpty();
    }

    [Fact]
    public void Undo_FilledBook_LeavesNoMarker()
    {
        var (bytes, result) = Undo(Filled.From(Nights.Whole()).Bytes);

        ShouldBearNoMarker(bytes);
        (result.Changed, result.IsExact).ShouldBe((true, false));
    }

    [Fact]
    public void Undo_TwoListsFilled_GivesEveryPartBack()
    {
        var before = Nights.TwoListsBuilder(s => s.Before("<cols><col min=\"1\" max=\"12\" width=\"11\" customWidth=\"1\"/></cols>").After("<autoFilter ref=\"A1:H3\"/>")).Build().ToArray();
        var filled = Filled.From(before, settings: Nights.BothLists).Bytes;

        var (after, result) = Undo(filled);

        BookDiff.Of(before, after).Losses.ShouldBeEmpty();
        Different(before, after).ShouldBe(["xl/styles.xml"]);
        ShouldBearNoMarker(after);
        result.Taken.ShouldContain("6 columns of Harbour list");
        result.Taken.ShouldContain("6 columns of Quarry list");
    }

    [Fact]
    public void Undo_SomebodyTypedInAColumnOfTheSecondList_SaysWhatGoes()
    {
        var typed = Typed.Into(Filled.From(Nights.TwoListsBuilder().Build(), settings: Nights.BothLists).Bytes, ("Quarry list", "I2", 77.5));

        Undo(typed).Result.Findings.Single(f => f.Id == "typed-taken-out").Seen
            .ShouldBe("Somebody typed into CastBook's columns or sheets: 'Quarry list'!I2 \"77.5\".");
    }

    // It writes every part anew, so that only the names, the rules and the notes tell what is ours.
    [LibreOfficeFact]
    public void Undo_SavedByLibreOffice_GivesTheShopsSheetsAndCellsBack() =>
        ShouldGiveTheShopsBack(filled => LibreOffice.Resave([("night.xlsx", filled)])[0]);

    // It writes a relationship to a theme that the book never had, so that the validator does not open what it saved.
    [NodeFact]
    public void Undo_SavedByExceljs_GivesTheShopsSheetsAndCellsBack() =>
        ShouldGiveTheShopsBack(filled => NodeLibraries.Resave("exceljs", filled), isValid: false);

    [NodeFact]
    public void Undo_SavedBySheetJs_GivesTheShopsSheetsAndCellsBack() =>
        ShouldGiveTheShopsBack(filled => NodeLibraries.Resave("xlsx", filled));

    // The shop's sheets moved behind ours, and the book was closed on one of ours that goes.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(3, 1)]
    [InlineData(7, 1)]
    [InlineData(99, 1)]
    public void Undo_SheetShown_IsTheSameOneOrTheNearestThatIsLeft(int shown, int left)
    {
        var filled = Filled.From(new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy").Row("Pin", 2, 1.5, "Bronze"))
            .Sheet("Other", s => s.Row("remarks"))
            .Build()).Bytes;
        var moved = With(filled, "xl/workbook.xml", xml => MoveToTheEnd(xml, "Other").Replace(
            "<sheets>", $"<bookViews><workbookView activeTab=\"{shown}\" firstSheet=\"{shown}\"/></bookViews><sheets>", StringComparison.Ordinal));
        SheetNames(moved).IndexOf("Other").ShouldBeInRange(4, 7);

        var after = Undo(moved).Bytes;

        SheetNames(after).ShouldBe(["Pieces", "Other"]);
        Workbook(after).ShouldContain($"activeTab=\"{left}\" firstSheet=\"{left}\"");
    }

    [Fact]
    public void Undo_FormulaOnASheetThatGoes_TakesTheOrderOfCalculationOut()
    {
        var filled = Filled.From(Nights.Whole()).Bytes;
        using var package = BookPackage.Open(new MemoryStream(filled));
        var trees = package.Sheets.Single(s => s.Name == "Trees").PartName;
        var edits = new BookEdits(package);
        edits.Replace(trees, Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(package.Read(trees))
            .Replace("</sheetData>", "<row r=\"9000\"><c r=\"A9000\"><f>1+1</f><v>2</v></c></row></sheetData>", StringComparison.Ordinal)));
        var chain = edits.AddPart("xl/calcChain.xml", "<calcChain xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><c r=\"A9000\" i=\"3\"/></calcChain>"u8.ToArray(), "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml");
        edits.Relate(package.WorkbookPart, "calcChain", chain);
        using var book = new MemoryStream();
        PackageWriter.Write(package, edits, book);

        var after = Undo(book.ToArray()).Bytes;

        Parts.Of(book.ToArray()).ShouldContain(p => p.Name == chain);
        Parts.Of(after).ShouldNotContain(p => p.Name == chain);
        Validator.NewMessages(book.ToArray(), after).ShouldBeEmpty();
    }

    [Fact]
    public void Undo_SomebodyTypedInAColumnOfOurs_SaysWhatGoes()
    {
        var filled = Filled.From(Nights.Whole());
        var list = TestBooks.Read(new MemoryStream(filled.Bytes)).Lists[0];
        var address = CellRef.AddressOf(list.Rows[0], list.OwnColumns[OwnName.MetalEach]);
        var typed = Typed.Into(filled.Bytes, (list.Sheet.Name, address, 77.5));

        var finding = Undo(typed).Result.Findings.Single(f => f.Id == "typed-taken-out");

        finding.Seen.ShouldBe($"Somebody typed into CastBook's columns or sheets: {CellRef.Quote(list.Sheet.Name)}!{address} \"77.5\".");
    }

    [Fact]
    public void Undo_CellsOfTheShopsWereChanged_KeepsThem()
    {
        var filled = Filled.From(Nights.Whole());
        var list = TestBooks.Read(new MemoryStream(filled.Bytes)).Lists[0];
        var address = CellRef.AddressOf(list.Rows[0], list.Columns["piece"]);

        var after = Undo(Typed.Into(filled.Bytes, (list.Sheet.Name, address, "Tide bell"))).Bytes;

        using var package = BookPackage.Open(new MemoryStream(after));
        var grid = SheetReader.Read(package, package.Sheets.Single(s => s.Name == list.Sheet.Name), SharedStrings.Read(package));
        grid.Cell(list.Rows[0], list.Columns["piece"]).Text.ShouldBe("Tide bell");
        grid.Cell(list.HeadingRow, list.OwnColumns[OwnName.MetalEach]).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void Undo_ColumnOfTheShopsToTheRight_IsNotMoved()
    {
        var filled = Filled.From(Nights.Whole());
        var list = TestBooks.Read(new MemoryStream(filled.Bytes)).Lists[0];
        var right = list.OwnColumns[OwnName.Checks] + 1;
        var typed = Typed.Into(filled.Bytes, (list.Sheet.Name, CellRef.AddressOf(list.HeadingRow, right), "Remark"));

        var (after, result) = Undo(typed);

        using var package = BookPackage.Open(new MemoryStream(after));
        var grid = SheetReader.Read(package, package.Sheets.Single(s => s.Name == list.Sheet.Name), SharedStrings.Read(package));
        grid.Cell(list.HeadingRow, right).Text.ShouldBe("Remark");
        grid.Cell(list.HeadingRow, right - 1).IsEmpty.ShouldBeTrue();
        result.Findings.Select(f => f.Id).ShouldContain("columns-emptied");
    }

    [Fact]
    public void Undo_BookNeverFilled_ChangesNothing()
    {
        var before = Nights.Whole().ToArray();

        var (after, result) = Undo(before);

        Parts.Of(after).ShouldBe(Parts.Of(before));
        result.Findings.Single().Seen.ShouldBe("There is nothing of CastBook's in night.xlsx.");
    }

    private static void ShouldGiveTheShopsBack(Func<byte[], byte[]> save, bool isValid = true)
    {
        var before = Nights.Whole().ToArray();
        var saved = save(Filled.From(before).Bytes);

        var (after, result) = Undo(saved);

        ShouldBearNoMarker(after);
        Cells(after).ShouldBe(Cells(before));
        result.Findings.Select(f => f.Id).ShouldNotContain("typed-taken-out");
        if (isValid)
        {
            Validator.NewMessages(saved, after).ShouldBeEmpty();
        }
    }

    private static byte[] With(byte[] book, string part, Func<string, string> change)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        var edits = new BookEdits(package);
        edits.Replace(part, Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(package.Read(part)))));
        using var output = new MemoryStream();
        PackageWriter.Write(package, edits, output);
        return output.ToArray();
    }

    // As office programs do it: names that belong to a sheet count the sheets anew.
    private static string MoveToTheEnd(string workbook, string sheet)
    {
        workbook = Regex.Replace(workbook, "localSheetId=\"(\\d+)\"", m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) is > 1 and var id
            ? string.Create(CultureInfo.InvariantCulture, $"localSheetId=\"{id - 1}\"")
            : m.Value);
        var at = workbook.IndexOf($"<sheet name=\"{sheet}\"", StringComparison.Ordinal);
        var element = workbook[at..(workbook.IndexOf("/>", at, StringComparison.Ordinal) + 2)];
        return workbook.Replace(element, "", StringComparison.Ordinal).Replace("</sheets>", element + "</sheets>", StringComparison.Ordinal);
    }

    private static List<string> SheetNames(byte[] book)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        return [.. package.Sheets.Select(s => s.Name)];
    }

    private static string Workbook(byte[] book)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        return Encoding.UTF8.GetString(package.Read(package.WorkbookPart));
    }

    private static void ShouldBearNoMarker(byte[] book)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        package.DefinedNames.Where(n => n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal)).ShouldBeEmpty();
        package.Sheets.ShouldAllBe(s => !Encoding.UTF8.GetString(package.Read(s.PartName)).Contains("castbook:", StringComparison.Ordinal));
    }

    /// <summary>Every cell that says anything, with its sheet and address.</summary>
    private static IReadOnlyList<string> Cells(byte[] book)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        var strings = SharedStrings.Read(package);
        return
        [
            .. from sheet in package.Sheets
               let grid = SheetReader.Read(package, sheet, strings)
               from row in grid.Rows
               from column in Enumerable.Range(1, grid.LastColumnOf(row))
               let text = FillRecord.TextOf(grid.Cell(row, column))
               where text.Length > 0
               select $"{sheet.Name} {CellRef.AddressOf(row, column)} {text}",
        ];
    }

    private static (byte[] Bytes, UndoResult Result) Undo(byte[] book, string name = "night.xlsx")
    {
        using var output = new MemoryStream();
        var result = BookUndo.Undo(new MemoryStream(book), output, Path.GetFileName(name));
        return (output.ToArray(), result);
    }

    private static IEnumerable<string> Different(byte[] before, byte[] after)
    {
        var (was, now) = (Parts.Of(before), Parts.Of(after));
        return was.Except(now).Concat(now.Except(was)).Select(p => p.Name).Distinct();
    }

    // A book without formats got a part for them, which stays.
    private static bool IsStylesOfOurs(byte[] before, string part) =>
        part is "xl/castbook1.xml" or "[Content_Types].xml" or "xl/_rels/workbook.xml.rels"
        && !Parts.Of(before).Any(p => p.Name == "xl/styles.xml");
}
