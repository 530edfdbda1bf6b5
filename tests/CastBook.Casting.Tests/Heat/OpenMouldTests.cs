using CastBook.Casting.Heat;
using UnitsNet;

namespace CastBook.Casting.Tests.Heat;

public class OpenMouldTests
{
    // By hand, 540 °C, a minute: h = 5 + 42.18 W/(m² K), √(α t) = 3.397 mm; ten millimetres are ξ = 1.472, erfc 0.0374,
    // less exp(1.571 + 0.285) × erfc(2.004) = 6.40 × 0.00456: 0.0082 of 520 °C. The fast case: h = 67.08, √(α t) = 4.881 mm.
    [Theory]
    [InlineData(10, MouldCase.Slow, 4.25)]
    [InlineData(8, MouldCase.Slow, 12.13)]
    [InlineData(8, MouldCase.Fast, 42.84)]
    public void Lost_InAMinute_ByHand(double depth, MouldCase mould, double degrees) =>
        OpenMould.Lost(Celsius(540), Length.FromMillimeters(depth), Duration.FromMinutes(1), mould).DegreesCelsius.ShouldBe(degrees, 0.05);

    // The series of a round flask of 75 mm, which knows nothing of the error function; its face is curved, so that it loses a little more.
    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    public void Lost_BesideTheSeriesOfARoundMould_IsALittleLess(double depth)
    {
        var film = 5 + FilmCoefficient.RadiationTo(540, 20);
        var round = 520 * (1 - HeatSeries.Cylinder(film * 0.0375 / 0.3004, 0.1923 * 60 / (37.5 * 37.5), (37.5 - depth) / 37.5));

        var flat = OpenMould.Lost(Celsius(540), Length.FromMillimeters(depth), Duration.FromMinutes(1), MouldCase.Slow).DegreesCelsius;

        flat.ShouldBeInRange(round * 0.8, round);
    }

    [Fact]
    public void Lost_DeeperOrSooner_IsLess()
    {
        Lost(8, 1).ShouldBeLessThan(Lost(6, 1));
        Lost(8, 1).ShouldBeLessThan(Lost(8, 2));
        Lost(30, 1).ShouldBeLessThan(0.01);

        static double Lost(double depth, double minutes) =>
            OpenMould.Lost(Celsius(540), Length.FromMillimeters(depth), Duration.FromMinutes(minutes), MouldCase.Slow).DegreesCelsius;
    }

    // Black surfaces of nine tenths at 540 and 20 °C: ε σ (T⁴ − room⁴) / (T − room).
    [Fact]
    public void RadiationTo_Room_IsThatOfTheFourthPowers() =>
        FilmCoefficient.RadiationTo(540, 20).ShouldBe(0.9 * 5.670374419e-8 * (Math.Pow(813.15, 4) - Math.Pow(293.15, 4)) / 520, 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(10.1)]
    public void Lost_TimeOutsideItsLimits_Throws(double minutes) =>
        Should.Throw<ArgumentOutOfRangeException>(() => OpenMould.Lost(Celsius(540), Length.FromMillimeters(8), Duration.FromMinutes(minutes), MouldCase.Slow))
            .ParamName.ShouldBe("time");

    [Fact]
    public void Lost_TenMinutes_IsStillWithinTheLimits() =>
        OpenMould.Lost(Celsius(540), Length.FromMillimeters(8), Duration.FromMinutes(10), MouldCase.Slow).DegreesCelsius.ShouldBeInRange(100, 400);

    private static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);
}
