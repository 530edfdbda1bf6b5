using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests.Flasks;

public sealed class FlaskSharingTests
{
    private static readonly string[] Alloys = ["Bench silver", "Bell bronze", "Bench gold"];
    private static readonly int[] PerTree = [36, 20, 10];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 25)];

    // A large flask takes 36, a small one 10; one large and three small are owned. Each alloy alone wants the large one; only where the
    // 36 get it, everything finds room.
    [Theory]
    [InlineData(20, 36)]
    [InlineData(36, 20)]
    public void Share_TwoAlloysWantTheSameFlask_WhoNeedsItGetsIt(int silver, int bronze)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Shop([1, 0, 3]), Rings(silver, 0), Rings(bronze, 1)));

        plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.Planned);
        plan.Flasks.Select(f => (f.Size.Name, f.Pieces.Sum(p => p.Quantity))).ShouldBe([("large", 36), ("small", 10), ("small", 10)], ignoreOrder: true);
        plan.Bound.ShouldBe(new PlanBound(3, ProvedFewest: true) { ProvedLeastInvestment = true });
    }

    // Every way of dealing the owned flasks out to three alloys is tried by hand.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Share_ThreeAlloys_AgreesWithEveryWayTried(int seed)
    {
        var random = new Random(seed);
        int[] owned = [random.Next(1, 3), random.Next(0, 4), random.Next(1, 5)];
        int[] rings = [random.Next(5, 50), random.Next(5, 50), random.Next(5, 50)];
        var shop = Shop(owned);

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Rings(rings[0], 0), Rings(rings[1], 1), Rings(rings[2], 2)));

        if (Best(shop, owned, rings, 0) is not { } best)
        {
            plan.Pieces.ShouldContain(p => p.Status != PieceStatus.Planned);
            plan.Bound.ProvedFewest.ShouldBeFalse();
            return;
        }

        plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.Planned);
        (plan.Flasks.Count, Math.Round(plan.Flasks.Sum(f => Inside(f.Size)))).ShouldBe((best.Flasks, Math.Round(best.Ml)));
        plan.Bound.LeastFlasks.ShouldBeLessThanOrEqualTo(best.Flasks);
    }

    private static (int Flasks, double Ml)? Best(Shop shop, int[] free, int[] rings, int alloy)
    {
        if (alloy == rings.Length)
        {
            return (0, 0);
        }

        (int Flasks, double Ml)? best = null;
        for (var large = 0; large <= free[0]; large++)
        {
            for (var middle = 0; middle <= free[1]; middle++)
            {
                var small = Math.Max(0, (rings[alloy] - (large * PerTree[0]) - (middle * PerTree[1]) + PerTree[2] - 1) / PerTree[2]);
                if (small <= free[2] && Best(shop, [free[0] - large, free[1] - middle, free[2] - small], rings, alloy + 1) is { } others)
                {
                    var mine = (others.Flasks + large + middle + small, others.Ml + (large * Inside(shop.FlaskSizes[0])) + (middle * Inside(shop.FlaskSizes[1])) + (small * Inside(shop.FlaskSizes[2])));
                    best = best is { } other && other.CompareTo(mine) <= 0 ? best : mine;
                }
            }
        }

        return best;
    }

    private static double Inside(FlaskSize size) =>
        Math.PI / 4 * size.InsideDiameter!.Value.Centimeters * size.InsideDiameter.Value.Centimeters * size.Height!.Value.Centimeters;

    private static Shop Shop(int[] owned) => Wrenmoor.Shop with
    {
        Alloys = [Wrenmoor.Silver, Wrenmoor.Bronze, Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { Name = Alloys[2] } }],
        Crucibles = [new Crucible { Name = "Graphite", Holds = Wrenmoor.Ml(900) }],
        FlaskSizes =
        [
            Wrenmoor.Size("large", 100, 150, owned[0]) with { Cup = null },
            Wrenmoor.Size("middle", 90, 125, owned[1]) with { Cup = null },
            Wrenmoor.Size("small", 75, 100, owned[2]) with { Cup = null },
        ],
    };

    private static Piece Rings(int quantity, int alloy) => Wrenmoor.Ring(quantity) with
    {
        Alloy = Alloys[alloy],
        Weight = UnitsNet.Mass.FromGrams(0.5),
        Box = null,
        PerTree = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase) { ["large"] = PerTree[0], ["middle"] = PerTree[1], ["small"] = PerTree[2] },
    };
}
