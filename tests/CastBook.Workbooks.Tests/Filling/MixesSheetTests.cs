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
            ["Flasks", "Mix", "Powder (g)", "Water (ml)", "Slurry (ml)", "Takes (min)", "Pour done by (min)", "Gloss-off (min)", "Mixed", "Remarks"]);
        filled["Mixes", "A5"].ShouldBe(string.Join(' ', mix.Flasks));
        filled["Mixes", "B5"].ShouldBe("1");
        filled["Mixes", "C5"].ShouldBe(mix.Powder.Grams);
        filled["Mixes", "G5"].ShouldBe(6.5);
        filled["Mixes", "H5"].ShouldBe(9.5);
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
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Mixes", "I5", "x"), ("Mixes", "J5", "stiff today"));

        filled["Mixes", "I5"].ShouldBe("x");
        filled["Mixes", "J5"].ShouldBe("stiff today");
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
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Shop", "B9", 150.0));

        filled.Result.Findings.ShouldContain(f => f.Id == Catalogue.SettingUnreadable.Id && f.Seen.Contains("Bowl fill", StringComparison.Ordinal));
    }
}
