namespace CastBook.Workbooks.Tests.Filling;

/// <summary>The sprued tree on the scale: its weighing takes the place of the estimate, and the flask is left alone.</summary>
public sealed class WeighedTreeTests
{
    // All twenty pieces hang in flask A. By hand: patterns 6 × 2.3 + 12 × 0.46 + 2 × 5.75 = 30.82 g of resin, 26.8 cm³.
    // Tree 40.32 g, so 9.5 g of sprue wax, 10 cm³. Metal (26.8 + 10) × 10.36 = 381.248 g; button 20 % = 76.2496 g;
    // charge × 1.01 = 462.07, up to 463 g. All taken as resin it would be 441 g, all as wax 534 g.
    [Fact]
    public void Fill_TreeWeighed_ChargeComesFromTheWeighing()
    {
        var planned = Filled.From(Nights.Whole());
        planned.Plan.Flasks.Count.ShouldBe(1);

        var weighed = planned.AfterTyping(("Trees", "E5", 52.0), ("Trees", "F5", 92.32));

        weighed["Trees", "I5"].ShouldBe(463.0);
        weighed["Trees", "J5"].ShouldBe("weighed tree");
        weighed["Night plan", "E5"].ShouldBe(463.0);
        weighed["Trees", "E5"].ShouldBe(52.0);
        weighed["Trees", "F5"].ShouldBe(92.32);
    }

    [Fact]
    public void Fill_FlaskWaxed_NothingInItIsMovedWhenTheListGrows()
    {
        var waxed = Filled.From(Nights.Whole()).AfterTyping(("Trees", "H5", "waxed"));
        var before = waxed["Harbour list", "M5"];

        var grown = waxed.AfterTyping(
            ("Harbour list", "B8", "Tide bell"), ("Harbour list", "C8", 8), ("Harbour list", "D8", 6.9), ("Harbour list", "E8", "harbour resin"),
            ("Harbour list", "F8", "house sterling"), ("Harbour list", "G8", 22), ("Harbour list", "H8", 14), ("Harbour list", "I8", 12));

        grown["Harbour list", "M5"].ShouldBe(before);
        grown["Harbour list", "M8"].ShouldBeOfType<string>().ShouldNotContain("A");
        grown["Trees", "H5"].ShouldBe("waxed");
    }

    [Fact]
    public void Fill_BaseHeavierThanTree_SaysSoAtTheCell()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Trees", "E5", 92.0), ("Trees", "F5", 52.0));

        var index = filled.Ids.ToList().IndexOf("tree-not-over-base");
        index.ShouldBeGreaterThanOrEqualTo(0);
        filled.Result.Places[index].Cell!.Value.ToString().ShouldBe("Trees!F5");
    }

    [Fact]
    public void Fill_TicksAndRemarks_StayWithTheirFlask()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Night plan", "P5", "x"), ("Night plan", "S5", "tall one at the back"));

        filled["Night plan", "P5"].ShouldBe("x");
        filled["Night plan", "S5"].ShouldBe("tall one at the back");
        filled.Sheets.ShouldNotContain("Night plan (kept)");
    }

    [Fact]
    public void Fill_TypedOutsideTheFrames_SheetIsKeptUnderAnotherName()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Night plan", "C30", "ask Tarn about the bell"));

        filled.Sheets.ShouldContain("Night plan (kept)");
        filled["Night plan (kept)", "C30"].ShouldBe("ask Tarn about the bell");
        filled["Night plan", "C30"].ShouldBeNull();
        filled.Result.Findings.Single(f => f.Id == "own-sheet-kept").Seen.ShouldBe(
            "Something was typed on Night plan outside the framed cells, so that sheet was kept as Night plan (kept) and a fresh one made.");
        filled.Again().Sheets.Count.ShouldBe(filled.Sheets.Count);
    }

    [Fact]
    public void Fill_SheetOfTheShopHasOurName_OursGetsAnother()
    {
        var filled = Filled.From(Nights.WholeBuilder().Sheet("Night plan", s => s.Row("Tarn sweeps up")).Build());

        filled["Night plan", "A1"].ShouldBe("Tarn sweeps up");
        filled.Sheets.ShouldContain("Night plan (CastBook)");
        filled.Result.Findings.Single(f => f.Id == "sheet-name-taken").Seen.ShouldBe("You have a sheet called Night plan of your own; CastBook's is called Night plan (CastBook).");
    }

    // The shop renames the size of a tree that hangs already: nothing is worked out for it, and nothing of it is lost.
    [Fact]
    public void Fill_SizeOfABuiltTreeIsGone_ItsLineAndWeighingStay()
    {
        var weighed = Filled.From(Nights.Whole()).AfterTyping(("Trees", "E5", 52.0), ("Trees", "F5", 92.32), ("Trees", "H5", "waxed"));
        var size = weighed["Trees", "B5"];
        var row = size is "75 × 100" ? 2 : 3;

        var filled = weighed.AfterTyping(("Flasks", $"A{row}", "the old tall one"));

        filled["Trees", "A5"].ShouldBe("A");
        filled["Trees", "B5"].ShouldBe(size);
        filled["Trees", "F5"].ShouldBe(92.32);
        filled["Trees", "H5"].ShouldBe("waxed");
        filled["Trees", "I5"].ShouldBeNull();
        filled.Ids.ShouldContain("flask-size-unknown");
        filled.Again().Result.Changed.ShouldBeFalse();
    }
}
