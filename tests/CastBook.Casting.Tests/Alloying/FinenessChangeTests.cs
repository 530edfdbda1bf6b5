using CastBook.Casting.Alloying;
using CastBook.Casting.Metals;
using CastBook.Casting.Tests.Published;
using UnitsNet;

namespace CastBook.Casting.Tests.Alloying;

public class FinenessChangeTests
{
    private static readonly Ratio Fine = Fineness.Fine;

    [Fact]
    public void Added_AgreesWithWorkedExamples()
    {
        foreach (var row in PublishedTable.Rows("alloying-worked.csv", 7))
        {
            var expected = PublishedNumber.Parse(row[5]);
            var numbers = row[1..5].Select(text => PublishedNumber.Parse(text).Value).ToArray();

            var added = row[0] == "raise silver"
                ? RaiseFineness.Compute(Mass.FromGrams(numbers[0]), PerMille(numbers[1]), PerMille(numbers[2]), PerMille(numbers[3])).Grams
                : Added(row[0], numbers[0], numbers[1], numbers[2]);

            added.ShouldBe(expected.Value, expected.Tolerance * PublishedNumber.Parse(row[6]).Value, string.Join(' ', row));
        }
    }

    [Fact]
    public void Factors_AgreeWithPrintedChart()
    {
        foreach (var row in PublishedTable.Rows("karat-factors.csv", 14))
        {
            var from = PublishedNumber.Parse(row[0]).Value;
            for (var to = 10; to <= 22; to++)
            {
                var printed = PublishedNumber.Parse(row[to - 9]);

                Added(to >= from ? "raise" : "lower", 1, from, to).ShouldBe(printed.Value, printed.Tolerance, $"{from} to {to}");
            }
        }
    }

    [Fact]
    public void LoweringFactors_AgreeWithASecondChart()
    {
        foreach (var row in PublishedTable.Rows("karat-factors-lower.csv", 3))
        {
            var printed = PublishedNumber.Parse(row[2]);

            Added("lower", 1, PublishedNumber.Parse(row[0]).Value, PublishedNumber.Parse(row[1]).Value)
                .ShouldBe(printed.Value, printed.Tolerance, string.Join(' ', row));
        }
    }

    [Fact]
    public void Factors_PrintedWrong_AreNotFollowed()
    {
        foreach (var row in PublishedTable.Rows("karat-factors-misprinted.csv", 5))
        {
            var wrong = PublishedNumber.Parse(row[3]);
            var right = PublishedNumber.Parse(row[4]);

            var added = Added(row[0], 1, PublishedNumber.Parse(row[1]).Value, PublishedNumber.Parse(row[2]).Value);

            added.ShouldBe(right.Value, right.Tolerance, string.Join(' ', row));
            Math.Abs(added - wrong.Value).ShouldBeGreaterThan(wrong.Tolerance, string.Join(' ', row));
        }
    }

    // By hand: 30 g of 9 k hold 11.25 g of gold and 18.75 g of other metal. With 18 k, of which a quarter is other metal, 14 k
    // (10/24 other) takes x where 18.75 + x/4 = (30 + x) × 10/24: x = 37.5 g. Swapping 9 and 14 k cannot be; with fine gold it is 15 g.
    [Fact]
    public void Compute_RaisedWithARicherAlloy_TakesMoreThanWithFineGold()
    {
        RaiseFineness.Compute(Mass.FromGrams(30), Carats(9), Carats(14), Carats(18)).Grams.ShouldBe(37.5, 1e-9);
        RaiseFineness.Compute(Mass.FromGrams(30), Carats(9), Carats(14), Fine).Grams.ShouldBe(15, 1e-9);
    }

    // By hand: 100 × (1000 − 925) / 925. Dividing by the fineness at hand would give 7.5 g.
    [Fact]
    public void Compute_LoweredFineSilverToSterling_TakesEightGramsOfCopper() =>
        MakeAlloy.Compute(Composition.Of("Ag 925 Cu 75"), Mass.FromGrams(100 * 1000 / 925d), [new(Composition.Of("Ag 1000"), Mass.FromGrams(100))])
            .StillToAdd.ShouldHaveSingleItem().Mass.Grams.ShouldBe(8.108, 0.0005);

    [Fact]
    public void Added_NothingOrNoChange_IsZero()
    {
        RaiseFineness.Compute(Mass.Zero, Carats(14), Carats(18), Fine).Grams.ShouldBe(0);
        RaiseFineness.Compute(Mass.FromGrams(5), Carats(14), Carats(14), Fine).Grams.ShouldBe(0);
    }

    [Fact]
    public void Compute_RaisedWrongWayOrNegative_IsRefused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => RaiseFineness.Compute(Mass.FromGrams(1), Carats(18), Carats(14), Fine)).ParamName.ShouldBe("from");
        Should.Throw<ArgumentOutOfRangeException>(() => RaiseFineness.Compute(Mass.FromGrams(1), PerMille(-1), Carats(14), Fine)).ParamName.ShouldBe("from");
        Should.Throw<ArgumentOutOfRangeException>(() => RaiseFineness.Compute(Mass.FromGrams(1), Carats(10), Carats(14), Carats(14))).ParamName.ShouldBe("with");
        Should.Throw<ArgumentOutOfRangeException>(() => RaiseFineness.Compute(Mass.FromGrams(1), Carats(10), Carats(14), Carats(12))).ParamName.ShouldBe("with");
        Should.Throw<ArgumentOutOfRangeException>(() => RaiseFineness.Compute(Mass.FromGrams(1), Carats(10), Carats(14), PerMille(1001))).ParamName.ShouldBe("with");
        Should.Throw<ArgumentOutOfRangeException>(() => RaiseFineness.Compute(Mass.FromGrams(-1), Carats(10), Carats(14), Fine)).ParamName.ShouldBe("metal");
    }

    // An alloy is lowered by the recipe of the poorer one: all of it goes in, and copper fills it up to the mass that its gold makes.
    private static double Added(string way, double grams, double from, double to) => way == "raise"
        ? RaiseFineness.Compute(Mass.FromGrams(grams), Carats(from), Carats(to), Fine).Grams
        : MakeAlloy.Compute(GoldWithCopper(to), Mass.FromGrams(grams * from / to), [new(GoldWithCopper(from), Mass.FromGrams(grams))])
            .StillToAdd.Sum(part => part.Symbol == "Cu" ? part.Mass.Grams : double.NaN);

    private static Composition GoldWithCopper(double carats) => Composition.Of(FormattableString.Invariant($"Au {1000 * carats / 24} Cu {1000 * (24 - carats) / 24}"));

    private static Ratio Carats(double carats) => Fineness.FromCarats(carats);

    private static Ratio PerMille(double parts) => Ratio.FromPartsPerThousand(parts);
}
