using CastBook.Planning.Investing;
using CastBook.Planning.Mixes;
using UnitsNet;

namespace CastBook.Planning.Tests.Mixes;

public sealed class MixPackingTests
{
    // First fit decreasing opens three: 44+44 | 24+24+24+24 | 22+22+22+22 … ; 44+24+22 twice and 24+24+22+22 do.
    [Fact]
    public void Fewest_KnownHardCase_FindsTheOptimum()
    {
        Pack([44, 44, 24, 24, 24, 24, 22, 22, 22, 22], 92, 9).Count.ShouldBe(3);
        FirstFitDecreasing([44, 44, 24, 24, 24, 24, 22, 22, 22, 22], 92).ShouldBe(4);
    }

    [Fact]
    public void Fewest_LimitOfFlasks_IsKept() =>
        Pack([1, 1, 1, 1, 1, 1, 1], 100, 3).Select(m => m.Count).ShouldAllBe(count => count <= 3);

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 200)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Fewest_AnyFlasks_LosesNoneAndOverfillsNone(int seed)
    {
        var random = new Random(seed);
        var fills = Enumerable.Range(0, random.Next(1, 16)).Select(_ => (double)random.Next(5, 60)).ToArray();
        var (bowl, most) = (random.Next(60, 160), random.Next(1, 6));

        var mixes = Pack(fills, bowl, most);

        mixes.SelectMany(m => m).Order().ShouldBe(Enumerable.Range(0, fills.Length), $"seed {seed}");
        mixes.ShouldAllBe(m => m.Count <= most && m.Sum(i => fills[i]) <= bowl);
        mixes.Count.ShouldBeGreaterThanOrEqualTo((int)Math.Ceiling(fills.Sum() / bowl));
        mixes.Select(m => m[0]).ShouldBeInOrder();
        Pack(fills, bowl, most).Select(m => string.Join(',', m)).ShouldBe(mixes.Select(m => string.Join(',', m)));
        if (fills.Length <= 8)
        {
            mixes.Count.ShouldBe(Exhaustive(fills, bowl, most), $"seed {seed}");
        }
    }

    private static IReadOnlyList<IReadOnlyList<int>> Pack(double[] fills, double bowl, int most) => MixPacking.Fewest(
        [.. fills.Select(f => new FlaskFill(Volume.FromMilliliters(f), Mass.Zero, 40))], most, fill => fill.Net.Milliliters <= bowl);

    private static int FirstFitDecreasing(double[] fills, double bowl)
    {
        var open = new List<double>();
        foreach (var fill in fills.OrderDescending())
        {
            var at = open.FindIndex(o => o + fill <= bowl);
            if (at < 0)
            {
                open.Add(fill);
            }
            else
            {
                open[at] += fill;
            }
        }

        return open.Count;
    }

    // Every way to put the flasks into mixes, without a single shortcut.
    private static int Exhaustive(double[] fills, double bowl, int most)
    {
        var best = fills.Length;
        var mixes = new List<(double Sum, int Count)>();
        Put(0);
        return best;

        void Put(int at)
        {
            if (at == fills.Length)
            {
                best = Math.Min(best, mixes.Count);
                return;
            }

            for (var i = 0; i < mixes.Count; i++)
            {
                var before = mixes[i];
                if (before.Count < most && before.Sum + fills[at] <= bowl)
                {
                    mixes[i] = (before.Sum + fills[at], before.Count + 1);
                    Put(at + 1);
                    mixes[i] = before;
                }
            }

            mixes.Add((fills[at], 1));
            Put(at + 1);
            mixes.RemoveAt(mixes.Count - 1);
        }
    }
}
