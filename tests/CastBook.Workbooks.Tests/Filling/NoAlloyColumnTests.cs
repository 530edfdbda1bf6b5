using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A list without a column for the alloy, as print services write it, is asked about once.</summary>
public sealed class NoAlloyColumnTests
{
    [Fact]
    public void Fill_ListWithoutAlloys_AsksOnce()
    {
        var filled = Filled.From(List());

        var asked = filled.Result.Findings.Single(f => f.Id == "alloy-column-missing");
        $"{asked.Seen} {asked.Why} {asked.Remedy}".ShouldBe(
            "The list on sheet Pieces has no column for the alloy. The metal follows from its density. "
            + "Add a column with the heading Alloy in row 1 and type what each is cast in; or, where all are cast in one, "
            + "type it as \"Alloy where the list gives none\" on the Shop sheet.");
        filled.Result.Places[filled.Result.Findings.ToList().IndexOf(asked)].Text.ShouldBe($"Pieces!A1, {Framed(filled)} {SettingName.AlloyWhereNone}");
        filled.Ids.ShouldNotContain("alloy-missing");
    }

    [Fact]
    public void Fill_TheAnswer_CountsForEveryRow()
    {
        var asked = Filled.From(List());

        var filled = asked.AfterTyping(("Shop", Framed(asked).Split('!')[1], "14k yellow 1N"));

        filled.Result.Night.Pieces.Select(p => p.Alloy).ShouldBe(["14k yellow 1N", "14k yellow 1N"]);
        filled.Ids.ShouldNotContain("alloy-column-missing");
        var said = filled.Result.Findings.Single(f => f.Id == "alloy-from-shop");
        $"{said.Seen} {said.Remedy}".ShouldBe(
            "The list on sheet Pieces has no column for the alloy; all its pieces are cast in 14k yellow 1N, as the shop says. "
            + "To type it row by row, add a column with the heading Alloy in row 1.");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_AnAnswerThatMeansSeveral_IsAskedAboutOnce() =>
        Answered("silver").Ids.Count(id => id == "alloy-ambiguous").ShouldBe(1);

    // A section line says more than a word for the whole list.
    [Fact]
    public void Fill_SectionsNameTheAlloy_NothingIsAsked() =>
        Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)"], ["14k yellow 1N"], ["Otter ring", 1, 1.5], ["Fern stud", 2, 0.5])).Ids.ShouldNotContain("alloy-column-missing");

    [Fact]
    public void Fill_ColumnWithAnEmptyCell_IsAskedForInItsRow() =>
        Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy"], ["Otter ring", 1, 1.5, null])).Ids
            .ShouldSatisfyAllConditions(ids => ids.ShouldContain("alloy-missing"), ids => ids.ShouldNotContain("alloy-column-missing"));

    private static Filled Answered(string alloy)
    {
        var asked = Filled.From(List());
        return asked.AfterTyping(("Shop", Framed(asked).Split('!')[1], alloy));
    }

    private static string Framed(Filled filled)
    {
        var grid = filled.Grid("Shop");
        var row = grid.Rows.Single(r => grid.Cell(r, 1).Text == SettingName.AlloyWhereNone);
        return $"Shop!B{row}";
    }

    private static MemoryStream List() =>
        BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)"], ["Otter ring", 1, 1.5], ["Fern stud", 2, 0.5]);
}
