using System.Numerics;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;

namespace CastBook.Planning.Tests.Flasks;

/// <summary>Builds planned trees in space and measures them, without the planner's own geometry of sectors.</summary>
public sealed class TreeClearanceTests
{
    private const double GapMm = 3;
    private const double GateMm = 9;
    private const double TrunkMm = 4;

    private static readonly double Sin = Math.Sin(50 * Math.PI / 180);
    private static readonly double Cos = Math.Cos(50 * Math.PI / 180);

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 8)];

    // Points on the surfaces never lie nearer than the bodies do, so that a sound tree always passes.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Tree_OfRandomPieces_KeepsTheGapAndTheWall(int seed)
    {
        var random = new Random(seed);
        var pieces = Enumerable.Range(0, 6).Select(_ => Invent(random)).ToArray();
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Large with { Owned = 4, Cup = null }] }, pieces));

        foreach (var flask in plan.Flasks)
        {
            Measure(flask, pieces);
        }
    }

    // The measuring itself must see a fault: two rings stacked 1 mm too near.
    [Fact]
    public void Distance_PiecesTooNear_IsSeen()
    {
        var ring = new PieceBox(true, Wrenmoor.Mm(20), Wrenmoor.Mm(4), null);

        Nearest(Body(ring, 0, 0), Body(ring, 0, 22)).ShouldBeLessThan(GapMm);
        Nearest(Body(ring, 0, 0), Body(ring, 0, 23 / Sin)).ShouldBeGreaterThanOrEqualTo(GapMm);
    }

    private static void Measure(FlaskPlan flask, Piece[] pieces)
    {
        var size = SizeBook.Of(Wrenmoor.Shop, ask: true, new FindingList()).Sizes[2];
        var rules = new HangingRules(Wrenmoor.Answered, new FindingList());
        var bodies = new List<List<Vector3>>();
        var start = 0.0;
        foreach (var column in flask.Columns)
        {
            var shapes = column.Pieces.Select(p => (p, Shape: PieceShape.Of(pieces[p.PieceId].Box!, [GateMm], rules, size))).ToList();
            var theta = shapes.Max(s => s.Shape.Theta);
            var angle = (start + (theta / 2.0)) * 2 * Math.PI / PieceShape.Turn;
            start += theta;
            var z = 0.0;
            foreach (var (share, shape) in shapes.SelectMany(s => Enumerable.Repeat(s, s.p.Quantity)))
            {
                bodies.Add(Body(pieces[share.PieceId].Box!, angle, z + (shape.Pitch / 4.0)));
                z += shape.Pitch / 2.0;
            }
        }

        start.ShouldBeLessThanOrEqualTo(PieceShape.Turn);
        foreach (var point in bodies.SelectMany(b => b))
        {
            double.Hypot(point.X, point.Y).ShouldBeLessThanOrEqualTo(size.ReachMm + 1e-3);
            ((double)point.Z).ShouldBeLessThanOrEqualTo(size.RodMm + 1e-3);
        }

        for (var i = 0; i < bodies.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Nearest(bodies[i], bodies[j]).ShouldBeGreaterThanOrEqualTo(GapMm - 1e-3);
            }
        }
    }

    private static double Nearest(List<Vector3> a, List<Vector3> b)
    {
        // Far bodies need no look at every point.
        if (Vector3.Distance(a[0], b[0]) > 80)
        {
            return 80;
        }

        return Math.Sqrt(a.Min(p => b.Min(q => Vector3.DistanceSquared(p, q))));
    }

    // Square slabs, so that it does not matter which way they are rolled; rings as discs.
    private static List<Vector3> Body(PieceBox box, double angle, double z)
    {
        var points = new List<Vector3>();
        var (length, width) = (box.Length.Millimeters, box.Width.Millimeters);
        double[] across = [-width / 2, 0, width / 2];
        if (box.IsRing)
        {
            var middle = GateMm + (length / 2);
            foreach (var w in across)
            {
                for (var turn = 0.0; turn < 2 * Math.PI; turn += Math.PI / 24)
                {
                    points.Add(Place(
                        TrunkMm + (middle * Sin) + (length / 2 * Math.Cos(turn)), w, z + (middle * Cos) + (length / 2 * Math.Sin(turn)), angle));
                }
            }

            return points;
        }

        for (var along = 0.0; along <= length + 1e-9; along += length / 8)
        {
            foreach (var w in across)
            {
                foreach (var t in across)
                {
                    var u = GateMm + along;
                    points.Add(Place(TrunkMm + (u * Sin) - (t * Cos), w, z + (u * Cos) + (t * Sin), angle));
                }
            }
        }

        return points;
    }

    private static Vector3 Place(double radial, double tangential, double z, double angle) => new(
        (float)((radial * Math.Cos(angle)) - (tangential * Math.Sin(angle))),
        (float)((radial * Math.Sin(angle)) + (tangential * Math.Cos(angle))),
        (float)z);

    private static Piece Invent(Random random)
    {
        var isRing = random.Next(2) == 0;
        var width = 2 + (random.NextDouble() * 6);
        var box = isRing
            ? new PieceBox(true, Wrenmoor.Mm(12 + (random.NextDouble() * 10)), Wrenmoor.Mm(width), null)
            : new PieceBox(false, Wrenmoor.Mm(6 + (random.NextDouble() * 20)), Wrenmoor.Mm(width), Wrenmoor.Mm(width));
        return Wrenmoor.Ring(random.Next(2, 9)) with { Box = box, Gate = new PieceGate(1, Wrenmoor.Mm(2), Wrenmoor.Mm(GateMm)) };
    }
}
