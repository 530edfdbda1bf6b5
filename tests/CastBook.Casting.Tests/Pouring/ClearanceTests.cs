using CastBook.Casting.Pouring;
using UnitsNet;

namespace CastBook.Casting.Tests.Pouring;

public class ClearanceTests
{
    // Source: the published working rule of 1/4 in of investment for each inch of the flask's diameter.
    [Theory]
    [InlineData(CastingMethod.VacuumPerforated, 2.5, 0.625)]
    [InlineData(CastingMethod.VacuumSolid, 4, 1)]
    public void Vacuum_AgreesWithWorkingRule(CastingMethod method, double diameterInches, double clearanceInches) =>
        TopClearance.Compute(method, Length.FromInches(diameterInches)).Inches.ShouldBe(clearanceInches, 1e-9);

    [Theory]
    [InlineData(CastingMethod.VacuumPerforated, 40, 12)]        // a quarter would be 10 mm
    [InlineData(CastingMethod.VacuumSolid, 48, 12)]
    [InlineData(CastingMethod.VacuumPerforated, 80, 20)]
    [InlineData(CastingMethod.Spin, 80, 12)]
    [InlineData(CastingMethod.Gravity, 80, 20)]
    public void Compute_Method_SetsTheClearance(CastingMethod method, double diameterMm, double expectedMm) =>
        TopClearance.Compute(method, Length.FromMillimeters(diameterMm)).Millimeters.ShouldBe(expectedMm, 1e-9);

    [Fact]
    public void Compute_OutOfRange_Throws()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => TopClearance.Compute(CastingMethod.Spin, Length.Zero)).ParamName.ShouldBe("insideDiameter");
        Should.Throw<ArgumentOutOfRangeException>(() => TopClearance.Compute((CastingMethod)9, Length.FromMillimeters(50))).ParamName.ShouldBe("method");
    }

    // Source: codjewelry.com 2009-11-22, at least 1/4 in at all sides; common practice 6 to 10 mm.
    [Fact]
    public void Wall_Usual_LiesWithinPractice()
    {
        WallClearance.Usual.Millimeters.ShouldBeInRange(6, 10);
        WallClearance.Usual.Inches.ShouldBeGreaterThanOrEqualTo(0.25);
    }
}
