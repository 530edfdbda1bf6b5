using CastBook.Casting.Burnout;
using UnitsNet;

namespace CastBook.Casting.Tests.Burnout;

public class BurnoutScheduleTests
{
    // Source: ganoksin.com Orchid thread 21774, a programmed kiln: to 300 °F in 20 min, hold 1.5 h; to 400 °F in 20 min,
    // 1.5 h; to 1250 °F in 3 h, 2.5 h; to 1000 °F in 1 h, at least 1 h. The text says 11 h; it adds up to 11 h 10 min.
    [Fact]
    public void Total_AgreesWithPublishedProgramme()
    {
        var schedule = new BurnoutSchedule(
            "programme",
            Temperature.FromDegreesFahrenheit(70),
            [Ramp(300, 230 * 3, 1.5), Ramp(400, 100 * 3, 1.5), Ramp(1250, 850 / 3.0, 2.5), Ramp(1000, 250, 1)]);

        schedule.Total.Hours.ShouldBe(11 + (1 / 6.0), 1e-9);
        schedule.Top.DegreesFahrenheit.ShouldBe(1250, 1e-9);
    }

    // Source: ganoksin.com Orchid thread 31266: 2 h at 300 °F, 2 h at 700, 3 h at 1350, 2 h at 1150, nine hours for 2 × 3 in.
    [Fact]
    public void Total_OfPrintedHolds_IsTheirSum() =>
        new BurnoutSchedule("2 × 3", null, [.. new[] { (300, 2), (700, 2), (1350, 3), (1150, 2) }.Select(s => Stage(Temperature.FromDegreesFahrenheit(s.Item1).DegreesCelsius, null, s.Item2))])
            .Total.Hours.ShouldBe(9, 1e-9);

    // By hand: from 20 to 150 at 65 an hour is 2 h, and 3 h of hold; the fall from 150 to 50 at 100 an hour is 1 h.
    [Fact]
    public void Total_ColdKilnAndFall_CountsBothWays()
    {
        var schedule = new BurnoutSchedule("cold", null, [Stage(150, 65, 3), Stage(50, 100, 0)]);

        schedule.Total.Hours.ShouldBe(6, 1e-9);
    }

    [Fact]
    public void Total_StageWithoutRate_HasItsWayInItsHold() =>
        new BurnoutSchedule("printed", null, [Stage(150, null, 2), Stage(350, 100, 1)]).Total.Hours.ShouldBe(5, 1e-9);

    [Fact]
    public void EndingAt_FlaskTemperature_ChangesTheLastTargetAlone()
    {
        var schedule = new BurnoutSchedule("x", null, [Stage(732, null, 2), Stage(538, null, 1)]);

        var other = schedule.EndingAt(Temperature.FromDegreesCelsius(480));

        other.Stages[0].ShouldBe(schedule.Stages[0]);
        other.Stages[1].Target.DegreesCelsius.ShouldBe(480);
        other.Total.ShouldBe(schedule.Total);
        schedule.Stages[1].Target.DegreesCelsius.ShouldBe(538);
    }

    [Fact]
    public void Constructor_ImpossibleStages_Throws()
    {
        Should.Throw<ArgumentException>(() => new BurnoutSchedule("none", null, []));
        Should.Throw<ArgumentOutOfRangeException>(() => new BurnoutSchedule("rate", null, [Stage(100, 0, 1)]));
        Should.Throw<ArgumentOutOfRangeException>(() => new BurnoutSchedule("rate", null, [Stage(100, double.NaN, 1)]));
        Should.Throw<ArgumentOutOfRangeException>(() => new BurnoutSchedule("rate", null, [Stage(100, double.PositiveInfinity, 1)]));
        Should.Throw<ArgumentOutOfRangeException>(() => new BurnoutSchedule("hold", null, [Stage(100, null, -1)]));
    }

    // Sources: ganoksin.com Orchid 41426 (1350 °F), Orchid 19054 (1400 °F with carbon), stuller.com checklist (1450 °F).
    [Fact]
    public void KilnLimits_AgreeWithPublishedFahrenheit()
    {
        KilnLimits.GypsumUsualTop.DegreesFahrenheit.ShouldBe(1350, 1);
        KilnLimits.GypsumStopAboveWithPattern.DegreesFahrenheit.ShouldBe(1400, 1);
        KilnLimits.GypsumStopAbove.DegreesFahrenheit.ShouldBe(1450, 1);
        KilnLimits.GypsumCheckAbove.ShouldBeGreaterThan(KilnLimits.GypsumUsualTop);
        KilnLimits.GypsumCheckAbove.ShouldBeLessThan(KilnLimits.GypsumStopAboveWithPattern);
    }

    // A rate in Fahrenheit an hour, given to the schedule in Celsius an hour.
    private static BurnoutStage Ramp(double fahrenheit, double fahrenheitPerHour, double holdHours) =>
        new(Temperature.FromDegreesFahrenheit(fahrenheit), fahrenheitPerHour / 1.8, Duration.FromHours(holdHours));

    private static BurnoutStage Stage(double celsius, double? rate, double holdHours) =>
        new(Temperature.FromDegreesCelsius(celsius), rate, Duration.FromHours(holdHours));
}
