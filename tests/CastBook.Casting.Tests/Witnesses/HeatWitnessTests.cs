using CastBook.Casting.Heat;
using CastBook.Casting.Tests.Heat;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using MathNet.Numerics.RootFinding;

namespace CastBook.Casting.Tests.Witnesses;

/// <summary>The heat of a cylinder beside a general library for mathematics: its Bessel functions, its way to find roots.</summary>
public sealed class HeatWitnessTests
{
    public static TheoryData<double> Biots => [0.01, 0.1, 0.7047, 1, 3, 4.8, 10, 45.5, 300, 5000];

    [Fact]
    public void Bessel_AnyPlace_IsTheLibrarys()
    {
        for (var x = 0.0; x <= 60; x += 0.37)
        {
            Bessel.J0(x).ShouldBe(SpecialFunctions.BesselJ(0, x), 1e-13, $"{x}");
            Bessel.J1(x).ShouldBe(SpecialFunctions.BesselJ(1, x), 1e-13, $"{x}");
        }
    }

    [Fact]
    public void ErrorFunction_AnyPlace_IsTheLibrarys()
    {
        for (var x = 0.0; x <= 6; x += 0.13)
        {
            ErrorFunction.Complement(x).ShouldBe(SpecialFunctions.Erfc(x), 1e-12, $"{x}");
        }
    }

    // Every root from nought on, found by walking in small steps and closing in with the library's own method.
    [Theory]
    [MemberData(nameof(Biots))]
    public void Eigenvalue_AnyBiot_IsTheLibrarysRootOfThatNumber(double biot)
    {
        Roots(z => (z * SpecialFunctions.BesselJ(1, z)) - (biot * SpecialFunctions.BesselJ(0, z)), 8)
            .Zip(Enumerable.Range(0, 8).Select(n => CylinderCooling.Eigenvalue(n, biot))).ShouldAllBe(r => Math.Abs(r.First - r.Second) < 1e-9);
        Roots(z => (z * Math.Sin(z)) - (biot * Math.Cos(z)), 8)
            .Zip(Enumerable.Range(0, 8).Select(n => WallCooling.Eigenvalue(n, biot))).ShouldAllBe(r => Math.Abs(r.First - r.Second) < 1e-9);
    }

    // A cylinder like a flask, in its middle, away from it, and at its faces: 100 × 160 mm, 0.5 W/(m K), 0.5 mm²/s, 30 W/(m² K), thirty minutes and less.
    [Theory]
    [InlineData(1800, 0, 0)]
    [InlineData(300, 0, 0)]
    [InlineData(60, 0, 0)]
    [InlineData(1800, 0.55, 0.3)]
    [InlineData(300, 0.7, 0.85)]
    [InlineData(1800, 1, 0)]
    [InlineData(300, 0, 1)]
    [InlineData(300, 1, 1)]
    public void Left_OfAFlask_IsTheSumOfTheLibrarysTerms(double seconds, double radial, double axial)
    {
        var (sideBiot, wallBiot) = (30 * 0.05 / 0.5, 30 * 0.08 / 0.5);
        var (side, wall) = (0.5e-6 * seconds / (0.05 * 0.05), 0.5e-6 * seconds / (0.08 * 0.08));
        var cylinder = Roots(z => (z * SpecialFunctions.BesselJ(1, z)) - (sideBiot * SpecialFunctions.BesselJ(0, z)), 30).Sum(z =>
        {
            var (j0, j1) = (SpecialFunctions.BesselJ(0, z), SpecialFunctions.BesselJ(1, z));
            return 2 * j1 / (z * ((j0 * j0) + (j1 * j1))) * SpecialFunctions.BesselJ(0, z * radial) * Math.Exp(-z * z * side);
        });
        var slab = Roots(z => (z * Math.Sin(z)) - (wallBiot * Math.Cos(z)), 30).Sum(z =>
            4 * Math.Sin(z) / ((2 * z) + Math.Sin(2 * z)) * Math.Cos(z * axial) * Math.Exp(-z * z * wall));

        (HeatSeries.Cylinder(sideBiot, side, radial) * HeatSeries.Wall(wallBiot, wall, axial)).ShouldBe(cylinder * slab, 1e-8);
    }

    // The same by the library's solver of differential equations: the cylinder cut into rings and discs, each a lump of heat.
    [Theory]
    [InlineData(37.5, 50, 20)]
    [InlineData(50.5, 101.5, 40)]
    public void Left_OfAFlask_IsWhatTheLibrarysSolverGives(double radiusMm, double halfHeightMm, double film)
    {
        const int Cells = 12;
        const double Conductivity = 0.3004;
        const double Diffusivity = 0.1923;
        const double Seconds = 3600;

        var side = Solved(radiusMm, shape: 1);
        var ends = Solved(halfHeightMm, shape: 0);

        var (sideFourier, endFourier) = (Diffusivity * Seconds / (radiusMm * radiusMm), Diffusivity * Seconds / (halfHeightMm * halfHeightMm));
        for (var i = 0; i < Cells; i++)
        {
            HeatSeries.Cylinder(film * radiusMm / 1000 / Conductivity, sideFourier, (i + 0.5) / Cells).ShouldBe(side[i], 0.004);
            HeatSeries.Wall(film * halfHeightMm / 1000 / Conductivity, endFourier, (i + 0.5) / Cells).ShouldBe(ends[i], 0.004);
        }

        // Rings where the shape is 1, discs where it is 0.
        Vector<double> Solved(double wayMm, int shape)
        {
            var cell = wayMm / Cells;
            var skin = 1 / ((cell / 2) + (Conductivity / film * 1000));
            return RungeKutta.FourthOrder(Vector<double>.Build.Dense(Cells, 1.0), 0, Seconds, 8000, Change)[^1];

            Vector<double> Change(double at, Vector<double> left) => Vector<double>.Build.Dense(Cells, i =>
            {
                var inner = i == 0 ? 0 : (left[i - 1] - left[i]) / cell * Face(i);
                var outer = i == Cells - 1 ? -left[i] * skin * Face(i + 1) : (left[i + 1] - left[i]) / cell * Face(i + 1);
                return Diffusivity * (inner + outer) / (cell * (shape == 1 ? i + 0.5 : 1));
            });

            double Face(int i) => shape == 1 ? i : 1;
        }
    }

    private static List<double> Roots(Func<double, double> function, int count)
    {
        var roots = new List<double>();
        const double Step = 0.05;
        for (var at = 1e-9; roots.Count < count; at += Step)
        {
            if (function(at) < 0 != function(at + Step) < 0)
            {
                roots.Add(Brent.FindRoot(function, at, at + Step, 1e-13));
            }
        }

        return roots;
    }
}
