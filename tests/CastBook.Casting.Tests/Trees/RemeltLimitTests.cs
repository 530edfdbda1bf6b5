using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public sealed class RemeltLimitTests
{
    private static readonly Mass Step = Mass.FromGrams(1);

    // "Ratios in excess of 50 % scrap are not recommended": stuller.com, general casting tips; "50 % scrap / 50 % fresh" for three
    // sterlings: stuller.com, silver comparisons.
    [Fact]
    public void UsualFreshAtLeast_AgreesWithSuppliersAdvice() => RemeltLimit.UsualFreshAtLeast.Percent.ShouldBe(50);

    // By hand: 30 % of 119 g is 35.7 g, 36 g on the scale; 83 g may be re-melt. Swapping the shares would give 35 g.
    [Fact]
    public void Compute_UnevenCharge_RoundsTheFreshMetalUp() =>
        RemeltLimit.Compute(Mass.FromGrams(119), Ratio.FromPercent(30), Step).Grams.ShouldBe(83, 1e-9);

    [Theory]
    [InlineData(0, 118)]
    [InlineData(100, 0)]
    public void Compute_NoneOrAllFresh_LeavesAllOrNothing(double percent, double remelt) =>
        RemeltLimit.Compute(Mass.FromGrams(118), Ratio.FromPercent(percent), Step).Grams.ShouldBe(remelt, 1e-9);

    [Fact]
    public void Compute_ChargeUnderTheStep_TakesNoRemelt() =>
        RemeltLimit.Compute(Mass.FromGrams(0.4), Ratio.FromPercent(50), Step).ShouldBe(Mass.Zero);

    // Melt after melt with all the re-melt that is allowed: how often its metal was melted goes towards 1 / F, by the geometric series
    // 1 + (1 − F) + (1 − F)² + …; rounding fresh metal up keeps it below.
    [Theory]
    [InlineData(118, 50, 2)]
    [InlineData(119, 30, 3.333)]
    [InlineData(37, 80, 1.25)]
    public void Compute_MeltAfterMelt_BoundsHowOftenMetalWasMelted(double grams, double percent, double melts)
    {
        var share = RemeltLimit.Compute(Mass.FromGrams(grams), Ratio.FromPercent(percent), Step).Grams / grams;
        var melted = 0.0;
        for (var i = 0; i < 60; i++)
        {
            melted = 1 + (share * melted);
        }

        melted.ShouldBeInRange(0.95 * melts, melts + 1e-9);
    }

    [Fact]
    public void Compute_ShareAboveAll_IsRefused() => Should.Throw<ArgumentOutOfRangeException>(
        () => RemeltLimit.Compute(Mass.FromGrams(118), Ratio.FromPercent(101), Step));
}
