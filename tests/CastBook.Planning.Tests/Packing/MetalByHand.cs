using CastBook.Planning.Packing;

namespace CastBook.Planning.Tests.Packing;

/// <summary>Small problems in which nothing but metal can be short, and every way of dealing their pieces out.</summary>
internal static class MetalByHand
{
    /// <summary>A problem of up to eight pieces, and up to four flasks of two sizes. Half of the problems leave little or nothing to spare.</summary>
    /// <param name="random">What chance comes from.</param>
    public static (PackProblem Problem, int[] Counts) Invent(Random random)
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

        var some = new PackShape(1, 1, 0, 0);
        return (new PackProblem([.. pieces.GroupBy(p => p).Select(g => new PackItem(g.Count(), g.Key, [some, random.Next(6) == 0 ? PackShape.None : some]))], sizes), counts);
    }

    /// <summary>Whether all pieces fit, by trying every way.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="counts">How many flasks of each size.</param>
    public static bool Fits(PackProblem problem, int[] counts)
    {
        int[] pieces = [.. Enumerable.Range(0, problem.Items.Length).SelectMany(i => Enumerable.Repeat(i, problem.Items[i].Quantity))];
        int[] sizes = [.. Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(s, counts[s]))];
        long[] room = [.. sizes.Select(s => problem.Sizes[s].Metal)];
        return Deal(0);

        bool Deal(int at)
        {
            if (at == pieces.Length)
            {
                return true;
            }

            var (shapes, metal) = (problem.Items[pieces[at]].Shapes, problem.Metals[pieces[at]]);
            for (var flask = 0; flask < room.Length; flask++)
            {
                if (shapes[sizes[flask]].Fits && room[flask] >= metal)
                {
                    room[flask] -= metal;
                    if (Deal(at + 1))
                    {
                        return true;
                    }

                    room[flask] += metal;
                }
            }

            return false;
        }
    }
}
