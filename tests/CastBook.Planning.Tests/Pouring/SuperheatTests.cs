using CastBook.Casting.Metals;
using CastBook.Casting.Pouring;

namespace CastBook.Planning.Tests.Pouring;

public sealed class SuperheatTests
{
    // A published supplier table: 100 to 200 °F over the melt under vacuum, 56 to 111 °C; spinning 50 to 125 °F, 28 to 69 °C.
    [Theory]
    [InlineData(CastingMethod.VacuumPerforated, 960, false)]
    [InlineData(CastingMethod.VacuumPerforated, 953, false)]
    [InlineData(CastingMethod.VacuumPerforated, 945, true)]
    [InlineData(CastingMethod.VacuumSolid, 1012, true)]
    [InlineData(CastingMethod.Spin, 960, false)]
    [InlineData(CastingMethod.Spin, 970, true)]
    [InlineData(CastingMethod.Spin, 915, true)]
    public void Compare_MetalOverLiquidus_IsCheckedOutsideTheBandOfTheMethod(CastingMethod method, double metal, bool isChecked) =>
        Plan(method, metal, "Ag 925 Cu 75").Ids().Contains("superheat-out-of-band").ShouldBe(isChecked);

    [Fact]
    public void Compare_TooHot_SaysTheBand() =>
        Plan(CastingMethod.Spin, 1000, "Ag 925 Cu 75").The("superheat-out-of-band").Text().ShouldBe(
            "Bench silver is poured at 1,000 °C, which is 104 degrees above its liquidus of 896 °C. "
            + "Spinning usually wants 28 to 69 degrees: colder does not fill, hotter draws gas and eats the mould. "
            + "Check \"Metal temp\" and \"Liquidus\" on the Alloys sheet against the alloy's data sheet.");

    // No band is known for bronzes.
    [Fact]
    public void Compare_Bronze_IsNotCompared() =>
        Plan(CastingMethod.Spin, 1140, "Cu 900 Sn 100").Ids().ShouldNotContain("superheat-out-of-band");

    private static NightPlan Plan(CastingMethod method, double metal, string composition)
    {
        Composition.TryParse(composition, out var parts, out _).ShouldBeTrue();
        var alloy = Wrenmoor.Silver.Alloy with { Composition = parts, Liquidus = Wrenmoor.Celsius(896), MetalTemperature = Wrenmoor.Celsius(metal) };
        return NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { Alloys = [Wrenmoor.Silver with { Alloy = alloy }], Settings = Wrenmoor.Answered with { CastingMethod = method } },
            Wrenmoor.Ring()));
    }
}
