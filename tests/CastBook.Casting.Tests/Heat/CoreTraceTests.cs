using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using UnitsNet;

namespace CastBook.Casting.Tests.Heat;

public class CoreTraceTests
{
    // Gypsum as measured, published (pure gypsum at 35 days): 0.3004 W/(m K), 0.1923 mm²/s.
    private const double Conductivity = 0.3004;
    private const double Diffusivity = 0.1923;

    // Published flasks of 2½ × 2½, 3½ × 4 and 4 × 8 in with a film of 20 W/(m² K): nine tenths of a step at the core after
    // 1.05, 1.88 and 2.78 h. The published holds at the top are 2, 3 and 4 h: the same order.
    [Theory]
    [InlineData(2.5, 2.5, 1.05)]
    [InlineData(3.5, 4, 1.88)]
    [InlineData(4, 8, 2.78)]
    public void Hold_AfterAStep_BringsNineTenthsInPlausibleHours(double diameterInches, double heightInches, double hours)
    {
        var trace = Gypsum(diameterInches * 25.4 / 2, heightInches * 25.4 / 2, 20);
        trace.Go(Celsius(1000), Duration.Zero);

        trace.Hold(Duration.FromHours(hours));

        trace.Core.DegreesCelsius.ShouldBe(900, 4);
    }

    // By its own definition: once only the slowest term is left, each time constant leaves 1/e of what is behind.
    [Fact]
    public void TimeConstant_AfterALongHold_LeavesAPartOfE()
    {
        var trace = Gypsum(40, 60, 20);
        trace.Go(Celsius(1000), Duration.Zero);
        trace.Hold(trace.TimeConstant * 5);
        var behind = trace.Kiln - trace.Core;

        trace.Hold(trace.TimeConstant);

        ((trace.Kiln - trace.Core).DegreesCelsius / behind.DegreesCelsius).ShouldBe(1 / Math.E, 1e-4);
    }

    // Measured across and along, as flasks are; half of it is what the heat has to go.
    [Fact]
    public void Core_OfAFlaskByItsMeasures_IsThatOfItsHalves()
    {
        var (conductivity, diffusivity, convection) = MouldProperties.Of(MouldCase.Slow);
        var flask = new CoreTrace(Length.FromMillimeters(75), Length.FromMillimeters(100), MouldCase.Slow, Celsius(500), Celsius(0));
        var halves = new CoreTrace(37.5, 50, conductivity, diffusivity, convection + FilmCoefficient.Radiation(500), 0);
        foreach (var trace in new[] { flask, halves })
        {
            trace.Go(Celsius(732), Duration.Zero);
            trace.Hold(Duration.FromHours(1));
        }

        flask.Core.DegreesCelsius.ShouldBe(halves.Core.DegreesCelsius, 1e-9);
        flask.Core.DegreesCelsius.ShouldBeInRange(50, 700);
    }

    [Fact]
    public void Run_Stage_GoesAndHolds()
    {
        var (run, walked) = (Gypsum(37.5, 50, 20), Gypsum(37.5, 50, 20));
        var way = Duration.FromHours(1);

        run.Run(new ProgramStage(Celsius(0), Celsius(600), way, Duration.FromHours(2), WayInHold: false));
        walked.Go(Celsius(600), way);
        var onArrival = walked.Core.DegreesCelsius;
        walked.Hold(Duration.FromHours(2));

        run.Core.DegreesCelsius.ShouldBe(walked.Core.DegreesCelsius, 1e-9);
        run.Core.DegreesCelsius.ShouldBeGreaterThan(onArrival + 50);
    }

    [Fact]
    public void Go_AtOnce_IsTheProductOfWallAndCylinder()
    {
        var trace = Gypsum(37.5, 50, 20);
        trace.Go(Celsius(732), Duration.Zero);
        trace.Hold(Duration.FromHours(1));

        var left = HeatSeries.Wall(20 * 0.05 / Conductivity, Diffusivity * 3600 / (50 * 50), 0)
            * HeatSeries.Cylinder(20 * 0.0375 / Conductivity, Diffusivity * 3600 / (37.5 * 37.5), 0);
        trace.Core.DegreesCelsius.ShouldBe(732 - (732 * left), 0.01);
    }

    // Cut into pieces, a straight way is the same way; in many small jumps it comes near it.
    [Fact]
    public void Go_InPieces_IsTheSameWay()
    {
        var (whole, pieces, jumps) = (Gypsum(45, 60, 30), Gypsum(45, 60, 30), Gypsum(45, 60, 30));

        whole.Go(Celsius(600), Duration.FromHours(3));
        for (var i = 1; i <= 600; i++)
        {
            pieces.Go(Celsius(i), Duration.FromHours(3.0 / 600));
            jumps.Go(Celsius(i), Duration.Zero);
            jumps.Hold(Duration.FromHours(3.0 / 600));
        }

        pieces.Core.DegreesCelsius.ShouldBe(whole.Core.DegreesCelsius, 1e-6);
        jumps.Core.DegreesCelsius.ShouldBe(whole.Core.DegreesCelsius, 0.6);
    }

    // The same cylinder on a grid in small steps of time, which knows nothing of roots.
    [Fact]
    public void Run_WholeProgramme_AgreesWithAGrid()
    {
        var trace = Gypsum(37.5, 50, 40);
        var grid = new CylinderGrid(37.5, 50, Conductivity, Diffusivity, 40);

        foreach (var (target, way, hold) in new[] { (150.0, 0.5, 1.5), (370, 1, 1), (732, 2, 2), (540, 2, 1) })
        {
            trace.Go(Celsius(target), Duration.FromHours(way));
            trace.Core.DegreesCelsius.ShouldBe(grid.Go(target, way), 2);
            trace.Hold(Duration.FromHours(hold));
            trace.Core.DegreesCelsius.ShouldBe(grid.Go(target, hold), 2);
        }
    }

    [Fact]
    public void HoldUntilWithin_IsTheHoldThatDoes()
    {
        var (trace, longer) = (Gypsum(45, 60, 20), Gypsum(45, 60, 20));
        trace.Go(Celsius(500), Duration.FromHours(1));
        longer.Go(Celsius(500), Duration.FromHours(1));

        var hold = trace.HoldUntilWithin(20);
        trace.Hold(hold - Duration.FromMinutes(5));
        longer.Hold(hold);

        trace.Core.DegreesCelsius.ShouldBeLessThan(480);
        longer.Core.DegreesCelsius.ShouldBeInRange(480, 500);
        longer.HoldUntilWithin(20).Minutes.ShouldBe(0);
    }

    // A mould of half a metre is still more than 20 °C behind after a day.
    [Fact]
    public void HoldUntilWithin_MouldThatADayDoesNotDo_IsADay()
    {
        var trace = Gypsum(250, 250, 20);
        trace.Go(Celsius(500), Duration.Zero);

        trace.HoldUntilWithin(20).Hours.ShouldBe(24);
        trace.Hold(Duration.FromHours(24));
        trace.Core.DegreesCelsius.ShouldBeLessThan(480);
    }

    [Fact]
    public void Copy_GoesItsOwnWay()
    {
        var trace = Gypsum(45, 60, 20);
        trace.Go(Celsius(500), Duration.FromHours(1));
        var before = trace.Core.DegreesCelsius;

        var copy = trace.Copy();
        copy.Core.DegreesCelsius.ShouldBe(before, 1e-12);
        copy.Hold(Duration.FromHours(1));

        copy.Core.DegreesCelsius.ShouldBeGreaterThan(before + 50);
        trace.Core.DegreesCelsius.ShouldBe(before, 1e-12);
    }

    [Fact]
    public void Cases_SlowIsBehindFast()
    {
        var (slow, fast) = (
            new CoreTrace(Length.FromMillimeters(75), Length.FromMillimeters(100), MouldCase.Slow, Celsius(150), Celsius(20)),
            new CoreTrace(Length.FromMillimeters(75), Length.FromMillimeters(100), MouldCase.Fast, Celsius(732), Celsius(20)));
        var stage = new ProgramStage(Celsius(20), Celsius(732), Duration.Zero, Duration.FromHours(3), WayInHold: true);

        slow.Run(stage);
        fast.Run(stage);

        stage.WayUp.Hours.ShouldBe(712 / 300.0, 1e-9);
        slow.Core.DegreesCelsius.ShouldBeLessThan(fast.Core.DegreesCelsius - 50);
        fast.Core.DegreesCelsius.ShouldBeLessThan(732);
    }

    // Emissivity 0.9: 15.5 at 150 °C, 54.5 at 371 °C, 207 at 732 °C; textbook formula, worked with the published constant.
    [Theory]
    [InlineData(150, 15.5, 0.05)]
    [InlineData(371, 54.5, 0.1)]
    [InlineData(732, 207, 0.5)]
    public void Radiation_ByTextbook(double celsius, double film, double tolerance) => FilmCoefficient.Radiation(celsius).ShouldBe(film, tolerance);

    private static CoreTrace Gypsum(double radiusMm, double halfHeightMm, double film) => new(radiusMm, halfHeightMm, Conductivity, Diffusivity, film, 0);

    private static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);
}
