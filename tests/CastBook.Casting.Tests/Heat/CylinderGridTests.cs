namespace CastBook.Casting.Tests.Heat;

/// <summary>The product of wall and cylinder beside a grid in small steps of time, which knows nothing of roots, everywhere in short cylinders.</summary>
public sealed class CylinderGridTests
{
    // A flask; a flat one; a tall one; one like the published example of 100 × 160 mm with 0.5 W/(m K), 0.5 mm²/s and 30 W/(m² K).
    [Theory]
    [InlineData(37.5, 50, 0.3004, 0.1923, 20, 1)]
    [InlineData(37.5, 50, 0.3004, 0.1923, 200, 0.5)]
    [InlineData(40, 15, 0.48, 0.397, 40, 0.25)]
    [InlineData(25, 100, 0.3004, 0.1923, 40, 1)]
    [InlineData(50, 80, 0.5, 0.5, 30, 0.5)]
    public void Left_AnywhereInAShortCylinder_AgreesWithAGrid(double radiusMm, double halfHeightMm, double conductivity, double diffusivity, double film, double hours)
    {
        var grid = new CylinderGrid(radiusMm, halfHeightMm, conductivity, diffusivity, film);
        grid.Jump(1000);
        grid.Go(1000, hours);
        var fourier = diffusivity * 3600 * hours;

        foreach (var radial in new[] { 0, 9, 17, CylinderGrid.Cells })
        {
            foreach (var axial in new[] { 0, 9, 17, CylinderGrid.Cells })
            {
                var left = HeatSeries.Cylinder(film * radiusMm / 1000 / conductivity, fourier / (radiusMm * radiusMm), CylinderGrid.Place(radial))
                    * HeatSeries.Wall(film * halfHeightMm / 1000 / conductivity, fourier / (halfHeightMm * halfHeightMm), CylinderGrid.Place(axial));
                grid.At(radial, axial).ShouldBe(1000 * (1 - left), 3, $"cell {radial}, {axial}");
            }
        }
    }
}
