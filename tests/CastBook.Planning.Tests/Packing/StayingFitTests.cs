using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Tests.Packing;

public sealed class StayingFitTests
{
    // Each takes a quarter of a trunk's turn; the middle piece may be cast at the settings 1 and 2, the others at one only.
    private static readonly PackProblem ThreeKinds = new(
        [Quarter(4, 1, 1), Quarter(3, 1, 2), Quarter(1, 2, 2)], [new PackSize(100, PackProblem.AnyMetal, 1000, 2)]);

    // Four at 1 fill the first flask, so that the three must all go to the second, where one of them stood.
    [Fact]
    public void Look_OnlyRoomElsewhere_GoesThereAndTheRestStays()
    {
        var plan = new StayingFit(ThreeKinds, CancellationToken.None).Look([(0, [3, 0, 0]), (0, [0, 1, 1])], 1_000_000)!;

        PackCheck.Sound(plan);
        plan.Flasks.Select(f => f.Content).ShouldBe([[new PackCount(0, 4)], [new PackCount(1, 3), new PackCount(2, 1)]], ignoreOrder: true);
    }

    // Two of the three held in the first flask leave no room for all four, which may be cast nowhere else.
    [Fact]
    public void Look_WhatStaysIsInTheWay_FindsNothing() =>
        new StayingFit(ThreeKinds, CancellationToken.None).Look([(0, [2, 2, 0]), (0, [0, 0, 1])], 1_000_000).ShouldBeNull();

    // Nothing is cast both at 1 and at 2.
    [Fact]
    public void Look_StayingAtNoCommonSetting_FindsNothing() =>
        new StayingFit(ThreeKinds, CancellationToken.None).Look([(0, [1, 0, 1]), (0, [0, 0, 0])], 1_000_000).ShouldBeNull();

    private static PackItem Quarter(int quantity, int lowest, int highest) =>
        new(quantity, 1, [new PackShape(PackShape.Turn / 4, 60, 0, 0)]) { Lowest = lowest, Highest = highest };
}
