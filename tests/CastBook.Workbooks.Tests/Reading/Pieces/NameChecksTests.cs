using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

/// <summary>Names that tell of a ring or a pair where the row says something else.</summary>
public sealed class NameChecksTests
{
    [Fact]
    public void Read_RingsByNameWithTwoSizesAndNoShape_AreSaidToBeReadAsBars()
    {
        var reading = TestBooks.Read(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Dimensions (mm)", "Shape", "Done"],
            ["Alianza lisa", 1, 1.5, "Bronze", "21.5 × 4", null, null],
            ["Band, hammered", 1, 1.5, "Bronze", "21.5 × 4", "ring", null],
            ["Band, plain", 1, 1.5, "Bronze", "21.5 × 4 × 21.5", null, null],
            ["Earring", 1, 1.5, "Bronze", "21.5 × 4", null, null],
            ["Ring pendant", 1, 1.5, "Bronze", "21.5 × 4", null, null],
            ["Ring", 1, 1.5, "Bronze", "21.5 × 4", null, "x"],
            ["Open twig ring", 1, 1.5, "Bronze", "23 × 7", null, null],
            ["Trauringe, glatt", 2, 1.5, "Bronze", "21 × 5", null, null],
            ["Ohrring", 2, 1.5, "Bronze", "21 × 5", null, null],
            ["String of leaves", 2, 1.5, "Bronze", "21 × 5", null, null]));

        var check = reading.Findings.Single(f => f.Id == "rings-read-as-bars");
        check.Severity.ShouldBe(Severity.Check);
        $"{check.Seen} {check.Why} {check.Remedy}".ShouldBe(
            "Rings by their names, with two sizes and no shape, were read as bars as thick as they are wide: rows 2, 8, 9. "
            + "A ring is as deep as it is long, so on the tree it would touch its neighbours. Type ring in a column Shape, or give the third size.");
        check.Subjects.Select(s => reading.Cells.Find(s)?.ToString()).ShouldBe(["Pieces!E2", "Pieces!E8", "Pieces!E9"]);
    }

    [Fact]
    public void Read_PairsByNameOfWhichOneIsCast_AreSaid()
    {
        var reading = TestBooks.Read(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Done"],
            ["Drop earrings (pair), silver", 1, 0.4, "Bronze", null],
            ["Studs, a pair", 2, 0.4, "Bronze", null],
            ["Ohrstecker, Paar", 1, 0.4, "Bronze", null],
            ["Pendientes (par)", 1, 0.4, "Bronze", null],
            ["Bague par Léa", 1, 0.4, "Bronze", null],
            ["Parrot, repaired", 1, 0.4, "Bronze", null],
            ["Cufflinks, pair", 1, 0.4, "Bronze", "x"]));

        var check = reading.Findings.Single(f => f.Id == "names-speak-of-pairs");
        check.Severity.ShouldBe(Severity.Check);
        $"{check.Seen} {check.Why} {check.Remedy}".ShouldBe(
            "Names speak of a pair, and the quantity is 1: rows 2, 4, 5. One is cast, and the weight is taken as that of one. "
            + "If both are to be cast, type 2, with the weight of one; if one pattern is the pair, nothing need be done.");
        check.Subjects.Select(s => reading.Cells.Find(s)?.ToString()).ShouldBe(["Pieces!B2", "Pieces!B4", "Pieces!B5"]);
    }
}
