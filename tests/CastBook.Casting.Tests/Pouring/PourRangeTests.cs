using CastBook.Casting.Pouring;
using UnitsNet;

namespace CastBook.Casting.Tests.Pouring;

public class PourRangeTests
{
    // At most 300 °C above the liquidus; from a zinc-rich solder to platinum where it is not known.
    [Theory]
    [InlineData(893.0, 893, 1193)]
    [InlineData(null, 500, 2100)]
    public void Metal_OfALiquidus_GoesThreeHundredDegreesUp(double? liquidus, double least, double most)
    {
        var range = PourRange.Metal(Celsius(liquidus));

        (range.Least.DegreesCelsius, range.Most.DegreesCelsius).ShouldBe((least, most));
    }

    // A mould fills only with metal that freezes in it, and bears no more than its binder.
    [Theory]
    [InlineData(779.0, true, 779)]
    [InlineData(1000.0, true, 788)]
    [InlineData(1000.0, false, 1000)]
    [InlineData(1780.0, false, 1100)]
    [InlineData(null, true, 788)]
    [InlineData(null, false, 1100)]
    public void HottestMould_IsTheSolidusOrTheBinder(double? solidus, bool isGypsum, double hottest) =>
        PourRange.HottestMould(Celsius(solidus), isGypsum).DegreesCelsius.ShouldBe(hottest);

    private static Temperature? Celsius(double? degrees) => degrees is { } known ? Temperature.FromDegreesCelsius(known) : null;
}
