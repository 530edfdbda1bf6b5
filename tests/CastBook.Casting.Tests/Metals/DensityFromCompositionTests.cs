using CastBook.Casting.Metals;
using CastBook.Casting.Tests.Published;

namespace CastBook.Casting.Tests.Metals;

public class DensityFromCompositionTests
{
    private static readonly string[] Compared = ["Zn", "Sn", "Si", "Co", "Al", "In"];

    public static TheoryData<string, string> Worked => PublishedTable.Two("mixing-rule-worked.csv");

    public static TheoryData<string, string> Measured => PublishedTable.Two("alloy-densities-measured.csv");

    public static TheoryData<string, string, string> RuleLow => PublishedTable.Three("alloy-densities-rule-low.csv");

    [Theory]
    [MemberData(nameof(Worked))]
    public void Density_AgreesWithWorkedExamples(string composition, string printed)
    {
        var expected = PublishedNumber.Parse(printed);

        var estimate = DensityFromComposition.Compute(Composition.Of(composition));

        estimate.Density.GramsPerCubicCentimeter.ShouldBe(expected.Value, expected.Tolerance);
        estimate.Reliable.ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(Measured))]
    public void Density_OfComparedElements_IsWithinOnePercentOfMeasurement(string composition, string printed)
    {
        var measured = PublishedNumber.Parse(printed).Value;

        var estimate = DensityFromComposition.Compute(Composition.Of(composition));

        estimate.Density.GramsPerCubicCentimeter.ShouldBe(measured, 0.01 * measured);
        estimate.Reliable.ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(RuleLow))]
    public void Density_WhereTheRuleReadsLow_IsNotCalledReliable(string composition, string printed, string lowBy)
    {
        var published = PublishedNumber.Parse(printed).Value;
        var most = PublishedNumber.Parse(lowBy).Value;

        var estimate = DensityFromComposition.Compute(Composition.Of(composition));

        estimate.Reliable.ShouldBeFalse();
        var lowPercent = 100 * (1 - (estimate.Density.GramsPerCubicCentimeter / published));
        lowPercent.ShouldBeInRange(most / 2, most);
        estimate.LowBy.HasValue.ShouldBe(!estimate.Doubtful.Except(Compared).Any());
        (estimate.LowBy?.Percent ?? most).ShouldBeGreaterThanOrEqualTo(lowPercent);
    }

    // What the table in the source says of each element; of several the worst. Germanium has not been compared.
    [Theory]
    [InlineData("Cu 700 Zn 300", 3.0)]
    [InlineData("Cu 900 Sn 100", 2.0)]
    [InlineData("Cu 970 Si 30", 6.0)]
    [InlineData("Pt 950 Co 50", 4.0)]
    [InlineData("Cu 920 Al 80", 6.0)]
    [InlineData("Au 900 In 100", 4.0)]
    [InlineData("Cu 850 Sn 50 Zn 100", 3.0)]
    [InlineData("Cu 850 Sn 50 Ge 100", null)]
    [InlineData("Ag 925 Cu 75", null)]
    public void LowBy_IsTheWorstOfItsElements(string composition, double? percent)
    {
        var lowBy = DensityFromComposition.Compute(Composition.Of(composition)).LowBy;

        lowBy.HasValue.ShouldBe(percent.HasValue);
        (lowBy?.Percent ?? 0).ShouldBe(percent ?? 0, 1e-9);
    }

    // From half platinum metals on they are among themselves, and silver is the stranger.
    [Theory]
    [InlineData("Pd 500 Ag 500", "Ag")]
    [InlineData("Pd 499 Ag 501", "Pd")]
    public void Doubtful_HalfPlatinumMetals_AreTheOthers(string composition, string doubtful) =>
        DensityFromComposition.Compute(Composition.Of(composition)).Doubtful.ShouldBe([doubtful]);

    [Fact]
    public void ByRule_WhereTheRuleIsNotReliable_IsRefused() =>
        Should.Throw<InvalidOperationException>(() => AlloyNumbers.ByRule(Composition.Of("Cu 900 Sn 100")));

    [Theory]
    [InlineData("Ag 995 Zn 5")]
    [InlineData("Cu 995 Sn 5")]
    [InlineData("Ag 995 Si 5")]
    [InlineData("Pt 995 Co 5")]
    [InlineData("Ag 995 Ge 5")]
    public void Reliable_ATraceOfAnElementNotCompared_IsFalse(string composition) =>
        DensityFromComposition.Compute(Composition.Of(composition)).Reliable.ShouldBeFalse();

    // By hand: half and half by mass of 10.49 and 8.96 gives 2 / (1/10.49 + 1/8.96) = 9.66482.
    // The arithmetic mean would give 9.725.
    [Fact]
    public void Compute_EqualMasses_GivesTheHarmonicMean() =>
        Grams("Ag 500 Cu 500").ShouldBe(9.66482, 5e-6);

    [Fact]
    public void Compute_PartsThatAddUpTo998_AreBroughtToAWhole() =>
        Grams("Ag 499 Cu 499").ShouldBe(Grams("Ag 500 Cu 500"), 1e-12);

    [Fact]
    public void Compute_OneElement_GivesItsOwnDensity()
    {
        foreach (var element in Elements.All)
        {
            Grams($"{element.Symbol} 1000").ShouldBe(element.Density.GramsPerCubicCentimeter, 1e-9);
        }
    }

    private static double Grams(string composition) =>
        DensityFromComposition.Compute(Composition.Of(composition)).Density.GramsPerCubicCentimeter;
}
