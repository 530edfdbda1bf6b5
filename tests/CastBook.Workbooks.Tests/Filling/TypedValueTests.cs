namespace CastBook.Workbooks.Tests.Filling;

/// <summary>What a person types into a column of ours.</summary>
public sealed class TypedValueTests
{
    // Heavier pieces than the list makes want two flasks; what was planned stays as it stands.
    [Theory]
    [InlineData(31.1)]
    [InlineData(40)]
    [InlineData(55.5)]
    public void Fill_MetalTypedThatWantsMoreFlasks_FillingAgainChangesNothing(double grams)
    {
        var typed = Filled.From(Nights.Whole()).AfterTyping(("Harbour list", "K5", grams));

        typed.Again().Result.Changed.ShouldBeFalse();
        typed.Again().Bytes.ShouldBe(typed.Bytes);
    }

    private const string List = "Harbour list";

    [Fact]
    public void Fill_TypedMetal_IsKeptAndSaid()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K5", 25.5));

        filled[List, "K5"].ShouldBe(25.5);
        var finding = filled.Result.Findings.Single(f => f.Id == "typed-metal-used");
        finding.Seen.ShouldBe("Somebody typed 25.5 g under Metal each (g); CastBook works out 20.72 g.");
        finding.Why.ShouldBe("The typed value is used: the metal of the row, its flask and the melt go by it.");
        filled[List, "P5"].ShouldBeOfType<string>().ShouldContain("check: metal each.");
        filled.Again()[List, "K5"].ShouldBe(25.5);
    }

    // Six signets at 25.5 g instead of 20.72 g.
    [Fact]
    public void Fill_TypedMetal_TheRowItsFlaskAndTheMeltGoByIt()
    {
        var before = Filled.From(Nights.Whole());

        var filled = before.AfterTyping((List, "K5", 25.5));

        filled[List, "L5"].ShouldBe(153.0);
        Grams(filled).ShouldBe(Grams(before) + (6 * (25.5 - 20.72)), 0.01);
        filled.Again().Result.Changed.ShouldBeFalse();
        filled.AfterTyping((List, "K5", null))[List, "L5"].ShouldBe(124.32);
    }

    // Three lines of signets weighed at 20.1 g each where 20.72 g was reckoned: 97.0 % of it, in every other line of that resin and sterling.
    [Fact]
    public void Fill_LearnFromCastings_TypedMetalTeachesTheOtherLines()
    {
        var book = Typed.Into(
            Nights.WholeBuilder(s => s
                .Row("Tarn", "Heron signet", 1, 2.3, "harbour resin", "house sterling", 24, 12, 6, null)
                .Row("Tarn", "Rook signet", 1, 2.3, "harbour resin", "house sterling", 24, 12, 6, null)).Build().ToArray(),
            ("Shop", "A21", "Learn from castings"), ("Shop", "B21", "yes"));

        var filled = Filled.From(book).AfterTyping((List, "K5", 20.1), (List, "K8", 20.1), (List, "K9", 20.1));

        // 0.46 ÷ 1.15 × 10.36 × 20.1 ÷ 20.72 = 4.02.
        filled[List, "K6"].ShouldBe(4.02);
        filled.Ids.ShouldContain("castings-taught");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_TypedMetalWithoutAWeight_TheWeightIsNotAskedFor()
    {
        var book = Typed.Into(Nights.WholeBuilder().Build().ToArray(), (List, "D5", null));
        var before = Filled.From(book);
        before.Ids.ShouldContain("weight-missing");

        var filled = before.AfterTyping((List, "K5", 25.5));

        filled.Ids.ShouldNotContain("weight-missing");
        filled[List, "L5"].ShouldBe(153.0);
        filled.Result.Findings.Single(f => f.Id == "typed-metal-used").Seen.ShouldEndWith("CastBook works out nothing.");
    }

    [Fact]
    public void Fill_WordTypedForMetal_IsKeptButCannotBeUsed()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K5", "ask Tarn"));

        filled[List, "K5"].ShouldBe("ask Tarn");
        filled[List, "L5"].ShouldBe(124.32);
        filled.Result.Findings.Single(f => f.Id == "typed-value-kept").Seen.ShouldBe(
            "Somebody typed \"ask Tarn\" under Metal each (g); it was kept, CastBook's own value is 20.72.");
    }

    [Fact]
    public void Fill_FormulaForMetalEach_WhatItGivesIsUsed()
    {
        var filled = Filled.From(Nights.Whole());

        var again = Filled.From(WithCell(filled, "K5", "<c r=\"K5\"><f>D5*11</f><v>25.3</v></c>"));

        again.SheetXml(List).ShouldContain("<c r=\"K5\"><f>D5*11</f><v>25.3</v></c>");
        again[List, "L5"].ShouldBe(151.8);
        again.Result.Findings.Single(f => f.Id == "formula-kept").Why.ShouldBe(
            "What a formula gives under Metal each is used for the flasks and the melt; elsewhere CastBook goes by its own value.");
        again.Again().Result.Changed.ShouldBeFalse();
    }

    // Where no value of a column is CastBook's own any more, it must still know that it was the one who wrote there.
    [Fact]
    public void Fill_EveryCellOfAColumnTyped_AllAreKeptForGood()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K5", 25.5), (List, "K6", 4.4), (List, "K7", 51));

        var later = filled.Again().Again();

        new[] { later[List, "K5"], later[List, "K6"], later[List, "K7"] }.ShouldBe([25.5, 4.4, 51.0]);
        later.Ids.ShouldContain("typed-metal-used");
        later.Ids.ShouldNotContain("values-replaced");
    }

    [Fact]
    public void Fill_TypedFlaskLetter_IsAWish()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "M7", "B"));

        filled[List, "M7"].ShouldBe("B");
        filled.Plan.Flasks.Single(f => f.Letter == "B").Pieces.Select(p => p.PieceId).ShouldContain(2);
        filled.Ids.ShouldNotContain("typed-value-kept");
    }

    [Fact]
    public void Fill_FormulaInOurColumn_IsLeftAlone()
    {
        var filled = Filled.From(Nights.Whole());

        var again = Filled.From(WithCell(filled, "L5", "<c r=\"L5\"><f>K5*C5</f><v>1</v></c>"));

        again.SheetXml(List).ShouldContain("<c r=\"L5\"><f>K5*C5</f><v>1</v></c>");
        again.Ids.ShouldContain("formula-kept");
    }

    // The cells below the first hold values only; the file says nowhere but in the first that they belong to the formula.
    [Fact]
    public void Fill_ArrayFormulaOverOurColumn_NoneOfItsCellsIsWrittenInto()
    {
        var filled = Filled.From(Nights.Whole());
        var first = WithCell(filled, "L5", "<c r=\"L5\"><f t=\"array\" ref=\"L5:L7\">K5:K7*C5:C7</f><v>1</v></c>");
        var sheet = Filled.Text(first, List);
        foreach (var row in new[] { 6, 7 })
        {
            sheet = System.Text.RegularExpressions.Regex.Replace(sheet, $"<c r=\"L{row}\".*?</c>", $"<c r=\"L{row}\"><v>{row}</v></c>");
        }

        var again = Filled.From(Replace(first, "xl/worksheets/sheet1.xml", sheet));

        new[] { again[List, "L5"], again[List, "L6"], again[List, "L7"] }.ShouldBe([1.0, 6.0, 7.0]);
        again.SheetXml(List).ShouldContain("<f t=\"array\" ref=\"L5:L7\">K5:K7*C5:C7</f>");
        again.Ids.ShouldContain("formula-kept");
        again.Ids.ShouldNotContain("typed-value-kept");
    }

    // Beside the list a formula may spread over cells that the file does not even hold.
    [Fact]
    public void Fill_ArrayFormulaBesideTheList_TheColumnsStandElsewhere()
    {
        using var book = Nights.Whole();
        var sheet = Filled.Text(book.ToArray(), List).Replace(
            "</sheetData>", "<row r=\"9\"><c r=\"J9\"><f t=\"array\" ref=\"J5:M9\">ROW(J5:M9)</f><v>1</v></c></row></sheetData>", StringComparison.Ordinal);

        var filled = Filled.From(Replace(book.ToArray(), "xl/worksheets/sheet1.xml", sheet));

        filled.Ids.ShouldContain("columns-no-room");
    }

    [Fact]
    public void Fill_WithoutARecord_ListsEachValueItReplaces()
    {
        var once = Filled.From(Nights.Whole());
        var record = Enumerable.Range(1, 40).Select(row => ("Checks", $"H{row}", (object?)null));

        var again = once.AfterTyping([(List, "K5", 99), .. record]);

        again[List, "K5"].ShouldBe(20.72);
        again.Result.Findings.Single(f => f.Id == "values-replaced").Seen.ShouldBe(
            "The column Metal each (g) held other values, and nothing in the book tells whether CastBook or a person wrote them: row 5 \"99\".");
    }

    private static double Grams(Filled filled) => filled.Plan.Flasks.Sum(f => f.PiecesMetal.Grams);

    private static byte[] WithCell(Filled filled, string address, string xml)
    {
        var sheet = filled.SheetXml(List);
        var cell = System.Text.RegularExpressions.Regex.Match(sheet, $"<c r=\"{address}\".*?</c>").Value;
        return Replace(filled.Bytes, "xl/worksheets/sheet1.xml", sheet.Replace(cell, xml, StringComparison.Ordinal));
    }

    private static byte[] Replace(byte[] book, string part, string content)
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(new MemoryStream(book));
        var edits = new CastBook.Workbooks.Writing.BookEdits(package);
        edits.Replace(part, System.Text.Encoding.UTF8.GetBytes(content));
        using var output = new MemoryStream();
        CastBook.Workbooks.Writing.PackageWriter.Write(package, edits, output);
        return output.ToArray();
    }
}
