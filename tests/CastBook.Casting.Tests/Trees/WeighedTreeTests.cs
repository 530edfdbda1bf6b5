using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public class WeighedTreeTests
{
    private static readonly Density Wax = Density.FromGramsPerCubicCentimeter(0.95);
    private static readonly Density Resin = Density.FromGramsPerCubicCentimeter(1.15);
    private static readonly Density Sterling = Density.FromGramsPerCubicCentimeter(10.36);

    // By hand: 40 / 1.15 = 34.783 ml, 15 / 0.95 = 15.789 ml, together 50.572 ml; × 10.36 = 523.93 g.
    // All taken as resin: 55 / 1.15 × 10.36 = 495.48 g, a short pour. All as wax: 599.79 g.
    [Theory]
    [InlineData(15, 524)]
    [InlineData(0, 495)]
    [InlineData(55, 600)]
    public void MetalVolume_ResinOnWax_TakesTheSharesApart(double waxGrams, double sterlingGrams)
    {
        var volume = WeighedTree.MetalVolume(Mass.FromGrams(55), Mass.FromGrams(waxGrams), Wax, Resin);

        (volume * Sterling).Grams.ShouldBe(sterlingGrams, 0.5);
    }

    [Fact]
    public void MetalVolume_SameDensity_DoesNotDependOnTheShare() =>
        WeighedTree.MetalVolume(Mass.FromGrams(55), Mass.FromGrams(20), Wax, Wax).Milliliters.ShouldBe(55 / 0.95, 1e-9);

    [Fact]
    public void MetalVolume_MoreWaxThanTree_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => WeighedTree.MetalVolume(Mass.FromGrams(10), Mass.FromGrams(10.1), Wax, Resin))
            .ParamName.ShouldBe("wax");

    [Fact]
    public void MetalVolume_Nothing_IsZero() =>
        WeighedTree.MetalVolume(Mass.Zero, Mass.Zero, Wax, Resin).Milliliters.ShouldBe(0);
}
