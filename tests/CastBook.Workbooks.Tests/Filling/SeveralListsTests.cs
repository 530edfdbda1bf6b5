using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Fidelity;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A book with a list of pieces on each of two sheets, both filled as one night.</summary>
public sealed class SeveralListsTests
{
    private const string First = "Harbour list";
    private const string Second = "Quarry list";

    private static readonly string[] OurHeadings = ["Metal each (g)", "Metal (g)", "Flask", "Mix", "Burnout (h)", "Checks"];

    [Fact]
    public void Fill_BothNamed_AreOneNight()
    {
        var book = Nights.TwoListsBuilder().Build().ToArray();

        var filled = From(book);

        filled.Row(First, 4).Skip(10).ShouldBe(OurHeadings);
        filled.Row(Second, 1).Skip(8).ShouldBe(OurHeadings);
        // By hand: 3.45 g / 1.15 g/cm³ = 3 cm³; × 10.36 g/cm³ = 31.08 g; four of them 124.32 g.
        (filled[Second, "I2"], filled[Second, "J2"]).ShouldBe((31.08, 124.32));
        filled[First, "K5"].ShouldBe(20.72);
        filled.Plan.Flasks.Sum(f => f.Pieces.Sum(p => p.Quantity)).ShouldBe(6 + 12 + 2 + 4 + 8);
        filled.Plan.Flasks.ShouldContain(f => f.Pieces.Any(p => p.PieceId < 3) && f.Pieces.Any(p => p.PieceId >= 3));
        filled[Second, "K2"].ShouldBeOfType<string>().ShouldStartWith("A");
        BookDiff.Of(book, filled.Bytes).Losses.ShouldBeEmpty();
        Validator.NewMessages(book, filled.Bytes).ShouldBeEmpty();
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_SecondListATable_IsWidened()
    {
        var book = Nights.TwoListsBuilder(s => s.Table("A1:H3", ["Alloy", "Qty", "Piece", "Pattern weight (g)", "Material", "Length (mm)", "Width (mm)", "Thickness (mm)"])).Build().ToArray();

        var filled = From(book);

        filled.Part("xl/tables/table10.xml").ShouldContain("ref=\"A1:N3\"");
        BookDiff.Of(book, filled.Bytes).Losses.ShouldBeEmpty();
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_ShopSheetSaysAll_IsTheSameAsNamingThem()
    {
        var book = Nights.TwoListsBuilder().Build().ToArray();
        var named = From(book);

        var all = Filled.From(Typed.Into(book, ("Shop", "A21", "Sheets to fill"), ("Shop", "B21", "all")));

        foreach (var row in new[] { 1, 2, 3 })
        {
            all.Row(Second, row).ShouldBe(named.Row(Second, row));
        }

        all.Ids.ShouldBe(named.Ids);
    }

    [Fact]
    public void Fill_FaultInTheSecondList_IsSaidAndMarkedThere()
    {
        var filled = From(Typed.Into(Nights.TwoListsBuilder().Build().ToArray(), (Second, "D3", "0.4b")));

        var at = Enumerable.Range(0, filled.Result.Findings.Count).Single(i => filled.Result.Findings[i].Id == "weight-not-a-number");
        filled.Result.Places[at].Text.ShouldBe("'Quarry list'!D3 Gull stud");
        filled[Second, "N3"].ShouldBe("stop: weight. \"0.4b\" is not a number.");
        Marks.Of(filled, Second).ShouldContain(m => m.StartsWith("D2:D3 (N(\"castbook:stop\")=0)*ISNUMBER(SEARCH(\"stop: weight.\",$N2))", StringComparison.Ordinal));
        Marks.Of(filled, Second).ShouldContain(m => m.StartsWith("D3 CastBook stop: \"0.4b\" is not a number", StringComparison.Ordinal));
        Marks.Of(filled, First).Where(m => m.Contains("0.4b", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void Fill_SameQuestionInBothLists_NamesTheRowsOfEach()
    {
        var filled = From(Typed.Into(Nights.TwoListsBuilder().Build().ToArray(), (First, "F6", "mystery"), (First, "F7", "mystery"), (Second, "A2", "mystery")));

        var at = Enumerable.Range(0, filled.Result.Findings.Count).Single(i => filled.Result.Findings[i].Id == "alloy-unknown");
        filled.Result.Places[at].Text.ShouldBe("'Harbour list'!F6 Gull stud and row 7 and row 2 of Quarry list");
    }

    [Fact]
    public void Fill_SomethingToSayOfAColumn_LeadsToTheHeadingOfItsOwnSheet()
    {
        var filled = From(Typed.Into(Nights.TwoListsBuilder().Build().ToArray(), (Second, "D2", "3,45"), (Second, "D3", "0,46")));

        var at = Enumerable.Range(0, filled.Result.Findings.Count).Single(i => filled.Result.Findings[i].Id == "decimal-comma");
        filled.Result.Places[at].Text.ShouldBe("'Quarry list'!D1");
        filled[Second, "I2"].ShouldBe(31.08);
    }

    [Fact]
    public void Fill_MetalTypedInTheSecondList_IsUsedAndKept()
    {
        var typed = From(Nights.TwoListsBuilder().Build().ToArray()).AfterTyping((Second, "I2", 30.5));

        (typed[Second, "I2"], typed[Second, "J2"], typed[First, "K5"]).ShouldBe((30.5, 122.0, 20.72));
        typed.Result.Findings.Single(f => f.Id == "typed-metal-used").Seen
            .ShouldBe("Somebody typed 30.5 g under Metal each (g); CastBook works out 31.08 g.");
        typed.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_RowMovedToTheOtherList_ItsValuesAreKnownAsOurs()
    {
        var filled = From(Nights.TwoListsBuilder().Build().ToArray());

        // The bell clapper of the first list, cut there and pasted below the second, with all that we wrote beside it.
        var moved = filled.AfterTyping(
            (First, "B7", null), (First, "C7", null), (First, "D7", null), (First, "E7", null), (First, "F7", null),
            (First, "K7", null), (First, "L7", null), (First, "M7", null), (First, "N7", null), (First, "O7", null), (First, "P7", null),
            (Second, "A4", "house sterling"), (Second, "B4", 2), (Second, "C4", "Bell clapper"), (Second, "D4", 5.75), (Second, "E4", "harbour resin"),
            (Second, "I4", filled[First, "K7"]), (Second, "J4", filled[First, "L7"]), (Second, "K4", filled[First, "M7"]), (Second, "L4", filled[First, "N7"]));

        moved.Ids.ShouldNotContain("typed-value-kept");
        moved.Ids.ShouldNotContain("typed-metal-used");
        moved.Ids.ShouldNotContain("values-replaced");
        moved[Second, "I4"].ShouldBe(51.8);
    }

    [Fact]
    public void Fill_NamedInAnotherOrder_KeepsTheColumnsOfEach()
    {
        var filled = From(Nights.TwoListsBuilder().Build().ToArray());

        var turned = Filled.From(filled.Bytes, settings: new BookSettings { Sheets = [Second, First] });

        turned.Row(First, 4).ShouldBe(filled.Row(First, 4));
        turned.Row(Second, 1).ShouldBe(filled.Row(Second, 1));
        turned[Second, "I2"].ShouldBe(31.08);
        turned.Ids.ShouldNotContain("values-replaced");
        turned.Result.Pieces[0].ShouldBe((Second, 2));
        turned.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_OneListThenTheOther_NeitherTakesItsColumnsFromTheOther()
    {
        var only = (string sheet) => new BookSettings { Sheets = [sheet] };
        var first = Filled.From(Nights.TwoListsBuilder().Build(), settings: only(First));
        var second = Filled.From(first.Bytes, settings: only(Second));

        var back = Filled.From(second.Bytes, settings: only(First));

        NamesOf(back).ShouldBe(["CastBook_Flask Harbour list", "CastBook_Flask_2 Quarry list"]);
        back.Row(First, 4).Skip(10).ShouldBe(OurHeadings);
        back.Row(Second, 1).Skip(8).ShouldBe(OurHeadings);
        back.Ids.ShouldNotContain("typed-value-kept");
        back.Ids.ShouldNotContain("values-replaced");
        Filled.From(back.Bytes, settings: only(Second)).Ids.ShouldNotContain("typed-value-kept");
    }

    [Fact]
    public void Fill_SheetDeletedAndANewOneInItsPlace_TheNewOneIsFilled()
    {
        var filled = From(Nights.TwoListsBuilder().Build().ToArray());
        var sheet = Filled.Text(Nights.TwoListsBuilder().Build().ToArray(), Second);
        var names = Planted.In(filled.Bytes, "xl/workbook.xml", xml => Text(xml, t => t
            .Replace("'Quarry list'!$I$1", "#REF!", StringComparison.Ordinal).Replace("'Quarry list'!$J$1", "#REF!", StringComparison.Ordinal)
            .Replace("'Quarry list'!$K$1", "#REF!", StringComparison.Ordinal).Replace("'Quarry list'!$L$1", "#REF!", StringComparison.Ordinal)
            .Replace("'Quarry list'!$M$1", "#REF!", StringComparison.Ordinal).Replace("'Quarry list'!$N$1", "#REF!", StringComparison.Ordinal)));
        var anew = Planted.In(names, "xl/worksheets/sheet10.xml", _ => System.Text.Encoding.UTF8.GetBytes(sheet));

        var again = From(anew);

        again.Row(Second, 1).Skip(8).ShouldBe(OurHeadings);
        NamesOf(again).ShouldBe(["CastBook_Flask Harbour list", "CastBook_Flask_3 Quarry list"]);
        again.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_SheetCopiedByAnOfficeProgramAndTheOldOneDeleted_ColumnsAreKnownByTheNamesOfTheCopy()
    {
        var filled = Filled.From(Nights.Whole());
        // An office program gives the copy names of its own, and leaves those of the sheet that is gone without a cell.
        var copied = Planted.In(filled.Bytes, "xl/workbook.xml", xml => Text(xml, t => string.Concat(t.Split("<definedName ").Select((part, i) =>
            i == 0 ? part
            : !part.Contains("'Harbour list'!", StringComparison.Ordinal) || !part.StartsWith("name=\"CastBook_", StringComparison.Ordinal) ? "<definedName " + part
            : "<definedName localSheetId=\"0\" " + part + "<definedName " + part[..(part.IndexOf('>', StringComparison.Ordinal) + 1)] + "#REF!</definedName>"))));

        var again = Filled.From(copied);

        again.Row(First, 4).ShouldBe(filled.Row(First, 4));
        again[First, "K5"].ShouldBe(20.72);
        again.Ids.ShouldBe(filled.Ids);
        again.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_OneOfTheNamedSheetsIsNotThere_SaysSoAndFillsTheOther()
    {
        var filled = Filled.From(Nights.TwoListsBuilder().Build(), settings: new BookSettings { Sheets = [Second, "Quary list"] });

        filled[Second, "I2"].ShouldBe(31.08);
        var finding = filled.Result.Findings.Single(f => f.Id == "list-sheet-missing-among-several");
        (finding.Severity, finding.Seen).ShouldBe((Severity.Stop, "The workbook has no sheet called Quary list with a list of pieces, which castbook.json wants filled."));
        (finding.Why, finding.Remedy).ShouldBe(("The pieces that should stand on it are in no flask of this plan.", "Mend the name in castbook.json, or take it out."));
    }

    [Fact]
    public void Fill_OneOfTheNamedSheetsHasNoList_SaysSoAtTheSetting()
    {
        var book = Typed.Into(
            Nights.TwoListsBuilder().Sheet("Prices", s => s.Row("Thing", "Price").Row("Box", 3)).Build().ToArray(),
            ("Shop", "A21", "Sheets to fill"), ("Shop", "B21", "Quarry list; Prices"));

        var filled = Filled.From(book);

        filled[Second, "I2"].ShouldBe(31.08);
        var at = Enumerable.Range(0, filled.Result.Findings.Count).Single(i => filled.Result.Findings[i].Id == "list-not-on-sheet");
        filled.Result.Findings[at].Seen.ShouldBe("No list of pieces was found on Prices, which the Shop sheet wants filled.");
        filled.Result.Findings[at].Why.ShouldBe("Its pieces are in no flask of this plan.");
        filled.Result.Findings[at].Remedy.ShouldBe(
            "Give the list a row of headings within its first 30 rows: Piece, Qty, Pattern weight (g), Alloy; or take the sheet's name out of the Shop sheet.");
        filled.Result.Places[at].Text.ShouldBe("Shop!B21 Sheets to fill");
    }

    [Fact]
    public void Fill_OneOfSeveralListsIsEmpty_IsANote()
    {
        var book = Nights.TwoListsBuilder().Sheet("May", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy")).Build();

        var filled = Filled.From(book, settings: new BookSettings { Sheets = ["all"] });

        filled[Second, "I2"].ShouldBe(31.08);
        var finding = filled.Result.Findings.Single(f => f.Id == "list-empty-among-several");
        (finding.Severity, finding.Seen).ShouldBe((Severity.Note, "The list on sheet May has headings in row 1 but no pieces under them."));
    }

    [Fact]
    public void Fill_AllListsEmpty_IsRefused()
    {
        using var book = new BookBuilder()
            .Sheet("May", s => s.Row("Piece", "Qty", "Weight (g)")).Sheet("June", s => s.Row().Row("Piece", "Qty", "Weight (g)")).Build();

        Should.Throw<BookRefusedException>(() => Filled.From(book, settings: new BookSettings { Sheets = ["all"] })).Finding.Seen
            .ShouldBe("The list on sheet May has headings in row 1 but no pieces under them.");
    }

    // 15/12 can be read in one way only, and people do not change theirs from sheet to sheet.
    [Fact]
    public void Fill_DaysOfOneListSettleThoseOfAnother()
    {
        using var book = new BookBuilder()
            .Sheet("Prints", s => s.Row("Piece", "Qty", "Resin weight (g)", "Alloy", "Due").Row("Otter signet", 1, 2.3, "fine silver", "05/12/2026"))
            .Sheet("Waxes", s => s.Row("Piece", "Qty", "Wax weight (g)", "Alloy", "Due").Row("Gull stud", 1, 1.1, "fine silver", "15/12/2026")).Build();

        var filled = Filled.From(book, settings: new BookSettings { Sheets = ["all"] });

        filled.Result.Night.Pieces.Select(p => p.Due).ShouldBe([new DateOnly(2026, 12, 5), new DateOnly(2026, 12, 15)]);
        filled.Ids.ShouldNotContain("day-undecided");
    }

    [Fact]
    public void Fill_HeadingsDifferInWhatIsWeighed_EachListGoesByItsOwn()
    {
        using var book = new BookBuilder()
            .Sheet("New", s => s.Row("Piece", "Qty", "Resin weight (g)", "Material", "Alloy").Row("Otter signet", 1, 2.3, "harbour resin", "house sterling"))
            .Sheet("Repeats", s => s.Row("Piece", "Qty", "Finished weight (g)", "Material", "Alloy").Row("Gull stud", 1, 4.14, "harbour resin", "house sterling"))
            .Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)").Row("house sterling", 10.36))
            .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("harbour resin", "resin", 1.15)).Build();

        var filled = Filled.From(book, settings: new BookSettings { Sheets = ["all"] });

        // By hand: 2.3 g / 1.15 g/cm³ × 10.36 g/cm³ = 20.72 g of the pattern; finished metal is what it weighs.
        (filled["New", "F2"], filled["Repeats", "F2"]).ShouldBe((20.72, 4.14));
        filled.Ids.ShouldNotContain("weight-meaning-unknown");
    }

    [Fact]
    public void Fill_NoRoomBesideEitherList_BothStandOnTheComputedSheet()
    {
        var crowded = Typed.Into(Nights.TwoListsBuilder().Build().ToArray(), (First, "M4", "price list"), (Second, "K1", "price list"));

        var filled = From(crowded);

        filled["Computed", "A1"].ShouldBe("Computed values of the lists on Harbour list and Quarry list");
        filled.Row("Computed", 3).ShouldBe(["Row", "Piece", "Sheet", .. OurHeadings]);
        filled.Row("Computed", 4).Take(4).ShouldBe(["5", "Otter signet", First, "20.72"]);
        filled.Row("Computed", 7).Take(4).ShouldBe(["2", "Slate fob", Second, "31.08"]);
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    // Both lists have a gull stud, so that name and row alone would not tell which one hangs on the tree that is built.
    [Fact]
    public void Fill_FlaskWaxedWithoutRoom_PiecesOfBothListsAreKnown()
    {
        var crowded = Typed.Into(Nights.TwoListsBuilder().Build().ToArray(), (First, "M4", "price list"), (Second, "K1", "price list"));
        var first = From(crowded);

        var at = first.Plan.Flasks.ToList().FindIndex(f => f.Pieces.Any(p => p.PieceId == 4));

        var waxed = first.AfterTyping(("Trees", $"H{5 + at}", "waxed"));

        waxed.Plan.Flasks[at].State.ShouldBe(CastBook.Planning.FlaskState.Waxed);
        waxed.Plan.Flasks[at].Pieces.ShouldBe(first.Plan.Flasks[at].Pieces, ignoreOrder: true);
        waxed.Ids.ShouldNotContain("flask-without-pieces");
    }

    private static Filled From(byte[] book) => Filled.From(book, settings: Nights.BothLists);

    private static byte[] Text(byte[] part, Func<string, string> change) => System.Text.Encoding.UTF8.GetBytes(change(System.Text.Encoding.UTF8.GetString(part)));

    private static IEnumerable<string> NamesOf(Filled filled)
    {
        using var package = BookPackage.Open(new MemoryStream(filled.Bytes));
        return [.. package.DefinedNames.Where(n => n.Name.StartsWith(OwnName.Flask, StringComparison.Ordinal) && !OwnMarks.IsSheet(n.Name))
            .Select(n => (n.Name, Is: n.TryCell(out var cell), cell.Sheet)).Where(n => n.Is).Select(n => $"{n.Name} {n.Sheet}").Order(StringComparer.Ordinal)];
    }
}
