using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Text;

namespace CastBook.Workbooks.Tests.Text;

public sealed class TextFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Fill_ListAsText_MakesAFilledWorkbookBesideItAndLeavesTheListAsItWas()
    {
        var list = Put("25_sep_line.csv");
        var before = File.ReadAllBytes(list);

        var result = Fill(list);

        File.ReadAllBytes(list).ShouldBe(before);
        Directory.GetFiles(folder).Select(Path.GetFileName).ShouldBe(["list.csv", "list.xlsx"], ignoreOrder: true);
        var piece = result.Night.Pieces.ShouldHaveSingleItem();
        (piece.Name, piece.Quantity, piece.Weight!.Value.Grams).ShouldBe(("Oar pin", 5, 1.33));
        result.Findings.ShouldContain(f => f.Id == "decimal-comma");
        Cell(1, 4).Text.ShouldBe("Metal each (g)");
    }

    [Fact]
    public void Fill_TextThatLooksLikeAFormula_StaysText()
    {
        var result = Fill(Put("23_utf8bom_comma_quotes.csv"));

        var note = Cell(3, 5);
        (note.Kind, note.HasFormula).ShouldBe((CellKind.Text, false));
        note.Text.ShouldStartWith("=HYPERLINK(");
        Cell(2, 5).Text!.ReplaceLineEndings("\n").ShouldBe("two parts,\nsolder after");
        result.Night.Pieces[2].Weight!.Value.Grams.ShouldBe(3.1);
    }

    [Fact]
    public void Fill_WorkbookThereAlready_WritesNothing()
    {
        var list = Put("25_sep_line.csv");
        var book = Path.Combine(folder, "list.xlsx");
        File.WriteAllText(book, "somebody's");

        Should.Throw<BookNotWrittenException>(() => Fill(list)).Message.ShouldBe(
            "list.xlsx stands there already. What may have been typed into it would be lost, so nothing was written. "
            + "Fill list.xlsx itself, or type a new name after --out to make a workbook of list.csv.");
        File.ReadAllText(book).ShouldBe("somebody's");

        TextFile.Fill(list, Path.Combine(folder, "other.xlsx"), dryRun: false, BookSettings.None, TimeProvider.System);
        File.Exists(Path.Combine(folder, "other.xlsx")).ShouldBeTrue();
    }

    [Fact]
    public void Fill_DryRun_WritesNothing()
    {
        TextFile.Fill(Put("25_sep_line.csv"), null, dryRun: true, BookSettings.None, TimeProvider.System).Night.Pieces.Count.ShouldBe(1);

        Directory.GetFiles(folder).ShouldHaveSingleItem();
    }

    [Fact]
    public void Fill_NoListInIt_IsRefusedAndNothingIsLeft()
    {
        var list = Path.Combine(folder, "list.csv");
        File.WriteAllText(list, "to do\nbuy powder\n");

        Should.Throw<BookRefusedException>(() => Fill(list)).Finding.Id.ShouldStartWith("list-");
        Directory.GetFiles(folder).ShouldHaveSingleItem();
    }

    [Fact]
    public void Write_NumbersAndCodes_OnlyShortWholeNumbersBecomeNumbers()
    {
        using var bytes = new MemoryStream();
        TextBook.Write([["12", "007", "1,5", "12345678", "0"], [], ["a & b"]], bytes);

        using var package = BookPackage.Open(bytes);
        var grid = SheetReader.Read(package, package.Sheets[0], SharedStrings.None);
        Enumerable.Range(1, 5).Select(c => grid.Cell(1, c).Kind).ShouldBe([CellKind.Number, CellKind.Text, CellKind.Text, CellKind.Text, CellKind.Number]);
        grid.Cell(3, 1).Text.ShouldBe("a & b");
        Fidelity.Validator.Messages(bytes.ToArray()).ShouldBeEmpty();
    }

    private static FillResult Fill(string list) => TextFile.Fill(list, null, dryRun: false, BookSettings.None, TimeProvider.System);

    private string Put(string name)
    {
        var path = Path.Combine(folder, "list.csv");
        File.Copy(TestBooks.PathOf(name), path);
        return path;
    }

    private GridCell Cell(int row, int column)
    {
        using var book = File.OpenRead(Path.Combine(folder, "list.xlsx"));
        using var package = BookPackage.Open(book);
        return SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package)).Cell(row, column);
    }
}
