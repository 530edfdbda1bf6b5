using CastBook.Casting.Burnout;
using CastBook.Casting.Investing;
using CastBook.Casting.Pouring;
using UnitsNet;

namespace CastBook.Casting.Tests.Invariants;

public class MouldInvariantTests
{
    [Fact]
    public void PowderAndWater_AnyStep_KeepTheRatioAndFillTheMould() => RandomCases.Of(301, (random, says) =>
    {
        var fill = Volume.FromMilliliters(random.Between(0, 3000));
        var per100 = random.Between(30, 50);
        var density = Density.FromGramsPerCubicCentimeter(random.Between(2.33, 2.76));
        var step = Mass.FromGrams(random.Between(0.1, 50));

        var mix = PowderAndWater.Compute(fill, per100, density, step);

        mix.Water.Milliliters.ShouldBe(mix.Powder.Grams * per100 / 100, 1e-9 * (1 + mix.Water.Milliliters), says);
        ((mix.Powder / density) + mix.Water).Milliliters.ShouldBeGreaterThanOrEqualTo(fill.Milliliters * (1 - 1e-8), says);
        ScaleSteps(mix.Powder, step).ShouldBe(Math.Round(ScaleSteps(mix.Powder, step)), 1e-6, says);
    });

    [Fact]
    public void FillVolume_BiggerFlaskOrSmallerTree_IsNeverLess() => RandomCases.Of(302, (random, says) =>
    {
        var flask = Volume.FromMilliliters(random.Between(1, 2000));
        var displaced = flask * random.NextDouble();
        var fill = FillVolume.Compute(flask, displaced);

        fill.ShouldBeGreaterThanOrEqualTo(flask - displaced, says);
        FillVolume.Compute(flask + Volume.FromMilliliters(10), displaced).ShouldBeGreaterThan(fill, says);
        FillVolume.Compute(flask, displaced * 0.9).ShouldBeGreaterThanOrEqualTo(fill, says);
    });

    [Fact]
    public void FlaskVolume_CutInTwo_KeepsTheVolume() => RandomCases.Of(303, (random, says) =>
    {
        var diameter = Length.FromMillimeters(random.Between(30, 120));
        var (low, high) = (Length.FromMillimeters(random.Between(1, 100)), Length.FromMillimeters(random.Between(1, 100)));

        (FlaskVolume.Compute(diameter, low) + FlaskVolume.Compute(diameter, high)).Milliliters
            .ShouldBe(FlaskVolume.Compute(diameter, low + high).Milliliters, 1e-9 * 2000, says);
    });

    [Fact]
    public void TopClearance_WiderFlask_IsNeverLess() => RandomCases.Of(304, (random, says) =>
    {
        var diameter = Length.FromMillimeters(random.Between(20, 150));
        foreach (var method in Enum.GetValues<CastingMethod>())
        {
            var clearance = TopClearance.Compute(method, diameter);

            clearance.ShouldBeGreaterThanOrEqualTo(TopClearance.Least, says);
            TopClearance.Compute(method, diameter + Length.FromMillimeters(5)).ShouldBeGreaterThanOrEqualTo(clearance, says);
        }
    });

    [Fact]
    public void FlaskClass_BiggerFlask_IsNeverSmaller() => RandomCases.Of(305, (random, says) =>
    {
        var (diameter, height) = (Length.FromMillimeters(random.Between(20, 110)), Length.FromMillimeters(random.Between(20, 210)));

        var one = Rank(diameter, height);

        Rank(diameter + Length.FromMillimeters(10), height).ShouldBeGreaterThanOrEqualTo(one, says);
        Rank(diameter, height + Length.FromMillimeters(10)).ShouldBeGreaterThanOrEqualTo(one, says);
    });

    [Fact]
    public void Burnout_LongerHoldOrSlowerRise_IsLonger() => RandomCases.Of(306, (random, says) =>
    {
        var (target, rate, hours) = (random.Between(100, 700), random.Between(20, 300), random.Between(0, 4));
        var total = Total(target, rate, hours);

        Total(target, rate, hours + 0.5).Hours.ShouldBe(total.Hours + 0.5, 1e-9, says);
        Total(target, rate / 2, hours).ShouldBeGreaterThan(total, says);
        (total - Duration.FromHours(hours)).Hours.ShouldBe((target - 20) / rate, 1e-9, says);
    });

    [Fact]
    public void SectionBands_ThickerPiece_IsNeverHotter() => RandomCases.Of(307, (random, says) =>
    {
        var thin = Length.FromMillimeters(random.Between(0.2, 10));
        var thick = thin + Length.FromMillimeters(random.Between(0, 10));
        if (SectionBands.Of(thin, thick) is { } bands && SectionBands.Of(thin + Length.FromMillimeters(0.3), thick + Length.FromMillimeters(0.3)) is { } thicker)
        {
            ((int)thicker.Coldest).ShouldBeLessThanOrEqualTo((int)bands.Coldest, says);
            ((int)thicker.Hottest).ShouldBeLessThanOrEqualTo((int)bands.Hottest, says);
        }
    });

    private static Duration Total(double celsius, double degreesPerHour, double hours) =>
        new BurnoutSchedule("x", null, [new BurnoutStage(Temperature.FromDegreesCelsius(celsius), degreesPerHour, Duration.FromHours(hours))]).Total;

    // A flask that is larger than the largest class comes last.
    private static int Rank(Length diameter, Length height) => (int?)FlaskClasses.Of(diameter, height) ?? 99;

    private static double ScaleSteps(Mass powder, Mass step) => powder / step;
}
