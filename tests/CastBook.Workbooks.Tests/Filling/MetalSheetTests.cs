namespace CastBook.Workbooks.Tests.Filling;

/// <summary>The sheet Metal of a whole night: 20 pieces of house sterling, 800 g fresh and 400 g of re-melt in stock.</summary>
public sealed class MetalSheetTests
{
    private const string Sheet = "Metal";

    [Fact]
    public void Fill_WholeNight_SaysWhatToWeighOutForEachFlask()
    {
        var filled = Filled.From(Nights.Whole());

        filled[Sheet, "A1"].ShouldBe("Metal: night");
        filled.Row(Sheet, 4).ShouldBe(
        [
            "Alloy", "For", "Needed (g)", "Fresh in stock (g)", "Re-melt in stock (g)", "Least fresh (%)", "Fresh to use (g)", "Re-melt to use (g)", "To buy (g)",
        ]);
        var metal = filled.Plan.Metal.ShouldHaveSingleItem();
        (filled[Sheet, "A5"], filled[Sheet, "C5"], filled[Sheet, "D5"], filled[Sheet, "E5"], filled[Sheet, "F5"])
            .ShouldBe(("house sterling", metal.Charges!.Value.Grams, 800d, 400d, 50d));
        filled[Sheet, "I5"].ShouldBeNull();
        filled.Row(Sheet, 7).ShouldBe(["Flask", "Alloy", "Charge (g)", "Fresh (g)", "Re-melt (g)", "Made up from"]);
        var flask = filled.Plan.Flasks[0];
        (filled[Sheet, "A8"], filled[Sheet, "C8"]).ShouldBe((flask.Letter, flask.Charge.Grams));
        ((double)filled[Sheet, "D8"]! + (double)filled[Sheet, "E8"]!).ShouldBe(flask.Charge.Grams, 1e-9);
        ((double)filled[Sheet, "E8"]!).ShouldBe(Math.Floor(flask.Charge.Grams / 2));
    }

    // 31.1034768 g to the troy ounce, NIST Handbook 44, Appendix C.
    [Fact]
    public void Fill_MetalBoughtInTroyOunces_SaysWhatToBuyInThemRoundedUp()
    {
        var book = Typed.Into(Nights.Whole().ToArray(), ("Alloys", "H2", 10), ("Alloys", "I2", 0), ("Shop", "A21", "Metal bought in"), ("Shop", "B21", "troy oz"));

        var filled = Filled.From(book);

        filled[Sheet, "I4"].ShouldBe("To buy (troy oz)");
        filled[Sheet, "I5"].ShouldBe(Math.Ceiling((filled.Plan.Metal[0].Charges!.Value.Grams - 10) / 31.1034768 * 100) / 100);
        filled[Sheet, "F8"].ShouldBe("not enough in stock");
        filled[Sheet, "D8"].ShouldBeNull();
    }

    [Fact]
    public void Fill_OtherMetalsMakeUpTheRest_WritesTheirWeights()
    {
        var book = Typed.Into(
            Nights.Whole().ToArray(), ("Alloys", "H2", 10), ("Alloys", "I2", 0), ("Alloys", "J1", "Composition"), ("Alloys", "J2", "Ag 925 Cu 75"),
            ("Alloys", "A3", "fine silver"), ("Alloys", "H3", 900), ("Alloys", "A4", "copper"), ("Alloys", "H4", 900), ("Alloys", "J4", "Cu 1000"));

        var filled = Filled.From(book);

        var missing = filled.Plan.Flasks[0].Charge.Grams - 10;
        filled[Sheet, "F8"].ShouldBe(FormattableString.Invariant($"{missing * 0.925:0.00} g fine silver + {missing * 0.075:0.00} g copper"));
        filled.Ids.ShouldContain("metal-made-up");
    }

    [Fact]
    public void Fill_StockNotKnown_AsksForItBesideTheFlask() =>
        Filled.From(Typed.Into(Nights.Whole().ToArray(), ("Alloys", "H2", null), ("Alloys", "I2", null)))[Sheet, "F8"]
            .ShouldBe("type what you have of it on the Alloys sheet");

    [Theory]
    [InlineData("Fresh at least", 101, "Fresh at least says \"101\", which is not a number in %, from 0 to 100.")]
    [InlineData("Metal bought in", "stones", "Metal bought in says \"stones\", which is not g, kg, troy oz or dwt.")]
    public void Fill_SettingOutOfRange_IsSaid(string setting, object value, string said) =>
        Filled.From(Typed.Into(Nights.Whole().ToArray(), ("Shop", "A21", setting), ("Shop", "B21", value)))
            .Result.Findings.Where(f => f.Id == "setting-unreadable").ShouldHaveSingleItem().Seen.ShouldBe(said);
}
