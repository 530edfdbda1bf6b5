using CastBook.Casting.Patterns;
using CastBook.Casting.Tests.Published;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Tests.Patterns;

public class MetalForPatternTests
{
    private static readonly Density Wax = Density.FromGramsPerCubicCentimeter(0.93);
    private static readonly Density Alloy = Density.FromGramsPerCubicCentimeter(15.5);

    [Fact]
    public void Mass_AgreesWithPublishedExamples()
    {
        foreach (var row in PublishedTable.Rows("pattern-to-metal.csv", 5))
        {
            var number = row.Select(PublishedNumber.Parse).ToArray();

            var metal = MetalForPattern.Compute(TroyMass.FromPennyweights(number[0].Value), Gcc(number[1].Value), Gcc(number[2].Value));

            var digit = 2 * number[3].Tolerance;
            metal.Pennyweights().ShouldBe(number[3].Value, digit * number[4].Value);
        }
    }

    // By hand: 2.79 / 0.93 = 3 cm³; 3 × 15.5 = 46.5 g. Swapping the densities would give 0.1674 g.
    [Fact]
    public void Compute_HandWorkedPattern_GivesItsVolumeInMetal()
    {
        MetalForPattern.Compute(Mass.FromGrams(2.79), Wax, Alloy).Grams.ShouldBe(46.5, 1e-9);
        PatternVolume.Compute(Mass.FromGrams(2.79), Wax).Milliliters.ShouldBe(3, 1e-9);
        MetalForPattern.Compute(Volume.FromMilliliters(3), Alloy).Grams.ShouldBe(46.5, 1e-9);
    }

    // For the same mass, 1.00 in place of 1.15 overstates the metal by 15 %.
    [Fact]
    public void Compute_ResinTakenAsOne_OverstatesByFifteenPercent()
    {
        var resin = Mass.FromGrams(7);

        var ratio = MetalForPattern.Compute(resin, Gcc(1.00), Alloy) / MetalForPattern.Compute(resin, Gcc(1.15), Alloy);

        ratio.ShouldBe(1.15, 1e-9);
    }

    [Fact]
    public void Compute_Zero_GivesZero() => MetalForPattern.Compute(Mass.Zero, Wax, Alloy).Grams.ShouldBe(0);

    [Fact]
    public void Compute_SplitPattern_KeepsTheMetal()
    {
        var random = new Random(20);
        for (var i = 0; i < 1000; i++)
        {
            var whole = random.NextDouble() * 500;
            var part = whole * random.NextDouble();

            var split = MetalForPattern.Compute(Mass.FromGrams(part), Wax, Alloy) + MetalForPattern.Compute(Mass.FromGrams(whole - part), Wax, Alloy);

            split.Grams.ShouldBe(MetalForPattern.Compute(Mass.FromGrams(whole), Wax, Alloy).Grams, 1e-9 * (1 + (whole * 17)), $"seed 20, case {i}");
        }
    }

    [Fact]
    public void Compute_OutOfRange_Throws()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => MetalForPattern.Compute(Mass.FromGrams(-1), Wax, Alloy)).ParamName.ShouldBe("pattern");
        Should.Throw<ArgumentOutOfRangeException>(() => MetalForPattern.Compute(Mass.FromGrams(1), Density.Zero, Alloy)).ParamName.ShouldBe("patternDensity");
        Should.Throw<ArgumentOutOfRangeException>(() => MetalForPattern.Compute(Mass.FromGrams(1), Wax, Density.Zero)).ParamName.ShouldBe("alloyDensity");
        Should.Throw<ArgumentOutOfRangeException>(() => MetalForPattern.Compute(Volume.FromMilliliters(-1), Alloy)).ParamName.ShouldBe("pattern");
        Should.Throw<ArgumentOutOfRangeException>(() => PatternVolume.Compute(Mass.FromGrams(1), Density.Zero)).ParamName.ShouldBe("material");
    }

    private static Density Gcc(double value) => Density.FromGramsPerCubicCentimeter(value);
}
