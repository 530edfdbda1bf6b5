using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests;

public sealed class ShopUnitsTests
{
    private const int Seed = 20261126;

    private static IEnumerable<WrittenMass> Masses => WrittenMass.OfMetal.Concat(WrittenMass.OfPowder).Concat(WrittenMass.OfBuying);

    // NIST Handbook 44, Appendix C, "Units of Mass": all exact. 12 dwt and 5 oz troy keep a swap of the two from passing.
    [Theory]
    [InlineData("g", 1)]
    [InlineData("kg", 1000)]
    [InlineData("dwt", 1.55517384)]
    [InlineData("troy oz", 31.1034768)]
    [InlineData("lb", 453.59237)]
    [InlineData("oz", 28.349523125)]
    public void One_OfEveryUnit_IsWhatTheHandbookSays(string name, double grams) =>
        Masses.Where(u => u.Name == name).ShouldAllBe(u => Math.Abs(u.One.Grams - grams) < 1e-12 * grams);

    // 231 cubic inches to the gallon of 128 fluid ounces, 16.387064 ml to the cubic inch: NIST Handbook 44, Appendix C.
    // A step of 4 oz is 113.398093 g, which no scale shows and nobody typed.
    [Theory]
    [InlineData(4 * 28.349523125, "113.4 g")]
    [InlineData(28.349523125, "28.35 g")]
    [InlineData(12.345, "12.345 g")]
    [InlineData(0.125, "0.125 g")]
    [InlineData(0.0005, "0.0005 g")]
    [InlineData(40 * 28.349523125, "1,134 g")]
    [InlineData(5, "5 g")]
    [InlineData(0, "0 g")]
    public void SayExactly_StepOfAnotherUnit_HasFiveDigits(double grams, string said) => WrittenMass.Gram.SayExactly(Mass.FromGrams(grams)).ShouldBe(said);

    [Fact]
    public void One_UsFluidOunce_IsWhatTheHandbookSays() =>
        WrittenVolume.UsFluidOunce.One.Milliliters.ShouldBe(231 * 16.387064 / 128, 1e-9);

    [Fact]
    public void Say_HandWorked_HasTheDigitsOfAScale()
    {
        var mass = Mass.FromGrams(124.32);

        WrittenMass.OfMetal.Select(u => u.Say(mass)).ShouldBe(["124 g", "79.94 dwt", "3.997 troy oz"]);
        WrittenMass.OfPowder.Select(u => u.Say(Mass.FromGrams(1430))).ShouldBe(["1,430 g", "1.430 kg", "3.15 lb", "50.4 oz"]);
        (WrittenMass.Gram.Say(Mass.FromGrams(99.94)), WrittenMass.Gram.Say(Mass.FromGrams(99.96))).ShouldBe(("99.9 g", "100 g"));
        (WrittenTemperature.Fahrenheit.Say(732), WrittenTemperature.Fahrenheit.SayDegrees(20)).ShouldBe(("1,350 °F", "36 °F"));
        (WrittenLength.Inch.Say(Length.FromMillimeters(76.2)), WrittenLength.Millimetre.Say(Length.FromMillimeters(76.24))).ShouldBe(("3.00 in", "76.2 mm"));
    }

    [Fact]
    public void In_AnyMassOfAnyUnit_ComesBackWithinHalfOfWhatIsToldApart()
    {
        var random = new Random(Seed);
        foreach (var (unit, i) in Masses.SelectMany(u => Enumerable.Range(0, 500).Select(i => (u, i))))
        {
            var mass = Mass.FromGrams(random.NextDouble() * 5000);

            (unit.One * unit.In(mass)!.Value).Grams.ShouldBe(mass.Grams, (unit.Least.Grams / 2) + 1e-9, $"{unit.Name}, seed {Seed}, case {i}");
            (unit.One * unit.UpIn(mass)).Grams.ShouldBeInRange(mass.Grams - (unit.Least.Grams * 1e-5), mass.Grams + unit.Least.Grams, $"{unit.Name} up, seed {Seed}, case {i}");
        }
    }

    // What is on the paper must be on the scale: the step can be written without a rest, and is never finer than the shop's.
    [Fact]
    public void Step_AnyStepOfTheShops_CanBeWritten()
    {
        var random = new Random(Seed);
        foreach (var (unit, i) in WrittenMass.OfMetal.Concat(WrittenMass.OfPowder).Where(u => !u.IsGrams).SelectMany(u => Enumerable.Range(0, 200).Select(i => (u, i))))
        {
            var said = Mass.FromGrams(random.NextDouble() * 10);

            var step = unit.Step(said);

            step.Grams.ShouldBeInRange(said.Grams - 1e-4, said.Grams + unit.Least.Grams, $"{unit.Name}, seed {Seed}, case {i}");
            (step / unit.Least).ShouldBe(Math.Round(step / unit.Least), 1e-6);
        }
    }

    // A step of 0.1 g is 0.0643 dwt: in hundredths the next is 0.07. One of a pennyweight is one.
    [Fact]
    public void Step_HandWorked_IsTheNextThatCanBeWritten()
    {
        WrittenMass.Pennyweight.Step(Mass.FromGrams(0.1)).Grams.ShouldBe(0.07 * 1.55517384, 1e-9);
        WrittenMass.Pennyweight.Step(Mass.FromGrams(1.55517384)).Grams.ShouldBe(1.55517384, 1e-9);
        WrittenMass.Gram.Step(Mass.FromGrams(0.125)).Grams.ShouldBe(0.125);
        Masses.ShouldAllBe(u => u.Step(null).Grams.Equals(u.UsualStep.Grams) && Math.Abs((u.UsualStep / u.Least) - Math.Round(u.UsualStep / u.Least)) < 1e-6);
    }

    public static TheoryData<string, string> UnitsOfANight
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var metal in WrittenMass.OfMetal)
            {
                foreach (var powder in WrittenMass.OfPowder)
                {
                    all.Add(metal.Name, powder.Name);
                }
            }

            return all;
        }
    }

    // Pieces, tree and button with their loss, and never less; the ratio of water to powder kept; nothing lost between fresh and re-melt.
    [Theory]
    [MemberData(nameof(UnitsOfANight))]
    public void Plan_InAnyUnits_WhatIsWrittenIsEnoughAndKeepsTheRatio(string metalName, string powderName)
    {
        var (metal, powder) = (WrittenMass.OfMetal.First(u => u.Name == metalName), WrittenMass.OfPowder.First(u => u.Name == powderName));
        var settings = Wrenmoor.Answered with { MetalIn = metal, PowderIn = powder, ChargeStep = null, PowderStep = null };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Settings = settings }, Wrenmoor.Ring()));

        var flask = plan.Flasks.ShouldHaveSingleItem();
        var needed = (flask.PiecesMetal + flask.TreeMetal + flask.Button).Grams * 1.01;
        (metal.One * metal.In(flask.Charge)!.Value).Grams.ShouldBe(flask.Charge.Grams, 1e-9);
        flask.Charge.Grams.ShouldBeInRange(needed - 1e-6, needed + metal.UsualStep.Grams);
        var written = powder.One * powder.In(flask.Powder)!.Value;
        written.Grams.ShouldBe(flask.Powder!.Value.Grams, 1e-9);
        (flask.Water!.Value.Milliliters / written.Grams).ShouldBe(0.40, 1e-9);
    }

    [Fact]
    public void Of_NothingSaid_IsAsEverywhere()
    {
        var units = ShopUnits.Of(new Settings());

        (units.Metal.Name, units.Powder.Name, units.Water.Name, units.Temperature.Name, units.Length.Name, units.Buying.Name).ShouldBe(("g", "g", "ml", "°C", "mm", "g"));
        ShopUnits.Of(new Settings { MetalIn = WrittenMass.TroyOunce }).Buying.Name.ShouldBe("troy oz");
        ShopUnits.Of(new Settings { MetalIn = WrittenMass.Pennyweight, MetalBoughtIn = WrittenMass.OfBuying[1] }).Buying.Name.ShouldBe("kg");
    }

    // Exact: 29.5735295625 ml. The switch to whole millilitres looks at what is shown.
    [Theory]
    [InlineData(52, "52.0 ml", "1.76 US fl oz")]
    [InlineData(99.94, "99.9 ml", "3.38 US fl oz")]
    [InlineData(99.96, "100 ml", "3.38 US fl oz")]
    [InlineData(2957.35295625, "2,957 ml", "100.00 US fl oz")]
    public void SayFinely_Volume_HasTheDigitsOfAVessel(double millilitres, string metric, string us)
    {
        var volume = Wrenmoor.Ml(millilitres);

        WrittenVolume.Millilitre.SayFinely(volume).ShouldBe(metric);
        WrittenVolume.UsFluidOunce.SayFinely(volume).ShouldBe(us);
    }

    [Fact]
    public void Choices_OfTheGuide_AreTheUnitsThereAre()
    {
        SettingGuide.Of(SettingName.MetalIn).Choices.ShouldBe(WrittenMass.OfMetal.Select(u => u.Name));
        SettingGuide.Of(SettingName.PowderIn).Choices.ShouldBe(WrittenMass.OfPowder.Select(u => u.Name));
        SettingGuide.Of(SettingName.WaterIn).Choices.ShouldBe(WrittenVolume.All.Select(u => u.Name));
        SettingGuide.Of(SettingName.TemperaturesIn).Choices.ShouldBe(WrittenTemperature.All.Select(u => u.Name));
        SettingGuide.Of(SettingName.LengthsIn).Choices.ShouldBe(WrittenLength.All.Select(u => u.Name));
        SettingGuide.Of(SettingName.MetalBoughtIn).Choices.ShouldBe(WrittenMass.OfBuying.Select(u => u.Name));
    }

    // By hand: 20 and 3 mm are 0.787 and 0.118 in of 25.4 mm; differences of 20 and 25 °C are 36 and 45 °F.
    [Theory]
    [InlineData(SettingName.GapInKiln, "in", "Empty: 0.79.")]
    [InlineData(SettingName.GapBetweenPieces, "in", "Empty: 0.12.")]
    [InlineData(SettingName.GateLength, "in", "Empty: at most 0.28.")]
    [InlineData(SettingName.CoreTolerance, "°F", "Empty: 36 before a pour, 45 at the top.")]
    [InlineData(SettingName.ChargeStep, "dwt", "Empty: 1 g, 1 dwt or 0.05 troy oz, as metal is written.")]
    [InlineData(SettingName.PowderStep, "lb", "as powder is written.")]
    [InlineData(SettingName.MeltLoss, "%", "Empty: 1.")]
    public void In_UnitedStates_UnitAndUsualValuesAreTheShops(string setting, string unit, string end)
    {
        var guide = SettingGuide.Of(setting).In(ShopUnits.UnitedStates);

        guide.Unit.ShouldBe(unit);
        guide.WhatFor.ShouldEndWith(end);
    }

    [Fact]
    public void In_UnitsNobodyNamed_NothingIsToldOtherwise() =>
        SettingGuide.All.Select(g => g.In(ShopUnits.Metric)).ShouldBe(SettingGuide.All);
}
