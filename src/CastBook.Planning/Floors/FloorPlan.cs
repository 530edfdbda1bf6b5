using UnitsNet;

namespace CastBook.Planning.Floors;

/// <summary>Finds room for flasks on the floor of a kiln: circles of any sizes in a rectangle or a circle.</summary>
/// <remarks>
/// Each flask is drawn larger by half of the gap between flasks, and the floor moved in by what the gap to the wall
/// exceeds that. Then places in corners and notches are tried, the largest flask first, and where those fail the
/// flasks are let push each other apart from many starts. Bounded by work and the same on every machine; a place that
/// is given keeps every gap to a thousandth of a millimetre. No place found is no proof that there is none: within
/// 0.3 % of the best radius known one is found for up to twenty equal flasks.
/// </remarks>
internal static class FloorPlan
{
    private const double ToleranceMm = 1e-3;
    private const int Pushes = 120;

    /// <summary>Places flasks on a floor.</summary>
    /// <param name="floor">The floor.</param>
    /// <param name="diameters">Outside diameters of the flasks.</param>
    /// <param name="flaskGap">Gap between two flasks, for the hot air.</param>
    /// <param name="wallGap">Gap between a flask and the wall.</param>
    /// <returns>A spot for each flask, in the order given; nothing where no room was found for all of them.</returns>
    public static IReadOnlyList<FloorSpot>? Place(
        KilnFloor floor, IReadOnlyList<Length> diameters, Length flaskGap, Length wallGap)
    {
        var area = Area(floor, flaskGap, wallGap);
        var radii = new double[diameters.Count];
        for (var i = 0; i < radii.Length; i++)
        {
            radii[i] = RadiusMm(diameters[i], flaskGap);
        }

        return Circles(area, radii) is { } places
            ? [.. places.Select(p => new FloorSpot(Length.FromMillimeters(p.X), Length.FromMillimeters(p.Y)))]
            : null;
    }

    /// <summary>The share of a floor's area that a flask takes with its gap, at most all of it: flasks of more than the whole find no room together.</summary>
    /// <param name="floor">The floor.</param>
    /// <param name="diameter">Outside diameter of the flask.</param>
    /// <param name="flaskGap">Gap between two flasks.</param>
    /// <param name="wallGap">Gap between a flask and the wall.</param>
    public static double Share(KilnFloor floor, Length diameter, Length flaskGap, Length wallGap)
    {
        var radius = RadiusMm(diameter, flaskGap);
        var area = Area(floor, flaskGap, wallGap).SquareMm;
        return area <= 0 ? 1 : Math.Min(1, Math.PI * radius * radius / area);
    }

    private static FloorArea Area(KilnFloor floor, Length flaskGap, Length wallGap)
    {
        var inset = 2 * (wallGap.Millimeters - (flaskGap.Millimeters / 2));
        return new FloorArea(floor.IsRound, (floor.Width.Millimeters - inset) / 2, (floor.Depth.Millimeters - inset) / 2);
    }

    private static double RadiusMm(Length diameter, Length flaskGap) => (diameter.Millimeters + flaskGap.Millimeters) / 2;

    private static (double X, double Y)[]? Circles(FloorArea area, double[] radii)
    {
        if (!MayFit(area, radii))
        {
            return null;
        }

        if (CornerPlacing.Place(area, radii) is { } corners && area.Holds(corners, radii, ToleranceMm))
        {
            return corners;
        }

        var pushing = new PushingApart(area, radii);
        for (var i = 0; i < Pushes; i++)
        {
            var apart = pushing.Try();
            if (area.Holds(apart, radii, ToleranceMm))
            {
                return apart;
            }
        }

        return null;
    }

    // Refused without a search: a flask wider than the floor, or more area than there is.
    private static bool MayFit(FloorArea area, double[] radii)
    {
        var needed = 0.0;
        foreach (var radius in radii)
        {
            needed += Math.PI * radius * radius;
            if (radius > Math.Min(area.HalfWidthMm, area.HalfDepthMm) + ToleranceMm)
            {
                return false;
            }
        }

        return needed <= area.SquareMm;
    }
}
