using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Reading.Headings;

public sealed class ListHeadingsTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Fact]
    public void Read_GroupsMergedOverTheirColumns_JoinBothRows()
    {
        using var book = Merged("<mergeCells count=\"2\"><mergeCell ref=\"C1:D1\"/><mergeCell ref=\"E1:G1\"/></mergeCells>", s => s
            .Row(null, null, "Pattern", null, "Size (mm)")
            .Row("Piece", "Qty", "weight (g)", "material", "L", "W", "T", "Alloy")
            .Row("Pin", 2, 1.5, "wax", 30, 8, 2, "Bronze"));

        var reading = TestBooks.Read(book);

        var pin = reading.Night.Pieces.ShouldHaveSingleItem();
        (pin.Name, pin.Quantity, pin.Weight!.Value.Grams, pin.Material, pin.Alloy).ShouldBe(("Pin", 2, 1.5, "wax", "Bronze"));
        (pin.Box!.Value.Length.Millimeters, pin.Box!.Value.Width.Millimeters, pin.Box!.Value.Thickness!.Value.Millimeters).ShouldBe((30, 8, 2));
        (reading.Lists[0].HeadingRow, reading.Lists[0].FirstColumn, reading.Lists[0].LastColumn).ShouldBe((2, 1, 8));
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_GroupInInches_GivesItsUnitToItsColumnsOnly()
    {
        using var book = Merged("<mergeCells count=\"1\"><mergeCell ref=\"D1:F1\"/></mergeCells>", s => s
            .Row(null, null, null, "Size (in)")
            .Row("Piece", "Qty", "Pattern weight (g)", "L", "W", "T", "Gate length")
            .Row("Pin", 2, 1.5, 2, 1, 0.5, 6));

        var reading = TestBooks.Read(book);

        reading.Night.Pieces[0].Box!.Value.Length.Millimeters.ShouldBe(50.8, 1e-9);
        reading.Cells.Find(Subject.Piece(0, PieceField.GateLength))!.Value.ToString().ShouldBe("Pieces!G3");
    }

    // A class writes who beside what; a shop that has a column for customers, or asks nothing, means the piece by its name.
    [Theory]
    [InlineData("Name", "What", "leaf", "Ada")]
    [InlineData("What are you making?", "Name", "Ada", "leaf")]
    [InlineData("Name", "Was", "leaf", "Ada")]
    [InlineData("Nom", "Quoi", "leaf", "Ada")]
    [InlineData("Pupil", "Item", "leaf", "Ada")]
    [InlineData("Name", "Piece", "leaf", "")]
    [InlineData("Name", "Item", "Ada", "")]
    [InlineData("Name", "Customer", "Ada", "leaf")]
    public void Read_NameBesideWhatIsCast_IsAPersons(string first, string second, string piece, string customer)
    {
        using var book = BookBuilder.Pieces([first, second, "Qty", "Pattern weight (g)", "Alloy"], ["Ada", "leaf", 2, 1.5, "Bronze"]);

        var read = TestBooks.Read(book).Night.Pieces.ShouldHaveSingleItem();

        (read.Name, read.Customer ?? "").ShouldBe((piece, customer));
    }

    // Both may name the piece: what is cast, or who has it cast.
    [Theory]
    [InlineData("Name", "Item")]
    [InlineData("Name", "Design")]
    [InlineData("Name", "Artikel")]
    [InlineData("Nom", "Article")]
    [InlineData("Nombre", "Modelo")]
    [InlineData("Nome", "Articolo")]
    [InlineData("Nome", "Artigo")]
    public void Read_NameBesideAnItem_IsAskedAbout(string first, string second)
    {
        using var book = BookBuilder.Pieces([first, second, "Qty", "Pattern weight (g)", "Alloy"], ["Ada", "leaf", 2, 1.5, "Bronze"]);

        var reading = TestBooks.Read(book);

        var asked = reading.Findings.ShouldHaveSingleItem();
        (asked.Id, asked.Seen).ShouldBe(("name-of-piece-or-person", $"The pieces' names were read under \"{first}\", but \"{second}\" may name them too."));
        reading.Cells.Find(asked.Subjects[0])!.Value.ToString().ShouldBe("Pieces!A1");
    }

    // Answered, or no question: a number or a code names no piece, and of two columns one is the customer's.
    [Theory]
    [InlineData("Name", "Item", "Otter ring", "OR-12")]
    [InlineData("Name", "Item", "Otter ring", 12)]
    [InlineData("Piece", "Item", "Otter ring", "leaf")]
    [InlineData("Name", "Description", "Otter ring", "hammered")]
    [InlineData("Name", "Item", "Otter ring", null)]
    public void Read_NameBesideSomethingElse_IsNotAskedAbout(string first, string second, string name, object? other)
    {
        using var book = BookBuilder.Pieces([first, second, "Qty", "Pattern weight (g)", "Alloy"], [name, other, 2, 1.5, "Bronze"]);

        var reading = TestBooks.Read(book);

        reading.Night.Pieces.ShouldHaveSingleItem().Name.ShouldBe(name);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_NameAndItemBesideACustomer_AskNothing()
    {
        using var book = BookBuilder.Pieces(["Name", "Item", "Customer", "Qty", "Pattern weight (g)", "Alloy"], ["Thistle", "ring", "Ada", 2, 1.5, "Bronze"]);

        TestBooks.Read(book).Findings.ShouldBeEmpty();
    }

    // A class asks for the metal by what there is.
    [Theory]
    [InlineData("Silver or bronze?")]
    [InlineData("Bronze or silver")]
    [InlineData("Which metal?")]
    [InlineData("Silber oder Bronze?")]
    [InlineData("Argent ou bronze")]
    [InlineData("¿Plata o bronce?")]
    [InlineData("Argento o bronzo?")]
    [InlineData("Prata ou bronze?")]
    public void Read_HeadingThatAsksForTheMetal_IsTheAlloy(string heading)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", heading], ["leaf", 2, 1.5, "Bronze"]);

        TestBooks.Read(book).Night.Pieces.ShouldHaveSingleItem().Alloy.ShouldBe("Bronze");
    }

    [Fact]
    public void Read_NameAndWhatBesideACustomer_NameTheCustomerOnce()
    {
        using var book = BookBuilder.Pieces(["Name", "What", "Customer", "Qty", "Pattern weight (g)", "Alloy"], ["Thistle", "ring", "Ada", 2, 1.5, "Bronze"]);

        var read = TestBooks.Read(book).Night.Pieces.ShouldHaveSingleItem();

        (read.Name, read.Customer).ShouldBe(("Thistle", "Ada"));
    }

    [Fact]
    public void Read_UnitsBelowTheHeadings_AreTaken()
    {
        using var book = BookBuilder.Pieces(
            ["Piece", "Qty", "Wax", "L", "W", "T", "Alloy"],
            [null, "pcs", "g", "cm", "cm", "cm"],
            ["Pin", 2, 1.5, 3, 0.8, 0.2, "Bronze"]);

        var reading = TestBooks.Read(book);

        reading.Lists[0].Rows.ShouldBe([3]);
        reading.Night.Pieces[0].Weight!.Value.Grams.ShouldBe(1.5);
        reading.Night.Pieces[0].Box!.Value.Length.Millimeters.ShouldBe(30);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_TwoRowsAndUnits_StandAboveThePieces()
    {
        using var book = Merged("<mergeCells count=\"2\"><mergeCell ref=\"C2:D2\"/><mergeCell ref=\"E2:G2\"/></mergeCells>", s => s
            .Row("Wrenmoor Foundry")
            .Row(null, null, "Pattern", null, "Size")
            .Row("Piece", "Qty", "weight", "material", "L", "W", "T", "Alloy")
            .Row(null, null, "g", null, "mm", "mm", "mm")
            .Row("Pin", 2, 1.5, "wax", 30, 8, 2, "Bronze"));

        var reading = TestBooks.Read(book);

        reading.Lists[0].Rows.ShouldBe([5]);
        reading.Lists[0].HeadingRow.ShouldBe(3);
        reading.Night.Pieces[0].Weight!.Value.Grams.ShouldBe(1.5);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_ColumnRightOfAnUnmergedGroup_IsAskedAbout()
    {
        using var book = BookBuilder.Pieces(
            [null, null, "Pattern weight (g)", "Gate", null],
            ["Piece", "Qty", "", "diameter (mm)", "length (mm)"],
            ["Pin", 2, 1.5, 2, 6]);

        var reading = TestBooks.Read(book);

        var finding = reading.Findings.Single(f => f.Id == "heading-group-unclear");
        (finding.Severity, finding.Seen).ShouldBe((Severity.Stop, "Column E \"length (mm)\" may belong to \"Gate\" on its left or stand alone."));
        finding.Why.ShouldBe("The two mean different things, so it was not read.");
        finding.Remedy.ShouldBe("Merge the cells of \"Gate\" over the columns that belong to it, or type \"Gate length (mm)\" if this is one of them.");
        reading.Lists[0].Columns.ShouldNotContainKey(PieceField.GateLength);
        reading.Lists[0].LastColumn.ShouldBe(5);
    }

    [Fact]
    public void Read_SameWordsOverDifferentOnes_AreSettledByBothRows()
    {
        using var book = BookBuilder.Pieces(
            ["Cód.", "Descripción", "Cant.", "Peso", "Peso", "Aleación"],
            [null, null, null, "cera (g)", "metal (g)"],
            ["A1", "Broche", 3, 4.5, 40, "Bronce"]);

        var reading = TestBooks.Read(book);

        reading.Lists[0].Columns[PieceField.PatternMass].ShouldBe(4);
        reading.Night.Pieces[0].Weight!.Value.Grams.ShouldBe(4.5);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_TwoRowsAgainOnTheNextPage_AreNoPieces()
    {
        object?[] upper = ["Piece", "Qty", "Pattern", "Pattern", "Alloy"];
        object?[] lower = [null, null, "weight (g)", "material", null];
        using var book = BookBuilder.Pieces(
            upper, lower, ["Pin", 2, 1.5, "wax", "Bronze"], upper, lower, ["Bell", 1, 2.5, "wax", "Bronze"], [null], upper, lower, ["Fob", 1, 2.5, "wax", "Bronze"]);

        var reading = TestBooks.Read(book);

        reading.Lists[0].Rows.ShouldBe([3, 6, 10]);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_WeightRightOfAnUnmergedStone_IsAskedAboutUnlessAnotherIsThePieces()
    {
        using var alone = BookBuilder.Pieces(
            [null, null, null, "Stone", null], ["Piece", "Qty", "Alloy", "size", "weight (ct)"], ["Pin", 2, "Bronze", "3 mm", 0.1]);
        using var beside = BookBuilder.Pieces(
            [null, null, "Wax", "Stone", null, null], ["Piece", "Qty", "weight (g)", "size", "weight (ct)", "Alloy"], ["Pin", 2, 1.5, "3 mm", 0.1, "Bronze"]);

        TestBooks.Read(alone).Findings.ShouldContain(f => f.Seen == "Column E \"weight (ct)\" may belong to \"Stone\" on its left or stand alone.");
        using var plain = BookBuilder.Pieces(
            [null, null, "Wax model", "Stone", null], ["Piece", "Qty", "wt (g)", "size", "note", "Metal", "Length (mm)"], ["Pin", 2, 1.5, "3 mm", "red", "Bronze", 30]);

        TestBooks.Read(plain).Lists[0].Columns.Keys.ShouldBe(
            [PieceField.Piece, PieceField.Quantity, PieceField.PatternMass, PieceField.Alloy, PieceField.Length], ignoreOrder: true);
        var reading = TestBooks.Read(beside);
        reading.Lists[0].Columns[PieceField.PatternMass].ShouldBe(3);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_TitleRightAboveTheHeadings_IsNoGroup()
    {
        using var book = Merged("<mergeCells count=\"1\"><mergeCell ref=\"A1:C1\"/></mergeCells>", s => s
            .Row("Wrenmoor Foundry", null, null, "Tuesday").Row([.. Usual]).Row("Pin", 2, 1.5, "Bronze"));

        var reading = TestBooks.Read(book);

        (reading.Lists[0].Columns.Count, reading.Lists[0].HeadingRow).ShouldBe((4, 2));
        reading.Findings.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("All weights (g)")]
    [InlineData("Weights in grams")]
    [InlineData("Customer: Bell")]
    public void Read_RemarkAboveTheNames_IsNoGroup(string remark)
    {
        using var book = BookBuilder.Pieces([remark], [.. Usual], ["Pin", 2, 1.5, "Bronze"]);

        TestBooks.Read(book).Lists[0].Columns.Values.ShouldBe([1, 2, 3, 4], ignoreOrder: true);
    }

    [Fact]
    public void Read_WeightOfAStone_IsNotThePieces()
    {
        using var book = Merged("<mergeCells count=\"1\"><mergeCell ref=\"D1:E1\"/></mergeCells>", s => s
            .Row(null, null, null, "Stone")
            .Row("Piece", "Qty", "Alloy", "size (mm)", "weight (ct)")
            .Row("Pin", 2, "Bronze", 3, 0.1));

        TestBooks.Read(book).Lists[0].Columns.ShouldNotContainKey(PieceField.PatternMass);
    }

    [Fact]
    public void Read_TableBesideTheList_IsLeftAlone()
    {
        using var book = BookBuilder.Pieces(
            [.. Usual, null, "Alloy", "Length (mm)", "Stock (g)"],
            ["Pin", 2, 1.5, "Bronze", null, "Bronze", 200, 400],
            ["Bell", 1, 2.5, "Bronze", null, "Silver", 150, 80]);

        var list = TestBooks.Read(book).Lists[0];

        list.Columns.ShouldNotContainKey(PieceField.Length);
        (list.Columns[PieceField.Alloy], list.LastColumn, list.OccupiedFrom).ShouldBe((4, 4, 6));
    }

    [Fact]
    public void Read_EmptyColumnInsideTheList_DoesNotPartIt()
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", null, "Pattern weight (g)", "Alloy"], ["Pin", 2, null, 1.5, "Bronze"]);

        TestBooks.Read(book).Lists[0].Columns.Count.ShouldBe(4);
    }

    [Fact]
    public void Read_TwoColumnsOfOneHeading_IsAStop()
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Weight (g)", "Alloy", "Weight (g)"], ["Pin", 2, 1.5, "Bronze", 13]);

        var finding = TestBooks.Read(book).Findings.ShouldHaveSingleItem();

        (finding.Id, finding.Seen, finding.Remedy).ShouldBe(
            ("heading-twice", "Columns C and E both say \"Weight (g)\".", "Rename the one that is not meant."));
    }

    [Fact]
    public void Read_HeadingOfTheShop_SettlesTwoThatDifferInUnit()
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Weight (g)", "Weight (oz)", "Alloy"], ["Pin", 2, 28.35, 1, "Bronze"]);
        var settings = new BookSettings { Columns = new Dictionary<string, IReadOnlyList<string>> { [PieceField.PatternMass] = ["Weight (oz)"] } };

        BookReader.Read(book, settings).Lists[0].Columns[PieceField.PatternMass].ShouldBe(4);
    }

    [Fact]
    public void Read_ListsOnTwoSheets_SaysWhichWasRead()
    {
        using var book = TwoSheets();

        var note = TestBooks.Read(book).Findings.ShouldHaveSingleItem();

        (note.Id, note.Severity).ShouldBe(("lists-on-other-sheets", Severity.Check));
        note.Seen.ShouldBe("The list on sheet March was read; a list of pieces stands on April too.");
        note.Remedy.ShouldBe("To fill several, or another one, type their names, or all, behind Sheets to fill on the Shop sheet; or write \"sheet\": [\"March\", \"April\"] into castbook.json.");
    }

    [Fact]
    public void Read_SheetNamedInTheSettings_IsTheOneRead()
    {
        using var book = TwoSheets();

        BookReader.Read(book, new BookSettings { Sheets = ["april"] }).Night.Pieces[0].Name.ShouldBe("Bell");
    }

    [Fact]
    public void Read_SheetNamedInTheSettingsThatIsNotThere_IsRefused()
    {
        using var book = TwoSheets();

        Should.Throw<BookRefusedException>(() => BookReader.Read(book, new BookSettings { Sheets = ["May"] })).Finding.Seen
            .ShouldBe("The workbook has no sheet called May with a list of pieces, which castbook.json wants filled.");
    }

    [Theory]
    [InlineData("all", "March", "April, late")]
    [InlineData("April, late", "April, late")]
    [InlineData("april, late; March", "April, late", "March")]
    [InlineData("March, March, July", "March", "July")]
    [InlineData("July", "July")]
    public void Read_SheetsToFill_AreTheOnesNamedInTheirOrder(string typed, params string[] read)
    {
        using var book = new BookBuilder()
            .Sheet("March", s => s.Row([.. Usual]).Row("Pin", 1, 2.5, "Bronze"))
            .Sheet("Prices", s => s.Row("Piece", "Weight (g)", "Price").Row("Pin", 2.5, 12))
            .Sheet("July", s => s.Hidden().Row([.. Usual]).Row("Fob", 1, 2.5, "Bronze"))
            .Sheet("April, late", s => s.Row([.. Usual]).Row("Bell", 1, 2.5, "Bronze").Row("Key", 1, 2.5, "Bronze"))
            .Sheet("Shop", s => s.Row("Setting", "Value").Row("Sheets to fill", typed)).Build();

        var reading = TestBooks.Read(book);

        reading.Lists.Select(l => l.Sheet.Name).ShouldBe(read);
        reading.Lists.Select(l => l.FirstId).ShouldBe(reading.Lists.Select((_, i) => reading.Lists.Take(i).Sum(l => l.Rows.Count)));
        reading.Night.Pieces.Select(p => p.Id).ShouldBe(Enumerable.Range(0, reading.Night.Pieces.Count));
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_NoneOfTheSheetsToFillIsThere_IsRefused()
    {
        using var book = new BookBuilder()
            .Sheet("March", s => s.Row([.. Usual]).Row("Pin", 1, 2.5, "Bronze"))
            .Sheet("Shop", s => s.Row("Setting", "Value").Row("Sheets to fill", "May; June")).Build();

        var finding = Should.Throw<BookRefusedException>(() => TestBooks.Read(book)).Finding;

        finding.Seen.ShouldBe("The workbook has no sheet called May or June with a list of pieces, which the Shop sheet wants filled.");
        finding.Remedy.ShouldBe("Write the name of the sheet with the list into the Shop sheet, or take that line out.");
    }

    private static MemoryStream TwoSheets() => new BookBuilder()
        .Sheet("March", s => s.Row([.. Usual]).Row("Pin", 1, 2.5, "Bronze"))
        .Sheet("April", s => s.Row([.. Usual]).Row("Bell", 1, 2.5, "Bronze")).Build();

    private static MemoryStream Merged(string merges, Action<SheetBuilder> rows) =>
        new BookBuilder().Sheet("Pieces", s =>
        {
            rows(s);
            s.After(merges);
        }).Build();
}
