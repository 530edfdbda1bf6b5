using CastBook.Casting.Investing;
using CastBook.Casting.Patterns;
using CastBook.Casting.Tests.Published;
using UnitsNet;

namespace CastBook.Casting.Tests.Investing;

public class PowderAndWaterTests
{
    private static readonly Density Powder = PowderAndWater.UsualPowderDensity;
    private static readonly Mass FineStep = Mass.FromGrams(0.001);

    public static TheoryData<string, string, string> Water => PublishedTable.Three("investment-water.csv");

    // The step is the whole batch, so that the powder is the source's own number.
    [Theory]
    [MemberData(nameof(Water))]
    public void Water_AgreesWithPublishedExamples(string powderGrams, string per100, string printedMl)
    {
        var batch = Mass.FromGrams(PublishedNumber.Parse(powderGrams).Value);
        var printed = PublishedNumber.Parse(printedMl);

        var mix = PowderAndWater.Compute(Volume.FromMilliliters(1), PublishedNumber.Parse(per100).Value, Powder, batch);

        mix.Powder.ShouldBe(batch);
        mix.Water.Milliliters.ShouldBe(printed.Value, printed.Tolerance);
    }

    // A maker's chart fills the flask with some over; ours must come within 8 % of it at the chart's own ratio.
    [Fact]
    public void Powder_AgreesWithPublishedCharts()
    {
        var compared = PublishedTable.Rows("investment-charts.csv", 5).Where(row => row[4] == "yes").ToList();

        compared.Count.ShouldBe(3);
        foreach (var row in compared)
        {
            var printed = PublishedNumber.Parse(row[2]).Value;
            var per100 = PublishedNumber.Parse(row[3]).Value / printed * 100;

            var mix = PowderAndWater.Compute(FillVolume.Compute(Flask(row), Volume.Zero), per100, Powder, FineStep);

            mix.Powder.Grams.ShouldBe(printed, 0.08 * printed, $"{row[0]} × {row[1]} in");
        }
    }

    // 100 g at 40 of water make 100/2.6 + 40 = 78.46 ml. The band leaves room for the waste in the bowl.
    [Fact]
    public void Powder_OfPublishedFlasks_IsWithinTheBandOfTheFlaskVolume()
    {
        foreach (var row in PublishedTable.Rows("investment-charts.csv", 5))
        {
            var flask = Flask(row);
            var exactFill = flask.Milliliters / 78.5 * 100;

            var mix = PowderAndWater.Compute(FillVolume.Compute(flask, Volume.Zero), 40, Powder, Mass.FromGrams(1));

            mix.Powder.Grams.ShouldBeInRange(0.9 * exactFill, 1.15 * exactFill);
        }
    }

    // By hand: 500 / (1/2.6 + 0.40) = 637.25 g, so 640 g on a step of 5 g, with 640 × 0.40 = 256 ml.
    // Water from the unrounded powder would be 254.9; 500 / (2.6 + 0.4) would be 167 g.
    [Fact]
    public void Compute_HandWorked_RoundsPowderUpAndKeepsTheRatio()
    {
        var mix = PowderAndWater.Compute(Volume.FromMilliliters(500), 40, Powder, Mass.FromGrams(5));

        mix.Powder.Grams.ShouldBe(640, 1e-9);
        mix.Water.Milliliters.ShouldBe(256, 1e-9);
    }

    [Fact]
    public void Compute_AnyFill_MakesThatVolume()
    {
        foreach (var ml in (double[])[30, 241, 788, 1668])
        {
            var mix = PowderAndWater.Compute(Volume.FromMilliliters(ml), 38, Powder, FineStep);

            ((mix.Powder / Powder) + mix.Water).Milliliters.ShouldBe(ml, 0.001);
        }
    }

    [Fact]
    public void Compute_Nothing_IsNothing()
    {
        var mix = PowderAndWater.Compute(Volume.Zero, 40, Powder, Mass.FromGrams(5));

        mix.Powder.Grams.ShouldBe(0);
        mix.Water.Milliliters.ShouldBe(0);
    }

    // Source: ganoksin.com Orchid thread 19887, a maker's specialist: 38 large, 39 medium, 40 fine castings.
    [Theory]
    [InlineData(PatternKind.Wax)]
    [InlineData(PatternKind.Resin)]
    public void UsualWater_LiesWithinPublishedTable(PatternKind kind) =>
        PowderAndWater.UsualWaterPer100(kind).ShouldBeInRange(38, 40);

    [Fact]
    public void Compute_OutOfRange_Throws()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => PowderAndWater.Compute(Volume.FromMilliliters(-1), 40, Powder, FineStep)).ParamName.ShouldBe("fill");
        Should.Throw<ArgumentOutOfRangeException>(() => PowderAndWater.Compute(Volume.Zero, 0, Powder, FineStep)).ParamName.ShouldBe("waterPer100");
        Should.Throw<ArgumentOutOfRangeException>(() => PowderAndWater.Compute(Volume.Zero, 40, Density.Zero, FineStep)).ParamName.ShouldBe("powderDensity");
        Should.Throw<ArgumentOutOfRangeException>(() => PowderAndWater.Compute(Volume.Zero, 40, Powder, Mass.Zero)).ParamName.ShouldBe("powderStep");
    }

    private static Volume Flask(string[] row) =>
        FlaskVolume.Compute(Length.FromInches(PublishedNumber.Parse(row[0]).Value), Length.FromInches(PublishedNumber.Parse(row[1]).Value));
}
