using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Tests.Units;

public class ScaleStepTests
{
    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(100, 1, 100)]
    [InlineData(100.0000000001, 1, 100)]    // dust of the arithmetic
    [InlineData(99.9999999999, 1, 100)]
    [InlineData(100.001, 1, 101)]           // a milligram is not dust
    [InlineData(523.9, 1, 524)]
    [InlineData(523.9, 5, 525)]
    [InlineData(0.3, 0.1, 0.3)]             // 0.3 / 0.1 is 2.9999999999999996
    [InlineData(0.0001, 5, 5)]
    [InlineData(1000000.0001, 1, 1000000)]  // dust grows with the number
    public void Up_Mass_GivesTheNextWholeStep(double grams, double stepGrams, double expected) =>
        ScaleStep.Up(Mass.FromGrams(grams), Mass.FromGrams(stepGrams)).Grams.ShouldBe(expected, 1e-9);

    [Fact]
    public void Up_StepInOtherUnit_ConvertsFirst() =>
        ScaleStep.Up(Mass.FromKilograms(1.2341), Mass.FromGrams(5)).Grams.ShouldBe(1235, 1e-9);
}
