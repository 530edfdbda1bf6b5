using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using UnitsNet;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

public sealed class PieceReadingTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Fact]
    public void Read_EveryColumn_GivesItsValue()
    {
        var piece = One(
            [
                "Piece", "Qty", "Pattern weight (g)", "Pattern volume (ml)", "Material", "Alloy", "Shape", "Length (mm, from the gate outwards)",
                "Width (mm)", "Thickness (mm)", "Finest section (mm)", "Heaviest section (mm)", "Gates", "Gate diameter (mm)", "Gate length (mm)",
                "Stones in", "Per tree", "Printed at (°C)", "Washed (min)", "Cured (min)", "Due", "Night", "Keep in flask", "Leave out",
            ],
            [
                "Band", 4, 3.25, 2.5, "cast resin", "Bronze", "Ring", 22, 7, 2, 1.25, 2.75, 2, 3, 5,
                "yes", "75 × 100: 12; 90 × 125: 20", 28, 3, 15, new DateOnly(2026, 12, 24), "Friday", "C", "x",
            ]).Piece;

        (piece.Name, piece.Quantity, piece.Material, piece.Alloy).ShouldBe(("Band", 4, "cast resin", "Bronze"));
        piece.Weight!.Value.Grams.ShouldBe(3.25);
        piece.PatternVolume!.Value.Milliliters.ShouldBe(2.5);
        piece.Box!.Value.IsRing.ShouldBeTrue();
        (piece.Box!.Value.Length.Millimeters, piece.Box!.Value.Width.Millimeters, piece.Box!.Value.Thickness!.Value.Millimeters).ShouldBe((22, 7, 2));
        (piece.FinestSection!.Value.Millimeters, piece.HeaviestSection!.Value.Millimeters).ShouldBe((1.25, 2.75));
        (piece.Gate!.Count, piece.Gate.Diameter!.Value.Millimeters, piece.Gate.Length!.Value.Millimeters).ShouldBe((2, 3, 5));
        piece.StonesIn.ShouldBeTrue();
        piece.PerTree!["75 × 100"].ShouldBe(12);
        piece.PerTree["90 × 125"].ShouldBe(20);
        (piece.Print!.PrintedAt!.Value.DegreesCelsius, piece.Print.Washed!.Value.Minutes, piece.Print.Cured!.Value.Minutes).ShouldBe((28, 3, 15));
        (piece.Due, piece.Night, piece.KeepInFlask, piece.LeaveOut).ShouldBe((new DateOnly(2026, 12, 24), "Friday", "C", true));
        piece.Unreadable.ShouldBeEmpty();
    }

    // A ring that is not known as one is as deep as its band is thick, and trees are planned too full.
    [Theory]
    [InlineData("Shape", "signet ring", true)]
    [InlineData("Form", "Siegelring", true)]
    [InlineData("Forme", "bague", true)]
    [InlineData("Forma", "Anillo", true)]
    [InlineData("Forma", "anello", true)]
    [InlineData("Formato", "aliança", true)]
    [InlineData("Shape", "band", true)]
    [InlineData("Shape", "Signet, oval", true)]
    [InlineData("Form", "Bandring", true)]
    [InlineData("Form", "Reif", true)]
    [InlineData("Forme", "chevalière", true)]
    [InlineData("Forme", "demi-alliance", true)]
    [InlineData("Forma", "sortija", true)]
    [InlineData("Forma", "sello de caballero", true)]
    [InlineData("Forma", "fedina", true)]
    [InlineData("Formato", "sinete", true)]
    [InlineData("Shape", "other", false)]
    [InlineData("Forme", "pendentif", false)]
    public void Read_ShapeInAnyLanguage_TellsARing(string heading, string shape, bool isRing) =>
        One([.. Usual, heading, "Length (mm)", "Width (mm)", "Thickness (mm)"], ["Gull", 1, 2, "Bronze", shape, 22, 5, 2]).Piece.Box!.Value.IsRing.ShouldBe(isRing);

    // A word that nobody can read may be a ring: it counts as none, and says so once, at its first cell.
    [Fact]
    public void Read_ShapesThatNobodyCanRead_CountAsBoxesAndSaySoOnceForEachWord()
    {
        var reading = Read(
            [.. Usual, "Form", "Length (mm)", "Width (mm)", "Leave out"],
            ["Gull", 1, 2, "Bronze", "Welle", 22, 5, null],
            ["Tern", 1, 2, "Bronze", "Reif", 22, 5, null],
            ["Skua", 1, 2, "Bronze", "welle", 22, 5, null],
            ["Knot", 1, 2, "Bronze", "Anhänger", 22, 5, null],
            ["Rail", 1, 2, "Bronze", "Tropfen", 22, 5, null],
            ["Coot", 1, 2, "Bronze", "Blatt", 22, 5, "x"],
            ["Smew", 1, 2, "Bronze", "Knospe", null, null, null],
            ["Ruff", 1, 2, "Bronze", "-", 22, 5, null]);

        reading.Night.Pieces.Select(p => p.Box?.IsRing).ShouldBe([false, true, false, false, false, false, null, false]);
        var said = reading.Findings.Where(f => f.Id == "shape-not-known").ToList();
        said.Select(Said).ShouldBe(
        [
            "shape-not-known: \"Welle\" under Form was read as a box, in 2 rows. A ring takes more room on a tree. Type ring there for a finger ring, and other for anything else.",
            "shape-not-known: \"Tropfen\" under Form was read as a box, in 1 row. A ring takes more room on a tree. Type ring there for a finger ring, and other for anything else.",
        ]);
        said.Select(f => reading.Cells.Find(f.Subjects.ShouldHaveSingleItem())?.ToString()).ShouldBe(["Pieces!E2", "Pieces!E6"]);
        said.ShouldAllBe(f => f.Severity == Severity.Note);
    }

    [Fact]
    public void Read_NamesUnderWax_AreTheMaterial()
    {
        var reading = Read(["Piece", "Qty", "Weight (g)", "Alloy", "Wax"], ["Band", 1, 2, "Bronze", "Quarry green"], ["Pin", 1, 2, "Bronze", "Quarry green"]);

        reading.Night.Pieces.Select(p => p.Material).ShouldBe(["Quarry green", "Quarry green"]);
        reading.Findings.Single(f => f.Id == "names-read-as-material").Seen.ShouldBe("\"Wax\" was read as the pattern's material, because names stand under it.");
    }

    // Of one material for all, wax among resin would be taken a fifth too heavy in metal.
    [Fact]
    public void Read_WaxOrResinInEachCellOfAnUnknownColumn_IsTheMaterial()
    {
        var reading = Read(
            ["Pieza", "Cantidad", "Peso (g)", "Metal", "Modelo en", "Obs."],
            ["Anillo", 1, 2, "Bronce", "resina", "cera"], ["Broche", 1, 2, "Bronce", "cera", null], ["Gemelo", 1, 2, "Bronce", null, "resina gris"]);

        reading.Night.Pieces.Select(p => p.Material).ShouldBe(["resina", "cera", null]);
        reading.Findings.Single(f => f.Id == "names-read-as-material").Seen.ShouldBe("\"Modelo en\" was read as the pattern's material, because names stand under it.");
    }

    [Theory]
    [InlineData("resin", "done")]
    [InlineData("castable resin, wash it twice and cure", "wax")]
    [InlineData("supports", "wax")]
    [InlineData("wax", "wax")]
    public void Read_WaxOrResinInSomeCellsOrAmongOtherWords_IsNoMaterial(string one, string other) =>
        Read(["Piece", "Qty", "Weight (g)", "Alloy", "State of it"], ["Band", 1, 2, "Bronze", one], ["Pin", 1, 2, "Bronze", other]).Night.Pieces
            .ShouldAllBe(p => p.Material == null);

    // Resin read as the wax of the weight's heading would be burnt out too short.
    [Theory]
    [InlineData("Wax wt (dwt)", "made of", "resin")]
    [InlineData("Wachs (g)", "gemacht aus", "Gießharz")]
    [InlineData("Wachs (g)", "Modell aus", "Gießharz")]
    public void Read_WhatAPieceIsMadeOf_IsTheMaterial(string weight, string heading, string material) =>
        Read(["Piece", "Qty", weight, "Alloy", heading], ["Band", 1, 2, "Bronze", material]).Night.Pieces[0].Material.ShouldBe(material);

    // A tick says that the wax is made, digits name a model, and a column Material has the last word.
    [Theory]
    [InlineData("Wax", "x")]
    [InlineData("Wax", "fertig")]
    [InlineData("Made", "Jo")]
    [InlineData("made of", "yes")]
    [InlineData("Wax", "W-104")]
    [InlineData("Wax", 3.2)]
    public void Read_OtherThingsUnderWax_AreNoMaterial(string heading, object cell) =>
        One([.. Usual, heading], ["Band", 1, 2, "Bronze", cell]).Piece.Material.ShouldBeNull();

    [Fact]
    public void Read_NamesUnderWaxBesideMaterial_AreNotRead() =>
        One([.. Usual, "Material", "Wax"], ["Band", 1, 2, "Bronze", "wax", "Quarry green"]).Piece.Material.ShouldBe("wax");

    // All baths together are the wash; the longest of them counts for itself.
    [Theory]
    [InlineData("Washed (min)", "1.5 + 1.25", 2.75, 1.5)]
    [InlineData("Washed (min)", "2 × 1.5", 3.0, 1.5)]
    [InlineData("Washed", "2x90 s", 3.0, 1.5)]
    [InlineData("Washed (s)", "90+60", 2.5, 1.5)]
    [InlineData("Washed (min)", "3 min", 3.0, null)]
    public void Read_BathsOfTheWash_AreAddedUp(string heading, string cell, double washed, double? longest)
    {
        var piece = One([.. Usual, heading], ["Band", 1, 2, "Bronze", cell]).Piece;

        piece.Print!.Washed!.Value.Minutes.ShouldBe(washed, 1e-9);
        piece.Print.LongestBath.ShouldBe(longest is { } bath ? Duration.FromMinutes(bath) : null);
    }

    [Theory]
    [InlineData("1.5 + a while")]
    [InlineData("1.5 + 2 mm")]
    [InlineData("a + b")]
    public void Read_BathsThatAreNone_AreNotRead(string cell)
    {
        var piece = One([.. Usual, "Washed (min)"], ["Band", 1, 2, "Bronze", cell]).Piece;

        piece.Print.ShouldBeNull();
        piece.Unreadable.ShouldBe([PieceField.Washed]);
    }

    [Fact]
    public void Read_UnitsOfTheHeading_AreConverted()
    {
        var piece = One(["Piece", "Qty", "Pattern weight (dwt)", "Length (in)", "Width (cm)", "Printed at (°F)"], ["Cuff", 1, 10, 2, 1.5, 86]).Piece;

        piece.Weight!.Value.Grams.ShouldBe(15.5517384, 1e-9);
        piece.Box!.Value.Length.Millimeters.ShouldBe(50.8, 1e-9);
        piece.Box!.Value.Width.Millimeters.ShouldBe(15);
        piece.Print!.PrintedAt!.Value.DegreesCelsius.ShouldBe(30, 1e-9);
    }

    [Fact]
    public void Read_UnitRowBelowTheHeadings_CountsAsTheirUnits()
    {
        var reading = Read(["Piece", "Qty", "Pattern weight", "Length", "Width", "Alloy"], [null, null, "dwt", "in", "in"], ["Cuff", 1, 10, 2, 1, "Bronze"]);

        var piece = reading.Night.Pieces.ShouldHaveSingleItem();
        piece.Weight!.Value.Grams.ShouldBe(15.5517384, 1e-9);
        piece.Box!.Value.Length.Millimeters.ShouldBe(50.8, 1e-9);
        reading.Findings.ShouldAllBe(f => f.Id == "assumed-default");
    }

    [Theory]
    [InlineData("12.4 g", 12.4)]
    [InlineData("0.5 ozt", 15.5517384)]
    [InlineData("250mg", 0.25)]
    public void Read_UnitInTheCell_IsConverted(string typed, double grams) =>
        One(Usual, ["Pin", 1, typed, "Bronze"]).Piece.Weight!.Value.Grams.ShouldBe(grams, 1e-9);

    [Theory]
    [InlineData("12O.5", "weight-not-a-number", "\"12O.5\" is not a number: it has a letter O where a zero belongs.")]
    [InlineData("1l.5", "weight-not-a-number", "\"1l.5\" is not a number: it has a letter l where a one belongs.")]
    [InlineData("12 x 14", "weight-not-a-number", "\"12 x 14\" is not a number: it holds more than one number.")]
    [InlineData("=1.1*2", "weight-not-a-number", "\"=1.1*2\" is not a number: it is a formula typed as text.")]
    [InlineData("1,234", "number-undecided", "\"1,234\" under Pattern weight (g) can be read as two numbers: the sign in it may mark thousands or decimals.")]
    [InlineData("ca. 12", "number-not-exact", "\"ca. 12\" is an estimate, and what it comes to is not guessed.")]
    [InlineData("12-14", "number-not-exact", "\"12-14\" is a range, and what it comes to is not guessed.")]
    [InlineData("12 mm", "unit-wrong", "\"12 mm\" has a unit that does not measure the weight.")]
    [InlineData("12 gr", "unit-in-cell-ambiguous", "\"12 gr\" has the unit gr, which some read as grams and others as grains.")]
    [InlineData(-3.5, "value-below-zero", "The weight is -3.5, which is less than nothing.")]
    [InlineData(0, "value-zero", "The weight is zero.")]
    [InlineData(6200, "value-absurd", "The weight is 6200; more than 5,000 g is taken for a slip of the pen.")]
    public void Read_WeightThatCannotBe_IsAStopOnItsCell(object typed, string id, string seen)
    {
        var (piece, reading) = One(Usual, ["Pin", 2, typed, "Bronze"]);

        piece.Weight.ShouldBeNull();
        piece.Unreadable.ShouldBe([PieceField.PatternMass]);
        var finding = reading.Findings.Where(f => f.Severity == Severity.Stop).ShouldHaveSingleItem();
        (finding.Id, finding.Seen).ShouldBe((id, seen));
        reading.Cells.Find(finding.Subjects[0])!.Value.ToString().ShouldBe("Pieces!C2");
    }

    [Fact]
    public void Read_Estimate_SaysHowToTypeOneNumber() =>
        One(Usual, ["Pin", 2, "ca. 12", "Bronze"]).Reading.Findings.Single(f => f.Severity == Severity.Stop).Remedy.ShouldBe("Type the weight as one number, such as 12.");

    [Theory]
    [InlineData(2.5, "quantity-not-whole", "The quantity is 2.5, but pieces are cast whole.")]
    [InlineData(-1, "value-below-zero", "The quantity is -1, which is less than nothing.")]
    [InlineData(0, "value-zero", "The quantity is zero.")]
    [InlineData(20000, "value-absurd", "The quantity is 20000; more than 10,000 pieces is taken for a slip of the pen.")]
    [InlineData("six", "quantity-not-a-number", "\"six\" is not a number.")]
    public void Read_QuantityThatCannotBe_IsAStop(object typed, string id, string seen)
    {
        var (piece, reading) = One(Usual, ["Pin", typed, 1.5, "Bronze"]);

        piece.Quantity.ShouldBeNull();
        piece.Unreadable.ShouldBe([PieceField.Quantity]);
        var finding = reading.Findings.ShouldHaveSingleItem();
        (finding.Id, finding.Seen, finding.Severity).ShouldBe((id, seen, Severity.Stop));
    }

    // A program turned "1-2" into a date; as a number it would be 46,024 pieces.
    [Fact]
    public void Read_DateInANumberColumn_IsNoNumber()
    {
        var (piece, reading) = One(Usual, ["Pin", new DateOnly(2026, 1, 2), 1.5, "Bronze"]);

        piece.Quantity.ShouldBeNull();
        Said(reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "number-became-date: The quantity shows the date 2026-01-02. Spreadsheet programs make dates of entries such as 9.10, 1-2 or 7/8. "
            + "This row is left out until it is mended. Set the cell's format to a number, then type the quantity again.");
    }

    [Fact]
    public void Read_ErrorInAnInputCell_IsAStop()
    {
        var (piece, reading) = One(Usual, ["Pin", 2, Cell.Fault("#N/A", "VLOOKUP(A2,X:Y,2)"), "Bronze"]);

        piece.Unreadable.ShouldBe([PieceField.PatternMass]);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe("The weight shows #N/A.");
    }

    [Fact]
    public void Read_FormulaWithItsValue_IsRead() =>
        One(Usual, ["Pin", Cell.Computed("1+1", 2), Cell.Computed("B2*2", 4.5), Cell.Computed("\"Br\"&\"onze\"", "Bronze")]).Piece.Weight!.Value.Grams.ShouldBe(4.5);

    [Fact]
    public void Read_FormulaWithoutValue_IsAStop()
    {
        var (piece, reading) = One(Usual, ["Pin", 2, Cell.Computed("C9*2", null), "Bronze"]);

        piece.Unreadable.ShouldBe([PieceField.PatternMass]);
        reading.Findings.ShouldHaveSingleItem().Id.ShouldBe("formula-without-value");
    }

    [Theory]
    [InlineData("-")]
    [InlineData("–")]
    [InlineData("n/a")]
    [InlineData("k.A.")]
    [InlineData("?")]
    [InlineData("tbd")]
    [InlineData("\u00A0")]
    [InlineData("  ")]
    public void Read_CellThatSaysNothing_IsMissingWithoutAFinding(string typed)
    {
        var (piece, reading) = One(Usual, ["Pin", 2, 1.5, typed]);

        piece.Alloy.ShouldBeNull();
        reading.Findings.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("yes", true)]
    [InlineData("X", true)]
    [InlineData("ja", true)]
    [InlineData("oui", true)]
    [InlineData("sí", true)]
    [InlineData("Sim", true)]
    [InlineData("não", false)]
    [InlineData("non", false)]
    [InlineData(1, true)]
    [InlineData(true, true)]
    [InlineData("no", false)]
    [InlineData(false, false)]
    [InlineData(null, false)]
    public void Read_YesOrNo_IsUnderstood(object? typed, bool expected) =>
        One([.. Usual, "Stones in"], ["Pin", 2, 1.5, "Bronze", typed]).Piece.StonesIn.ShouldBe(expected);

    // To take an unclear answer for a no would let someone quench a flask with stones in it.
    [Theory]
    [InlineData("two rubies")]
    [InlineData("?")]
    [InlineData("tbc")]
    [InlineData("unbekannt")]
    public void Read_UnclearStones_IsAStop(string typed)
    {
        var (piece, reading) = One([.. Usual, "Stones in"], ["Pin", 2, 1.5, "Bronze", typed]);

        piece.Unreadable.ShouldBe([PieceField.StonesIn]);
        var finding = reading.Findings.ShouldHaveSingleItem();
        finding.Severity.ShouldBe(Severity.Stop);
        finding.Seen.ShouldBe($"\"{typed}\" under Stones in does not say whether stones are in the pattern.");
    }

    [Fact]
    public void Read_UnclearLeaveOut_CountsAsNoAndIsChecked()
    {
        var (piece, reading) = One([.. Usual, "Leave out"], ["Pin", 2, 1.5, "Bronze", "perhaps"]);

        piece.LeaveOut.ShouldBeFalse();
        var finding = reading.Findings.ShouldHaveSingleItem();
        (finding.Severity, finding.Seen).ShouldBe((Severity.Check, "\"perhaps\" under Leave out was not understood and counts as no."));
    }

    [Fact]
    public void Read_DateOf1904_IsTheDayItShows()
    {
        // 2026-03-02 is serial 44,621 in the system that counts from 1904; read in the other one it would be 2022.
        using var book = new BookBuilder().Date1904().Sheet("Pieces", s => s
            .Row("Piece", "Qty", "Pattern weight (g)", "Due")
            .Row("Pin", 1, 2.5, new Cell(44621, BookBuilder.Style.Date))).Build();

        var reading = TestBooks.Read(book);

        reading.Night.Pieces[0].Due.ShouldBe(new DateOnly(2026, 3, 2));
    }

    [Fact]
    public void Read_PerTreeNumber_MeansAnySize() =>
        One([.. Usual, "Per tree"], ["Pin", 2, 1.5, "Bronze", 12]).Piece.PerTree![""].ShouldBe(12);

    [Fact]
    public void Read_PerTreeWords_AreAStop() =>
        One([.. Usual, "Per tree"], ["Pin", 2, 1.5, "Bronze", "a dozen"]).Reading.Findings.ShouldHaveSingleItem().Id.ShouldBe("per-tree-unreadable");

    [Theory]
    [InlineData("A", new[] { "A:6" })]
    [InlineData("A ×4, B ×2", new[] { "A:4", "B:2" })]
    [InlineData("see Night plan", new string[0])]
    [InlineData("", new string[0])]
    public void Read_OurFlaskColumn_GivesTheLastPlan(string typed, string[] expected)
    {
        using var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row([.. Usual, "Flask"]).Row("Pin", 6, 1.5, "Bronze", typed))
            .Name(OwnName.Flask, "Pieces!$E$1").Build();

        var shares = TestBooks.Read(book).Night.Pieces[0].LastFlasks;

        shares.Select(s => $"{s.Flask}:{s.Quantity}").ShouldBe(expected);
    }

    [Fact]
    public void Read_WeightOfUnclearMeaning_IsLeftToTheShop()
    {
        Read(["Piece", "Qty", "Weight (g)"], ["Pin", 1, 2]).Night.WeightsAreOf.ShouldBe(WeightMeaning.Unknown);
        Read(["Piece", "Qty", "Cast weight (g)"], ["Pin", 1, 2]).Night.WeightsAreOf.ShouldBe(WeightMeaning.FinishedMetal);
    }

    [Fact]
    public void Read_UnderADifferentCulture_GivesTheSame()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            var commas = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
            commas.NumberFormat.NumberDecimalSeparator = ",";
            commas.NumberFormat.NumberGroupSeparator = ".";
            Thread.CurrentThread.CurrentCulture = commas;

            One(Usual, ["Pin", 2, "1.5", "Bronze"]).Piece.Weight!.Value.Grams.ShouldBe(1.5);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Fact]
    public void Read_NoRows_IsRefused() =>
        Should.Throw<BookRefusedException>(() => Read(Usual)).Message.ShouldContain("has headings in row 1 but no pieces under them");

    [Fact]
    public void Read_NoHeadings_IsRefusedWithTheNearestRow()
    {
        var refusal = Should.Throw<BookRefusedException>(() => Read(["Date", "Customer", "Amount due"], ["1", "2", "3"]));

        refusal.Finding.Id.ShouldBe("list-headings-unknown");
        refusal.Finding.Seen.ShouldBe("No list of pieces was found. The nearest is row 1 of sheet Pieces, which says: Date, Customer, Amount due.");
    }

    [Fact]
    public void Read_TwoWeightColumns_IsAStopThatNamesBoth()
    {
        var reading = Read(["Piece", "Qty", "Pattern weight (g)", "Pattern weight (oz)", "Alloy"], ["Pin", 1, 2, 3, "Bronze"]);

        var finding = reading.Findings.ShouldHaveSingleItem();
        Said(finding).ShouldBe(
            "heading-ambiguous: Column C \"Pattern weight (g)\" and column D \"Pattern weight (oz)\" may both be the weight. "
            + "Which of the two counts cannot be told, so neither was read. "
            + "Rename the one that is not meant, or write \"columns\": { \"patternMass\": [\"Pattern weight (g)\"] } into castbook.json, with the heading that is meant.");
        reading.Night.Pieces[0].Weight.ShouldBeNull();
        reading.Night.Pieces[0].Unreadable.ShouldBe([PieceField.PatternMass]);
        reading.Cells.Find(finding.Subjects[0])!.Value.ToString().ShouldBe("Pieces!C1");
    }

    [Fact]
    public void Read_GrainOrGramHeading_IsNotRead()
    {
        var reading = Read(["Piece", "Qty", "Pattern weight (gr)", "Alloy"], ["Pin", 1, 2, "Bronze"]);

        reading.Findings.ShouldHaveSingleItem().Id.ShouldBe("unit-ambiguous");
        reading.Night.Pieces[0].Weight.ShouldBeNull();
        reading.Night.Pieces[0].Unreadable.ShouldBe([PieceField.PatternMass]);
    }

    private static string Said(Finding finding) => $"{finding.Id}: {string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(t => t.Length > 0))}";

    private static (Piece Piece, BookReading Reading) One(object?[] headings, object?[] row)
    {
        var reading = Read(headings, row);
        return (reading.Night.Pieces.ShouldHaveSingleItem(), reading);
    }

    private static BookReading Read(params object?[][] rows) => TestBooks.Read(BookBuilder.Pieces(rows));
}
