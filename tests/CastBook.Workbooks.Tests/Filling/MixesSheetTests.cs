using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Tests.Filling;

public sealed class MixesSheetTests
{
    [Fact]
    public void Fill_PlannedNight_HasALineAMixThatAgreesWithThePlan()
    {
        var filled = Filled.From(Nights.Whole());

        var mix = filled.Plan.Mixes.ShouldHaveSingleItem();
        filled["Mixes", "A1"].ShouldBe("Mixes: night");
        filled.Row("Mixes", 4).ShouldBe(
            ["Flasks", "Mix", "Begin at", "Powder (g)", "Water (ml)", "Slurry (ml)", "Takes (min)", "Pour done by (min)", "Gloss-off (min)", "Mixed", "Remarks"]);
        filled["Mixes", "A5"].ShouldBe(string.Join(' ', mix.Flasks));
        filled["Mixes", "B5"].ShouldBe("1");
        filled["Mixes", "D5"].ShouldBe(mix.Powder.Grams);
        filled["Mixes", "H5"].ShouldBe(6.5);
        filled["Mixes", "I5"].ShouldBe(9.5);
    }

    [Fact]
    public void Fill_PlannedNight_NamesTheMixBesideTheList()
    {
        var filled = Filled.From(Nights.Whole());

        filled["Harbour list", "N5"].ShouldBeOfType<string>().ShouldEndWith(" ml, mix 1");
    }

    [Fact]
    public void Fill_TicksOfAMix_StayWithItsFlasks()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Mixes", "J5", "x"), ("Mixes", "K5", "stiff today"));

        filled["Mixes", "J5"].ShouldBe("x");
        filled["Mixes", "K5"].ShouldBe("stiff today");
        filled.Sheets.ShouldNotContain("Mixes (kept)");
    }

    [Fact]
    public void Fill_RemarkOutsideTheBoxes_KeepsTheOldSheet()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Mixes", "C20", "new sack opened"));

        filled.Sheets.ShouldContain("Mixes (kept)");
        filled["Mixes", "C20"].ShouldBeNull();
        filled["Mixes (kept)", "C20"].ShouldBe("new sack opened");
    }

    [Fact]
    public void Fill_BowlOverfull_IsASlip()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Shop", "B10", 150.0));

        filled.Result.Findings.ShouldContain(f => f.Id == Catalogue.SettingUnreadable.Id && f.Seen.Contains("Bowl fill", StringComparison.Ordinal));
    }

    [Fact]
    public void Fill_PlannedNight_SaysWhatStandsAroundTheMix()
    {
        var filled = Filled.From(Nights.Whole());

        new[] { "A7", "A8", "A9", "A10" }.Select(cell => filled["Mixes", cell]).ShouldBe(
        [
            "Before: the wetting agent on the trees is dry; tape or collars on the flasks; the water at 20 to 24 °C unless the maker's sheet says otherwise.",
            "Fill the flasks in the order given. After gloss-off nothing is moved until the moulds have set.",
            "Set: 2 h at least, counted from the last pour; overnight is usual. Then base off, rim cleaned, the flask's letter scratched in.",
            "A mould that stands open for more than a day dries half way and cracks: bag it damp, and it keeps a week.",
        ]);
    }

    [Theory]
    [InlineData("yes", "Bag the moulds damp as soon as they have set: so they keep a week. One that stands open for more than a day dries half way and cracks.")]
    [InlineData("nein", "A mould that stands open for more than a day dries half way and cracks: bag it damp, and it keeps a week.")]
    public void Fill_KeptDampOnTheShopSheet_IsSaidWhereTheMouldsAre(string answer, string line)
    {
        var filled = Filled.From(Typed.Into(Nights.Whole().ToArray(), ("Shop", "A21", "Kept damp"), ("Shop", "B21", answer)));

        filled["Mixes", "A10"].ShouldBe(line);
        filled.Ids.ShouldNotContain("setting-unreadable");
    }

    [Fact]
    public void Fill_KeptDampThatIsNoAnswer_IsAsked() =>
        Filled.From(Typed.Into(Nights.Whole().ToArray(), ("Shop", "A21", "Kept damp"), ("Shop", "B21", "in the shed")))
            .Result.Findings.Single(f => f.Id == "setting-unreadable").Seen.ShouldContain("yes or no");

    [Fact]
    public void Fill_SteamOnTheShopSheet_IsReadAndSaidWhereTheMouldsAre()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(
            ("Shop", "A21", "Steam dewax"), ("Shop", "B21", 45.0), ("Shop", "C21", "min"), ("Shop", "A22", "Weights include"), ("Shop", "B22", "gates too"),
            ("Shop", "A23", "Supports share"), ("Shop", "B23", 20.0), ("Shop", "C23", "%"));

        filled["Mixes", "A10"].ShouldBe("Steam: 45 min, moulds of wax only; then straight into a kiln at 150 °C, ten minutes in the open at most.");
        filled.Result.Findings.ShouldContain(f => f.Id == "steam-with-resin");
        filled.Result.Night.Shop.Settings.WeightsIncludeGates.ShouldBe(true);
        filled["Harbour list", "K5"].ShouldBe(16.58);   // 2.3 g × 0.8 / 1.15 × 10.36
    }

    [Theory]
    [InlineData("vacuum perforated", "Perforated flasks: ")]
    [InlineData("vacuum solid", "Solid flasks: ")]
    [InlineData("gravity", "By gravity: ")]
    [InlineData("spin", "Spinning: balance the arm ")]
    public void Fill_Method_HasItsLineOnTheNightPlan(string method, string begins)
    {
        var sheet = Filled.From(Nights.Whole()).AfterTyping(("Shop", "B2", method)).SheetXml("Night plan");

        sheet.ShouldContain(begins);
        new[] { "Perforated flasks: ", "Solid flasks: ", "Spinning: ", "By gravity: " }.Count(sheet.Contains).ShouldBe(1);
    }

    // What a plan must warn of once: silica dust, burnout fumes and carbon monoxide, water and melt, zinc, heat and weight, alcohol, resin, acids, plating.
    [Theory]
    [InlineData("silica")]
    [InlineData("steam of the quench")]
    [InlineData("carbon monoxide")]
    [InlineData("never leave it alone")]
    [InlineData("never open it while wax burns")]
    [InlineData("Molten metal and water explode")]
    [InlineData("ingot mould")]
    [InlineData("dry scrap")]
    [InlineData("Zinc fumes")]
    [InlineData("hot flask is heavy")]
    [InlineData("no red in shade")]
    [InlineData("Alcohol")]
    [InlineData("uncured resin off the skin")]
    [InlineData("into pickle")]
    [InlineData("plating baths")]
    [InlineData("data sheets and local rules come first")]
    public void Fill_NightPlan_WarnsOnce(string words)
    {
        var sheet = Filled.From(Nights.Whole()).SheetXml("Night plan");

        sheet.Split(words).Length.ShouldBe(2);
    }
}
