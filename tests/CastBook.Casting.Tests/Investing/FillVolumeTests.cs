using CastBook.Casting.Investing;
using UnitsNet;

namespace CastBook.Casting.Tests.Investing;

public class FillVolumeTests
{
    // By hand: π/4 × 80² × 120 = 603 186 mm³ = 603.2 ml. Diameter and height swapped would give 904.8 ml.
    [Fact]
    public void FlaskVolume_HandWorked_GivesItsCylinder() =>
        FlaskVolume.Compute(Length.FromMillimeters(80), Length.FromMillimeters(120)).Milliliters.ShouldBe(603.186, 0.001);

    // Walls of 3 mm cost 12 to 18 % of the volume of the usual sizes.
    [Theory]
    [InlineData(65)]
    [InlineData(100)]
    public void FlaskVolume_OutsideTakenForInside_OverstatesByAnEighthOrMore(double outsideMm)
    {
        var height = Length.FromMillimeters(100);
        var inside = FlaskVolume.Compute(Length.FromMillimeters(outsideMm - 6), height);

        (1 - (inside / FlaskVolume.Compute(Length.FromMillimeters(outsideMm), height))).ShouldBeInRange(0.115, 0.18);
    }

    [Theory]
    [InlineData(400, 50, 380)]          // net 350: 5 % is 17.5, so 30 ml
    [InlineData(1100, 100, 1050)]       // net 1000: 5 % is 50 ml
    [InlineData(600, 0, 630)]           // both are 30 ml
    [InlineData(50, 50, 0)]             // nothing to fill, nothing to waste
    public void Compute_Waste_IsTheLargerOfFivePercentAndThirtyMilliliters(double flaskMl, double displacedMl, double expectedMl) =>
        FillVolume.Compute(Volume.FromMilliliters(flaskMl), Volume.FromMilliliters(displacedMl)).Milliliters.ShouldBe(expectedMl, 1e-9);

    [Fact]
    public void Compute_MoreDisplacedThanHeld_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => FillVolume.Compute(Volume.FromMilliliters(10), Volume.FromMilliliters(11)))
            .ParamName.ShouldBe("displaced");
}
