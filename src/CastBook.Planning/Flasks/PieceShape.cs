using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>What a piece takes on the trunk of one flask size, in whole units so that what fits here fits the flask.</summary>
/// <remarks>
/// A piece hangs on its gate at a tilt to the trunk. Other sizes are a slab with its length along the gate, a
/// ring is a disc standing in the plane of the trunk. Angle, pitch and tail are rounded up.
/// </remarks>
/// <param name="Theta">Angle round the trunk, in 1/144 turn.</param>
/// <param name="Pitch">Length of trunk, in half millimetres.</param>
/// <param name="Tail">How far it stands up beyond its length of trunk, in half millimetres.</param>
/// <param name="Fits">Whether it stays clear of the wall and below the top.</param>
internal readonly record struct PieceShape(int Theta, int Pitch, int Tail, bool Fits)
{
    /// <summary>The units of a whole turn.</summary>
    public const int Turn = 144;

    /// <summary>What floating point may be off by, in any of the units.</summary>
    public const double Dust = 1e-9;

    /// <summary>How far from the middle it reaches, in millimetres.</summary>
    public double OutMm { get; private init; }

    /// <summary>How much of the trunk's length it needs alone, in millimetres.</summary>
    public double AlongMm { get; private init; }

    /// <summary>How it hangs: the length of its gate and its angle to the trunk.</summary>
    private (double GateMm, double Radians, bool OnEdge) Way { get; init; }

    /// <summary>The way of hanging of which a tree takes most, then that takes least of the unrolled trunk; if none fits, the one that lacks least.</summary>
    /// <param name="box">The piece's outer sizes.</param>
    /// <param name="stubsMm">The gate lengths it may hang on.</param>
    /// <param name="rules">How pieces hang.</param>
    /// <param name="size">The flask size.</param>
    public static PieceShape Of(PieceBox box, IReadOnlyList<double> stubsMm, HangingRules rules, UsableSize size)
    {
        PieceShape? best = null;
        foreach (var shape in Ways(box, stubsMm, rules, size))
        {
            if (best is not { } other || shape.IsBetterThan(other, size))
            {
                best = shape;
            }
        }

        return best!.Value;
    }

    /// <summary>The piece as it hangs this way.</summary>
    /// <param name="piece">The row; its sizes are known.</param>
    /// <param name="height">Where its gate meets the trunk.</param>
    public HungPiece Hang(Piece piece, Length height)
    {
        var box = piece.Box!.Value;
        var thickness = box.Thickness ?? box.Width;
        return new HungPiece(piece.Id, height, Length.FromMillimeters(Way.GateMm))
        {
            Tilt = Angle.FromRadians(Way.Radians),
            IsRing = box.IsRing,
            Along = box.Length,
            Around = Way.OnEdge ? thickness : box.Width,
            Deep = box.IsRing ? box.Length : Way.OnEdge ? box.Width : thickness,
            OnEdge = Way.OnEdge,
        };
    }

    /// <summary>The longest gate that any way of hanging gives the piece, in millimetres.</summary>
    /// <param name="sizes">The piece's outer sizes; missing where only a number per tree is known.</param>
    /// <param name="stubsMm">The gate lengths it may hang on.</param>
    /// <param name="rules">How pieces hang.</param>
    public static double LongestGateMm(PieceBox? sizes, IReadOnlyList<double> stubsMm, HangingRules rules)
    {
        var stub = stubsMm.Max();
        if (sizes is not { } box)
        {
            return stub;
        }

        var across = Math.Max(box.Width.Millimeters, (box.Thickness ?? box.Width).Millimeters);
        return box.IsRing ? DiscGate(box.Length.Millimeters / 2, stub, rules) : SlabGate(across, stub, rules);
    }

    private static IEnumerable<PieceShape> Ways(PieceBox box, IReadOnlyList<double> stubsMm, HangingRules rules, UsableSize size)
    {
        var (length, width) = (box.Length.Millimeters, box.Width.Millimeters);
        var thickness = (box.Thickness ?? box.Width).Millimeters;
        foreach (var stub in stubsMm)
        {
            if (box.IsRing)
            {
                yield return Disc(length / 2, width, stub, rules, size);
            }
            else
            {
                yield return Slab(length, width, thickness, stub, rules, size);
                var onEdge = Slab(length, thickness, width, stub, rules, size);
                yield return onEdge with { Way = onEdge.Way with { OnEdge = true } };
            }
        }
    }

    private static double SlabGate(double thickness, double stub, HangingRules rules) =>
        Math.Max(stub, ((thickness / 2 * rules.Cos) + 1) / rules.Sin);

    private static double DiscGate(double radius, double stub, HangingRules rules) =>
        Math.Max(stub, (radius + 1 - (radius * rules.Sin)) / rules.Sin);

    private static PieceShape Slab(double length, double width, double thickness, double stub, HangingRules rules, UsableSize size)
    {
        var (sin, cos) = (rules.Sin, rules.Cos);
        var gate = SlabGate(thickness, stub, rules);
        var inner = size.TrunkRadiusMm + (gate * sin) - (thickness / 2 * cos);
        var pitch = (thickness + rules.GapMm) / sin;
        var outer = double.Hypot(size.TrunkRadiusMm + ((gate + length) * sin) + (thickness / 2 * cos), width / 2);
        var tail = ((gate + length) * cos) + (thickness / 2 * sin) - (pitch / 2);
        return Whole(inner, width, pitch, tail, outer, gate, rules, size);
    }

    // The pitch is that of the slab the disc lies in, so that discs may hang above anything.
    private static PieceShape Disc(double radius, double width, double stub, HangingRules rules, UsableSize size)
    {
        var (sin, cos) = (rules.Sin, rules.Cos);
        var gate = DiscGate(radius, stub, rules);
        var middle = size.TrunkRadiusMm + ((gate + radius) * sin);
        var pitch = ((2 * radius) + rules.GapMm) / sin;
        var tail = ((gate + radius) * cos) + radius - (pitch / 2);
        return Whole(middle - radius, width, pitch, tail, double.Hypot(middle + radius, width / 2), gate, rules, size);
    }

    private static PieceShape Whole(
        double innerMm, double widthMm, double pitchMm, double tailMm, double outerMm, double gateMm, HangingRules rules, UsableSize size)
    {
        var gapAngle = Math.Min(1, rules.GapMm / 2 / double.Hypot(innerMm, widthMm / 2));
        var turns = (Math.Atan(widthMm / 2 / innerMm) + Math.Asin(gapAngle)) / Math.PI;
        var theta = Math.Max(1, Up(turns * Turn));
        var pitch = Math.Max(1, Up(pitchMm * 2));
        var tail = Math.Max(0, Up(tailMm * 2));
        var fits = outerMm <= size.ReachMm + Dust && pitch + tail <= size.Rod && theta <= Turn;
        return new(theta, pitch, tail, fits)
        {
            OutMm = outerMm,
            AlongMm = pitchMm + Math.Max(0, tailMm),
            Way = (gateMm, Math.Atan2(rules.Sin, rules.Cos), OnEdge: false),
        };
    }

    private long Area => (long)Theta * Pitch;

    private bool IsBetterThan(PieceShape other, UsableSize size)
    {
        if (!Fits || !other.Fits)
        {
            return Fits || (!other.Fits && Lack(size) < other.Lack(size));
        }

        // Least area alone would hang two round the trunk where another gate lets as many hang and more above.
        var (mine, theirs) = (Alone(size), other.Alone(size));
        return mine != theirs ? mine > theirs : Area < other.Area;
    }

    private int Alone(UsableSize size) => Turn / Theta * ((size.Rod - Tail) / Pitch);

    private double Lack(UsableSize size) => Math.Max(0, OutMm - size.ReachMm) + Math.Max(0, AlongMm - size.RodMm);

    // Sizes from broken cells can be enormous; they must not wrap round into something that fits.
    private static int Up(double units) => (int)Math.Min(1e6, Math.Ceiling(units - Dust));
}
