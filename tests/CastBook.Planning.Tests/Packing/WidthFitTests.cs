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

            PackCheck.Whole(answer);

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

        PackCheck.NeverRefuted(new WidthFit(problem, flasks, CancellationToken.None).Look, 1, 200_000, 20_000_000);
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

            PackCheck.NeverRefuted(new WidthFit(problem, flasks, CancellationToken.None).Look, 300_000, 10_000_000);
        }
    }

    // Trees of a few kinds of pieces that are drawn as long as there is room, at one to three settings: much the same can be hung in many ways.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_TreesFilledByChance_AreNeverRefuted(int seed)
    {
        var random = new Random(seed);
        for (var turn = 0; turn < 5; turn++)
        {
            var (problem, flasks) = Filled(random);

            PackCheck.NeverRefuted(new WidthFit(problem, flasks, CancellationToken.None).Look, 300_000, 5_000_000);
        }
    }

    private static (PackProblem Problem, List<(int Size, int Setting)> Flasks) Filled(Random random)
    {
        PackSize[] sizes = [new(random.Next(90, 160), PackProblem.AnyMetal, 1000, 9), new(random.Next(120, 260), PackProblem.AnyMetal, 1500, 9)];
        var settings = random.Next(1, 4);
        PackItem[] kinds = [.. Enumerable.Range(0, random.Next(5, 16)).Select(_ => Kind())];
        List<(int Size, int Setting)> flasks = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => (random.Next(2), random.Next(settings)))];
        var hung = flasks.SelectMany(f => Tree(f.Size, [.. kinds.Where(k => k.Shapes[f.Size].Fits && k.MayBeCastAt(f.Setting))])).ToLookup(k => k);
        return (new PackProblem([.. kinds.Where(hung.Contains).Select(k => k with { Quantity = hung[k].Count() })], sizes), flasks);

        PackItem Kind()
        {
            var (theta, pitch, tail, lowest) = (random.Next(14, 60), random.Next(12, 60), random.Next(0, 40), random.Next(settings));
            PackShape[] shapes = [.. sizes.Select(s => pitch + tail <= s.Rod ? new PackShape(theta + random.Next(-4, 5), pitch, tail, 0) : PackShape.None)];
            return new PackItem(1, 1, shapes) { Lowest = lowest, Highest = random.Next(lowest, settings) };
        }

        IEnumerable<PackItem> Tree(int size, PackItem[] among)
        {
            for (var angle = PackShape.Turn; Array.FindAll(among, k => k.Shapes[size].Theta <= angle) is { Length: > 0 } wide;)
            {
                var width = wide[random.Next(wide.Length)].Shapes[size].Theta;
                angle -= width;
                foreach (var piece in Sector(size, Array.FindAll(among, k => k.Shapes[size].Theta <= width)))
                {
                    yield return piece;
                }
            }
        }

        List<PackItem> Sector(int size, PackItem[] among)
        {
            var sector = new List<PackItem>();
            for (var tries = 0; tries < 40; tries++)
            {
                List<PackItem> more = [.. sector, among[random.Next(among.Length)]];
                sector = IsPossible(more, size) ? more : sector;
            }

            return sector;
        }

        // With the longest tail nearest the button.
        bool IsPossible(List<PackItem> sector, int size)
        {
            var height = 0;
            return sector.OrderByDescending(k => k.Shapes[size].Tail).All(k => (height += k.Shapes[size].Pitch) + k.Shapes[size].Tail <= sizes[size].Rod);
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
