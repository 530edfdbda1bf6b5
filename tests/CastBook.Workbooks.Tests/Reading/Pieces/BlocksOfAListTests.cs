using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

/// <summary>Lists that go on below headings that stand once more, or below titles.</summary>
public sealed class BlocksOfAListTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Wax weight (g)", "Alloy"];

    // Under two rows of headings a column without a group has no text in the upper one.
    [Fact]
    public void Read_TextsWithoutLettersUnderHeadingsWithoutGroup_AreNoHeadings()
    {
        var reading = Read(s => s
            .Row(null, null, "Model", null, "mm", null, null)
            .Row("Piece", "Qty", "Weight (g)", "Alloy", "Length", "Customer", "Due")
            .Row("Pin", 2, 1.5, "Bronze", 20, "", "")
            .Row("Bell", 1, 2.5, "Bronze", 20, Cell.Computed("IF(1,\"\")", ""), Cell.Computed("IF(1,\"\")", ""))
            .Row("Stud", 1, 2.5, "Bronze", 20, "Ash", null));

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Pin", "Bell", "Stud"]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Read_HeadingsAgainInAnotherOrder_EndTheListAndAreSaid(int emptyRows)
    {
        var reading = Read(s => s.Row(Usual).Row("Pin", 2, 1.5, "Bronze").Skip(emptyRows)
            .Row("Piece", "Wax weight (g)", "Qty", "Alloy").Row("Bell", 3, 2, "Bronze"));

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Pin"]);
        var stop = reading.Findings.Single(f => f.Id == "headings-again-differ");
        stop.Severity.ShouldBe(Severity.Stop);
        $"{stop.Seen} {stop.Why} {stop.Remedy}".ShouldBe(
            $"Row {3 + emptyRows} has headings again, and they differ from those in row 1: over column B stands \"Wax weight (g)\", and not \"Qty\". "
            + "Numbers below it would be read under the wrong headings, so that row and all below it were left alone. "
            + "Put the columns in one order under the same headings, or move the second list to a sheet of its own.");
    }

    [Theory]
    [InlineData("Finished weight (g)")]
    [InlineData("Wax weight (oz)")]
    [InlineData("Resin weight (g)")]
    [InlineData("Sprued wax weight (g)")]
    [InlineData("Price")]
    public void Read_HeadingsAgainWithAnotherMeaning_EndTheList(string weight) =>
        Read(s => s.Row(Usual).Row("Pin", 2, 1.5, "Bronze").Row("Piece", "Qty", weight, "Alloy").Row("Bell", 3, 20, "Bronze"))
            .Night.Pieces.Select(p => p.Name).ShouldBe(["Pin"]);

    [Theory]
    [InlineData("Piece", "Qty", "Wax weight (g)", "Alloy")]
    [InlineData("Earrings", "Qty", "Wax weight (g)", "Alloy")]
    [InlineData("Item", "Pcs", "Wax wt (g)", "Metal")]
    [InlineData("Item", "Pcs", "Weight", "Metal")]
    public void Read_HeadingsAgainThatSayTheSame_AreNoPieceAndEndNothing(params string[] headings)
    {
        var reading = Read(s => s.Row(Usual).Row("Pin", 2, 1.5, "Bronze").Row([.. headings]).Row("Bell", 3, 2, "Bronze"));

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Pin", "Bell"]);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_TwoRowsOfHeadingsAgain_EndNothing()
    {
        string?[] upper = [null, null, "Weight (g)", null, null];
        string[] lower = ["Piece", "Qty", "stone", "wax", "Alloy"];
        var reading = Read(s => s.Row([.. upper]).Row([.. lower]).Row("Pin", 2, 0.1, 1.5, "Bronze").Row([.. upper]).Row([.. lower]).Row("Bell", 3, 0.1, 2, "Bronze")
            .After("<mergeCells count=\"2\"><mergeCell ref=\"C1:D1\"/><mergeCell ref=\"C4:D4\"/></mergeCells>"));

        reading.Night.Pieces.Select(p => (p.Name, p.Weight?.Grams)).ShouldBe([("Pin", 1.5), ("Bell", 2)]);
        reading.Findings.ShouldNotContain(f => f.Id == "headings-again-differ");
    }

    [Fact]
    public void Read_TitlesMergedOverTheList_AreSectionsWhereverTheNamesStand()
    {
        var reading = Read(s => s.Row("Ref", "Piece", "Qty", "Pattern weight (g)", "Alloy")
            .Row("Tin bronze").Row("A1", "Pin", 2, 1.5).Row("For the fair").Row("A2", "Bell", 1, 2.5, "Fine silver")
            .After("<mergeCells count=\"2\"><mergeCell ref=\"A2:E2\"/><mergeCell ref=\"A4:E4\"/></mergeCells>"));

        reading.Night.Pieces.Select(p => (p.Name, p.Alloy)).ShouldBe([("Pin", "Tin bronze"), ("Bell", "Fine silver")]);
        reading.Findings.Select(f => f.Seen).ShouldBe(
        [
            "The section line \"Tin bronze\" in row 2 was read as the alloy of the rows below it that name none: 3.",
            "Rows with a name and nothing else were taken for section lines: row 4.",
        ], ignoreOrder: true);
    }

    [Theory]
    [InlineData("Friday 27 November", "Tuesday 1 December")]
    [InlineData("Fonte du vendredi 27/11", "Fonte du mardi 1/12")]
    [InlineData("27 Nov", "1 Dec")]
    [InlineData("2026-11-27", "2026-12-01")]
    [InlineData("Night 1", "Night 2")]
    [InlineData("Noche 1", "Noche 2")]
    public void Read_SectionsOfTwoNights_AreAsked(string one, string two)
    {
        var check = Read(s => s.Row(Usual).Row(one).Row("Pin", 2, 1.5, "Bronze").Row("Fob", 2, 1.5, "Bronze").Row(two).Row("Bell", 3, 2, "Bronze"))
            .Findings.Single(f => f.Id == "sections-not-read-as-nights");

        check.Severity.ShouldBe(Severity.Check);
        $"{check.Seen} {check.Why} {check.Remedy}".ShouldBe(
            $"Section lines name days or nights that were not read as casting nights: \"{one}\" in rows 3, 4; \"{two}\" in row 6. All these rows were planned as one night. "
            + "If they are casting nights, add a column with the heading Casting night and type the night in each row; if not, nothing need be done.");
    }

    [Theory]
    [InlineData("Rings", "Brooches 2026")]
    [InlineData("May flowers", "Friday")]
    [InlineData("Bars of 3.5", "Plates of 7/8 in")]
    public void Read_OtherSections_AreNotAskedFor(string one, string two) =>
        Read(s => s.Row(Usual).Row(one).Row("Pin", 2, 1.5, "Bronze").Row(two).Row("Bell", 3, 2, "Bronze")).Findings
            .ShouldAllBe(f => f.Id != "sections-not-read-as-nights");

    [Fact]
    public void Read_SectionsBesideAColumnOfNights_AreNotAskedFor() =>
        Read(s => s.Row([.. Usual, "Casting night"]).Row("Friday").Row("Pin", 2, 1.5, "Bronze", "Friday").Row("Tuesday").Row("Bell", 3, 2, "Bronze", "Tuesday")).Findings
            .ShouldAllBe(f => f.Id != "sections-not-read-as-nights");

    // "Casting" heads names; beside a surer heading of names "Castings" counts.
    [Fact]
    public void Read_CastingsBesideNames_AreTheQuantity() =>
        Read(s => s.Row("Sculpture", "Castings", "Wax weight (g)", "Alloy").Row("Heron", 3, 150, "Bronze")).Night.Pieces
            .Select(p => (p.Name, p.Quantity)).ShouldBe([("Heron", 3)]);

    [Fact]
    public void Read_TwoColumnsThatMayNameThePieces_AreAskedAboutAndTheListIsNotEmpty()
    {
        var reading = Read(s => s.Row("Piece", "Casting", "Wax weight (g)", "Alloy").Row("Heron", "legs", 150, "Bronze"));

        reading.Night.Pieces.Count.ShouldBe(1);
        reading.Findings.ShouldContain(f => f.Id == "heading-ambiguous");
    }

    private static BookReading Read(Action<SheetBuilder> fill) => TestBooks.Read(new BookBuilder().Sheet("Pieces", fill).Build());
}
