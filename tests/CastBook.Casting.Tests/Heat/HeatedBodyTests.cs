using System.Globalization;
using CastBook.Casting.Tests.Published;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace CastBook.Casting.Tests.Heat;

/// <summary>Bodies that textbooks heated and cooled.</summary>
public sealed class HeatedBodyTests
{
    public static TheoryData<string> Examples => [.. PublishedTable.Rows("heated-bodies.csv", 14).Select(r => r[0])];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Left_OfAPrintedExample_GivesItsTemperature(string example)
    {
        var row = PublishedTable.Rows("heated-bodies.csv", 14).Single(r => r[0] == example);
        var (body, n) = (row[1], Array.ConvertAll(row[2..], cell => double.Parse(cell, CultureInfo.InvariantCulture)));
        var (radius, half, conductivity, diffusivity, film, start, around, seconds) = (n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7]);

        var left = body switch
        {
            "cylinder" => Side(),
            "wall" => Wall(half, n[9]),
            "short" => Side() * Wall(half, n[9]),
            _ => Wall(radius, n[8]) * Wall(half, n[9]),
        };

        (around + ((start - around) * left)).ShouldBe(n[10], n[11], body);

        double Side() => HeatSeries.Cylinder(film * radius / 1000 / conductivity, diffusivity * seconds / (radius * radius), n[8]);

        double Wall(double thickness, double place) => HeatSeries.Wall(film * thickness / 1000 / conductivity, diffusivity * seconds / (thickness * thickness), place);
    }

    public static TheoryData<string> Heats => [.. PublishedTable.Rows("heated-bodies-heat.csv", 14).Select(r => r[0])];

    // What is left of a body's heat is what is left of the step, averaged over its width and its length.
    [Theory]
    [MemberData(nameof(Heats))]
    public void Left_AveragedOverAPrintedBody_GivesItsHeat(string example)
    {
        var row = PublishedTable.Rows("heated-bodies-heat.csv", 14).Single(r => r[0] == example);
        var n = Array.ConvertAll(row[2..], cell => double.Parse(cell, CultureInfo.InvariantCulture));
        var (radius, half, conductivity, diffusivity, film, start, around, seconds) = (n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7]);

        var left = (radius > 0 ? Side() : 1) * (half > 0 ? Ends() : 1);

        var kilojoules = n[8] * n[9] / 1e6 * Math.Abs(start - around) * (1 - left);
        kilojoules.ShouldBe(n[10], n[10] * n[11] / 100);

        double Side() => 2 * GaussLegendreRule.Integrate(x => x * HeatSeries.Cylinder(film * radius / 1000 / conductivity, diffusivity * seconds / (radius * radius), x), 0, 1, 12);

        double Ends() => GaussLegendreRule.Integrate(x => HeatSeries.Wall(film * half / 1000 / conductivity, diffusivity * seconds / (half * half), x), 0, 1, 12);
    }

    // Dwivedi, an insulator of 100 mm, 0.11 W/(m K), 0.028 mm²/s, from 30 into 1000 °C, 100 W/(m² K): its axis has 418 °C after 18,750 s by the
    // book's chart, and 833.5 °C are then at 40 of 50 mm; so early a chart is off by a fifth of the time.
    [Fact]
    public void Left_OfAnInsulator_HasTheAxisAtThePrintedTemperatureAndTime()
    {
        const double Biot = 100 * 0.05 / 0.11;

        var seconds = Brent.FindRoot(s => At(s, 0) - 418, 1000, 60_000);

        seconds.ShouldBe(18_750, 18_750 * 0.2);
        At(seconds, 0.8).ShouldBe(833.5, 10);

        static double At(double seconds, double place) => 1000 - (970 * HeatSeries.Cylinder(Biot, 0.028 * seconds / (50 * 50), place));
    }
}
