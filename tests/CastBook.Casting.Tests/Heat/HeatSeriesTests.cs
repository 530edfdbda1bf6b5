using CastBook.Casting.Heat;

namespace CastBook.Casting.Tests.Heat;

public sealed class HeatSeriesTests
{
    // First zeros of J0: the documentation of PARI/GP, besseljzero.
    [Theory]
    [InlineData(2.404825557695772768621631879)]
    [InlineData(5.520078110286310649596604)]
    public void J0_AtItsPrintedZeros_IsNought(double zero) => Bessel.J0(zero).ShouldBe(0, 1e-14);

    // Wolfram MathWorld, Bessel Function Zeros.
    [Theory]
    [InlineData(8.6537)]
    [InlineData(11.7915)]
    [InlineData(14.9309)]
    public void J0_AtZerosOfFourDecimals_ChangesItsSign(double zero) =>
        (Bessel.J0(zero - 0.51e-4) * Bessel.J0(zero + 0.51e-4)).ShouldBeLessThan(0);

    // Çengel, Heat Transfer, table of J0 and J1.
    [Theory]
    [InlineData(1, 0.7652, 0.4400)]
    [InlineData(2, 0.2239, 0.5767)]
    public void Bessel_AtPrintedPlaces_GivesThePrintedDigits(double x, double j0, double j1)
    {
        Bessel.J0(x).ShouldBe(j0, 0.51e-4);
        Bessel.J1(x).ShouldBe(j1, 0.51e-4);
    }

    // Çengel, Heat Transfer, table 4-2; its last two rows from memory.
    [Theory]
    [InlineData(0.01, .0998, 1.0017, .1412, 1.0025)]
    [InlineData(0.02, .1410, 1.0033, .1995, 1.0050)]
    [InlineData(0.04, .1987, 1.0066, .2814, 1.0099)]
    [InlineData(0.1, .3111, 1.0161, .4417, 1.0246)]
    [InlineData(0.2, .4328, 1.0311, .6170, 1.0483)]
    [InlineData(0.3, .5218, 1.0450, .7465, 1.0712)]
    [InlineData(0.4, .5932, 1.0580, .8516, 1.0931)]
    [InlineData(0.5, .6533, 1.0701, .9408, 1.1143)]
    [InlineData(0.6, .7051, 1.0814, 1.0184, 1.1345)]
    [InlineData(0.8, .7910, 1.1016, 1.1490, 1.1724)]
    [InlineData(1, .8603, 1.1191, 1.2558, 1.2071)]
    [InlineData(2, 1.0769, 1.1785, 1.5995, 1.3384)]
    [InlineData(3, 1.1925, 1.2102, 1.7887, 1.4191)]
    [InlineData(4, 1.2646, 1.2287, 1.9081, 1.4698)]
    [InlineData(5, 1.3138, 1.2403, 1.9898, 1.5029)]
    [InlineData(6, 1.3496, 1.2479, 2.0490, 1.5253)]
    [InlineData(8, 1.3978, 1.2570, 2.1286, 1.5526)]
    [InlineData(10, 1.4289, 1.2620, 2.1795, 1.5677)]
    [InlineData(20, 1.4961, 1.2699, 2.2880, 1.5919)]
    [InlineData(100, 1.5552, 1.2731, 2.3809, 1.6015)]
    public void Eigenvalue_OfPrintedBiot_GivesThePrintedDigits(
        double biot, double wall, double wallWeight, double cylinder, double cylinderWeight)
    {
        var wallRoot = WallCooling.Eigenvalue(0, biot);
        var cylinderRoot = CylinderCooling.Eigenvalue(0, biot);

        wallRoot.ShouldBe(wall, 0.51e-4);
        WallCooling.Weight(wallRoot).ShouldBe(wallWeight, 0.51e-4);
        cylinderRoot.ShouldBe(cylinder, 0.51e-4);
        CylinderCooling.Weight(cylinderRoot).ShouldBe(cylinderWeight, 0.51e-4);
    }

    // Som, Introduction to Heat Transfer, example 4.9 (chart, 3 °C): a long bar of 0.18 × 0.104 m is two walls crossed.
    [Fact]
    public void Left_OfALongAluminiumBar_GivesThePrintedTemperature()
    {
        var left = HeatSeries.Wall(1100 * 0.052 / 198, 8.1e-5 * 100 / (0.052 * 0.052), 0)
            * HeatSeries.Wall(1100 * 0.09 / 198, 8.1e-5 * 100 / (0.09 * 0.09), 0);

        (30 + (700 * left)).ShouldBe(260.3, 3);
    }

    [Fact]
    public void Left_OfAVerySmallBiot_IsTheLumpedSolution()
    {
        HeatSeries.Wall(1e-5, 1e5, 1).ShouldBe(Math.Exp(-1), 1e-4);
        HeatSeries.Cylinder(1e-5, 0.5e5, 1).ShouldBe(Math.Exp(-1), 1e-4);
    }

    [Fact]
    public void Left_OfAVeryLargeBiot_HoldsTheSurface()
    {
        HeatSeries.Wall(1e7, 0.1, 1).ShouldBe(0, 1e-6);
        HeatSeries.Cylinder(1e7, 0.1, 1).ShouldBe(0, 1e-6);
    }

    [Fact]
    public void Left_SoonAfterTheStep_IsWholeInTheMiddle()
    {
        HeatSeries.Wall(5, 0.002, 0).ShouldBe(1, 1e-6);
        HeatSeries.Cylinder(5, 0.002, 0).ShouldBe(1, 1e-6);
    }
}
