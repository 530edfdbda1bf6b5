using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class MetalSharingTests
{
    private const int ProblemsOfASeed = 60;
    private const long Enough = 1_000_000_000;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    public static TheoryData<int> FewSeeds => [.. Enumerable.Range(1, 8)];

    // Every way of dealing the pieces out is tried by hand. What one choice of flasks taught must not refute another wrongly.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_FewPieces_AgreesWithEveryWayTried(int seed)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < ProblemsOfASeed; turn++)
        {
            var (problem, most) = MetalByHand.Invent(random);
            var sharing = new MetalSharing(problem, CancellationToken.None);
            foreach (var counts in Choices(most))
            {
                var fits = MetalByHand.Fits(problem, counts);

                (sharing.Look(counts, random.Next(3000)).Fits ?? fits).ShouldBe(fits);
                var answer = sharing.Look(counts, Enough);
                answer.Fits.ShouldBe(fits);
                PackCheck.Whole(answer);
            }
        }
    }

    // Flasks of two sizes, each filled to the last unit by pieces that are cut from it: none may be missing, and all do.
    [Theory]
    [MemberData(nameof(FewSeeds))]
    public void Look_FullFlasks_FindsThemAndNoFewer(int seed)
    {
        var random = new Random(seed);
        int[] counts = [random.Next(10, 25), random.Next(10, 25)];
        var problem = Cut(random, counts);

        PackCheck.NeverRefuted(work => new MetalSharing(problem, CancellationToken.None).Look(counts, work), 0, 1_000_000, 20_000_000);
        var answer = new MetalSharing(problem, CancellationToken.None).Look(counts, Enough);
        answer.Fits.ShouldBe(true);
        PackCheck.Whole(answer);
        new MetalSharing(problem, CancellationToken.None).Look([counts[0], counts[1] - 1], Enough).Fits.ShouldBe(false);
    }

    // Two of 34 go into 100, never three: 31 pieces want 16 flasks, though their metal would do with 11.
    [Fact]
    public void Look_MetalThatCannotBeUsed_IsRefuted()
    {
        var problem = Problems.Metal(100, 40, (34, 31));
        var sharing = new MetalSharing(problem, CancellationToken.None);

        sharing.Look([15], Enough).Fits.ShouldBe(false);
        sharing.Look([12], 0).Fits.ShouldBe(false);
        sharing.Look([16], Enough).Fits.ShouldBe(true);
    }

    private static IEnumerable<int[]> Choices(int[] most)
    {
        for (var first = 0; first <= most[0]; first++)
        {
            for (var second = 0; second <= most[1]; second++)
            {
                yield return [first, second];
            }
        }
    }

    private static PackProblem Cut(Random random, int[] counts)
    {
        PackSize[] sizes = [new(1000, 1000, 1000, 99), new(1000, 700, 700, 99)];
        var pieces = new List<long>();
        foreach (var metal in Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(sizes[s].Metal, counts[s])))
        {
            var (first, second) = (random.Next(150, 300), random.Next(150, 300));
            pieces.AddRange([first, second, metal - first - second]);
        }

        return new PackProblem([.. pieces.GroupBy(p => p).Select(g => new PackItem(g.Count(), g.Key, [new(1, 1, 0, 0), new(1, 1, 0, 0)]))], sizes);
    }
}
