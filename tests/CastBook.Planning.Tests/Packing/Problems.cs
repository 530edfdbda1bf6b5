using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Tests.Packing;

/// <summary>Packing problems for tests: small ones by hand and invented ones.</summary>
internal static class Problems
{
    /// <summary>Pieces of which only the metal matters.</summary>
    /// <param name="room">Metal that a flask takes.</param>
    /// <param name="free">Flasks.</param>
    /// <param name="pieces">Metal of one, and how many.</param>
    public static PackProblem Metal(long room, int free, params (long Metal, int Quantity)[] pieces) => new(
        [.. pieces.Select(p => new PackItem(p.Quantity, p.Metal, [new PackShape(1, 1, 0, 0)]))],
        [new PackSize(1000, room, 1000, free)]);

    /// <summary>One piece of each shape, weightless, in flasks of one size.</summary>
    /// <param name="rod">Length of trunk.</param>
    /// <param name="shapes">The shapes.</param>
    public static PackProblem Shapes(int rod, params PackShape[] shapes) => new(
        [.. shapes.Select(s => new PackItem(1, 1, [s]))], [new PackSize(rod, PackProblem.AnyMetal, 1000, 9)]);

    /// <summary>An invented night of one alloy in the shop's three sizes.</summary>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="kinds">Rows of the list, at most.</param>
    /// <param name="copies">Pieces of a row, at most.</param>
    public static PackProblem Invent(int seed, int kinds, int copies)
    {
        var random = new Random(seed);
        PackSize[] sizes =
        [
            new(90, random.Next(40, 120) * 100, 1_442, random.Next(1, 6)),
            new(140, random.Next(60, 200) * 100, 1_785, random.Next(1, 6)),
            new(190, random.Next(80, 300) * 100, 2_178, random.Next(0, 6)),
        ];
        var items = Enumerable.Range(0, random.Next(1, kinds + 1)).Select(_ => Invent(random, copies, sizes));
        return new PackProblem([.. items], sizes);
    }

    /// <summary>The pieces of a greedy plan of more than its flasks can take, and those flasks.</summary>
    /// <param name="seed">What chance starts from.</param>
    public static (PackProblem Problem, List<(int Size, int Setting)> Flasks) FullFlasks(int seed)
    {
        var random = new Random(seed);
        var invented = Invent(seed + 900, 14, 9);
        var few = 1 + random.Next(3);
        var problem = new PackProblem(
            [.. invented.Items.Where(i => Array.TrueForAll([.. i.Shapes], s => !s.Fits || s.HasSector)).Select(i => i with { Pin = -1, Quantity = i.Quantity + 3 })],
            [.. invented.Sizes.Select(s => s with { Free = few, Metal = seed % 2 == 0 ? s.Metal : PackProblem.AnyMetal })]);
        var plan = problem.Items.Length == 0 ? PackPlan.Empty(problem) : new PackGreedy(problem, new TreeFilling(problem)).Best();
        var flasks = plan.Flasks.Take(few).ToList();
        var hung = problem.Items.Select((_, item) => flasks.Sum(f => f.Content.Where(c => c.Item == item).Sum(c => c.Count)));
        return (
            new PackProblem([.. problem.Items.Zip(hung, (item, count) => item with { Quantity = count }).Where(i => i.Quantity > 0)], problem.Sizes),
            [.. flasks.Select(f => (f.Size, f.Content.Min(c => problem.Items[c.Item].Highest)))]);
    }

    /// <summary>Large pieces, so that a few of them fill one to three flasks of two sizes and two settings; in a third of the problems metal is short too.</summary>
    /// <param name="random">What chance comes from.</param>
    public static (PackProblem Problem, List<(int Size, int Setting)> Flasks) LargePieces(Random random)
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

    private static PackItem Invent(Random random, int copies, PackSize[] sizes)
    {
        var (theta, pitch, tail) = (random.Next(8, 73), random.Next(8, 60), random.Next(0, 40));
        var byShare = random.Next(6) == 0;
        var (lowest, highest) = (random.Next(3), random.Next(3));
        return new PackItem(random.Next(1, copies + 1), random.Next(50, 4000), [.. sizes.Select(Of)])
        {
            Lowest = Math.Min(lowest, highest),
            Highest = Math.Max(lowest, highest),
            Pin = random.Next(10) == 0 ? random.Next(2) : -1,
            Urgency = random.Next(4) == 0 ? random.Next(1, PackItem.MostUrgent + 1) : 0,
        };

        PackShape Of(PackSize size)
        {
            var narrower = Math.Max(1, theta * 90 / size.Rod);
            return byShare ? new PackShape(0, 0, 0, PackShape.Whole / (size.Rod / 4))
                : pitch + tail <= size.Rod ? new PackShape(narrower, pitch, tail, 0)
                : PackShape.None;
        }
    }
}
