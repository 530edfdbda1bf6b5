using CastBook.Casting.Alloying;
using CastBook.Casting.Burnout;
using CastBook.Casting.Investing;
using CastBook.Casting.Metals;
using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Conventions;

/// <summary>What a calculation refuses, it refuses with a sentence.</summary>
public class RefusalTests
{
    private static readonly Density Wax = Density.FromGramsPerCubicCentimeter(0.95);

    public static TheoryData<string, Action> Refusals => new()
    {
        { "The value must be zero or more.", () => PatternVolume.Compute(Mass.FromGrams(-1), Wax) },
        { "The value must be more than zero.", () => PatternVolume.Compute(Mass.FromGrams(1), Density.Zero) },
        { "The value is outside its limits.", () => LowerFineness.Compute(Mass.FromGrams(1), Ratio.FromPercent(50), Ratio.FromPercent(60)) },
        { "The wax cannot weigh more than the whole tree.", () => WeighedTree.MetalVolume(Mass.FromGrams(1), Mass.FromGrams(2), Wax, Wax) },
        { "More is displaced than the flask holds.", () => FillVolume.Compute(Volume.FromMilliliters(1), Volume.FromMilliliters(2)) },
        { "The method must be vacuum or spin.", () => SuperheatBand.For((CastingMethod)9) },
        { "The method must be vacuum or spin.", () => TopClearance.Compute((CastingMethod)9, Length.FromMillimeters(50)) },
        { "The kind must be wax or resin.", () => PatternDensityRange.For((PatternKind)9) },
        { "The kind must be wax or resin.", () => PowderAndWater.UsualWaterPer100((PatternKind)9) },
        { "There is no shipped schedule of this kind and class.", () => ShippedSchedules.For(PatternKind.Wax, (FlaskClass)9) },
        { "A schedule needs at least one stage.", () => _ = new BurnoutSchedule("x", null, []) },
        {
            "A hold is never negative, and a rate is more than zero.",
            () => _ = new BurnoutSchedule("x", null, [new BurnoutStage(Temperature.FromDegreesCelsius(100), 0, Duration.Zero)])
        },
        { "The mixing rule is not reliable for this composition.", () => AlloyNumbers.ByRule(Composition.Of("Cu 850 Zn 150")) },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Compute_OutOfRange_SaysWhy(string sentence, Action refused) =>
        Should.Throw<Exception>(refused).Message.ShouldStartWith(sentence);
}
