using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Tests.Filling;
using UnitsNet;

namespace CastBook.Workbooks.Tests.Reports;

public sealed class KilnLogTextTests
{
    // 732 °C (1,350 °F) was asked; the kiln came to 690 °C (1,274 °F).
    [Fact]
    public void Lines_ShopInFahrenheit_SaysEveryTemperatureInIt()
    {
        var load = Filled.From(Nights.Whole()).Plan.Clock!.Loads[0];
        var log = Log((0, 20), (30, 150), (120, 150), (165, 370), (240, 370), (315, 690), (480, 690), (570, 538), (690, 538));
        var unit = WrittenTemperature.Fahrenheit;

        var lines = KilnLogText.Lines(KilnLogCheck.Compare(load, log, unit), log, unit).ToList();

        lines.ShouldContain(line => line.StartsWith("  stage 1   302 °F  held ", StringComparison.Ordinal));
        lines.ShouldContain(line => line.StartsWith("  stage 3  1,350 °F  not reached: came to 1,274 °F; core ", StringComparison.Ordinal));
        lines.ShouldContain(line => line.StartsWith("check By its log the kiln did not reach stage 3, 1,350 °F: it came to 1,274 °F, 76 °F away; ", StringComparison.Ordinal));
        lines.ShouldAllBe(line => !line.Contains("°C", StringComparison.Ordinal));
    }

    // Straight lines between points in minutes and degrees, read every five minutes.
    private static KilnLog Log(params (double Minutes, double Celsius)[] points)
    {
        var readings = new List<KilnReading>();
        for (var i = 1; i < points.Length; i++)
        {
            var (from, to) = (points[i - 1], points[i]);
            for (var at = from.Minutes; at < to.Minutes; at += 5)
            {
                readings.Add(Read(at, from.Celsius + ((to.Celsius - from.Celsius) * (at - from.Minutes) / (to.Minutes - from.Minutes))));
            }
        }

        return new KilnLog([.. readings, Read(points[^1].Minutes, points[^1].Celsius)], Begins: null);
    }

    private static KilnReading Read(double minutes, double celsius) => new(Duration.FromMinutes(minutes), Temperature.FromDegreesCelsius(celsius));
}
