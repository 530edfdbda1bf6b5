namespace CastBook.Planning.Floors;

/// <summary>Places circles one by one where they touch two others or the wall, the largest first, in the tightest notch.</summary>
internal sealed class CornerPlacing
{
    private const int Tries = 12;
    private const double DustMm = 1e-7;

    private readonly FloorArea area;
    private readonly double[] radii;
    private readonly (double X, double Y)[] places;
    private readonly List<int> placed = [];

    private CornerPlacing(FloorArea area, double[] radii)
    {
        this.area = area;
        this.radii = radii;
        places = new (double X, double Y)[radii.Length];
    }

    /// <summary>Places all circles, or none.</summary>
    /// <param name="area">Where.</param>
    /// <param name="radii">Their radii.</param>
    public static (double X, double Y)[]? Place(FloorArea area, double[] radii)
    {
        var order = Enumerable.Range(0, radii.Length).OrderByDescending(i => radii[i]).ThenBy(i => i).ToArray();
        for (var attempt = 0; attempt < Tries; attempt++)
        {
            // The first try takes the tightest notch each time; the others stray from it more and more.
            var chance = new Chance((ulong)attempt);
            var placing = new CornerPlacing(area, radii);
            if (Array.TrueForAll(order, i => placing.PlaceOne(i, attempt * 0.05, chance)))
            {
                return placing.places;
            }
        }

        return null;
    }

    private bool PlaceOne(int circle, double stray, Chance chance)
    {
        var best = double.MaxValue;
        foreach (var (x, y) in Notches(radii[circle]))
        {
            if (!IsFree(x, y, radii[circle], out var looseness))
            {
                continue;
            }

            var value = looseness + (stray * radii[circle] * chance.Next());
            if (value < best)
            {
                best = value;
                places[circle] = (x, y);
            }
        }

        if (best == double.MaxValue)
        {
            return false;
        }

        placed.Add(circle);
        return true;
    }

    // Looseness is the distance to the nearest thing that is not touched.
    private bool IsFree(double x, double y, double radius, out double looseness)
    {
        looseness = double.MaxValue;
        var (outX, outY) = area.Overhang(x, y, radius);
        if (Math.Abs(outX) > DustMm || Math.Abs(outY) > DustMm)
        {
            return false;
        }

        var touched = 0;
        foreach (var gap in WallGaps(x, y, radius))
        {
            Count(gap, ref touched, ref looseness);
        }

        foreach (var other in placed)
        {
            var gap = Distance(x, y, places[other]) - radius - radii[other];
            if (gap < -DustMm)
            {
                return false;
            }

            Count(gap, ref touched, ref looseness);
        }

        looseness = touched > 2 ? 0 : looseness;
        return true;
    }

    private static void Count(double gap, ref int touched, ref double looseness)
    {
        if (gap <= 1e-6)
        {
            touched++;
        }
        else
        {
            looseness = Math.Min(looseness, gap);
        }
    }

    private double[] WallGaps(double x, double y, double radius) => area.IsRound
        ? [area.HalfWidthMm - radius - Math.Sqrt((x * x) + (y * y))]
        : [area.HalfWidthMm - radius - Math.Abs(x), area.HalfDepthMm - radius - Math.Abs(y)];

    private IEnumerable<(double X, double Y)> Notches(double radius)
    {
        var width = area.HalfWidthMm - radius;
        var depth = area.HalfDepthMm - radius;
        if (area.IsRound)
        {
            yield return (width, 0);
        }
        else
        {
            yield return (-width, -depth);
            yield return (width, -depth);
            yield return (-width, depth);
            yield return (width, depth);
        }

        for (var i = 0; i < placed.Count; i++)
        {
            var (x, y) = places[placed[i]];
            var reach = radius + radii[placed[i]];
            var atWall = area.IsRound
                ? Crossings(x, y, reach, 0, 0, width)
                : [.. AlongSide(x, y, reach, -width), .. AlongSide(x, y, reach, width), .. AlongEnd(x, y, reach, -depth), .. AlongEnd(x, y, reach, depth)];
            foreach (var point in atWall)
            {
                yield return point;
            }

            for (var j = 0; j < i; j++)
            {
                var (otherX, otherY) = places[placed[j]];
                foreach (var point in Crossings(x, y, reach, otherX, otherY, radius + radii[placed[j]]))
                {
                    yield return point;
                }
            }
        }
    }

    private static (double X, double Y)[] AlongSide(double x, double y, double reach, double side) =>
        HalfChord(side - x, reach) is { } half ? [(side, y - half), (side, y + half)] : [];

    private static (double X, double Y)[] AlongEnd(double x, double y, double reach, double end) =>
        HalfChord(end - y, reach) is { } half ? [(x - half, end), (x + half, end)] : [];

    private static double? HalfChord(double offset, double reach) =>
        Math.Abs(offset) > reach ? null : Math.Sqrt((reach * reach) - (offset * offset));

    /// <summary>Where two circles cross.</summary>
    private static (double X, double Y)[] Crossings(double x1, double y1, double r1, double x2, double y2, double r2)
    {
        var dx = x2 - x1;
        var dy = y2 - y1;
        var distance = Math.Sqrt((dx * dx) + (dy * dy));
        if (distance == 0 || distance > r1 + r2 || distance < Math.Abs(r1 - r2))
        {
            return [];
        }

        var along = ((distance * distance) + (r1 * r1) - (r2 * r2)) / (2 * distance);
        var across = Math.Sqrt(Math.Max(0, (r1 * r1) - (along * along)));
        var (ux, uy) = (dx / distance, dy / distance);
        return
        [
            (x1 + (ux * along) - (uy * across), y1 + (uy * along) + (ux * across)),
            (x1 + (ux * along) + (uy * across), y1 + (uy * along) - (ux * across)),
        ];
    }

    private static double Distance(double x, double y, (double X, double Y) other)
    {
        var (dx, dy) = (x - other.X, y - other.Y);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
