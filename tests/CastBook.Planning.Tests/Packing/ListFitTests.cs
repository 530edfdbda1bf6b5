using CastBook.Planning.Packing;

namespace CastBook.Planning.Tests.Packing;

public sealed class ListFitTests
{
    private const int ProblemsOfASeed = 50;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // Every way of hanging a few pieces is tried by hand, sector by sector; with little work nothing else may be said.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_FewPieces_AgreesWithEveryWayTried(int seed)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < ProblemsOfASeed; turn++)
        {
            var (problem, flasks) = Invent(random);
            var fits = SectorsByHand.Fit(problem, flasks);

            var answer = new ListFit(problem, flasks, CancellationToken.None).Look(50_000_000);
            (answer.Fits ?? fits).ShouldBe(fits);
            if (problem.Sizes[0].Metal == PackProblem.AnyMetal)
            {
                answer.Fits.ShouldNotBeNull();
            }

            if (answer.Plan is { } plan)
            {
                PackCheck.Sound(plan);
                plan.Lost.ShouldBe(0m);
            }

            var little = new ListFit(problem, flasks, CancellationToken.None);
            foreach (var work in new long[] { 1, 3_000, 30_000, 300_000 })
            {
                (little.Look(work).Fits ?? fits).ShouldBe(fits);
            }
        }
    }

    // What hangs in flasks that were filled as full as they would go is possible, however much or little is looked at.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_WhatHangsInFullFlasks_IsNeverRefuted(int seed)
    {
        var (problem, flasks) = Problems.FullFlasks(seed);

        var fit = new ListFit(problem, flasks, CancellationToken.None);
        foreach (var work in new long[] { 1, 200_000, 20_000_000 })
        {
            var answer = fit.Look(work);

            answer.Fits.ShouldNotBe(false);
            if (answer.Plan is { } plan)
            {
                PackCheck.Sound(plan);
                plan.Lost.ShouldBe(0m);
            }
        }
    }

    // Large pieces, so that a few of them fill one to three flasks of two sizes and two settings; in a third of the problems metal is short too.
    private static (PackProblem Problem, List<(int Size, int Setting)> Flasks) Invent(Random random)
    {
        var metal = random.Next(3) == 0 ? random.Next(8, 20) : PackProblem.AnyMetal;
        PackSize[] sizes = [new(100, metal, 1000, 9), new(70, metal, 700, 9)];
        var settings = 1 + (random.Next(4) == 0 ? 1 : 0);
        List<(int Size, int Setting)> flasks = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => (random.Next(2), random.Next(settings)))];
        var (pieces, least) = (random.Next(2, 8), flasks.Count == 1 ? 30 : 48);
        var items = new List<PackItem>();
        while (pieces > 0)
        {
            var (theta, pitch, tail, band) = (random.Next(least, 100), random.Next(25, 60), random.Next(0, 40), random.Next(3));
            var count = Math.Min(pieces, random.Next(1, 4));
            items.Add(new PackItem(count, random.Next(1, 6), [new(theta, pitch, tail, 0), pitch + tail <= 70 ? new(Math.Min(144, theta + random.Next(0, 20)), pitch, tail, 0) : PackShape.None])
            {
                Lowest = band == 1 ? 0 : Math.Min(band, settings - 1),
                Highest = band == 1 ? settings - 1 : Math.Min(band, settings - 1),
            });
            pieces -= count;
        }

        return (new PackProblem(items, sizes), flasks);
    }
}
