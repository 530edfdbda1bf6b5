using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class MetalFitTests
{
    private const int ProblemsOfASeed = 60;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // Every way of dealing the pieces out is tried by hand; with little work nothing else may be said.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_FewPieces_AgreesWithEveryWayTried(int seed)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < ProblemsOfASeed; turn++)
        {
            var (problem, counts) = MetalByHand.Invent(random);
            var fits = MetalByHand.Fits(problem, counts);

            MetalAlone.Suits(problem).ShouldBeTrue();
            var answer = Look(10_000_000);
            answer.Fits.ShouldBe(fits);
            PackCheck.Whole(answer);

            foreach (var work in new long[] { 1, 30, 300 })
            {
                (Look(work).Fits ?? fits).ShouldBe(fits);
            }

            FitAnswer Look(long work) => new MetalFit(problem, counts, problem.Items.Select(i => i.Quantity), CancellationToken.None).Look(work);
        }
    }
}
