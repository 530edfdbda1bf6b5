namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Columns of ours that are new in a list.</summary>
public sealed class NewColumnsTests
{
    [Fact]
    public void Fill_ColumnWithValuesInSomeRows_GetsACellInEveryRow()
    {
        var filled = Filled.From(Book());

        filled["Pieces", "E2"].ShouldBe(20.3);
        filled["Pieces", "E3"].ShouldBeNull();
        filled.SheetXml("Pieces").ShouldContain("<c r=\"E3\" s=");
    }

    [Fact]
    public void Fill_ColumnWithoutAnyValue_GetsNoCellsBelowItsHeading()
    {
        var filled = Filled.From(Book());

        filled["Pieces", "G1"].ShouldBe("Flask");
        filled.SheetXml("Pieces").ShouldNotContain("r=\"G2\"");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    // Finished metal, so that the metal is known; no flasks, so that nothing is planned.
    private static MemoryStream Book() => BookBuilder.Pieces(
        ["Piece", "Qty", "Finished weight (g)", "Alloy"],
        ["Otter ring", 2, 20.3, "sterling without deoxidant"],
        ["Heron pin", 1, null, "sterling without deoxidant"]);
}
