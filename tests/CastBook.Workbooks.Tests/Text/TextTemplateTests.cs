using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Text;

public sealed class TextTemplateTests : IDisposable
{
    private const string List = "March\n\nName,Count,Weight (dwt),Metal,Box\nPin,2,\"1,5\",Old bell metal,7\nBell,1,\"2,25\",Old bell metal,\n";

    private readonly string folder = Directory.CreateTempSubdirectory("castbook").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Fill_TemplateBesideTheList_PutsTheRowsUnderItsHeadings()
    {
        Template(s => s.Row("Our casting list").Skip().Row("Alloy", "Piece", "Customer", "Qty", "Pattern weight (g)").Row(null, new Cell(null, BookBuilder.Style.Bold)));
        var before = File.ReadAllBytes(In("castbook-template.xlsx"));

        var result = Fill(List);

        result.Night.Pieces.Select(p => (p.Name, p.Quantity, p.Alloy)).ShouldBe([("Pin", 2, "Old bell metal"), ("Bell", 1, "Old bell metal")]);
        result.Night.Pieces[0].Weight!.Value.Grams.ShouldBe(2.33276076, 1e-8);
        result.Night.Shop.Alloys.ShouldHaveSingleItem().Alloy.Density!.Value.GramsPerCubicCentimeter.ShouldBe(8.6);
        Row(1).ShouldBe(["Our casting list"]);
        Row(3).Take(6).ShouldBe(["Metal", "Name", "Customer", "Count", "Weight (dwt)", "Box"]);
        Row(4).Take(6).ShouldBe(["Old bell metal", "Pin", null, "2", "1,5", "7"]);
        Row(5).Take(5).ShouldBe(["Old bell metal", "Bell", null, "1", "2,25"]);
        Grid().Cell(4, 2).Style.ShouldBe(BookBuilder.Style.Bold);
        Grid().Cell(5, 2).Style.ShouldBe(BookBuilder.Style.Bold);
        File.ReadAllBytes(In("castbook-template.xlsx")).ShouldBe(before);
        File.ReadAllText(In("list.csv")).ShouldBe(List);
        Fidelity.Validator.Messages(File.ReadAllBytes(In("list.xlsx"))).ShouldBeEmpty();
    }

    [Fact]
    public void Fill_TemplateWithATable_ReachesOverAllRowsAndKnowsItsColumnsByTheNewWords()
    {
        Template(s => s.Row("Piece", "Qty", "Pattern weight (g)").Row(null, null, null).Table("A1:C2", ["Piece", "Qty", "Pattern weight (g)"]));

        Fill(List);

        using var book = File.OpenRead(In("list.xlsx"));
        using var reading = BookReader.Read(book, BookSettings.None).Package;
        book.Position = 0;
        var table = BookReader.Read(book, BookSettings.None).Lists[0].Table!;
        (table.Range.FirstRow, table.Range.LastRow).ShouldBe((1, 3));
        table.ColumnNames.Take(5).ShouldBe(["Name", "Count", "Weight (dwt)", "Metal", "Box"]);
        Fidelity.Validator.Messages(File.ReadAllBytes(In("list.xlsx"))).ShouldBeEmpty();
    }

    [Fact]
    public void Fill_TemplateWithRowsOfItsOwn_IsRefusedAndNothingIsWritten()
    {
        Template(s => s.Row("Piece", "Qty", "Pattern weight (g)").Row("Example", 1, 2.5));

        Should.Throw<BookRefusedException>(() => Fill(List)).Message.ShouldBe(
            "castbook-template.xlsx cannot take the list: row 2 below its headings is not empty. The workbook would not be what either of them says, "
            + "so nothing was written. Have one row of headings in both and nothing below the template's, or move castbook-template.xlsx away to make a plain workbook.");
        File.Exists(In("list.xlsx")).ShouldBeFalse();
    }

    [Fact]
    public void Fill_TableWithTotals_IsRefused()
    {
        Template(s => s.Row("Piece", "Qty", "Pattern weight (g)").Row(null, null, null).Row("Total").Table("A1:C3", ["Piece", "Qty", "Pattern weight (g)"], totals: true));

        Should.Throw<BookRefusedException>(() => Fill(List)).Message.ShouldStartWith("castbook-template.xlsx cannot take the list: its table ends in a row of totals.");
    }

    [Fact]
    public void Fill_TemplateWithoutHeadings_IsRefused()
    {
        Template(s => s.Row("to do"));

        Should.Throw<BookRefusedException>(() => Fill(List)).Finding.Id.ShouldStartWith("list-");
    }

    private void Template(Action<SheetBuilder> pieces) => File.WriteAllBytes(
        In("castbook-template.xlsx"),
        new BookBuilder().Sheet("Casting", pieces).Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)").Row("Old bell metal", 8.6)).Build().ToArray());

    private FillResult Fill(string list)
    {
        File.WriteAllText(In("list.csv"), list);
        return TextFile.Fill(In("list.csv"), null, dryRun: false, BookSettings.None, TimeProvider.System);
    }

    private string In(string name) => Path.Combine(folder, name);

    private SheetGrid Grid()
    {
        using var book = File.OpenRead(In("list.xlsx"));
        using var package = BookPackage.Open(book);
        return SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package));
    }

    private List<string?> Row(int row)
    {
        var grid = Grid();
        return [.. Enumerable.Range(1, grid.LastColumnOf(row)).Select(c => grid.Cell(row, c) is var cell && cell.Kind == CellKind.Number ? cell.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) : cell.Text)];
    }
}
