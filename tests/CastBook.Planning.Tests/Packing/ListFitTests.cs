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
            var (problem, flasks) = Problems.LargePieces(random);
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
}
