using CastBook.Casting.Metals;
using CastBook.Casting.Pouring;
using CastBook.Casting.Tests.Heat;
using UnitsNet;

namespace CastBook.Casting.Tests.Published;

/// <summary>Temperatures of metal and flask, melting ranges and waits beside what other people printed.</summary>
public class PublishedTemperatureTests
{
    private static readonly Dictionary<string, (double Least, double Most)> Printed =
        PublishedTable.Rows("casting-temperatures.csv", 3).ToDictionary(r => r[0], r => (Number(r[1]), Number(r[2])));

    [Theory]
    [InlineData(CastingMethod.VacuumPerforated, "superheat vacuum")]
    [InlineData(CastingMethod.VacuumSolid, "superheat vacuum")]
    [InlineData(CastingMethod.Spin, "superheat spin")]
    public void Superheat_IsThePrintedBand(CastingMethod method, string printed)
    {
        var (least, most) = SuperheatBand.For(method);

        (least.DegreesFahrenheit, most.DegreesFahrenheit).ShouldBe((Printed[printed].Least, Printed[printed].Most));
    }

    [Fact]
    public void Sterling_IsPouredWithinWhatIsPrinted()
    {
        var (plain, deoxidised) = (BuiltInAlloys.Named("sterling without deoxidant")[0], BuiltInAlloys.Named("deoxidised sterling")[0]);

        plain.MetalTemperature!.Value.DegreesFahrenheit.ShouldBeInRange(Printed["sterling poured"].Least, Printed["sterling poured"].Most);
        plain.MetalTemperature.Value.DegreesFahrenheit.ShouldBe(Printed["sterling metal"].Least, 20);
        deoxidised.MetalTemperature!.Value.DegreesFahrenheit.ShouldBe(Printed["deoxidised sterling metal"].Least, 1);
        plain.FlaskTemperatureOrdinary!.Value.DegreesFahrenheit.ShouldBeInRange(Printed["sterling flask"].Least, Printed["sterling flask"].Most + 1);
        plain.FlaskTemperatureOrdinary.Value.DegreesFahrenheit.ShouldBeInRange(Printed["medium sections"].Least, Printed["medium sections"].Most);
    }

    // The longer wait is the safe one.
    [Fact]
    public void Quench_WaitsAsLongAsIsPrinted()
    {
        var (plain, deoxidised) = (BuiltInAlloys.Named("sterling without deoxidant")[0], BuiltInAlloys.Named("deoxidised sterling")[0]);

        plain.QuenchAfter.Large!.Value.Minutes.ShouldBe(Printed["quench sterling 4 × 8 in"].Most);
        deoxidised.QuenchAfter.Large!.Value.Minutes.ShouldBe(Printed["quench deoxidised 4 × 8 in"].Most);
        plain.QuenchAfter.Medium!.Value.Minutes.ShouldBe(Printed["quench in general"].Most);
    }

    // What is printed of golds depends on the composition, which is not printed with it: nothing of it is built in.
    [Fact]
    public void Golds_HaveNoTemperatureOfTheirOwn() => BuiltInAlloys.All
        .Where(a => a.Composition is { } parts && parts.PerMille("Au") > 0)
        .ShouldAllBe(a => !a.MetalTemperature.HasValue && !a.FlaskTemperatureFine.HasValue && !a.FlaskTemperatureOrdinary.HasValue && !a.FlaskTemperatureHeavy.HasValue);

    // From the thinnest section to the heaviest the flask gets colder, in the printed table as in a shop's own columns.
    [Fact]
    public void Sections_PrintedTable_FallsFromThinToHeavy()
    {
        string[] order = ["paper-thin", "filigree", "light sections", "medium sections", "heavy sections"];

        order.Zip(order.Skip(1)).ShouldAllBe(pair => Printed[pair.First].Least >= Printed[pair.Second].Most);
        Printed["gold flask small"].Least.ShouldBeGreaterThan(Printed["gold flask large"].Most);
    }

    // The lower the carat the hotter: a lower carat is not a lower melting point, and no white gold has one assumed.
    [Fact]
    public void WhiteGolds_OfLowerCarat_AreCastHotterAndAreAskedFor()
    {
        var rows = PublishedTable.Rows("white-gold-casting.csv", 3).OrderByDescending(r => Number(r[0])).ToList();

        rows.Zip(rows.Skip(1)).ShouldAllBe(pair => Number(pair.Second[1]) > Number(pair.First[1]) && Number(pair.Second[2]) > Number(pair.First[2]));
        BuiltInAlloys.Named("white gold").ShouldAllBe(white => !white.MetalTemperature.HasValue && !white.Liquidus.HasValue);
    }

    [Fact]
    public void CaratGolds_MeltAsPrinted()
    {
        foreach (var row in PublishedTable.Rows("carat-gold-melting.csv", 3))
        {
            var alloy = BuiltInAlloys.Named(row[0]).ShouldHaveSingleItem();

            alloy.Solidus!.Value.DegreesCelsius.ShouldBe(Number(row[1]), 1e-9);
            alloy.Liquidus!.Value.DegreesCelsius.ShouldBe(Number(row[2]), 1e-9);
        }
    }

    [Fact]
    public void Designations_NameThePrintedComposition()
    {
        foreach (var row in PublishedTable.Rows("designations.csv", 2))
        {
            BuiltInAlloys.Named(row[0]).ShouldHaveSingleItem().Composition!.ToString().ShouldBe(Composition.Of(row[1]).ToString(), row[0]);
        }
    }

    // Pounds to the cubic inch, both scales, and lead refused.
    [Fact]
    public void CopperAlloysNotBuiltIn_AgreeWithThemselves()
    {
        foreach (var row in PublishedTable.Rows("copper-alloys-refused.csv", 8))
        {
            if (row[1].Length > 0 && row[2].Length > 0)
            {
                var printed = PublishedNumber.Parse(row[2]);
                Density.FromPoundsPerCubicInch(Number(row[1])).GramsPerCubicCentimeter.ShouldBe(printed.Value, 0.0141 + printed.Tolerance, row[0]);
            }

            foreach (var (fahrenheit, celsius) in new[] { (row[3], row[5]), (row[4], row[6]) }.Where(pair => pair.Item1.Length > 0))
            {
                Temperature.FromDegreesFahrenheit(Number(fahrenheit)).DegreesCelsius.ShouldBe(Number(celsius), 1, row[0]);
            }

            BuiltInAlloys.Named(row[0]).Where(a => a.Density.HasValue || a.MetalTemperature.HasValue).ShouldBeEmpty(row[0]);
            if (row[7].Length > 0)
            {
                Composition.Of(row[7]).With(ElementHazard.Poison).Select(e => e.Symbol).ShouldBe(["Pb"], row[0]);
            }
        }
    }

    // Source: stpaulfoundry.com, C90300, light castings 2000 to 3000 °F: a slip for 2300. Nothing of copper is poured near it.
    [Fact]
    public void Bronze_PrintedThreeThousand_IsNotFollowed() => BuiltInAlloys.All
        .Where(a => a.Composition is { } parts && parts.PerMille("Cu") > 500)
        .ShouldAllBe(a => !a.MetalTemperature.HasValue || a.MetalTemperature.Value.DegreesFahrenheit < 2300);

    // Source: a university's worked example of a cylinder, printed as Y = 0.017 and 988 K: with its own numbers, Bi 0.5, Fo 2.2989
    // and half way out, the series gives 0.1377.
    [Fact]
    public void Cylinder_WorkedWrongInPrint_IsNotFollowed() => HeatSeries.Cylinder(0.5, 2.2989, 0.5).ShouldBe(0.1377, 0.0001);

    private static double Number(string printed) => PublishedNumber.Parse(printed).Value;
}
