using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class WidthFitTests
{
    private const int ProblemsOfASeed = 50;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

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

            var answer = new WidthFit(problem, flasks, CancellationToken.None).Look(50_000_000);
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

            var little = new WidthFit(problem, flasks, CancellationToken.None);
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

        var fit = new WidthFit(problem, flasks, CancellationToken.None);
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

    // Trees of sectors that are put together at random, as many and as wide as go round the trunk, each as high as the rod: nothing is left
    // beside them, so that few ways of cutting are right.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_TreesThatAreFullByTheirMaking_AreNeverRefuted(int seed)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < 4; turn++)
        {
            var (problem, flasks) = Made(random);

            var fit = new WidthFit(problem, flasks, CancellationToken.None);
            foreach (var work in new long[] { 300_000, 10_000_000 })
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

    private static (PackProblem Problem, List<(int Size, int Setting)> Flasks) Made(Random random)
    {
        PackSize[] sizes = [new(120, PackProblem.AnyMetal, 1000, 9), new(90, PackProblem.AnyMetal, 700, 9)];
        List<(int Size, int Setting)> flasks = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => (random.Next(2), 0))];
        var items = new List<PackItem>();
        foreach (var (size, _) in flasks)
        {
            for (var angle = PackShape.Turn; angle > 0;)
            {
                var width = angle < 40 ? angle : random.Next(20, Math.Min(angle, 50) + 1);
                angle -= width;
                for (var height = sizes[size].Rod; height > 0;)
                {
                    var pitch = height < 40 ? height : random.Next(15, 40);
                    height -= pitch;
                    var theta = random.Next(2) == 0 ? width : random.Next((width + 1) / 2, width + 1);
                    var tail = sizes[size].Rod == 90 ? 0 : random.Next(0, Math.Max(1, Math.Min(height, 20)));
                    items.Add(new PackItem(1, 1, [new(theta, pitch, tail, 0), pitch + tail <= 90 ? new(theta, pitch, tail, 0) : PackShape.None]));
                }
            }
        }

        return (new PackProblem(items, sizes), flasks);
    }
}
