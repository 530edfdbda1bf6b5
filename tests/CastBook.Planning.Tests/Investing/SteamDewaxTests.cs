using UnitsNet;

namespace CastBook.Planning.Tests.Investing;

public sealed class SteamDewaxTests
{
    [Fact]
    public void Compare_WaxForAnHour_SaysNothing() => Plan(60, "Injection wax").StopsAndChecks().ShouldBeEmpty();

    [Fact]
    public void Compare_Resin_IsChecked() => Plan(30, "Castable resin").The("steam-with-resin").Text().ShouldBe(
        "Flask A is to be steamed, but not all in it is wax. Resin does not melt out in steam: it swells in the wet and cracks the mould. "
        + "Leave it out of the steamer, or clear \"Steam dewax\" on the Shop sheet.");

    // Published: steamed for up to an hour.
    [Fact]
    public void Compare_LongerThanAnHour_IsChecked() => Plan(75, "Injection wax").The("steam-too-long").Text().ShouldBe(
        "\"Steam dewax\" is 75 min. Beyond an hour steam washes the skin of the mould away. Steam for an hour at most; what is left of the wax burns out.");

    [Theory]
    [InlineData(null)]
    [InlineData(0.0)]
    public void Compare_NoSteam_SaysNothingOfResin(double? minutes) => Plan(minutes, "Castable resin").Ids().ShouldNotContain("steam-with-resin");

    private static NightPlan Plan(double? minutes, string material) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { SteamDewax = minutes is { } steam ? Duration.FromMinutes(steam) : null } },
        Wrenmoor.Ring() with { Material = material }));
}
