using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class ChoiceFitsTests
{
    private const long Work = 10_000_000;

    // Nine pieces of a third of a turn; a sector on a trunk of 60 takes one, on 110 two.
    private static readonly PackProblem Nine = new(
        [new PackItem(9, 1, [new(48, 40, 0, 0), new(48, 40, 0, 0)])],
        [new PackSize(60, PackProblem.AnyMetal, 1000, 9), new PackSize(110, PackProblem.AnyMetal, 1500, 9)]);

    // Two small flasks take six of them, one of each nine, two large ones twelve.
    [Fact]
    public void Decide_TwoFlasks_TakesTheCheapestThatAllFitInto()
    {
        var fits = Fits([2, 0], [1, 1], [0, 2]);

        fits.Decide(Work);

        fits.Plan!.Cost.ShouldBe(2500);
        fits.Least.ShouldBe(2500);
    }

    [Fact]
    public void FindAny_TwoFlasks_LooksAtTheLargestFirst()
    {
        var fits = Fits([2, 0], [1, 1], [0, 2]);

        fits.FindAny(Work);

        fits.Plan!.Cost.ShouldBe(3000);
        fits.Plan.Lost.ShouldBe(0m);
    }

    [Fact]
    public void FindAny_TooFewFlasks_AreAllRefuted()
    {
        var fits = Fits([1, 0], [0, 1], [2, 0]);

        fits.FindAny(Work);

        (fits.Plan, fits.Least, fits.IsWhole).ShouldBe((null, long.MaxValue, true));
    }

    // What was refuted before needs no other look.
    [Fact]
    public void Decide_AfterAnother_GoesOnFromThere()
    {
        var before = Fits([2, 0]);
        before.Decide(Work);
        var fits = new ChoiceFits(Nine, Choices([2, 0], [1, 1]), before, isHard: true, CancellationToken.None);

        fits.Open.ShouldHaveSingleItem().Counts.ShouldBe([1, 1]);
    }

    private static ChoiceFits Fits(params int[][] counts) => new(Nine, Choices(counts), null, isHard: false, CancellationToken.None);

    private static IEnumerable<(long Cost, int[] Counts)> Choices(params int[][] counts) =>
        counts.Select(c => (c.Select((count, size) => count * Nine.Sizes[size].Cost).Sum(), c));
}
