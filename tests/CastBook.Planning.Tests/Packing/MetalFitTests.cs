using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class MetalFitTests
{
    private const int ProblemsOfASeed = 60;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // Every way of dealing up to seven pieces into up to four flasks is tried by hand; with little work nothing else may be said.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_FewPieces_AgreesWithEveryWayTried(int seed)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < ProblemsOfASeed; turn++)
        {
            var (problem, counts) = Invent(random);
            var fits = Fits([.. Pieces(problem)], 0, [.. Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(problem.Sizes[s].Metal, counts[s]))]);

            MetalFit.Suits(problem).ShouldBeTrue();
            var answer = new MetalFit(problem, counts, CancellationToken.None).Look(10_000_000);
            answer.Fits.ShouldBe(fits);
            if (answer.Plan is { } plan)
            {
                PackCheck.Sound(plan);
                plan.Lost.ShouldBe(0m);
            }

            foreach (var work in new long[] { 1, 30, 300 })
            {
                (new MetalFit(problem, counts, CancellationToken.None).Look(work).Fits ?? fits).ShouldBe(fits);
            }
        }
    }

    // Two pieces of 60 mm on 100 mm of trunk, pieces wanted in a flask, pieces for two settings: more than metal can be short.
    [Fact]
    public void Suits_MoreThanMetalCanBeShort_IsFalse()
    {
        PackSize[] sizes = [new(100, 100, 1000, 9)];
        PackShape[] half = [new(10, 30, 40, 0)];

        MetalFit.Suits(new PackProblem([new PackItem(2, 10, half)], sizes)).ShouldBeTrue();
        MetalFit.Suits(new PackProblem([new PackItem(3, 10, half)], sizes)).ShouldBeFalse();
        MetalFit.Suits(new PackProblem([new PackItem(2, 10, half) { Pin = 0 }], sizes)).ShouldBeFalse();
        MetalFit.Suits(new PackProblem([new PackItem(1, 10, half), new PackItem(1, 10, half) { Lowest = 1, Highest = 1 }], sizes)).ShouldBeFalse();
    }

    // Half of the problems leave little or nothing to spare.
    private static (PackProblem Problem, int[] Counts) Invent(Random random)
    {
        int[] counts = [random.Next(1, 3), random.Next(0, 3)];
        PackSize[] sizes = [new(1000, 60 + random.Next(60), 1000, 9), new(1000, 30 + random.Next(50), 700, 9)];
        var pieces = new List<long>();
        if (random.Next(2) == 0)
        {
            foreach (var size in Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(sizes[s].Metal, counts[s])))
            {
                var first = random.Next(1, (int)size);
                pieces.AddRange([first, size - first]);
            }

            pieces[0] += random.Next(-1, 2);
            pieces.RemoveAll(p => p <= 0);
        }
        else
        {
            pieces.AddRange(Enumerable.Range(0, random.Next(2, 8)).Select(_ => (long)random.Next(5, 60)));
        }

        return (new PackProblem([.. pieces.GroupBy(p => p).Select(g => new PackItem(g.Count(), g.Key, [new(1, 1, 0, 0), new(1, 1, 0, 0)]))], sizes), counts);
    }

    private static IEnumerable<long> Pieces(PackProblem problem) => problem.Items.SelectMany(i => Enumerable.Repeat(i.Metal, i.Quantity));

    private static bool Fits(long[] pieces, int at, long[] room)
    {
        if (at == pieces.Length)
        {
            return true;
        }

        for (var flask = 0; flask < room.Length; flask++)
        {
            if (room[flask] >= pieces[at])
            {
                room[flask] -= pieces[at];
                if (Fits(pieces, at + 1, room))
                {
                    return true;
                }

                room[flask] += pieces[at];
            }
        }

        return false;
    }
}
