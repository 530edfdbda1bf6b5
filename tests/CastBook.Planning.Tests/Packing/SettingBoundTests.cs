using CastBook.Planning.Packing;

namespace CastBook.Planning.Tests.Packing;

public sealed class SettingBoundTests
{
    private const long Work = 30_000_000;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    // What a plan does is possible, however little or much was looked, and whatever trees are known before.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Refutes_TheFlasksOfAPlan_Never(int seed)
    {
        var invented = Problems.Invent(seed + 1100, 12, 4);
        var problem = new PackProblem(
            [.. invented.Items.Where(i => Array.TrueForAll([.. i.Shapes], s => !s.Fits || s.HasSector)).Select(i => i with { Pin = -1 })], invented.Sizes);
        var plan = problem.Items.Length == 0 ? PackPlan.Empty(problem) : new PackGreedy(problem, new TreeFilling(problem)).Best();
        if (plan.Lost > 0 || plan.Flasks.Count == 0)
        {
            return;
        }

        foreach (var work in new[] { 1, 300_000, Work })
        {
            new SettingBound(problem, []).Refutes(plan.Flasks.Count, work, CancellationToken.None).ShouldBeFalse();
            new SettingBound(problem, plan.Flasks).Refutes(plan.Flasks.Count, work, CancellationToken.None).ShouldBeFalse();
        }
    }

    // Of three pieces two hang in one sector and no third: at each of two settings they take two flasks, and in parts of trees one and a half.
    [Fact]
    public void Refutes_HalfAFlaskOverAtEachSetting_WhatPartsOfTreesAllow()
    {
        PackShape shape = new(100, 40, 0, 0);
        var problem = new PackProblem(
            [new PackItem(3, 1, [shape]) { Lowest = 1, Highest = 1 }, new PackItem(3, 1, [shape]) { Lowest = 2, Highest = 2 }], [new PackSize(100, PackProblem.AnyMetal, 1000, 9)]);

        new PackBound(problem).Find([1000], [9], 9, long.MaxValue, Work, CancellationToken.None).ShouldBe(3000);
        new SettingBound(problem, []).Refutes(3, Work, CancellationToken.None).ShouldBeTrue();
        new SettingBound(problem, []).Refutes(4, Work, CancellationToken.None).ShouldBeFalse();
        PackSolver.Solve(problem, 1, inBrief: false, CancellationToken.None).LeastFlasks.ShouldBe(4);
    }

    // One size is high, the other takes metal: a flask that is both would take all of it.
    [Fact]
    public void Refutes_SizesThatAreRoomyInOtherWays_OnlyWhatNeitherWouldTake()
    {
        var problem = new PackProblem(
            [new PackItem(1, 1, [new(100, 80, 0, 0), PackShape.None]), new PackItem(1, 9, [PackShape.None, new(40, 20, 0, 0)])],
            [new PackSize(100, 5, 1000, 9), new PackSize(50, 10, 900, 9)]);

        new SettingBound(problem, []).Refutes(1, Work, CancellationToken.None).ShouldBeFalse();
    }
}
