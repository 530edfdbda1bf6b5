using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class FlaskFitTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    // What hangs in flasks that were filled as full as they would go is possible, however much or little is looked at.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_WhatHangsInFullFlasks_IsNeverRefuted(int seed)
    {
        var (problem, flasks) = Problems.FullFlasks(seed);

        PackCheck.NeverRefuted(new FlaskFit(problem, flasks, CancellationToken.None).Look, 1, 200_000, 20_000_000);
    }

    // Four pieces of half a turn and 60 of 100 mm fill two trees, four of 49 mm two sectors more than half; a fifth is one too many.
    [Theory]
    [InlineData(4, true)]
    [InlineData(5, false)]
    public void Look_PiecesOfHalfATurn_FitTwoATree(int pieces, bool fits) =>
        new FlaskFit(
            new PackProblem([new PackItem(pieces, 1, [new(72, 60, 0, 0)])], [new PackSize(100, PackProblem.AnyMetal, 1000, 9)]),
            [(0, 0), (0, 0)], CancellationToken.None).Look(1_000_000).Fits.ShouldBe(fits);

    // Three pieces of 60 where a flask takes 100 of metal need three flasks, whatever room there is.
    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void Look_HeavyPieces_NeedAFlaskEach(int flasks, bool fits) =>
        new FlaskFit(Problems.Metal(100, 9, (60, 3)), [.. Enumerable.Repeat((0, 0), flasks)], CancellationToken.None).Look(1_000_000).Fits.ShouldBe(fits);

    // A piece for the cold setting and one for the hot share no flask.
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Look_TwoSettings_NeedAFlaskEach(int second, bool fits) =>
        new FlaskFit(
            new PackProblem(
                [new PackItem(1, 1, [new(10, 10, 0, 0)]), new PackItem(1, 1, [new(10, 10, 0, 0)]) { Lowest = 1, Highest = 1 }],
                [new PackSize(100, PackProblem.AnyMetal, 1000, 9)]),
            [(0, 0), (0, second)], CancellationToken.None).Look(1_000_000).Fits.ShouldBe(fits);
}
