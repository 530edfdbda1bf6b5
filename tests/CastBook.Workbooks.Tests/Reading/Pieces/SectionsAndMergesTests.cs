using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

public sealed class SectionsAndMergesTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Fact]
    public void Read_AlloyMergedDown_IsTheAlloyOfEachRow()
    {
        var reading = Read(
            s => s.Row(Usual).Row("Pin", 2, 1.5, "Bronze").Row("Bell", 1, 2.5).Row("Stud", 4, 0.5).Row("Cuff", 1, 9)
                .After("<mergeCells count=\"1\"><mergeCell ref=\"D2:D4\"/></mergeCells>"));

        reading.Night.Pieces.Select(p => p.Alloy).ShouldBe(["Bronze", "Bronze", "Bronze", null]);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe("A cell under Alloy that is merged over several rows was read for each of them: 2–4.");
    }

    [Fact]
    public void Read_NameMergedDown_IsTheNameOfEachSizeOfThePiece()
    {
        var reading = Read(
            s => s.Row("Piece", "Finger", "Qty", "Pattern weight (g)", "Alloy").Row("Fern ring", "52", 1, 1.9, "Bronze").Row(null, "54", 2, 2.0, "Bronze").Row(null, "56", 1, 2.9, "Bronze")
                .Row(null, null, 4, 6.8).After("<mergeCells count=\"1\"><mergeCell ref=\"A2:A4\"/></mergeCells>"));

        reading.Night.Pieces.Select(p => (p.Name, p.Weight?.Grams)).ShouldBe([("Fern ring", 1.9), ("Fern ring", 2.0), ("Fern ring", 2.9)]);
        reading.Findings.Select(f => f.Seen).ShouldBe(
        [
            "A cell under Piece that is merged over several rows was read for each of them: 2–4.",
            "Rows without a name were taken for sums of the rows above: row 5.",
        ], ignoreOrder: true);
    }

    [Fact]
    public void Read_BoxesBelowTheList_AreNoRows()
    {
        var reading = Read(s => s.Row([.. Usual, "Done"]).Row("Pin", 2, 4, "Bronze", true).Row("Bell", 1, 2, "Bronze", false).Row(null, null, null, null, false).Row(null, null, null, null, false));

        reading.Night.Pieces.Select(p => p.Done).ShouldBe([true, false]);
        reading.Findings.ShouldBeEmpty();
    }

    // Four grams over two rows may be four of each, or of both together.
    [Fact]
    public void Read_WeightMergedDown_IsAskedForInTheOtherRows()
    {
        var reading = Read(
            s => s.Row(Usual).Row("Pin", 2, 4, "Bronze").Row("Bell", 1, null, "Bronze")
                .After("<mergeCells count=\"1\"><mergeCell ref=\"C2:C3\"/></mergeCells>"));

        reading.Night.Pieces.Select(p => p.Weight?.Grams).ShouldBe([4, null]);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_SectionLineThatNamesAnAlloy_IsTheAlloyOfTheRowsBelowThatNameNone()
    {
        var reading = Read(s => s.Row(Usual)
            .Row("Tin bronze:").Row("Pin", 2, 1.5).Row("Bell", 1, 2.5, "Fine silver")
            .Row("For the fair").Row("Stud", 4, 0.5));

        reading.Night.Pieces.Select(p => p.Alloy).ShouldBe(["Tin bronze", "Fine silver", null]);
        reading.Findings.Select(f => f.Seen).ShouldBe(
        [
            "The section line \"Tin bronze\" in row 2 was read as the alloy of the rows below it that name none: 3.",
            "Rows with a name and nothing else were taken for section lines: row 5.",
        ]);
    }

    [Fact]
    public void Read_SectionInsideAnother_KeepsItsAlloyAndASumEndsBoth()
    {
        var reading = Read(s => s.Row(Usual)
            .Row("Tin bronze").Row("Brooches").Row("Pin", 2, 1.5).Row("Total", 2, 1.5).Row("Stud", 4, 0.5));

        reading.Night.Pieces.Select(p => p.Alloy).ShouldBe(["Tin bronze", null]);
    }

    [Fact]
    public void Read_ListWithoutAnAlloyColumn_TakesTheAlloyOfTheShopsOwnSheet()
    {
        var reading = TestBooks.Read(new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)").Row("Old bell metal").Row("Pin", 2, 1.5))
            .Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)").Row("Old bell metal", 8.6))
            .Build());

        reading.Night.Pieces.ShouldHaveSingleItem().Alloy.ShouldBe("Old bell metal");
    }

    [Fact]
    public void Read_TextStruckOutRunByRun_IsLeftOut()
    {
        const string Struck = "<is><r><rPr><strike/></rPr><t>Old </t></r><r><rPr><b/><strike val=\"1\"/></rPr><t>pin</t></r></is>";
        const string Half = "<is><r><rPr><strike/></rPr><t>Old</t></r><r><t> bell</t></r></is>";
        const string Not = "<is><r><rPr><strike val=\"0\"/></rPr><t>Stud</t></r></is>";

        var reading = Read(s => s.Row(Usual)
            .Row(Inline("A2", Struck), 2, 1.5, "Bronze").Row(Inline("A3", Half), 1, 2.5, "Bronze").Row(Inline("A4", Not), 1, 2.5, "Bronze"));

        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Old bell", "Stud"]);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe("Rows that are struck out were left out: row 2.");
    }

    [Fact]
    public void ReadAll_SharedTextStruckOut_IsTheOneThatIsAndNotItsLike()
    {
        var struck = new HashSet<string>(ReferenceEqualityComparer.Instance);
        using var part = new MemoryStream("<sst><si><r><rPr><strike/></rPr><t>Pin</t></r></si><si><t>Pin</t></si></sst>"u8.ToArray());

        var texts = StringItems.ReadAll(part, "xl/sharedStrings.xml", struck);

        texts.Select(struck.Contains).ShouldBe([true, false]);
    }

    [Theory]
    [InlineData("20 × 10 × 3", 20, 10, 3.0)]
    [InlineData("20x10x3 mm", 20, 10, 3.0)]
    [InlineData("20,5 x 10", 20.5, 10, null)]
    [InlineData("2 cm x 10mm x 3 mm", 20, 10, 3.0)]
    [InlineData("1\" by 1/2\"", 25.4, 12.7, null)]
    [InlineData("1 1/2 x 1/2 in", 38.1, 12.7, null)]
    [InlineData(".75 x .5 in", 19.05, 12.7, null)]
    [InlineData("1 1/8in x .5in", 28.575, 12.7, null)]
    [InlineData("1⅛\" x ¾\"", 28.575, 19.05, null)]
    [InlineData("1 1/8'' x 5/8''", 28.575, 15.875, null)]
    public void Read_SizesInOneCell_AreTakenInTheirOrder(string typed, double length, double width, double? thickness)
    {
        var piece = Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Size (mm)").Row("Pin", 2, 1.5, typed)).Night.Pieces.ShouldHaveSingleItem();

        piece.Box!.Value.Length.Millimeters.ShouldBe(length, 1e-9);
        piece.Box.Value.Width.Millimeters.ShouldBe(width, 1e-9);
        (piece.Box.Value.Thickness?.Millimeters is { } read ? Math.Round(read, 9) : (double?)null).ShouldBe(thickness);
    }

    // A ring or a disc: a diameter and a measure are no size of a finger, and nobody can say what else they are.
    [Theory]
    [InlineData("Ø 22 x 6")]
    [InlineData("⌀22×6 mm")]
    public void Read_DiameterAndAMeasure_AreAskedFor(string typed)
    {
        var reading = Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Size", "Alloy").Row("Ring", 2, 1.5, typed, "Bronze"));

        reading.Night.Pieces.ShouldHaveSingleItem().Box.ShouldBeNull();
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe($"\"{typed}\" does not say the piece's sizes.");
    }

    [Theory]
    [InlineData("17.5")]
    [InlineData("N 1/2")]
    [InlineData("extra large")]
    public void Read_SizeOfAFinger_IsNoSizeOfThePiece(string typed)
    {
        var reading = Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Size", "Alloy").Row("Ring", 2, 1.5, typed, "Bronze"));

        reading.Night.Pieces.ShouldHaveSingleItem().Box.ShouldBeNull();
        reading.Findings.ShouldHaveSingleItem().Id.ShouldBe("size-left-alone");
    }

    [Fact]
    public void Read_SizesWithoutAnyUnit_SayThatTheyAreReadInMillimetres() =>
        Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Dimensions", "Alloy").Row("Pin", 2, 1.5, "20 x 10 x 3", "Bronze")).Findings.ShouldHaveSingleItem().Seen
            .ShouldBe("No unit stands in \"Dimensions\"; read in millimetres.");

    [Fact]
    public void Read_SizesThatCannotBeRead_AreAStopWithAnExample()
    {
        var reading = Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Dimensions", "Alloy").Row("Pin", 2, 1.5, "20 x 1O x 3", "Bronze"));

        reading.Night.Pieces.ShouldHaveSingleItem().Box.ShouldBeNull();
        var stop = reading.Findings.ShouldHaveSingleItem();
        $"{stop.Seen} {stop.Why} {stop.Remedy}".ShouldBe(
            "\"20 x 1O x 3\" does not say the piece's sizes. No tree can be planned with it. "
            + "Type length × width × thickness, such as 20 × 10 × 3, the length from the gate outwards.");
    }

    // Office programs make 8 July of 7/8.
    [Fact]
    public void Read_SizeThatBecameADay_IsAStop()
    {
        var reading = Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Size (in)").Row("Pin", 2, 1.5, new DateOnly(2026, 7, 8)));

        reading.Night.Pieces.ShouldHaveSingleItem().Unreadable.ShouldContain(PieceField.Sizes);
        reading.Findings.Where(f => f.Id == "number-became-date").ShouldHaveSingleItem().Seen.ShouldBe("The size shows the date 2026-07-08.");
    }

    [Fact]
    public void Read_SizesBesideColumnsOfTheirOwn_FillOnlyWhatThoseLack()
    {
        var piece = Read(s => s.Row("Piece", "Qty", "Pattern weight (g)", "Length (mm)", "Dimensions (mm)").Row("Pin", 2, 1.5, 25, "20 × 10 × 3"))
            .Night.Pieces.ShouldHaveSingleItem();

        piece.Box!.Value.Length.Millimeters.ShouldBe(25);
        piece.Box.Value.Width.Millimeters.ShouldBe(10);
    }

    private static Cell Inline(string address, string item) => new(Xml: $"<c r=\"{address}\" t=\"inlineStr\">{item}</c>");

    private static BookReading Read(Action<SheetBuilder> fill) => TestBooks.Read(new BookBuilder().Sheet("Pieces", fill).Build());
}
