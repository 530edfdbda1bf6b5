using CastBook.Templates.Writing;
using ClosedXML.Excel;

namespace CastBook.Templates.Tests.Writing;

public sealed class CellWriterTests
{
    [Theory]
    [InlineData("1-2")]
    [InlineData("5/8")]
    [InlineData("8/15/20")]
    [InlineData("0012")]
    [InlineData("1E5")]
    [InlineData("12,4")]
    [InlineData("12O.5")]
    [InlineData("=1+1")]
    public void Write_WordsThatLookLikeSomethingElse_StayWords(string words)
    {
        using var book = new XLWorkbook();
        var cell = book.AddWorksheet("Sheet").Cell(1, 1);

        CellWriter.Write(cell, words);

        cell.DataType.ShouldBe(XLDataType.Text);
        cell.GetString().ShouldBe(words);
    }

    [Fact]
    public void Write_NumbersAndDays_KeepTheirKind()
    {
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet("Sheet");

        CellWriter.Write(sheet.Cell(1, 1), 12);
        CellWriter.Write(sheet.Cell(2, 1), 0.62);
        CellWriter.Write(sheet.Cell(3, 1), new DateOnly(2026, 12, 4));
        CellWriter.Write(sheet.Cell(4, 1), null);

        sheet.Cell(1, 1).GetDouble().ShouldBe(12);
        sheet.Cell(2, 1).GetDouble().ShouldBe(0.62);
        sheet.Cell(3, 1).GetDateTime().ShouldBe(new DateTime(2026, 12, 4));
        sheet.Cell(4, 1).IsEmpty().ShouldBeTrue();
    }

    [Fact]
    public void Write_AnotherType_IsRefused()
    {
        using var book = new XLWorkbook();

        Should.Throw<ArgumentException>(() => CellWriter.Write(book.AddWorksheet("Sheet").Cell(1, 1), 1.5m)).Message.ShouldStartWith("A cell cannot hold a Decimal.");
    }

    [Fact]
    public void Sources_OtherThanTheCellWriter_WriteNoCells()
    {
        var sources = Directory.EnumerateFiles(RepositoryFolder.Source, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && Path.GetFileName(f) != "CellWriter.cs")
            .ToList();

        sources.Count.ShouldBeGreaterThan(10);
        foreach (var source in sources)
        {
            var text = File.ReadAllText(source);
            text.ShouldNotContain(".Value =", Case.Sensitive, source);
            text.ShouldNotContain(".SetValue(", Case.Sensitive, source);
            text.ShouldNotContain("AdjustToContents", Case.Sensitive, source);
        }
    }
}
