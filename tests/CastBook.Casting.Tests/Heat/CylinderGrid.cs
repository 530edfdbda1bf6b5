namespace CastBook.Casting.Tests.Heat;

/// <summary>An independent witness: an explicit finite-difference cylinder, a quarter of it by symmetry.</summary>
internal sealed class CylinderGrid(double radiusMm, double halfHeightMm, double conductivity, double diffusivity, double film)
{
    /// <summary>Cells from the core to a face.</summary>
    public const int Cells = 24;

    private readonly double[] celsius = new double[Cells * Cells];
    private double kiln;

    /// <summary>Goes to a kiln temperature in a straight line, and gives the temperature in the middle.</summary>
    /// <param name="target">Where to.</param>
    /// <param name="hours">How long it takes.</param>
    public double Go(double target, double hours)
    {
        var (dr, dz) = (radiusMm / Cells, halfHeightMm / Cells);
        var steps = (int)Math.Ceiling(hours * 3600 / (0.1 * Math.Min(dr * dr, dz * dz) / diffusivity));
        var (from, dt) = (kiln, hours * 3600 / steps);
        for (var step = 1; step <= steps; step++)
        {
            kiln = from + ((target - from) * step / steps);
            Step(dr, dz, dt);
        }

        // The innermost cell's middle is half a cell from the core.
        return celsius[0];
    }

    /// <summary>The kiln at a temperature at once.</summary>
    /// <param name="target">The temperature.</param>
    public void Jump(double target) => kiln = target;

    /// <summary>The temperature in the middle of a cell, counted from the core; one past the last is the face.</summary>
    /// <param name="radial">The cell towards the side.</param>
    /// <param name="axial">The cell towards the end.</param>
    public double At(int radial, int axial)
    {
        var celsiusThere = celsius[Index(Math.Min(radial, Cells - 1), Math.Min(axial, Cells - 1))];
        var (side, end) = (radial < Cells ? 1 : Skin(radiusMm / Cells), axial < Cells ? 1 : Skin(halfHeightMm / Cells));
        return kiln + ((celsiusThere - kiln) * side * end);
    }

    /// <summary>Where a cell's middle is, as a share of the way from the core to the face.</summary>
    /// <param name="cell">The cell; one past the last is the face.</param>
    public static double Place(int cell) => Math.Min(1, (cell + 0.5) / Cells);

    private void Step(double dr, double dz, double dt)
    {
        var before = (double[])celsius.Clone();
        var (sideFilm, endFilm) = (Across(dr), Across(dz));
        for (var i = 0; i < Cells; i++)
        {
            for (var j = 0; j < Cells; j++)
            {
                var here = before[Index(i, j)];
                var inner = i == 0 ? 0 : (before[Index(i - 1, j)] - here) * i / dr;
                var outer = i == Cells - 1 ? (kiln - here) * (i + 1) * sideFilm : (before[Index(i + 1, j)] - here) * (i + 1) / dr;
                var below = j == 0 ? 0 : (before[Index(i, j - 1)] - here) / dz;
                var above = j == Cells - 1 ? (kiln - here) * endFilm : (before[Index(i, j + 1)] - here) / dz;
                celsius[Index(i, j)] = here + (diffusivity * dt * (((inner + outer) / ((i + 0.5) * dr)) + ((below + above) / dz)));
            }
        }
    }

    private static int Index(int i, int j) => (i * Cells) + j;

    // What is left of a difference to the kiln at the face, of that in the middle of the last cell.
    private double Skin(double cell) => conductivity / film * 1000 / ((cell / 2) + (conductivity / film * 1000));

    // Half a cell of mould and the film one after the other, per millimetre of mould.
    private double Across(double cell) => 1 / ((cell / 2) + (conductivity / film * 1000));
}
