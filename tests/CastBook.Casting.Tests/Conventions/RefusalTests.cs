using CastBook.Casting.Alloying;
using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
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
    private static readonly Temperature Hot = Temperature.FromDegreesCelsius(500);
    private static readonly Density Wax = Density.FromGramsPerCubicCentimeter(0.95);

    public static TheoryData<string, Action> Refusals => new()
    {
        { "The value must be zero or more.", () => PatternVolume.Compute(Mass.FromGrams(-1), Wax) },
        { "The value must be more than zero.", () => PatternVolume.Compute(Mass.FromGrams(1), Density.Zero) },
        { "The value is outside its limits.", () => RaiseFineness.Compute(Mass.FromGrams(1), Ratio.FromPercent(60), Ratio.FromPercent(50), Fineness.Fine) },
        { "The wax cannot weigh more than the whole tree.", () => WeighedTree.MetalVolume(Mass.FromGrams(1), Mass.FromGrams(2), Wax, Wax) },
        { "More is displaced than the flask holds.", () => FillVolume.Compute(Volume.FromMilliliters(1), Volume.FromMilliliters(2)) },
        { "The method must be vacuum or spin.", () => SuperheatBand.For((CastingMethod)9) },
        { "The method must be vacuum or spin.", () => SuperheatBand.For(CastingMethod.Gravity) },
        { "The method must be vacuum, spin or gravity.", () => TopClearance.Compute((CastingMethod)9, Length.FromMillimeters(50)) },
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

    /// <summary>Each argument of each calculation, outside its limits while the others are within.</summary>
    public static TheoryData<string, Action> Arguments => new()
    {
        { "piecesAndTree", () => Button.Volume(Ml(-1), Percent(20), Ml(1)) },
        { "share", () => Button.Volume(Ml(1), Percent(-20), Ml(1)) },
        { "atLeast", () => Button.Volume(Ml(1), Percent(20), Ml(-1)) },
        { "holds", () => CrucibleCapacity.Usable(Ml(-1)) },
        { "rated", () => CrucibleCapacity.FromRating(Grams(-1), Wax) },
        { "metal", () => CrucibleCapacity.FromRating(Grams(1), Density.Zero) },
        { "count", () => GateVolume.Compute(-1, Mm(1), Mm(1)) },
        { "diameter", () => GateVolume.Compute(1, Mm(-1), Mm(1)) },
        { "length", () => GateVolume.Compute(1, Mm(1), Mm(-1)) },
        { "treeMass", () => WeighedTree.MetalVolume(Grams(-1), Grams(0), Wax, Wax) },
        { "wax", () => WeighedTree.MetalVolume(Grams(1), Grams(-1), Wax, Wax) },
        { "waxDensity", () => WeighedTree.MetalVolume(Grams(1), Grams(0), Density.Zero, Wax) },
        { "patternDensity", () => WeighedTree.MetalVolume(Grams(1), Grams(0), Wax, Density.Zero) },
        { "pattern", () => PatternVolume.Compute(Grams(-1), Wax) },
        { "material", () => PatternVolume.Compute(Grams(1), Density.Zero) },
        { "pattern", () => MetalForPattern.Compute(Ml(-1), Wax) },
        { "alloy", () => MetalForPattern.Compute(Ml(1), Density.Zero) },
        { "pattern", () => MetalForPattern.Compute(Grams(-1), Wax, Wax) },
        { "patternDensity", () => MetalForPattern.Compute(Grams(1), Density.Zero, Wax) },
        { "alloyDensity", () => MetalForPattern.Compute(Grams(1), Wax, Density.Zero) },
        { "flask", () => FillVolume.Compute(Ml(-1), Ml(0)) },
        { "charge", () => RemeltLimit.Compute(Grams(-1), Percent(50), Grams(1)) },
        { "step", () => RemeltLimit.Compute(Grams(1), Percent(50), Grams(0)) },
        { "insideDiameter", () => _ = new CoreTrace(Mm(0), Mm(100), MouldCase.Slow, Hot, Hot) },
        { "height", () => _ = new CoreTrace(Mm(75), Mm(0), MouldCase.Slow, Hot, Hot) },
        { "toleranceDegrees", () => new CoreTrace(Mm(75), Mm(100), MouldCase.Slow, Hot, Hot).HoldUntilWithin(0) },
        { "depth", () => OpenMould.Lost(Hot, Mm(-1), Duration.FromMinutes(1), MouldCase.Slow) },
        { "displaced", () => FillVolume.Compute(Ml(1), Ml(-1)) },
        { "insideDiameter", () => FlaskVolume.Compute(Mm(-1), Mm(1)) },
        { "height", () => FlaskVolume.Compute(Mm(1), Mm(-1)) },
        { "insideDiameter", () => FlaskClasses.Of(Mm(0), Mm(1)) },
        { "height", () => FlaskClasses.Of(Mm(1), Mm(0)) },
        { "insideDiameter", () => TopClearance.Compute(CastingMethod.Spin, Mm(0)) },
        { "total", () => MakeAlloy.Compute(Composition.Of("Ag 1000"), Grams(-1), []) },
        { "carats", () => Fineness.FromCarats(-1) },
    };

    [Theory]
    [MemberData(nameof(Arguments))]
    public void Compute_ArgumentOutOfRange_NamesIt(string name, Action refused) =>
        Should.Throw<ArgumentOutOfRangeException>(refused).ParamName.ShouldBe(name);

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Compute_OutOfRange_SaysWhy(string sentence, Action refused) =>
        Should.Throw<Exception>(refused).Message.ShouldStartWith(sentence);

    private static Volume Ml(double value) => Volume.FromMilliliters(value);

    private static Mass Grams(double value) => Mass.FromGrams(value);

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Ratio Percent(double value) => Ratio.FromPercent(value);
}
