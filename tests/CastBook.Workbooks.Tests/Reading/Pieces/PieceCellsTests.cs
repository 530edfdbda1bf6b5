using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

/// <summary>What cells are read as, and what is said of it.</summary>
public sealed class PieceCellsTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Theory]
    [InlineData("2026-12-24")]
    [InlineData("24.12.2026")]
    [InlineData("24 Dec 2026")]
    public void Read_DayAsText_IsReadWhereItCanMeanOneDay(string typed) =>
        One([.. Usual, "Due"], ["Pin", 2, 1.5, "Bronze", typed]).Piece.Due.ShouldBe(new DateOnly(2026, 12, 24));

    [Fact]
    public void Read_DayThatMayBeTwo_IsACheck()
    {
        var (piece, reading) = One([.. Usual, "Due"], ["Pin", 2, 1.5, "Bronze", "3/4/2026"]);

        piece.Due.ShouldBeNull();
        Said(reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "day-undecided: \"3/4/2026\" under Due can be two days: 2026-04-03 or 2026-03-04. Rows with such a day are planned as if they had none. "
            + "Type it as 2026-04-03 or 2026-03-04. One day of the list that leaves no doubt, such as 24/12/2026, settles the others.");
    }

    [Fact]
    public void Read_DaysOfAColumn_SettleOneAnother()
    {
        var reading = Read([.. Usual, "Due"], ["Pin", 2, 1.5, "Bronze", "3/4/2026"], ["Bell", 2, 1.5, "Bronze", "24/12/2026"]);

        reading.Night.Pieces[0].Due.ShouldBe(new DateOnly(2026, 4, 3));
        Said(reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "day-order: Days under Due were read in the order that others of the book settle, such as 3/4/2026 as 2026-04-03, in row 2. If that is wrong, type them as 2026-04-03.");
    }

    [Fact]
    public void Read_DayThatIsNone_IsACheck() => Said(One([.. Usual, "Due"], ["Pin", 2, 1.5, "Bronze", "soon"]).Reading.Findings.ShouldHaveSingleItem()).ShouldBe(
        "due-unreadable: \"soon\" was not understood as a day. The row is planned as if it had no due date. Type it as a date, such as 2026-12-24.");

    // A column of days without their year is one check with all its cells, and not one in each of them.
    [Fact]
    public void Read_DaysWithoutAYear_AreACheckOfTheColumn()
    {
        var reading = Read([.. Usual, "Due"], ["Pin", 2, 1.5, "Bronze", "24.12."], ["Bell", 2, 1.5, "Bronze", "27.12."]);

        var finding = reading.Findings.ShouldHaveSingleItem();
        Said(finding).ShouldBe(
            "due-unreadable: \"24.12.\" was not understood as a day. The row is planned as if it had no due date. Type it as a date, such as 2026-12-24.");
        finding.Subjects.Select(f => reading.Cells.Find(f).ToString()).ShouldBe(["Pieces!E2", "Pieces!E3"]);
        reading.Night.Pieces.ShouldAllBe(p => p.Unreadable.Single() == PieceField.Due);
    }

    // What one column cannot settle is asked once, with all its cells.
    [Fact]
    public void Read_UndecidedNumbersOfAColumn_AreAskedAtOnce()
    {
        var reading = Read(Usual, ["Pin", 1, "1,234", "Bronze"], ["Bell", 1, "2,345", "Bronze"]);

        var finding = reading.Findings.ShouldHaveSingleItem();
        Said(finding).ShouldBe(
            "number-undecided: \"1,234\" under Pattern weight (g) can be read as two numbers: the sign in it may mark thousands or decimals. "
            + "This row is left out until it is mended. Type it anew as a number without a thousands sign. "
            + "One number of the column that leaves no doubt, such as 2.5 or 2,5, settles the others.");
        finding.Subjects.Select(f => reading.Cells.Find(f).ToString()).ShouldBe(["Pieces!C2", "Pieces!C3"]);
        reading.Night.Pieces.ShouldAllBe(p => p.Unreadable.Single() == PieceField.PatternMass);
    }

    [Fact]
    public void Read_ThousandsThatTheColumnSettles_AreNoted()
    {
        var reading = Read(Usual, ["Pin", 1, "1.000,5", "Bronze"], ["Bell", 1, "1.234", "Bronze"], ["Cup", 1, "1'500", "Bronze"]);

        reading.Night.Pieces.Select(p => p.Weight!.Value.Grams).ShouldBe([1000.5, 1234, 1500]);
        Said(reading.Findings.Single(f => f.Id == "thousands-mark")).ShouldBe(
            "thousands-mark: Signs under Pattern weight (g) were read as thousands marks, such as 1.000,5 as 1,000.5, in rows 2–4. If that is wrong, type the numbers without them.");
    }

    [Fact]
    public void Read_UnitsOfCells_AreNotedOnceWithTheirRows()
    {
        var reading = Read(Usual, ["Pin", 1, "250 mg", "Bronze"], ["Bell", 1, "1 dwt", "Bronze"], ["Cup", 1, "3 g", "Bronze"]);

        Said(reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "unit-converted: Values under Pattern weight (g) with a unit of their own were read in that unit, such as 250 mg as 0.25 g, in rows 2, 3. "
            + "If that is wrong, type them without a unit, in that of the heading.");
    }

    [Fact]
    public void Read_PlainOuncesInACell_AreACheck()
    {
        var (piece, reading) = One(Usual, ["Pin", 1, "0.5 oz", "Bronze"]);

        piece.Weight!.Value.Grams.ShouldBe(14.17476155, 1e-6);
        Said(reading.Findings.ShouldHaveSingleItem()).ShouldStartWith(
            "unit-plain-ounce-in-cell: Values under Pattern weight (g) were read in ordinary ounces of 28.35 g, such as 0.5 oz as 14.174762 g, in row 2. ");
    }

    [Fact]
    public void Read_FractionsOfAnInch_AreRead()
    {
        var piece = One([.. Usual, "Length (in)", "Width (mm)"], ["Cuff", 1, 2, "Bronze", "1 1/2\"", "7/8 in"]).Piece;

        piece.Box!.Value.Length.Millimeters.ShouldBe(38.1, 1e-9);
        piece.Box!.Value.Width.Millimeters.ShouldBe(22.225, 1e-9);
    }

    [Fact]
    public void Read_PairsAndDozens_AreCountedAndNoted()
    {
        var reading = Read(Usual, ["Hoop", "2 pr", 1.5, "Bronze"], ["Pin", "1 dz", 1.5, "Bronze"], ["Bell", "3 pcs", 1.5, "Bronze"], ["Cup", "x4", 1.5, "Bronze"]);

        reading.Night.Pieces.Select(p => p.Quantity).ShouldBe([4, 12, 3, 4]);
        reading.Findings.Select(Said).ShouldBe(
        [
            "pairs-counted: Pairs under Qty were counted as two pieces each, such as 2 pr as 4 pieces, in row 2. If that is wrong, type the number of pieces.",
            "dozens-counted: Dozens under Qty were counted as twelve pieces each, such as 1 dz as 12 pieces, in row 3. If that is wrong, type the number of pieces.",
        ]);
    }

    [Fact]
    public void Read_QuantityInSets_IsAStop() =>
        Said(One(Usual, ["Pin", "2 sets", 1.5, "Bronze"]).Reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "quantity-not-a-number: \"2 sets\" is not a number: it does not say how many pieces one of them is. This row is left out until it is mended. "
            + "Type how many to cast as a whole number, such as 6.");

    [Fact]
    public void Read_PercentageInAWeight_IsAStop() =>
        One(Usual, ["Pin", 2, new Cell(0.05, BookBuilder.Style.Percent), "Bronze"]).Reading.Findings.ShouldHaveSingleItem().Seen
            .ShouldBe("\"5 %\" is not a number: it is a percentage.");

    [Theory]
    [InlineData("2026-11-20", true)]
    [InlineData("20 Nov 2026", true)]
    [InlineData("3/4/2026", true)]
    [InlineData("erledigt", true)]
    [InlineData("x", true)]
    [InlineData("no", false)]
    [InlineData("", false)]
    public void Read_DoneColumn_TakesADayForDone(string typed, bool expected) =>
        One([.. Usual, "Done"], ["Pin", 2, 1.5, "Bronze", typed]).Piece.Done.ShouldBe(expected);

    [Fact]
    public void Read_DateInTheDoneColumn_MeansDone() =>
        One([.. Usual, "Done"], ["Pin", 2, 1.5, "Bronze", new DateOnly(2026, 11, 20)]).Piece.Done.ShouldBeTrue();

    // However a day is written, it names the same night.
    [Fact]
    public void Read_NightThatIsADay_IsWrittenInOneWay() =>
        Read([.. Usual, "Night"],
            ["Pin", 2, 1.5, "Bronze", new DateOnly(2026, 12, 3)], ["Pin", 2, 1.5, "Bronze", "3.12.2026"], ["Pin", 2, 1.5, "Bronze", "3 Dec"], ["Pin", 2, 1.5, "Bronze", 12])
            .Night.Pieces.Select(p => p.Night).ShouldBe(["2026-12-03", "2026-12-03", "3 Dec", "12"]);

    [Fact]
    public void Read_TextNumbersWithCommas_SettleOneAnother()
    {
        var reading = Read(Usual, ["Pin", 1, "2,85", "Bronze"], ["Bell", 1, "1,234", "Bronze"]);

        reading.Night.Pieces[1].Weight!.Value.Grams.ShouldBe(1.234);
        Said(reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "decimal-comma: Commas under Pattern weight (g) were read as decimal signs, such as 2,85 as 2.85, in rows 2, 3. If that is wrong, type the numbers with a point.");
    }

    private static string Said(Finding finding) => $"{finding.Id}: {string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(t => t.Length > 0))}";

    private static (Piece Piece, BookReading Reading) One(object?[] headings, object?[] row)
    {
        var reading = Read(headings, row);
        return (reading.Night.Pieces.ShouldHaveSingleItem(), reading);
    }

    private static BookReading Read(params object?[][] rows) => TestBooks.Read(BookBuilder.Pieces(rows));
}
