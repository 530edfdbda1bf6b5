using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Tests.Reading.Headings;

/// <summary>A second row of headings that holds units and the order of sizes.</summary>
public sealed class UnitRowTests
{
    [Theory]
    [InlineData("in g", "LxBxH in mm")]
    [InlineData("g", "L×B×H in mm")]
    [InlineData("(g)", "L x B x H (mm)")]
    [InlineData("in g", "mm")]
    public void Read_GermanRowOfUnits_IsPartOfTheHeadings(string mass, string sizes)
    {
        using var book = BookBuilder.Pieces(
            ["Teil", "Stück", "Modellgewicht", "Legierung", "Maße"],
            [null, null, mass, null, sizes],
            ["Otter", 2, 1.5, "14k", "22x20x6"]);

        var reading = TestBooks.Read(book);

        reading.Findings.ShouldBeEmpty();
        var piece = reading.Night.Pieces.ShouldHaveSingleItem();
        (piece.Weight!.Value.Grams, piece.Box!.Value.Length.Millimeters, piece.Box!.Value.Thickness!.Value.Millimeters).ShouldBe((1.5, 22, 6));
    }

    [Theory]
    [InlineData("LxBxH in mm")]
    [InlineData("L×B×H in mm")]
    public void Read_SizesNamedOnlyInTheSecondRow_AreRead(string sizes)
    {
        using var book = BookBuilder.Pieces(
            ["Teil", "Stück", "Modellgewicht", "Legierung", null],
            [null, null, "in g", null, sizes],
            ["Otter", 2, 1.5, "14k", "22x20x6"]);

        var reading = TestBooks.Read(book);

        reading.Lists[0].Columns[PieceField.Sizes].ShouldBe(5);
        reading.Night.Pieces.ShouldHaveSingleItem().Box!.Value.Width.Millimeters.ShouldBe(20);
    }

    [Theory]
    [InlineData("L×B×H (mm)")]
    [InlineData("LxBxH in mm")]
    [InlineData("L × l × h (mm)")]
    [InlineData("L×A×H (mm)")]
    [InlineData("L×P×H (mm)")]
    [InlineData("C×L×A (mm)")]
    [InlineData("L×W×H (mm)")]
    public void Read_SizesWithCrosses_AreKnown(string heading)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Weight (g)", heading], ["Otter", 2, 1.5, "22×20×6"]);

        TestBooks.Read(book).Lists[0].Columns[PieceField.Sizes].ShouldBe(4);
    }
}
