using CastBook.Casting.Investing;
using UnitsNet;

namespace CastBook.Casting.Tests.Investing;

public class SilicaInversionTests
{
    // Quartz 573 °C and cristobalite near 220 °C: an encyclopedia's article on quartz inversion; the range from dental texts, memory.
    [Theory]
    [InlineData(Silica.Quartz, 500, 600, 1)]
    [InlineData(Silica.Quartz, 600, 500, 1)]
    [InlineData(Silica.Quartz, 580, 732, 0)]
    [InlineData(Silica.Quartz, 150, 370, 0)]
    [InlineData(Silica.Cristobalite, 219, 221, 1)]
    [InlineData(Silica.Cristobalite, 20, 150, 0)]
    [InlineData(Silica.Cristobalite, 20, 200, 0)]
    [InlineData(Silica.Cristobalite, 270, 732, 0)]
    [InlineData(Silica.Both, 150, 732, 2)]
    public void Of_AWay_LeadsThroughItsInversions(Silica silica, double from, double to, int count) =>
        SilicaInversion.Of(silica).Count(i => i.LiesBetween(Temperature.FromDegreesCelsius(from), Temperature.FromDegreesCelsius(to))).ShouldBe(count);

    [Theory]
    [InlineData(Silica.Quartz, true)]
    [InlineData(Silica.Cristobalite, false)]
    public void IsPoint_QuartzTurnsAtOnce(Silica silica, bool isPoint) => SilicaInversion.Of(silica).Single().IsPoint.ShouldBe(isPoint);

    // Practitioners' programmes: 250 to 300 °F an hour.
    [Fact]
    public void FastestPublished_IsTheirRateInCelsius() => SilicaInversion.FastestPublishedDegreesPerHour.ShouldBe(166.7, 0.05);
}
