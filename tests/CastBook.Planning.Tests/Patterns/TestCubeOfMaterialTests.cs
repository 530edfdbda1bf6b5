using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Patterns;

public sealed class TestCubeOfMaterialTests
{
    private static readonly Material Cube = Wrenmoor.Resin with { Density = null, CubeMass = Mass.FromGrams(9.04), CubeEdge = Wrenmoor.Mm(20) };

    // By hand: 9.04 g / 8 cm³ = 1.13 g/cm³; 1.9 g of it are 1.681 cm³, and 17.49 g of bench silver.
    [Fact]
    public void Density_OnlyACube_IsLearntFromItAndNoted()
    {
        var plan = Plan(Cube);

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(1.9 / 1.13 * 10.4, 1e-9);
        plan.The("density-from-cube").Text().ShouldBe(
            "The density of \"Castable resin\", 1.13 g/cm³, is learnt from its test cube. To change it, type the density on the Materials sheet.");
        plan.Ids().ShouldNotContain("pattern-density-missing");
    }

    [Fact]
    public void Density_MeasuredVolume_WinsOverTheEdge() =>
        Plan(Cube with { CubeVolume = Wrenmoor.Ml(7.8) }).Pieces[0].MetalEach!.Value.Grams.ShouldBe(1.9 / (9.04 / 7.8) * 10.4, 1e-9);

    [Fact]
    public void Density_MassWithoutMeasure_IsStillAsked() =>
        Plan(Cube with { CubeEdge = null }).Ids().ShouldContain("pattern-density-missing");

    [Fact]
    public void Density_GivenAndNearTheCube_SaysNothing()
    {
        var plan = Plan(Cube with { Density = Density.FromGramsPerCubicCentimeter(1.15) });

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(1.9 / 1.15 * 10.4, 1e-9);
        plan.StopsAndChecks().ShouldBe(["schedule-of-maker-missing"]);
    }

    [Fact]
    public void Density_GivenAndFarFromTheCube_IsChecked()
    {
        var plan = Plan(Cube with { Density = Density.FromGramsPerCubicCentimeter(1.18) });

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(1.9 / 1.18 * 10.4, 1e-9);
        plan.The("cube-differs").Text().ShouldBe(
            "The Materials sheet gives 1.18 g/cm³ for \"Castable resin\"; its test cube tells 1.13 g/cm³. "
            + "More than 3 % apart, and the metal follows from it. The density given was used. "
            + "Weigh and measure the cube again, or clear the density to use the cube's.");
    }

    [Fact]
    public void Density_CubeNoResinCanBe_IsChecked() =>
        Plan(Cube with { CubeMass = Mass.FromGrams(4.4) }).The("cube-unlikely").Text().ShouldBe(
            "The test cube of \"Castable resin\" tells 0.55 g/cm³; such material runs from 1.10 g/cm³ to 1.20 g/cm³. The metal follows from it. "
            + "Weigh and measure the cube again: it must be solid, and its edge is what a caliper reads.");

    private static NightPlan Plan(Material resin) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with { Materials = [Wrenmoor.Wax, resin] }, Wrenmoor.Ring() with { Material = "Castable resin" }));
}
