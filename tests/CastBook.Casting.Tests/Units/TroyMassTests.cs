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

    // Source: ganoksin.com Orchid thread 15741, carats × 0.1286 = pennyweights.
    [Fact]
    public void Pennyweights_OfACarat_AgreeWithTradeFactor()
    {
        var printed = PublishedNumber.Parse("0.1286");

        TroyMass.FromCarats(1).Pennyweights().ShouldBe(printed.Value, printed.Tolerance);
    }

    // Source: statemaster.com, 1 lb = 14 7/12 ozt and 1 ozt = 20 dwt; auminer.com, 155.52 ct in 1 ozt.
    [Fact]
    public void Readings_OfKnownMasses_AgreeWithPublishedRatios()
    {
        Mass.FromPounds(1).TroyOunces().ShouldBe(14 + (7 / 12.0), 1e-9);
        TroyMass.FromTroyOunces(1).Pennyweights().ShouldBe(20, 1e-9);
        TroyMass.FromTroyOunces(1).Grains().ShouldBe(480, 1e-9);
        TroyMass.FromTroyOunces(1).Carats().ShouldBe(155.52, 0.005);
    }

    // The ounce of the post office instead of the troy ounce would give 28.35 g.
    [Fact]
    public void FromTroyOunces_One_IsNotThePostalOunce() =>
        (TroyMass.FromTroyOunces(1) / Mass.FromOunces(1)).ShouldBe(1.0971, 0.00005);
}
