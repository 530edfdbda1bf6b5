using System.Globalization;
using CastBook.Casting.Heat;
using CastBook.Casting.Tests.Published;

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

        double Side() => CylinderCooling.Left(film * radius / 1000 / conductivity, diffusivity * seconds / (radius * radius), n[8]);

        double Wall(double thickness, double place) => WallCooling.Left(film * thickness / 1000 / conductivity, diffusivity * seconds / (thickness * thickness), place);
    }
}
