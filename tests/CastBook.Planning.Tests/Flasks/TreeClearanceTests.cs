using System.Numerics;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;

namespace CastBook.Planning.Tests.Flasks;

/// <summary>Builds trees in space from the places that a plan gives to each piece, and measures them, without the planner's own geometry of sectors.</summary>
public sealed class TreeClearanceTests
{
    private const double GapMm = 3;
    private const double GateMm = 9;
    private const double TrunkMm = 4;

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

        plan.Flasks.ShouldNotBeEmpty();
        foreach (var flask in plan.Flasks)
        {
            Measure(flask);
        }
    }

    // Trees as a search that is ended at once hangs them; what sticks out furthest of each body is looked at.
    [Fact]
    public void Tree_AThousandAtRandom_KeepTheGapAndTheWall()
    {
        var (random, trees) = (new Random(1000), 0);
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Large with { Owned = 40, Cup = null }] };
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        while (trees < 1000)
        {
            var plan = NightPlanner.Plan(Wrenmoor.Night(shop, [.. Enumerable.Range(0, 60).Select(_ => Invent(random))]), new PlanSearch(stop.Token, null));
            trees += plan.Flasks.Count;
            foreach (var flask in plan.Flasks)
            {
                Measure(flask, fineness: 3);
            }
        }
    }

    // The measuring itself must see a fault: two rings stacked 1 mm too near.
    [Fact]
    public void Distance_PiecesTooNear_IsSeen()
    {
        var ring = new HungPiece(0, Wrenmoor.Mm(0), Wrenmoor.Mm(GateMm))
        {
            Tilt = UnitsNet.Angle.FromDegrees(50),
            IsRing = true,
            Along = Wrenmoor.Mm(20),
            Around = Wrenmoor.Mm(4),
            Deep = Wrenmoor.Mm(20),
        };

        Nearest(Body(ring, 0), Body(ring with { Height = Wrenmoor.Mm(22) }, 0)).ShouldBeLessThan(GapMm);
        Nearest(Body(ring, 0), Body(ring with { Height = Wrenmoor.Mm(23 / Math.Sin(50 * Math.PI / 180)) }, 0)).ShouldBeGreaterThanOrEqualTo(GapMm);
    }

    private static void Measure(FlaskPlan flask, int fineness = 8)
    {
        var size = SizeBook.Of(Wrenmoor.Shop, ask: true, new FindingList()).Sizes[2];
        flask.Columns.Sum(c => c.Width.Degrees).ShouldBeLessThanOrEqualTo(360);
        flask.Columns.Sum(c => c.Places.Count).ShouldBe(flask.Pieces.Sum(p => p.Quantity));
        var bodies = flask.Columns.SelectMany(c => c.Places.Select(p => Body(p, c.Middle.Radians, fineness))).ToList();
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
        var apart = Vector3.Distance(a[0], b[0]) - Reach(a) - Reach(b);
        if (apart > GapMm)
        {
            return apart;
        }

        var least = float.MaxValue;
        foreach (var p in a)
        {
            foreach (var q in b)
            {
                least = Math.Min(least, Vector3.DistanceSquared(p, q));
            }
        }

        return Math.Sqrt(least);
    }

    private static float Reach(List<Vector3> body) => body.Max(p => Vector3.Distance(body[0], p));

    // Points on the surface of a box, or of a disc in the plane of the trunk.
    private static List<Vector3> Body(HungPiece piece, double angle, int fineness = 8)
    {
        var points = new List<Vector3>();
        var (sin, cos) = (Math.Sin(piece.Tilt.Radians), Math.Cos(piece.Tilt.Radians));
        var (gate, length, z) = (piece.Gate.Millimeters, piece.Along.Millimeters, piece.Height.Millimeters);
        var around = Across(piece.Around.Millimeters);
        if (piece.IsRing)
        {
            var middle = gate + (length / 2);
            foreach (var w in around)
            {
                for (var turn = 0.0; turn < 2 * Math.PI; turn += Math.PI / (3 * fineness))
                {
                    points.Add(Place(
                        TrunkMm + (middle * sin) + (length / 2 * Math.Cos(turn)), w, z + (middle * cos) + (length / 2 * Math.Sin(turn)), angle));
                }
            }

            return points;
        }

        for (var along = 0.0; along <= length + 1e-9; along += length / fineness)
        {
            foreach (var w in around)
            {
                foreach (var t in Across(piece.Deep.Millimeters))
                {
                    var u = gate + along;
                    points.Add(Place(TrunkMm + (u * sin) - (t * cos), w, z + (u * cos) + (t * sin), angle));
                }
            }
        }

        return points;
    }

    private static double[] Across(double size) => [-size / 2, 0, size / 2];

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
            : new PieceBox(false, Wrenmoor.Mm(6 + (random.NextDouble() * 20)), Wrenmoor.Mm(width), Wrenmoor.Mm(2 + (random.NextDouble() * 6)));
        return Wrenmoor.Ring(random.Next(2, 9)) with { Box = box, Gate = new PieceGate(1, Wrenmoor.Mm(2), Wrenmoor.Mm(GateMm)) };
    }
}
