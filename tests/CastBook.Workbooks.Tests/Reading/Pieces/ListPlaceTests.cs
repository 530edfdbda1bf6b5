using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

public sealed class ListPlaceTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Fact]
    public void Read_TitleLinesAbove_FindsTheHeadings()
    {
        using var book = new BookBuilder().Sheet("Tuesday", s => s
            .Row("Wrenmoor Foundry").Row("Weights in grams").Skip(3)
            .Row(null, "Alloy", "Piece", "Qty", "Pattern weight (g)").Row(null, "Bronze", "Pin", 2, 1.5)).Build();

        var list = TestBooks.Read(book).Lists[0];

        (list.HeadingRow, list.FirstColumn, list.LastColumn, list.LastRow).ShouldBe((6, 2, 5, 7));
        list.Columns[PieceField.Piece].ShouldBe(3);
    }

    // Nothing tells a piece of such a name from a sum but its numbers, and a row that is left out must not be left out in silence.
    [Fact]
    public void Read_PieceThatIsCalledLikeASum_IsSaidToBeLeftOut()
    {
        var reading = Read(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy"],
            ["Stud", 4, 0.5, "Bronze"], ["Total eclipse pendant", 1, 5.5, null], ["Ensemble", 2, 3.5, "Bronze"], ["Band", 2, 2.5, "Bronze"], ["Total of the week", 6, 3, null], ["Total", 99, 12, null]);

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Stud", "Band"]);
        var finding = reading.Findings.Single(f => f.Id == "rows-read-as-totals");
        $"{finding.Severity}: {finding.Seen} {finding.Why} {finding.Remedy}".ShouldBe(
            "Check: Rows that begin with a word for sums were left out, although their numbers are not those of the rows above: rows 3, 4. "
            + "A piece may be called so. If one is a piece, let its name begin with another word.");
    }

    [Fact]
    public void Read_SectionsTotalsAndRepeatedHeadings_AreNoPieces()
    {
        var reading = Read(
            Usual,
            ["Earrings"],
            ["Stud", 12, 0.4, "Bronze"],
            ["Subtotal", 12, 0.4],
            Usual,
            ["Rings"],
            ["Band", 2, 3.5, "Bronze"],
            ["Total eclipse pendant", 1, 5.5, "Bronze"],
            ["Grand total", Cell.Computed("SUM(B3:B8)", 15), 9.4]);

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Stud", "Band", "Total eclipse pendant"]);
        reading.Lists[0].Rows.ShouldBe([3, 7, 8]);
        var note = reading.Findings.ShouldHaveSingleItem();
        (note.Id, note.Severity).ShouldBe(("rows-read-as-sections", Severity.Note));
        note.Seen.ShouldEndWith(": rows 2, 6.");
    }

    [Fact]
    public void Read_QuantityAndWeightWithoutName_IsAPiece()
    {
        var reading = Read(Usual, [null, 3, 1.5], [null, 3], ["Pin", null, null, "Bronze"]);

        reading.Night.Pieces.Select(p => (p.Name, p.Quantity)).ShouldBe([("", 3), ("Pin", null)]);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe("Rows that name no piece were left alone: row 3.");
    }

    [Fact]
    public void Read_StruckOutRows_AreLeftOutAndSaid()
    {
        var reading = Read(
            Usual,
            [new Cell("Old pin", BookBuilder.Style.Struck), 2, 1.5, "Bronze"],
            ["Pin", new Cell(2, BookBuilder.Style.Struck), 1.5, "Bronze"],
            [new Cell("Bell", BookBuilder.Style.NotStruck), 1, 2.5, "Bronze"],
            [null, new Cell(3, BookBuilder.Style.Struck), new Cell(1.5, BookBuilder.Style.Struck)]);

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Pin", "Bell"]);
        var note = reading.Findings.ShouldHaveSingleItem();
        (note.Id, note.Severity, note.Seen).ShouldBe(("rows-struck-out", Severity.Note, "Rows that are struck out were left out: rows 2, 5."));
    }

    [Theory]
    [InlineData("Zwischensumme")]
    [InlineData("Sous-total :")]
    [InlineData("Suma")]
    [InlineData("Totale")]
    [InlineData("Subtotal de março")]
    [InlineData("Σ")]
    public void Read_SumsInOtherLanguages_AreNoPieces(string word) =>
        Read(Usual, ["Pin", 2, 1.5, "Bronze"], [word, 2, 1.5], ["Bell", 1, 2.5, "Bronze"]).Night.Pieces.Select(p => p.Name).ShouldBe(["Pin", "Bell"]);

    [Fact]
    public void Read_SumsWithoutAWord_AreNoPieces()
    {
        var reading = Read(
            Usual,
            ["Pin", 2, 1.5, "Bronze"],
            ["Bell", 3, 2.5, "Bronze"],
            [null, 5, 4.0],                                      // of the section: 2 + 3, 1.5 + 2.5
            ["Rings"],
            ["Band", 4, 3.5, "Bronze"],
            ["Signet", 1, 8.0, "Bronze"],
            [null, 5, 22.0],                                     // 4 × 3.5 + 1 × 8
            [null, Cell.Computed("SUM(B2:B8)", 10), 15.5],
            [null, 5, 9.5]);                                     // no sum of anything: a piece without a name

        reading.Lists[0].Rows.ShouldBe([2, 3, 6, 7, 10]);
        reading.Findings.Single(f => f.Id == "rows-read-as-sums").Seen.ShouldBe("Rows without a name were taken for sums of the rows above: rows 4, 8, 9.");
    }

    [Fact]
    public void Read_ListWithoutNames_LosesNoRowToSums() =>
        Read(["Qty", "Pattern weight (g)"], [2, 1.5], [3, 2.5], [5, 4.0], [Cell.Computed("A2", 2), 1.5]).Lists[0].Rows.ShouldBe([2, 3, 4, 5]);

    [Fact]
    public void Read_OneRowOfTheSameNumbers_IsNoSum() =>
        Read(Usual, ["Pin", 2, 1.5, "Bronze"], [null, 2, 1.5]).Lists[0].Rows.ShouldBe([2, 3]);

    [Fact]
    public void Read_AnotherListBelow_EndsTheList()
    {
        var reading = Read(
            Usual, ["Pin", 2, 1.5, "Bronze"], [], ["Bell", 1, 2.5, "Bronze"], [], ["Tool", "Owner", "Drawer", "Remark"], ["Tongs", "both", "left", "new"], ["Old pin", 2, 1.5, "Bronze"]);

        reading.Lists[0].Rows.ShouldBe([2, 4]);
        reading.Lists[0].LastRow.ShouldBe(4);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldEndWith(": row 8.");
    }

    [Fact]
    public void Read_RowWhoseNumbersAreMissing_DoesNotEndTheList() =>
        Read(Usual, ["Pin", 2, 1.5, "Bronze"], [], ["Bell", "2 pcs", null, "Bronze"], [], ["Fob", "n/a", "?", "Bronze"], ["Key", 1, 2.5, "Bronze"]).Lists[0].Rows.ShouldBe([2, 4, 6, 7]);

    [Fact]
    public void Read_RowsFarBelow_AreLeftAloneAndSaid()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s
            .Row(Usual).Row("Pin", 2, 1.5, "Bronze").Skip(2).Row("Bell", 1, 2.5, "Bronze")
            .Skip(3).Row("Prices", null, "see below").Row("Old pin", 2, 1.5, "Bronze")).Build();

        var reading = TestBooks.Read(book);

        reading.Lists[0].Rows.ShouldBe([2, 5]);
        reading.Lists[0].LastRow.ShouldBe(5);
        var check = reading.Findings.ShouldHaveSingleItem();
        (check.Id, check.Severity).ShouldBe(("rows-outside-list", Severity.Check));
        check.Seen.ShouldEndWith(": row 10.");
    }

    [Fact]
    public void Read_HiddenRows_AreReadAndSaid()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s
            .Row(Usual).Row("Pin", 2, 1.5, "Bronze").HiddenRow("Bell", 1, 2.5, "Bronze").HiddenRow("Fob", 1, 2.5, "Bronze").HiddenRow("Key", 1, 2.5, "Bronze")).Build();

        var reading = TestBooks.Read(book);

        reading.Night.Pieces.Count.ShouldBe(4);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe("Hidden rows were read too: rows 3–5.");
    }

    [Fact]
    public void Read_Table_EndsAboveItsTotalsRow()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s
            .Row(Usual).Row("Pin", 2, 1.5, "Bronze").Row("Bell", 1, 2.5, "Bronze").Row("Sum of it", 3, 4.0, "all")
            .Row("Late pin", 1, 1.5, "Bronze")
            .Table("A1:D4", Usual, totals: true)).Build();

        var reading = TestBooks.Read(book);

        reading.Lists[0].Rows.ShouldBe([2, 3]);
        reading.Lists[0].LastRow.ShouldBe(3);
        reading.Lists[0].Table!.ColumnNames.ShouldBe(Usual);
        reading.Findings.ShouldHaveSingleItem().Id.ShouldBe("rows-outside-list");
    }

    [Fact]
    public void Read_XmlTable_IsNotPlain()
    {
        using var book = new BookBuilder().Sheet("Pieces", s => s
            .Row(Usual).Row("Pin", 2, 1.5, "Bronze").Table("A1:D2", Usual, tableType: "xml")).Build();

        TestBooks.Read(book).Lists[0].Table!.IsPlain.ShouldBeFalse();
    }

    [Fact]
    public void Read_SeveralSheets_TakesTheOneWithMostHeadings()
    {
        using var book = new BookBuilder()
            .Sheet("Orders", s => s.Row("Item", "Qty").Row("Pin", 2))
            .Sheet("Casting", s => s.Row(Usual).Row("Bell", 1, 2.5, "Bronze")).Build();

        TestBooks.Read(book).Lists[0].Sheet.Name.ShouldBe("Casting");
    }

    [Fact]
    public void Read_SheetCalledPieces_WinsTies()
    {
        using var book = new BookBuilder()
            .Sheet("Last week", s => s.Row(Usual).Row("Bell", 1, 2.5, "Bronze"))
            .Sheet("Pieces", s => s.Row(Usual).Row("Pin", 1, 2.5, "Bronze")).Build();

        TestBooks.Read(book).Night.Pieces[0].Name.ShouldBe("Pin");
    }

    [Fact]
    public void Read_HiddenSheet_IsTheLastChoice()
    {
        using var book = new BookBuilder()
            .Sheet("Old", s => s.Hidden().Row([.. Usual, "Length (mm)", "Width (mm)"]).Row("Bell", 1, 2.5, "Bronze", 20, 10))
            .Sheet("New", s => s.Row(Usual).Row("Pin", 1, 2.5, "Bronze")).Build();

        TestBooks.Read(book).Lists[0].Sheet.Name.ShouldBe("New");
    }

    [Fact]
    public void Read_OurSheets_AreNoCandidates()
    {
        using var book = new BookBuilder()
            .Sheet("Night plan", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy", "Length (mm)").Row("Bell", 1, 2.5, "Bronze", 9))
            .Sheet("Work", s => s.Row(Usual).Row("Pin", 1, 2.5, "Bronze"))
            .Name(OwnName.NightPlanSheet, "'Night plan'!$A$1").Build();

        var reading = TestBooks.Read(book);

        reading.Lists[0].Sheet.Name.ShouldBe("Work");
        reading.OwnSheets[OwnName.NightPlanSheet].Name.ShouldBe("Night plan");
    }

    [Fact]
    public void Read_OurColumns_AreKnownByTheirNames()
    {
        using var book = new BookBuilder()
            .Sheet("It's", s => s.Row([.. Usual, "Cast weight (g)", "Checks"]).Row("Pin", 1, 2.5, "Bronze", 20.5, "ok"))
            .Name(OwnName.MetalEach, "'It''s'!$E$1").Name(OwnName.Checks, "'It''s'!$F$1").Name(OwnName.Mix, "#REF!").Build();

        var list = TestBooks.Read(book).Lists[0];

        list.OwnColumns.ShouldBe(new Dictionary<string, int> { [OwnName.MetalEach] = 5, [OwnName.Checks] = 6 }, ignoreOrder: true);
        list.DeletedOwnColumns.ShouldBe([OwnName.Mix]);
        (list.FirstColumn, list.LastColumn, list.OccupiedFrom).ShouldBe((1, 6, null));
    }

    [Fact]
    public void Read_OurHeadingsWithoutNames_AreKnownWhenSeveralStandTogether()
    {
        Read([.. Usual, "Metal each (g)", "Metal (g)", "Checks"], ["Pin", 1, 2.5, "Bronze", 20, 20, ""]).Lists[0]
            .OwnColumns.Keys.ShouldBe([OwnName.MetalEach, OwnName.Metal, OwnName.Checks]);
        Read([.. Usual, "Flask"], ["Pin", 1, 2.5, "Bronze", "blue one"]).Lists[0].OwnColumns.ShouldBeEmpty();
    }

    [Fact]
    public void Read_SomethingBesideTheList_IsFound()
    {
        var list = Read([.. Usual, "Customer"], ["Pin", 1, 2.5, "Bronze", "C1"], ["Pin", 1, 2.5, "Bronze", "C1", null, null, "remark"], ["Pin", 1, 2.5, "Bronze", null, null, Cell.Computed("A1", null)]).Lists[0];

        (list.LastColumn, list.OccupiedFrom).ShouldBe((5, 7));
    }

    [Fact]
    public void Find_Subjects_GivesTheirCells()
    {
        var reading = Read(["Alloy", "Piece", "Qty", "Pattern weight (g)"], ["Bronze", "Pin", 2, 1.5], [null, "Bell", 1, null]);

        string? At(Subject subject) => reading.Cells.Find(subject)?.ToString();
        At(Subject.Piece(1, PieceField.PatternMass)).ShouldBe("Pieces!D3");
        At(Subject.Piece(1, PieceField.Length)).ShouldBe("Pieces!B3");
        At(Subject.Piece(1)).ShouldBe("Pieces!B3");
        At(Subject.Column(PieceField.Alloy)).ShouldBe("Pieces!A1");
        At(Subject.Column(PieceField.Length)).ShouldBeNull();
        At(Subject.Book).ShouldBeNull();
    }

    private static BookReading Read(params object?[][] rows) => TestBooks.Read(BookBuilder.Pieces(rows));
}
