using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Tests.Packing;

public sealed class BestPairsTests
{
    // By hand: the best of each row alone is 9 + 8 = 17, but both in the first column; 9 + 5 = 14 and 8 + 7 = 15.
    [Fact]
    public void Of_BothRowsWantTheSame_TheBestTogether() =>
        BestPairs.Of(2, 2, (row, column) => new[] { new[] { 9L, 7L }, [8, 5] }[row][column]).ShouldBe([1, 0]);

    [Fact]
    public void Of_WorthNothing_StaysAlone() => BestPairs.Of(2, 2, (row, column) => row == 1 && column == 0 ? 3 : 0).ShouldBe([-1, 0]);

    // Every way to pair is tried.
    [Fact]
    public void Of_AnyWorths_NoPairingIsWorthMore()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            var (rows, columns) = (random.Next(1, 6), random.Next(0, 6));
            var worths = Enumerable.Range(0, rows).Select(_ => Enumerable.Range(0, columns).Select(_ => (long)random.Next(0, 8)).ToArray()).ToArray();

            var pairs = BestPairs.Of(rows, columns, (row, column) => worths[row][column]);

            pairs.Where(p => p >= 0).ShouldBeUnique();
            pairs.Select((column, row) => column < 0 ? 0 : worths[row][column]).Sum().ShouldBe(Most(worths, 0, 0), $"seed {seed}");
        }
    }

    private static long Most(long[][] worths, int row, int used)
    {
        if (row == worths.Length)
        {
            return 0;
        }

        var most = Most(worths, row + 1, used);
        for (var column = 0; column < worths[row].Length; column++)
        {
            if ((used & (1 << column)) == 0)
            {
                most = Math.Max(most, worths[row][column] + Most(worths, row + 1, used | (1 << column)));
            }
        }

        return most;
    }
}
