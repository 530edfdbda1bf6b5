using CastBook.Casting.Tests.Published;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Tests.Units;

public class TroyMassTests
{
    public static TheoryData<string, string, string> Handbook44 => PublishedTable.Three("troy-mass.csv");

    [Theory]
    [MemberData(nameof(Handbook44))]
    public void Grams_AgreeWithNistHandbook44(string unit, string amount, string printedGrams)
    {
        var printed = PublishedNumber.Parse(printedGrams);
        var number = PublishedNumber.Parse(amount).Value;

        var mass = unit switch
        {
            "gr" => TroyMass.FromGrains(number),
            "dwt" => TroyMass.FromPennyweights(number),
            "ozt" => TroyMass.FromTroyOunces(number),
            _ => TroyMass.FromCarats(number),
        };

        mass.Grams.ShouldBe(printed.Value, printed.Tolerance);
    }

    [Fact]
    public void Ratios_AgreeWithPublishedOnes()
    {
        foreach (var row in PublishedTable.Rows("unit-ratios.csv", 3))
        {
            var printed = PublishedNumber.Parse(row[2]);

            Ratio(row[0], row[1]).ShouldBe(printed.Value, printed.Tolerance, string.Join(' ', row));
        }
    }

    // A thousand to and fro in each unit: nothing is lost but dust.
    [Fact]
    public void Units_RoundTrip_KeepTheMass()
    {
        const int Seed = 480;
        var random = new Random(Seed);
        for (var i = 0; i < 1000; i++)
        {
            var grams = random.NextDouble() * Math.Pow(10, random.Next(-3, 5));
            var mass = Mass.FromGrams(grams);

            double[] back =
            [
                TroyMass.FromGrains(mass.Grains()).Grams, TroyMass.FromPennyweights(mass.Pennyweights()).Grams,
                TroyMass.FromTroyOunces(mass.TroyOunces()).Grams, TroyMass.FromCarats(mass.Carats()).Grams,
            ];
            back.Max(value => Math.Abs(value - grams)).ShouldBeLessThanOrEqualTo(1e-12 * grams, $"seed {Seed}, case {i}");
        }
    }

    // The ounce of the post office instead of the troy ounce would give 28.35 g.
    [Fact]
    public void FromTroyOunces_One_IsNotThePostalOunce() =>
        (TroyMass.FromTroyOunces(1) / Mass.FromOunces(1)).ShouldBe(1.0971, 0.00005);

    private static double Ratio(string one, string other) => (one, other) switch
    {
        ("in", "mm") => Length.FromInches(1).Millimeters,
        ("in3", "ml") => Volume.FromCubicInches(1).Milliliters,
        _ => In(other, Of(one)),
    };

    private static Mass Of(string unit) => unit switch
    {
        "lb" => Mass.FromPounds(1),
        "oz" => Mass.FromOunces(1),
        "ozt" => TroyMass.FromTroyOunces(1),
        "dwt" => TroyMass.FromPennyweights(1),
        _ => TroyMass.FromCarats(1),
    };

    private static double In(string unit, Mass mass) => unit switch
    {
        "oz" => mass.Ounces,
        "ozt" => mass.TroyOunces(),
        "dwt" => mass.Pennyweights(),
        "gr" => mass.Grains(),
        "ct" => mass.Carats(),
        _ => mass.Grams,
    };
}
