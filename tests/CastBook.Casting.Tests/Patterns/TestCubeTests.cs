using CastBook.Casting.Patterns;
using UnitsNet;

namespace CastBook.Casting.Tests.Patterns;

public sealed class TestCubeTests
{
    // By hand: 20 mm make 8 cm³; 9.2 g / 8 = 1.15 g/cm³. Half the edge is an eighth of the volume.
    [Theory]
    [InlineData(9.2, 20, 1.15)]
    [InlineData(1.15, 10, 1.15)]
    [InlineData(7.6, 20, 0.95)]
    public void Compute_ByEdge_IsMassOverTheCubeOfIt(double grams, double edgeMm, double density) =>
        TestCube.Compute(Mass.FromGrams(grams), Length.FromMillimeters(edgeMm)).GramsPerCubicCentimeter.ShouldBe(density, 1e-9);

    [Fact]
    public void Compute_ByVolume_IsMassOverIt() =>
        TestCube.Compute(Mass.FromGrams(11.3), Volume.FromMilliliters(10)).GramsPerCubicCentimeter.ShouldBe(1.13, 1e-9);

    [Fact]
    public void Compute_OnePercentOfEdge_IsThreeOfDensity()
    {
        var right = TestCube.Compute(Mass.FromGrams(9.2), Length.FromMillimeters(20));
        var wrong = TestCube.Compute(Mass.FromGrams(9.2), Length.FromMillimeters(20.2));

        (right / wrong).ShouldBe(1.0303, 0.0001);
    }

    [Fact]
    public void Compute_Nothing_IsRefused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => TestCube.Compute(Mass.Zero, Length.FromMillimeters(20))).ParamName.ShouldBe("mass");
        Should.Throw<ArgumentOutOfRangeException>(() => TestCube.Compute(Mass.FromGrams(1), Length.Zero)).ParamName.ShouldBe("edge");
        Should.Throw<ArgumentOutOfRangeException>(() => TestCube.Compute(Mass.FromGrams(1), Volume.Zero)).ParamName.ShouldBe("volume");
        Should.Throw<ArgumentOutOfRangeException>(() => TestCube.Compute(Mass.Zero, Volume.FromMilliliters(1))).ParamName.ShouldBe("mass");
    }
}
