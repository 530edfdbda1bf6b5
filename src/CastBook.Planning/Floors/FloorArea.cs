namespace CastBook.Planning.Floors;

/// <summary>The part of a floor on which circles may lie, its middle at the origin.</summary>
/// <param name="IsRound">Whether it is a circle; then both halves are its radius.</param>
/// <param name="HalfWidthMm">Half its width.</param>
/// <param name="HalfDepthMm">Half its depth.</param>
internal readonly record struct FloorArea(bool IsRound, double HalfWidthMm, double HalfDepthMm)
{
    /// <summary>Its area.</summary>
    public double SquareMm => IsRound ? Math.PI * HalfWidthMm * HalfWidthMm : 4 * HalfWidthMm * HalfDepthMm;

    /// <summary>How far a circle sticks out of it, to each side; in a round one along the line from the middle.</summary>
    /// <param name="x">Its middle.</param>
    /// <param name="y">Its middle.</param>
    /// <param name="radius">Its radius.</param>
    public (double X, double Y) Overhang(double x, double y, double radius)
    {
        if (!IsRound)
        {
            return (Beyond(x, HalfWidthMm - radius), Beyond(y, HalfDepthMm - radius));
        }

        var distance = Math.Sqrt((x * x) + (y * y));
        var beyond = distance - (HalfWidthMm - radius);
        return beyond <= 0 || distance == 0 ? (0, 0) : (x / distance * beyond, y / distance * beyond);
    }

    /// <summary>Whether circles lie within it and none upon another.</summary>
    /// <param name="places">Their middles.</param>
    /// <param name="radii">Their radii.</param>
    /// <param name="toleranceMm">By how much they may.</param>
    public bool Holds((double X, double Y)[] places, double[] radii, double toleranceMm)
    {
        for (var i = 0; i < places.Length; i++)
        {
            var (x, y) = places[i];
            var (outX, outY) = Overhang(x, y, radii[i]);
            if (Math.Abs(outX) > toleranceMm || Math.Abs(outY) > toleranceMm)
            {
                return false;
            }

            for (var j = 0; j < i; j++)
            {
                var dx = x - places[j].X;
                var dy = y - places[j].Y;
                if (Math.Sqrt((dx * dx) + (dy * dy)) < radii[i] + radii[j] - toleranceMm)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static double Beyond(double at, double limit) =>
        at > limit ? at - limit : at < -limit ? at + limit : 0;
}
