using System.Text;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Drawing;

/// <summary>A chart on a sheet of ours, in a package of its own.</summary>
public sealed class ChartTests
{
    private static readonly Chart Programme = new(
        "programme", "Kiln over hours.", new Frame(5, 1, 160, 80), "Kiln <and core>", "hours from start", "°C",
        [
            new ChartLine("kiln", new CellRange(2, 1, 4, 1), new CellRange(2, 2, 4, 2), [(0, 20), (2, 150), (4.5, 732)]),
            new ChartLine("A", new CellRange(5, 1, 5, 1), new CellRange(5, 2, 5, 2), [(4.5, 538)]) { Thickness = 0 },
        ]);

    [Theory]
    [InlineData("07_exceljs_webform.xlsx")]
    [InlineData("04_strict_iso29500.xlsx")]
    public void Write_Chart_IsValidAndLeadsToItsCells(string book)
    {
        var before = File.ReadAllBytes(TestBooks.PathOf(book));
        var after = WithChart(before, Programme);

        Validator.NewMessages(before, after).ShouldBeEmpty();
        var chart = PartOf(after);
        chart.ShouldContain("<c:f>'Kiln &amp; clock'!$A$2:$A$4</c:f>");
        chart.ShouldContain("<c:pt idx=\"2\"><c:v>4.5</c:v></c:pt>");
        chart.ShouldContain("Kiln &lt;and core&gt;");
    }

    [Fact]
    public void Write_ChartAgain_ChangesItsPartAndAddsNone()
    {
        var once = WithChart(File.ReadAllBytes(TestBooks.PathOf("07_exceljs_webform.xlsx")), Programme);
        using var package = BookPackage.Open(new MemoryStream(once));
        var sheet = package.Sheets.Single(s => s.Name == "Kiln & clock");
        var edits = new BookEdits(package);
        edits.Replace(sheet.PartName, package.Read(sheet.PartName));
        var drawing = new SheetDrawing();
        drawing.Add(Programme with { Title = "Another" });
        new DrawingWriter(package, edits).Write(sheet, drawing);
        var parts = edits.Finish();

        parts.Keys.Where(k => k.StartsWith("xl/charts/", StringComparison.Ordinal)).ShouldBe(["xl/charts/chart1.xml"]);
        Encoding.UTF8.GetString(parts["xl/charts/chart1.xml"]).ShouldContain("Another");
        edits.RemovedParts.ShouldBeEmpty();
    }

    [Fact]
    public void Write_ChartNoLongerDrawn_GoesWithItsPart()
    {
        var once = WithChart(File.ReadAllBytes(TestBooks.PathOf("07_exceljs_webform.xlsx")), Programme);
        using var package = BookPackage.Open(new MemoryStream(once));
        var sheet = package.Sheets.Single(s => s.Name == "Kiln & clock");
        var edits = new BookEdits(package);
        new DrawingWriter(package, edits).Write(sheet, new SheetDrawing());
        edits.Finish();

        edits.RemovedParts.ShouldContain("xl/charts/chart1.xml");
    }

    private static byte[] WithChart(byte[] book, Chart chart)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        var edits = new BookEdits(package);
        var workbook = new WorkbookEdits(package, edits);
        var styles = new StyleBook(package.Read(package.StylesPart!));
        var sheet = new OwnedSheet("Kiln & clock");
        sheet.Drawing.Add(chart);
        var added = workbook.AddSheet(sheet.Name, OwnedSheetWriter.Write(sheet, styles, edits.Dialect, isLetter: false));
        new DrawingWriter(package, edits).Write(added, sheet.Drawing);
        workbook.Finish();
        using var output = new MemoryStream();
        var check = new OutputCheck(package, edits);
        PackageWriter.Write(package, edits, output, check.Watch);
        check.Run(output);
        return output.ToArray();
    }

    private static string PartOf(byte[] book)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        var drawing = package.Relationships(package.Sheets.Single(s => s.Name == "Kiln & clock").PartName).Single(r => r.Is("drawing")).Target;
        return Encoding.UTF8.GetString(package.Read(package.Relationships(drawing).Single(r => r.Is("chart")).Target));
    }
}
