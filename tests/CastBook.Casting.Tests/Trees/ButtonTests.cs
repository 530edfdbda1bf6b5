using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public class ButtonTests
{
    [Theory]
    [InlineData(50, 20, 1.5, 10)]
    [InlineData(5, 20, 1.5, 1.5)]       // a fifth would be 1 ml
    [InlineData(0, 20, 1.5, 1.5)]
    [InlineData(50, 0, 0, 0)]
    public void Volume_ShareOrLeast_TakesTheLarger(double treeMl, double sharePercent, double leastMl, double expectedMl) =>
        Button.Volume(Volume.FromMilliliters(treeMl), Ratio.FromPercent(sharePercent), Volume.FromMilliliters(leastMl))
            .Milliliters.ShouldBe(expectedMl, 1e-9);

    // Source: the trade's published rules run from a tenth (romanoff.com) to the weight of the pieces (stuller.com).
    [Fact]
    public void UsualShare_LiesWithinPublishedRules() =>
        Button.UsualShare.Percent.ShouldBeInRange(10, 100);

    [Fact]
    public void Volume_Negative_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Button.Volume(Volume.FromMilliliters(1), Ratio.FromPercent(-1), Volume.Zero))
            .ParamName.ShouldBe("share");
}
