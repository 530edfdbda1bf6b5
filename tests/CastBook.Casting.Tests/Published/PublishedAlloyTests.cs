using CastBook.Casting.Metals;
using CastBook.Casting.Patterns;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Tests.Published;

/// <summary>Built-in alloys beside other people's lists, the misprints among them.</summary>
public class PublishedAlloyTests
{
    [Fact]
    public void Densities_AgreeWithTradeLists()
    {
        foreach (var row in PublishedTable.Rows("densities-in-trade-lists.csv", 3))
        {
            var printed = PublishedNumber.Parse(row[1]);
            var percent = PublishedNumber.Parse(row[2]).Value;

            Density(row[0]).ShouldBe(printed.Value, Math.Max(printed.Tolerance, percent / 100 * printed.Value), row[0]);
        }
    }

    [Fact]
    public void MetalForAGramOfWax_AgreesWithTradeFactors()
    {
        foreach (var row in PublishedTable.Rows("metal-for-a-gram-of-wax.csv", 3))
        {
            var alloy = UnitsNet.Density.FromGramsPerCubicCentimeter(Density(row[0]));
            var printed = PublishedNumber.Parse(row[1]).Value;

            var metal = MetalForPattern.Compute(Mass.FromGrams(1), UnitsNet.Density.FromGramsPerCubicCentimeter(1), alloy);

            metal.Grams.ShouldBe(printed, PublishedNumber.Parse(row[2]).Value / 100 * printed, row[0]);
        }
    }

    [Fact]
    public void Densities_PrintedWrong_AreNotFollowed()
    {
        foreach (var row in PublishedTable.Rows("densities-misprinted.csv", 3))
        {
            Math.Abs(Density(row[0]) - PublishedNumber.Parse(row[1]).Value).ShouldBeGreaterThan(PublishedNumber.Parse(row[2]).Value, row[0]);
        }
    }

    [Fact]
    public void Compositions_PrintedWrong_AreRefused()
    {
        foreach (var row in PublishedTable.Rows("compositions-refused.csv", 3))
        {
            Composition.TryParse(row[0], out _, out var why).ShouldBeFalse(row[0]);
            why.ShouldBe(new CompositionFault(Enum.Parse<CompositionFaultKind>(row[1]), row[2]));
        }
    }

    // Source: Materials Chemistry 2e, Table 3.4, 18 k white, sum 100.5 %: within what rounding of each part can do.
    [Fact]
    public void Composition_SumWithinRounding_IsRead() =>
        Composition.TryParse("Au 750 Cu 22.3 Zn 54.7 Ni 177.9", out _, out _).ShouldBeTrue();

    // Source: azom.com 2372 calls 37.5 % "10 ct"; it is 9.
    [Fact]
    public void FinenessClaim_ThreeHundredAndSeventyFive_IsNineCarats() =>
        FinenessClaim.Of("375")!.ShouldBe(FinenessClaim.Of("9k"));

    [Fact]
    public void PreciousInAMillilitre_AgreesWithPublishedRatios()
    {
        foreach (var row in PublishedTable.Rows("precious-in-a-millilitre.csv", 4))
        {
            var printed = PublishedNumber.Parse(row[3]);

            var grams = PublishedNumber.Parse(row[0]).Value * Fineness.Of(Composition.Of(row[1]), row[2]).DecimalFractions;

            grams.ShouldBe(printed.Value, printed.Tolerance, row[1]);
        }
    }

    [Fact]
    public void Temperatures_AgreeInBothScales()
    {
        foreach (var row in PublishedTable.Rows("temperatures.csv", 3))
        {
            Temperature.FromDegreesFahrenheit(PublishedNumber.Parse(row[0]).Value).DegreesCelsius
                .ShouldBe(PublishedNumber.Parse(row[1]).Value, PublishedNumber.Parse(row[2]).Value, row[0]);
        }
    }

    // Between the two measurements on either side, in proportion.
    [Fact]
    public void GreenGold_MeltsBetweenTheMeasurements()
    {
        var rows = PublishedTable.Rows("gold-silver-melting.csv", 3).Select(row => row.Select(text => PublishedNumber.Parse(text).Value).ToArray()).ToList();
        var green = BuiltInAlloys.Named("18k green without copper").Single();
        var part = (75 - rows[0][0]) / (rows[1][0] - rows[0][0]);

        green.Liquidus!.Value.DegreesCelsius.ShouldBe(rows[0][1] + (part * (rows[1][1] - rows[0][1])), 0.5);
        green.Solidus!.Value.DegreesCelsius.ShouldBe(rows[0][2] + (part * (rows[1][2] - rows[0][2])), 0.5);
    }

    // Source: wiki.tinkermill.org, casting: 9 g of wax × 10.4 and a tenth more, printed as 99.9 and rounded down to 99.
    [Fact]
    public void Metal_WithATenthMore_IsNotRoundedDown()
    {
        var metal = MetalForPattern.Compute(
            Mass.FromGrams(9), UnitsNet.Density.FromGramsPerCubicCentimeter(1), UnitsNet.Density.FromGramsPerCubicCentimeter(10.4)) * 1.1;

        metal.Grams.ShouldBe(102.96, 0.005);
        ScaleStep.Up(metal, Mass.FromGrams(1)).Grams.ShouldBe(103, 1e-9);
    }

    // Source: a general page on the weight of platings: gold, 100 cm² and 5 µm, printed as 0.0966 g, which is ten times too little.
    // By hand: 100 cm² × 0.0005 cm = 0.05 cm³; 0.05 × 19.32 = 0.966 g.
    [Fact]
    public void Metal_OfACoatOfGold_IsNotATenth()
    {
        var coat = Area.FromSquareCentimeters(100) * Length.FromMicrometers(5);

        var metal = MetalForPattern.Compute(coat, UnitsNet.Density.FromGramsPerCubicCentimeter(Density("fine gold")));

        metal.Grams.ShouldBe(0.966, 0.0005);
    }

    private static double Density(string nameOrComposition) =>
        (Composition.TryParse(nameOrComposition, out var composition, out _)
            ? DensityFromComposition.Compute(composition).Density
            : BuiltInAlloys.Named(nameOrComposition).Single().Density!.Value).GramsPerCubicCentimeter;
}
