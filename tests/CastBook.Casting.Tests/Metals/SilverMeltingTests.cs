using CastBook.Casting.Metals;
using CastBook.Casting.Tests.Published;

namespace CastBook.Casting.Tests.Metals;

public class SilverMeltingTests
{
    private static readonly SilverCopperDiagram Diagram = new();

    [Fact]
    public void Diagram_Eutectic_AgreesWithPrintedDiagram()
    {
        var (celsius, silver, copperInSilver, silverInCopper) = Diagram.Eutectic();

        double[] worked = [celsius, silver, copperInSilver, silverInCopper];
        var rows = PublishedTable.Rows("silver-copper.csv", 2);
        for (var i = 0; i < worked.Length; i++)
        {
            var printed = PublishedNumber.Parse(rows[i][1]);
            worked[i].ShouldBe(printed.Value, printed.Tolerance, rows[i][0]);
        }
    }

    // The tables print whole degrees; 1 °C leaves room for the temperature scale of the time.
    [Fact]
    public void BuiltIn_SilverWithCopper_MeltsWhereTheAssessmentSays()
    {
        var alloys = BuiltInAlloys.All.Where(alloy => alloy.Composition is { Parts: [("Ag", < 1000), ("Cu", _)] } && alloy.Liquidus is not null).ToList();

        alloys.Count.ShouldBe(11);
        foreach (var alloy in alloys)
        {
            var silver = alloy.Composition!.PerMille("Ag");
            alloy.Liquidus!.Value.DegreesCelsius.ShouldBe(Diagram.Liquidus(silver), 1, alloy.Name);
            alloy.Solidus!.Value.DegreesCelsius.ShouldBe(Diagram.Solidus(silver), 1, alloy.Name);
        }
    }

    // Source: espimetals.com prints sterling's "liquidus 788, solidus 891 °C": the labels are swapped, and we do not follow them.
    [Fact]
    public void Sterling_SwappedLabels_AreNotFollowed()
    {
        var sterling = BuiltInAlloys.Named("sterling without deoxidant").Single();

        sterling.Liquidus!.Value.DegreesCelsius.ShouldBe(891, 10);
        sterling.Solidus!.Value.DegreesCelsius.ShouldBe(788, 20);
    }

    // Source: silverbullion.co.za, pointjewels and whitegold925: sterling's liquidus 893 °C.
    [Fact]
    public void Sterling_Liquidus_AgreesWithPrintedOne() =>
        BuiltInAlloys.Named("sterling without deoxidant").Single().Liquidus!.Value.DegreesCelsius.ShouldBe(893, 5);
}
