using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A list without a column for the quantity is asked about once.</summary>
public sealed class NoQuantityColumnTests
{
    [Fact]
    public void Fill_ListWithoutQuantities_AsksOnce()
    {
        var filled = Filled.From(List());

        var asked = filled.Result.Findings.Single(f => f.Id == "quantity-column-missing");
        $"{asked.Seen} {asked.Why} {asked.Remedy}".ShouldBe(
            "The list on sheet Pieces has no column for the quantity. Without it nobody knows how many to cast. "
            + "Add a column with the heading Qty in row 1 and type how many of each; or, where every row is one piece, "
            + "type 1 as \"Quantity where the list gives none\" on the Shop sheet.");
        filled.Result.Places[filled.Result.Findings.ToList().IndexOf(asked)].Text.ShouldBe($"Pieces!A1, {Framed(filled)} {SettingName.QuantityWhereNone}");
        filled.Ids.ShouldNotContain("quantity-missing");
    }

    [Fact]
    public void Fill_TheAnswer_CountsForEveryRow()
    {
        var asked = Filled.From(List());

        var filled = asked.AfterTyping(("Shop", Framed(asked).Split('!')[1], 1));

        filled.Result.Night.Pieces.Select(p => p.Quantity).ShouldBe([1, 1]);
        filled.Ids.ShouldNotContain("quantity-column-missing");
        var said = filled.Result.Findings.Single(f => f.Id == "quantity-from-shop");
        $"{said.Seen} {said.Remedy}".ShouldBe(
            "The list on sheet Pieces has no column for the quantity; each row counts as 1, as the shop says. "
            + "To type it row by row, add a column with the heading Qty in row 1.");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Theory]
    [InlineData("some")]
    [InlineData(0)]
    [InlineData(2.5)]
    public void Fill_AnAnswerThatIsNoQuantity_IsSaid(object typed)
    {
        var asked = Filled.From(List());

        var filled = asked.AfterTyping(("Shop", Framed(asked).Split('!')[1], typed));

        filled.Ids.ShouldContain("quantity-column-missing");
        filled.Result.Findings.ShouldContain(f => f.Seen.Contains(SettingName.QuantityWhereNone, StringComparison.Ordinal) && f.Seen.Contains($"{typed}", StringComparison.Ordinal));
    }

    [Fact]
    public void Fill_ColumnWithAnEmptyCell_IsAskedForInItsRow() =>
        Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy"], ["Otter ring", null, 1.5, "14k"])).Ids
            .ShouldSatisfyAllConditions(ids => ids.ShouldContain("quantity-missing"), ids => ids.ShouldNotContain("quantity-column-missing"));

    private static string Framed(Filled filled)
    {
        var grid = filled.Grid("Shop");
        var row = grid.Rows.Single(r => grid.Cell(r, 1).Text == SettingName.QuantityWhereNone);
        return $"Shop!B{row}";
    }

    private static MemoryStream List() =>
        BookBuilder.Pieces(["Piece", "Wax weight (g)", "Alloy"], ["Otter ring", 1.5, "14k"], ["Fern stud", 0.5, "14k"]);
}
