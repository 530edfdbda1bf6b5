using CastBook.Workbooks.Tests.Filling;

namespace CastBook.Workbooks.Tests.Explaining;

/// <summary>Cells in which nothing is worked out, and names that are none.</summary>
public sealed class OtherCellsTests
{
    private const string List = "Harbour list";

    [Theory]
    [InlineData("D5", "It is yours; CastBook reads it as the weight. Worked out in this row: K5 Metal each (g), L5 Metal (g), M5 Flask, N5 Mix, O5 Burnout (h), P5 Checks.")]
    [InlineData("B5", "It is yours; CastBook reads it as the name of the piece. Worked out in this row: K5 Metal each (g), L5 Metal (g), M5 Flask, N5 Mix, O5 Burnout (h), P5 Checks.")]
    [InlineData("J5", "It is yours; CastBook does not read it. Worked out in this row: K5 Metal each (g), L5 Metal (g), M5 Flask, N5 Mix, O5 Burnout (h), P5 Checks.")]
    [InlineData("K4", "It is the heading of a column that CastBook fills; ask for a cell below it.")]
    [InlineData("A1", "It is yours: CastBook works nothing out in it.")]
    [InlineData("Shop!B3", "It is yours: CastBook reads it and works nothing out in it.")]
    [InlineData("Night plan!P5", "It is yours to fill in: CastBook keeps what you type there and works nothing out in it.")]
    [InlineData("Night plan!A4", "CastBook wrote it: a name, a heading or a sentence, in which nothing is worked out.")]
    [InlineData("Metal!Z99", "It is empty: CastBook writes nothing there.")]
    public void Of_NothingWorkedOut_SaysWhoseItIs(string cell, string note)
    {
        var explanation = Explained.From(Nights.Whole())[cell];

        (explanation.Account, explanation.Note).ShouldBe((null, note));
    }

    [Fact]
    public void Of_EmptyBecauseOfAStop_TellsTheStop()
    {
        var explained = Explained.From(Typed.Into(Nights.Whole().ToArray(), (List, "D5", "2,3O")));

        explained.Lines("K5").Take(2).ShouldBe(["'Harbour list'!K5  Otter signet", "It is empty, because of this:"]);
        explained["K5"].Findings.ShouldHaveSingleItem().Id.ShouldBe("weight-not-a-number");
        explained["P5"].Note.ShouldBe("It says what was found about this row.");
        explained["P7"].Note.ShouldBe("It is empty: nothing was found about this row.");
    }

    [Fact]
    public void Of_TemperatureNotKnown_TellsTheFindingOfTheAlloy()
    {
        var explained = Explained.From(Typed.Into(Nights.Whole().ToArray(), ("Alloys", "C2", null)));

        var cell = explained["Night plan!K5"];

        cell.Note.ShouldBe("It is empty: there is nothing to say there, or something is not known that it takes.");
        cell.Findings.Select(f => f.Id).ShouldContain("metal-temperature-missing");
    }

    [Fact]
    public void Of_RowLeftOut_SaysSo()
    {
        var explained = Explained.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Done"],
            ["Otter ring", 2, 1.5, "14k", null],
            ["Heron pin", 1, 2, "14k", "yes"]));

        explained["F3"].Note.ShouldBe("It is left as it is: the row is done or another night's.");
    }

    // Sizes in one cell are where the size of a flask's account comes from, not the piece's name.
    [Fact]
    public void Of_SizesInOneCell_AreFoundInTheirColumn()
    {
        using var package = Nights.WholeBuilder().Build();
        var book = Typed.Into(
            package.ToArray(),
            (List, "G4", "Sizes (mm)"), (List, "H4", "H note"), (List, "I4", "I note"),
            (List, "G5", "24x12x6"), (List, "G6", "9x8x3"), (List, "G7", "20x14x14"));

        var size = Explained.From(book)[$"{List}!M5"].Inputs.Single(i => i.Name == "size");

        (size.Value, size.From).ShouldBe(("24 mm × 12 mm × 6 mm", $"'{List}'!G5"));
    }

    [Theory]
    [InlineData("'Harbour list'!K5")]
    [InlineData("harbour LIST!$k$5")]
    [InlineData(" k5 ")]
    public void Find_WaysToNameACell_AreUnderstood(string name) =>
        Explained.From(Nights.Whole()).Book.Find(name).ShouldBe((new(List, 5, 11), null));

    [Theory]
    [InlineData("K", "'K' is no cell. Type the sheet, an exclamation mark and the cell, such as \"Harbour list!C2\".")]
    [InlineData("ZZZZ5", "'ZZZZ5' is no cell. Type the sheet, an exclamation mark and the cell, such as \"Harbour list!C2\".")]
    [InlineData("", "'' is no cell. Type the sheet, an exclamation mark and the cell, such as \"Harbour list!C2\".")]
    [InlineData("K5:K7", "'K5:K7' is more than one cell. Ask for one at a time, or leave the cell out to have all of them.")]
    public void Find_NoCell_SaysWhatToType(string name, string mistake) => Explained.From(Nights.Whole()).Book.Find(name).Mistake.ShouldBe(mistake);

    [Fact]
    public void Find_NoSuchSheet_NamesTheNearest() => Explained.From(Nights.Whole()).Book.Find("Nightplan!E5").Mistake!
        .ShouldStartWith("there is no sheet 'Nightplan'. Did you mean \"Night plan!E5\"? The sheets are: Harbour list, Flasks, ");
}
