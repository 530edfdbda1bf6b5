using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Tests.Filling;
using UnitsNet;

namespace CastBook.Workbooks.Tests.Reports;

public sealed class KilnLogTextTests
{
    // Two hours at 150 °C (302 °F) were asked; the log ends at 140 °C (284 °F).
    [Fact]
    public void Lines_ShopInFahrenheit_SaysEveryTemperatureInIt()
    {
        var load = Filled.From(Nights.Whole()).Plan.Clock!.Loads[0];
        var log = new KilnLog([Read(0, 20), Read(60, 140), Read(240, 140)], Begins: null);
        var unit = WrittenTemperature.Fahrenheit;

        var lines = KilnLogText.Lines(KilnLogCheck.Compare(load, log, unit), log, unit).ToList();

        lines.ShouldContain(line => line.StartsWith("  stage 1   302 °F  not reached: came to 284 °F; core ", StringComparison.Ordinal));
        lines.ShouldContain(line => line.StartsWith("check By its log the kiln did not reach stage 1, 302 °F: it came to 284 °F, 18 °F away; ", StringComparison.Ordinal));
        lines.ShouldAllBe(line => !line.Contains("°C", StringComparison.Ordinal));
    }

    private static KilnReading Read(double minutes, double celsius) => new(Duration.FromMinutes(minutes), Temperature.FromDegreesCelsius(celsius));
}
