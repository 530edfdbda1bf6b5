using CastBook.Planning.Packing;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackSolverTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    public static TheoryData<int> FewSeeds => [.. Enumerable.Range(61, 10)];

    // 900 g in all: six of 51 + 26 + 23 and three of 27 + 27 + 23 + 23 are 100 g each; first-fit-decreasing needs 11.
    [Fact]
    public void Solve_MetalThatFirstFitWastes_TakesNineFlasks() =>
        Solved(Problems.Metal(100, 20, (51, 6), (27, 6), (26, 6), (23, 12))).Flasks.Count.ShouldBe(9);

    // 49 + 26 + 25, 47 + 28 + 25, 45 + 29 + 26 and 43 + 30 + 27 are 100 g each; first-fit-decreasing needs 5.
    [Fact]
    public void Solve_FourExactTriplets_TakesFourFlasks() => Solved(Problems.Metal(
        100, 9, (49, 1), (26, 2), (25, 2), (47, 1), (28, 1), (45, 1), (29, 1), (43, 1), (30, 1), (27, 1))).Flasks.Count.ShouldBe(4);

    // 200 g of crucible less 30 g of trunk and 40 g of button leave 130 g: three of 40 g.
    [Fact]
    public void Solve_FiveOfFortyInRoomForThree_TakesTwoFlasks() => Solved(Problems.Metal(130, 9, (40, 5))).Flasks.Count.ShouldBe(2);

    // 3 × 45 = 135 g.
    [Fact]
    public void Solve_HeavyPieces_AreSplitByMetal() => Solved(Problems.Metal(100, 9, (45, 3))).Flasks.Count.ShouldBe(2);

    // Rod 100 mm: C (pitch 40, tail 0), B (20, 10), A (20, 40). A last would end at 80 + 40 = 120; A first ends at 20 + 40 = 60,
    // B at 40 + 10 = 50, C at 80.
    [Fact]
    public void Solve_LongTails_AreHungNearestTheButton() =>
        Solved(Problems.Shapes(200, new(144, 80, 0, 0), new(144, 40, 20, 0), new(144, 40, 80, 0)))
            .Flasks.ShouldHaveSingleItem().Columns.ShouldHaveSingleItem().Select(c => c.Item).ShouldBe([2, 1, 0]);

    // Six pieces of a third of a turn on 30 mm: 10 + 20, 15 + 15, 20 + 10 are exactly full. In tiers of three the best split needs
    // 20 + 15 = 35 mm.
    [Fact]
    public void Solve_ColumnsThatFitExactly_BeatTiers()
    {
        var plan = Solved(Problems.Shapes(
            60, new(48, 20, 0, 0), new(48, 40, 0, 0), new(48, 30, 0, 0), new(48, 30, 0, 0), new(48, 40, 0, 0), new(48, 20, 0, 0)));

        plan.Flasks.ShouldHaveSingleItem().Columns.Length.ShouldBe(3);
    }

    // A large flask takes 36 rings and costs 1178 of investment, a small one 10 and 442; one large and three small are owned.
    [Theory]
    [InlineData(1_000_000, 36, "large")]
    [InlineData(1_000_000, 10, "small")]
    [InlineData(1_000_000, 20, "large")]
    [InlineData(1_000_000, 37, "large+small")]
    [InlineData(1_000_000, 47, "large+small+small")]
    [InlineData(1_000_000, 67, "large+small+small+small")]
    [InlineData(0, 20, "small+small")]
    public void Solve_TwoSizes_FollowsTheOrderOfWishes(long flask, int rings, string sizes)
    {
        PackShape[] shapes = [new(0, 0, 0, PackShape.Whole / 36), new(0, 0, 0, PackShape.Whole / 10)];
        var plan = Solved(new PackProblem(
            [new PackItem(rings, 1, shapes)],
            [new PackSize(100, PackProblem.AnyMetal, flask + 1178, 1), new PackSize(60, PackProblem.AnyMetal, flask + 442, 3)]));

        string.Join('+', plan.Flasks.Select(f => f.Size).Order().Select(s => s == 0 ? "large" : "small")).ShouldBe(sizes);
        plan.Left[0].ShouldBe(Math.Max(0, rings - 66));
    }

    // Room for one of two; the other is wanted a day sooner, or is larger.
    [Theory]
    [InlineData(7, 0)]
    [InlineData(0, 1)]
    public void Solve_TooFewFlasks_PlacesWhatIsWantedSooner(int urgency, int placed)
    {
        var plan = Solved(new PackProblem(
            [new PackItem(1, 60, [new(1, 1, 0, 0)]) { Urgency = urgency }, new PackItem(1, 70, [new(1, 1, 0, 0)])],
            [new PackSize(10, 100, 1, 1)]));

        plan.Left[placed].ShouldBe(0);
        plan.Left[1 - placed].ShouldBe(1);
    }

    [Fact]
    public void Solve_PiecesPinnedTogether_ShareTheirFlask()
    {
        var items = Enumerable.Range(0, 6).Select(i => new PackItem(1, 30, [new(20, 10, 0, 0)]) { Pin = i is 1 or 4 ? 0 : -1 });
        var plan = Solved(new PackProblem([.. items], [new PackSize(100, 100, 10, 9)]));

        var pinned = plan.Flasks.Single(f => f.Pin == 0).Content.Select(c => c.Item).ToList();
        pinned.ShouldContain(1);
        pinned.ShouldContain(4);
        plan.Flasks.Count.ShouldBe(2);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_AnyProblem_Fits(int seed) => Solved(Problems.Invent(seed, 12, 5), inBrief: true);

    [Theory]
    [MemberData(nameof(FewSeeds))]
    public void Solve_AnyProblem_IsTheSameAgain(int seed)
    {
        var plan = Solved(Problems.Invent(seed, 9, 3));

        Written(Solved(Problems.Invent(seed, 9, 3))).ShouldBe(Written(plan));
    }

    // A search that is stopped at once still gives a sound plan.
    [Fact]
    public void Solve_Stopped_GivesTheBestSoFar()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        PackCheck.Sound(PackSolver.Solve(Problems.Invent(3, 30, 6), 1, inBrief: false, stop.Token).Plan);
    }

    // Large pieces of which the space that all take, or trees in parts, say too little. Who ends the search when flasks were counted has
    // as few of them as anybody, and knows it.
    [Theory]
    [InlineData(14, 1)]
    [InlineData(20, 6)]
    [InlineData(20, 11)]
    public void Count_BeforeAllElse_ProvesHowFewFlasksDo(int kinds, int seed)
    {
        var random = new Random(seed);
        PackSize[] sizes = [new(100, PackProblem.AnyMetal, 1_000_500, 9), new(70, PackProblem.AnyMetal, 1_000_300, 9)];
        var problem = new PackProblem([.. Enumerable.Range(0, kinds).Select(_ => Large(random))], sizes);

        var (begun, counted) = (Stopped(problem, isCounted: false), Stopped(problem, isCounted: true));

        begun.LeastFlasks.ShouldBeLessThan(begun.Plan.Flasks.Count);
        counted.LeastFlasks.ShouldBe(counted.Plan.Flasks.Count);
        PackCheck.Sound(counted.Plan);
    }

    private static PackAnswer Stopped(PackProblem problem, bool isCounted)
    {
        using var stop = new CancellationTokenSource();
        var solver = PackSolver.Begin(problem, 1, inBrief: false, stop.Token);
        if (isCounted)
        {
            solver.Count(isShort: false);
        }

        stop.Cancel();
        return solver.Finish();
    }

    private static PackItem Large(Random random)
    {
        var shape = new PackShape(random.Next(40, 80), random.Next(22, 50), random.Next(0, 20), 0);
        return new PackItem(random.Next(1, 3), 1, [shape, shape]);
    }

    private static PackPlan Solved(PackProblem problem, bool inBrief = false)
    {
        var plan = PackSolver.Solve(problem, 1, inBrief, CancellationToken.None).Plan;
        PackCheck.Sound(plan);
        return plan;
    }

    private static string Written(PackPlan plan) => string.Join(';', plan.Flasks.Select(f =>
        $"{f.Size} {f.Pin} {string.Join('|', f.Columns.Select(c => string.Join(',', c.Select(p => $"{p.Item}x{p.Count}"))))} {string.Join(',', f.Content)}"));
}
