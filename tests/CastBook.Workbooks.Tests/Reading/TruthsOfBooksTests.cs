using System.Globalization;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Tests.Reading;

/// <summary>Single cells of the books of other writers, as their makers wrote them down.</summary>
public sealed class TruthsOfBooksTests
{
    private const string Rich = "01_rich_excel365_like.xlsx";
    private const string Strict = "04_strict_iso29500.xlsx";
    private const string WebForm = "07_exceljs_webform.xlsx";
    private const string Export = "09_sheetjs_export.xlsx";

    // Days are numbers of the book's date system: 46,084 is 2026-03-03.
    [Theory]
    [InlineData(Rich, "Pattern list", "A5", CellKind.Text, "FC-101")]
    [InlineData(Rich, "Pattern list", "C10", CellKind.Number, "40")]
    [InlineData(Rich, "Pattern list", "E11", CellKind.Number, "18.9")]
    [InlineData(Rich, "Pattern list", "I5", CellKind.Number, "46084")]
    [InlineData(Rich, "Pattern list", "J5", CellKind.Boolean, "1")]
    [InlineData(Rich, "Pattern list", "M8", CellKind.Text, " leading space kept")]
    [InlineData(Rich, "Pattern list", "M14", CellKind.Text, "=not a formula")]
    [InlineData(Rich, "Pattern list", "M15", CellKind.Text, "_x000D_ literal")]
    [InlineData(Rich, "Pattern list", "O7", CellKind.Error, "#N/A")]
    [InlineData(Rich, "Pattern list", "O9", CellKind.Error, "#VALUE!")]
    [InlineData(Rich, "Pattern list", "O12", CellKind.Text, "12,5")]
    [InlineData(Strict, "Pattern list", "I5", CellKind.Date, "46084")]
    [InlineData(WebForm, "Orders", "D5", CellKind.Text, "3.1")]
    [InlineData(WebForm, "Orders", "H6", CellKind.Number, "46104.604166667")]
    [InlineData(Export, "Export", "C3", CellKind.Text, "0.52")]
    [InlineData(Export, "Export", "C5", CellKind.Text, "=1.1*2")]
    public void Read_Cell_HoldsWhatItsMakerPutThere(string book, string sheet, string address, CellKind kind, string value)
    {
        var cell = Cell(book, sheet, address);

        cell.Kind.ShouldBe(kind);
        (cell.Text ?? Math.Round(cell.Number, 9).ToString(CultureInfo.InvariantCulture)).ShouldBe(value);
        cell.HasFormula.ShouldBeFalse();
    }

    [Fact]
    public void Read_FormulaWithoutAValue_IsAFormulaAndNothingElse()
    {
        var cell = Cell(WebForm, "Orders", "I5");

        cell.HasFormula.ShouldBeTrue();
        cell.Kind.ShouldBe(CellKind.Empty);
    }

    private static GridCell Cell(string book, string sheet, string address)
    {
        using var package = BookPackage.Open(TestBooks.Open(book));
        CellRef.TryParse(address, out var row, out var column).ShouldBeTrue();
        return SheetReader.Read(package, package.Sheets.Single(s => s.Name == sheet), SharedStrings.Read(package)).Cell(row, column);
    }
}
