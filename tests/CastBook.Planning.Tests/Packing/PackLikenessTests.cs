using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

public sealed class PackLikenessTests
{
    private const long Work = 300_000_000;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // Whatever is exchanged: the same flasks, the same pieces, all of it fits, pins hold, rows are spread over no more flasks, and no spread grows.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Together_AnyPlan_GainsLikenessAndLosesNothing(int seed)
    {
        var problem = Thick(Problems.Invent(seed, 14, 5), seed);
        var before = PackSolver.Solve(problem, 1, inBrief: true, CancellationToken.None).Plan;

        var flasks = PackLikeness.Together(problem, before.Flasks, Button, Work, CancellationToken.None);

        var after = PackPlan.Empty(problem);
        foreach (var flask in flasks)
        {
            after.Add(flask);
        }

        PackCheck.Sound(after);
        after.Left.ShouldBe(before.Left);
        flasks.Select(f => (f.Size, f.Pin)).ShouldBe(before.Flasks.Select(f => (f.Size, f.Pin)));
        flasks.Select(f => Sort(problem, f)).ShouldBe(before.Flasks.Select(f => Sort(problem, f)));
        flasks.Sum(f => f.Content.Length).ShouldBeLessThanOrEqualTo(before.Flasks.Sum(f => f.Content.Length));
        Spread(problem, flasks).ShouldBeLessThanOrEqualTo(Spread(problem, before.Flasks));
        Buttons(problem, flasks).ShouldBeLessThanOrEqualTo(Buttons(problem, before.Flasks));
        PackLikeness.Together(problem, before.Flasks, Button, Work, CancellationToken.None).Select(Written).ShouldBe(flasks.Select(Written));
    }

    [Fact]
    public void Together_InventedPlans_GainsInSome() =>
        Enumerable.Range(1, 40).Count(seed =>
        {
            var problem = Thick(Problems.Invent(seed, 14, 5), seed);
            var before = PackSolver.Solve(problem, 1, inBrief: true, CancellationToken.None).Plan;
            return Spread(problem, PackLikeness.Together(problem, before.Flasks, Button, Work, CancellationToken.None)) < Spread(problem, before.Flasks) / 2;
        }).ShouldBeGreaterThan(5);

    // By hand: 1, 1 and 4 differ from their mean of 2 by 1, 1 and 2; what has no thickness has no say.
    [Fact]
    public void Spread_ThreePieces_IsTheSumOfSquares()
    {
        var problem = new PackProblem([Of(1), Of(4), Of(0)], [new PackSize(100, 100, 1000, 1)]);

        PackLikeness.Spread(problem, [new(0, 2), new(1, 1), new(2, 5)]).ShouldBe(6, 1e-9);
    }

    private static PackItem Of(int section) => new(9, 1, [new PackShape(1, 1, 0, 0)]) { Section = section };

    private static PackProblem Thick(PackProblem problem, int seed)
    {
        var random = new Random(seed);
        return new PackProblem([.. problem.Items.Select(i => i with { Section = random.Next(5) == 0 ? 0 : random.Next(100, 600), Sort = random.Next(4) == 0 ? 0 : 1 })], problem.Sizes);
    }

    // At least 4000, and a fifth of what hangs.
    private static long Button(int size, long metal) => Math.Max(4000, metal / 5);

    private static long Buttons(PackProblem problem, IEnumerable<PackedFlask> flasks) =>
        flasks.Sum(f => Button(f.Size, f.Content.Sum(c => c.Count * problem.Items[c.Item].Metal)));

    private static int Sort(PackProblem problem, PackedFlask flask) => flask.Content.Max(c => problem.Items[c.Item].Sort);

    private static double Spread(PackProblem problem, IEnumerable<PackedFlask> flasks) => flasks.Sum(f => PackLikeness.Spread(problem, f.Content));

    private static string Written(PackedFlask flask) => string.Join('|', flask.Columns.Select(c => string.Join(',', c)));
}
