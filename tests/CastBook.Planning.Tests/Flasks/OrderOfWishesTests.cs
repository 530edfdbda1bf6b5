using CastBook.Planning.Shops;
using CastBook.Planning.Tests.Packing;

namespace CastBook.Planning.Tests.Flasks;

/// <summary>What the order of wishes makes of a night, one small case for each wish.</summary>
public sealed class OrderOfWishesTests
{
    private static readonly Wish[] KilnFirst = [Wish.KilnLoads, Wish.Flasks, Wish.Investment, Wish.Metal, Wish.LikeThicknesses];

    // By hand: 106 and 81 mm outside; with 20 mm between and to the wall, circles of 126 and 101 mm in a square of 220. Two of 126 stand
    // corner to corner in 63 × (2 + √2) = 215 mm, three need 63 × (2 + (√2 + √6) / 2) = 248. Four of 101 stand in 202 mm.
    [Theory]
    [InlineData(false, "large+large+large", 2)]
    [InlineData(true, "small+small+small+small", 1)]
    public void Plan_KilnLoadsFirst_TakesFourSmallInOneLoadForThreeLargeInTwo(bool kilnFirst, string sizes, int loads)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Shop(240, kilnFirst ? KilnFirst : null), PerTree(100, 36, 27)));

        string.Join('+', plan.Flasks.Select(f => f.Size.Name)).ShouldBe(sizes);
        plan.Clock!.Loads.Count.ShouldBe(loads);
        plan.Pieces[0].Flasks.Sum(f => f.Quantity).ShouldBe(100);
        plan.Bound.ShouldBe(new PlanBound(3, ProvedFewest: !kilnFirst) { ProvedLeastInvestment = !kilnFirst, ProvedFewestLoads = kilnFirst ? true : null });
    }

    // Each alloy by itself is one load in a large flask and one in two small ones; a large one beside two small ones would be two.
    [Fact]
    public void Plan_KilnLoadsFirst_LooksAtAllAlloysTogether()
    {
        Night Night(Wish[]? order) => Wrenmoor.Night(Shop(230, order), PerTree(30, 36, 27), PerTree(30, 36, 27) with { Alloy = "Bell bronze" });

        var (usual, kiln) = (NightPlanner.Plan(Night(null)), NightPlanner.Plan(Night(KilnFirst)));

        usual.Flasks.Select(f => f.Size.Name).ShouldBe(["large", "large"]);
        usual.Clock!.Loads.Count.ShouldBe(2);
        kiln.Flasks.Select(f => f.Size.Name).ShouldBe(["small", "small", "small", "small"]);
        kiln.Clock!.Loads.Count.ShouldBe(1);
    }

    // Only four small ones stand in one load, and 120 rings do not fit into them.
    [Fact]
    public void Plan_KilnLoadsFirst_WhatIsLeftOutIsNoWayToSaveALoad()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Shop(240, KilnFirst), PerTree(120, 36, 27)));

        plan.Pieces[0].Flasks.Sum(f => f.Quantity).ShouldBe(120);
        plan.Clock!.Loads.Count.ShouldBe(2);
        plan.Bound.ProvedFewestLoads.ShouldBe(false);
    }

    // Both hold 800 ml. In a square of 185 two slim ones stand corner to corner in 50.5 × (2 + √2) = 172 mm; a wide one beside a slim one
    // needs 113.5 × (1 + 1 / √2) = 194. The trunk of the slim one is twice as long.
    [Theory]
    [InlineData(new[] { Wish.Flasks, Wish.Investment, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses }, "slim", 1)]
    [InlineData(new[] { Wish.Flasks, Wish.Investment, Wish.Metal, Wish.KilnLoads, Wish.LikeThicknesses }, "wide", 2)]
    public void Plan_AsManyFlasksOfAsMuch_TheNextWishChooses(Wish[] order, string size, int loads)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(WideAndSlim(800, order), Wide(60)));

        plan.Flasks.Select(f => f.Size.Name).ShouldBe([size, size]);
        plan.Clock!.Loads.Count.ShouldBe(loads);
        plan.Bound.ShouldBe(new PlanBound(2, ProvedFewest: true) { ProvedLeastInvestment = true });
    }

    // Ten millilitres more in each slim one are worth a load only where the order says so. Twenty more and a bit of trunk, which counts less.
    [Theory]
    [InlineData(new[] { Wish.Flasks, Wish.Investment, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses }, "wide", null)]
    [InlineData(new[] { Wish.Flasks, Wish.KilnLoads, Wish.Investment, Wish.Metal, Wish.LikeThicknesses }, "slim", true)]
    public void Plan_KilnLoadsBeforeInvestment_PaysInvestmentForALoad(Wish[] order, string size, bool? fewestLoads)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(WideAndSlim(810, order), Wide(60)));

        plan.Flasks.Select(f => f.Size.Name).ShouldBe([size, size]);
        plan.Bound.ProvedFewestLoads.ShouldBe(fewestLoads);
        plan.Bound.ProvedLeastInvestment.ShouldBe(size == "wide");
        (plan.Bound.InvestmentOver?.Milliliters).ShouldBe(size == "wide" ? null : 21);
    }

    // The one flask takes what is due, wherever it stands in the list and whatever else is wished first.
    [Theory]
    [InlineData(Wish.Flasks)]
    [InlineData(Wish.Investment)]
    [InlineData(Wish.KilnLoads)]
    [InlineData(Wish.Metal)]
    [InlineData(Wish.LikeThicknesses)]
    public void Plan_TooFewFlasks_WhatIsDueHangsFirst(Wish first)
    {
        Wish[] order = [first, .. Enum.GetValues<Wish>().Except([first])];
        var shop = Shop(240, order) with { FlaskSizes = [Wrenmoor.Size("large", 100, 150, 0), Wrenmoor.Size("small", 75, 100, 1) with { Cup = null }] };
        Piece[] pieces =
        [
            PerTree(27, 36, 27) with { HeaviestSection = Wrenmoor.Mm(2) },
            PerTree(20, 36, 27) with { HeaviestSection = Wrenmoor.Mm(4), Due = new DateOnly(2037, 12, 4) },
            PerTree(9, 36, 27) with { HeaviestSection = Wrenmoor.Mm(2), Due = new DateOnly(2037, 12, 20) },
        ];

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, pieces));

        plan.Pieces.Select(p => p.Flasks.Sum(f => f.Quantity)).ShouldBe([0, 20, 7]);
        plan.Ids().ShouldContain("no-flask-left");
    }

    // The book says two large ones; kept, they take two loads, and the finding says what the order would rather have.
    [Fact]
    public void Plan_StandingFlasksTakeMoreLoads_TheOtherAnswerIsTold()
    {
        var night = Wrenmoor.Night(Shop(230, KilnFirst), PerTree(60, 36, 27) with { LastFlasks = [new FlaskShare("A", 36), new FlaskShare("B", 24)] }) with
        {
            Trees = [Line("A", "large"), Line("B", "large")],
        };

        var kept = NightPlanner.Plan(night);
        var best = NightPlanner.Plan(night with { Shop = night.Shop with { Settings = night.Shop.Settings with { WhenLittleChanged = Stability.Best } } });

        kept.Flasks.Select(f => f.Size.Name).ShouldBe(["large", "large"]);
        kept.The("pieces-kept-in-flasks").Seen.ShouldStartWith("Nothing moves");
        kept.Change!.Words(WrittenVolume.Millilitre).ShouldEndWith("pieces would move and a kiln load and 1,031 ml of investment would be saved, for a flask more");
        best.Flasks.Select(f => f.Size.Name).ShouldBe(["small", "small", "small"]);
        best.Clock!.Loads.Count.ShouldBe(1);
        best.Change!.Words(WrittenVolume.Millilitre).ShouldEndWith("pieces move and a kiln load and 1,031 ml of investment are saved, for a flask more");
    }

    // Of four rows of five, two and three millimetres thick by turns, the list makes two mixed flasks.
    [Fact]
    public void Plan_EqualInAllElse_LikeThicknessesHangTogether()
    {
        var unknown = NightPlanner.Plan(Thicknesses(null, null));
        var known = NightPlanner.Plan(Thicknesses(2, 3));

        unknown.Flasks.Select(Rows).ShouldNotContain("0 2");
        known.Flasks.Select(Rows).ShouldBe(["0 2", "1 3"], ignoreOrder: true);
        known.Bound.ShouldBe(unknown.Bound);
    }

    // Where no section is told, the band of a ring is one; above eight millimetres all are alike. Room is for eight rings in a flask by
    // its crucible: 8 × 2.05 + 3.2 ml, × 1.2 × 1.01 / 0.8 = 29.7 ml.
    [Theory]
    [InlineData(2, 3, true)]
    [InlineData(9, 12, false)]
    public void Plan_NoSectionsTold_ThicknessCounts(double thin, double thick, bool together)
    {
        Night Rings(double? thin, double? thick) => Wrenmoor.Night(
            Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Size("small", 75, 100, 2) with { Cup = null }], Crucibles = [new Crucible { Name = "Graphite 1", Holds = Wrenmoor.Ml(30) }] },
            [.. new[] { thin, thick, thin, thick }.Select(mm => Wrenmoor.Ring(4) with { Box = new PieceBox(true, Wrenmoor.Mm(16), Wrenmoor.Mm(4), mm is { } known ? Wrenmoor.Mm(known) : null) })]);

        var plan = NightPlanner.Plan(Rings(thin, thick));

        plan.Flasks.Count(f => Rows(f) is "0 2" or "1 3").ShouldBe(together ? 2 : 0);
        plan.Flasks.Select(f => f.Pieces.Sum(p => p.Quantity)).ShouldBe([8, 8]);
    }

    // Filled again nothing moves, and a plan that stands is not exchanged.
    [Theory]
    [InlineData(Stability.Keep)]
    [InlineData(Stability.Best)]
    public void Plan_FilledAgain_LeavesEveryPiece(Stability choice)
    {
        var night = Thicknesses(2, 3);
        night = night with { Shop = night.Shop with { Settings = night.Shop.Settings with { WhenLittleChanged = choice } } };
        foreach (var plan in new[] { NightPlanner.Plan(night), NightPlanner.Plan(Thicknesses(null, null)) })
        {
            var again = NightPlanner.Plan(night with
            {
                Pieces = [.. night.Pieces.Select(p => p with { LastFlasks = plan.Pieces[p.Id].Flasks })],
                Trees = [.. plan.Flasks.Select(f => Line(f.Letter, f.Size.Name))],
            });

            again.Flasks.Select(f => (f.Letter, Rows(f))).ShouldBe(plan.Flasks.Select(f => (f.Letter, Rows(f))));
            again.Change.ShouldBeNull();
        }
    }

    // A row that is wanted in a flask stays in it, and the others hang as alike as is left to them.
    [Fact]
    public void Plan_KeepInFlask_IsNotExchanged()
    {
        var night = Thicknesses(2, 3);
        night = night with { Pieces = [.. night.Pieces.Select(p => p.Id is 0 or 1 ? p with { KeepInFlask = "D" } : p)] };

        NightPlanner.Plan(night).Flasks.Select(f => (f.Letter, Rows(f))).ShouldBe([("A", "2 3"), ("D", "0 1")]);
    }

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    // Of two orders that begin alike, both save as much by what they have in common, and of what they name next neither less than the other.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_AnyNight_ALowerWishNeverMakesAHigherOneWorse(int seed)
    {
        Wish[][] orders =
        [
            [Wish.Flasks, Wish.Investment, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses],
            [Wish.Flasks, Wish.Investment, Wish.Metal, Wish.LikeThicknesses, Wish.KilnLoads],
            [Wish.Flasks, Wish.KilnLoads, Wish.Investment, Wish.Metal, Wish.LikeThicknesses],
            KilnFirst,
        ];
        var night = Thick(InventedNight.Of(24, seed), seed);
        var plans = orders.Select(o => NightPlanner.Plan(night with { Shop = night.Shop with { Settings = night.Shop.Settings with { OrderOfWishes = o } } })).ToArray();
        foreach (var (a, b) in from a in Enumerable.Range(0, orders.Length) from b in Enumerable.Range(0, orders.Length) where a != b select (a, b))
        {
            var alike = orders[a].Zip(orders[b]).TakeWhile(p => p.First == p.Second).Count();
            plans[a].Pieces.Sum(p => p.Flasks.Sum(f => f.Quantity)).ShouldBe(24);
            orders[a].Take(alike).ShouldNotContain(w => Math.Abs(Value(plans[a], w) - Value(plans[b], w)) >= Rounding(w), $"{a} {b}");
            Value(plans[a], orders[a][alike]).ShouldBeLessThanOrEqualTo(Value(plans[b], orders[a][alike]) + Rounding(orders[a][alike]), $"{a} {b}");
        }
    }

    private static Night Thick(Night night, int seed)
    {
        var random = new Random(seed);
        var sizes = night.Shop.FlaskSizes.Append(Wrenmoor.Size("slim", 80, 170, 3) with { Holds = Wrenmoor.Ml(796) });
        return night with
        {
            Pieces = [.. night.Pieces.Select(p => p with { HeaviestSection = Wrenmoor.Mm(1.5 + (random.NextDouble() * 3)) })],
            Shop = night.Shop with { FlaskSizes = [.. sizes], Kilns = Shop(230, null).Kilns },
        };
    }

    // Trunks are counted in tenths of a millilitre, and the insides of flasks in millilitres.
    private static double Rounding(Wish wish) => wish == Wish.Metal ? 0.6 : wish == Wish.Investment ? 6 : 1e-6;

    private static double Value(NightPlan plan, Wish wish) => wish switch
    {
        Wish.Flasks => plan.Flasks.Count,
        Wish.Investment => plan.Flasks.Sum(f => (f.Size.Holds ?? Casting.Investing.FlaskVolume.Compute(f.Size.InsideDiameter!.Value, f.Size.Height!.Value)).Milliliters),
        Wish.KilnLoads => plan.Clock!.Loads.Count,
        Wish.Metal => plan.Flasks.Sum(f => f.TreeMetal.Grams / (f.Alloy == "Bench silver" ? 10.4 : 8.8)),
        _ => 0,
    };

    private static Night Thicknesses(double? thin, double? thick) => Wrenmoor.Night(
        Shop(240, null) with { FlaskSizes = [Wrenmoor.Size("small", 75, 100, 2) with { Cup = null }] },
        [.. new[] { thin, thick, thin, thick }.Select(mm => PerTree(5, 36, 10) with { HeaviestSection = mm is { } known ? Wrenmoor.Mm(known) : null })]);

    private static string Rows(FlaskPlan flask) => string.Join(' ', flask.Pieces.Select(p => p.PieceId));

    private static TreeInHand Line(string letter, string size) => new(letter, size, null, null, null, FlaskState.Planned);

    private static Shop Shop(double side, Wish[]? order) => Wrenmoor.Shop with
    {
        Kilns = [new Kiln { Name = "Front kiln", Shape = KilnShape.Square, InsideWidth = Wrenmoor.Mm(side), InsideDepth = Wrenmoor.Mm(side) }],
        FlaskSizes = [Wrenmoor.Size("large", 100, 150, 4) with { Cup = null }, Wrenmoor.Size("small", 75, 100, 4) with { Cup = null }],
        Settings = Wrenmoor.Answered with { OrderOfWishes = order },
    };

    private static Shop WideAndSlim(double slimMl, Wish[] order) => Shop(205, order) with
    {
        FlaskSizes =
        [
            Wrenmoor.Size("wide", 100, 100, 2) with { Cup = null, Holds = Wrenmoor.Ml(800) },
            Wrenmoor.Size("slim", 75, 180, 2) with { Cup = null, Holds = Wrenmoor.Ml(slimMl) },
        ],
    };

    private static Piece Wide(int quantity) => Of(quantity, ("wide", 30), ("slim", 30));

    private static Piece PerTree(int quantity, int large, int small) => Of(quantity, ("large", large), ("small", small));

    private static Piece Of(int quantity, params (string Size, int Count)[] perTree) => Wrenmoor.Ring(quantity) with
    {
        Weight = UnitsNet.Mass.FromGrams(0.5),
        Box = null,
        PerTree = perTree.ToDictionary(p => p.Size, p => p.Count, StringComparer.OrdinalIgnoreCase),
    };
}
