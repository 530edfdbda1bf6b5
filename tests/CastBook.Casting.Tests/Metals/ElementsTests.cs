using CastBook.Casting.Metals;
using CastBook.Casting.Tests.Published;

namespace CastBook.Casting.Tests.Metals;

public class ElementsTests
{
    private const double DensityTolerance = 0.005;      // tables differ by that much from one another
    private const double MeltingTolerance = 3;          // °C: older temperature scale, rounding to ten

    public static TheoryData<string, string, string> Tables => PublishedTable.Three("elements.csv");

    [Theory]
    [MemberData(nameof(Tables))]
    public void Elements_AgreeWithPublishedTables(string symbol, string printedDensity, string printedMelting)
    {
        Elements.TryGet(symbol, out var element).ShouldBeTrue();

        var density = PublishedNumber.Parse(printedDensity).Value;
        element!.Density.GramsPerCubicCentimeter.ShouldBe(density, density * DensityTolerance);
        if (printedMelting.Length > 0)
        {
            element.MeltingPoint.DegreesCelsius.ShouldBe(PublishedNumber.Parse(printedMelting).Value, MeltingTolerance);
        }
    }

    // Fixed points of the temperature scale of 1990 (ITS-90), exact.
    [Theory]
    [InlineData("Ag", 961.78)]
    [InlineData("Au", 1064.18)]
    [InlineData("Cu", 1084.62)]
    [InlineData("Zn", 419.527)]
    [InlineData("Sn", 231.928)]
    [InlineData("Al", 660.323)]
    [InlineData("In", 156.5985)]
    [InlineData("Ga", 29.7646)]
    public void MeltingPoint_OfFixedPoints_IsThatOfTheScale(string symbol, double celsius)
    {
        Elements.TryGet(symbol, out var element).ShouldBeTrue();

        element!.MeltingPoint.DegreesCelsius.ShouldBe(celsius, 1e-6);
    }

    [Fact]
    public void TryGet_UnknownSymbol_IsFalse()
    {
        Elements.TryGet("Xx", out var element).ShouldBeFalse();
        element.ShouldBeNull();
    }
}
