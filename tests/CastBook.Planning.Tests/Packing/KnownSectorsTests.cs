using CastBook.Planning.Packing;

namespace CastBook.Planning.Tests.Packing;

public sealed class KnownSectorsTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 40)];

    [Fact]
    public void Keep_ShorterSector_TakesThePlaceOfTheLonger()
    {
        var known = new KnownSectors();
        known.Clear();
        known.ValueOf(48).ShouldBeLessThan(0);
        known.Of(48).IsEmpty.ShouldBeTrue();

        known.Keep(48, 70, [new PackCount(3, 2), new PackCount(5, 1)]);
        known.Keep(48, 40, [new PackCount(5, 1)]);

        known.ValueOf(48).ShouldBe(40);
        known.Of(48).ToArray().ShouldBe([new PackCount(5, 1)]);
        known.ValueOf(47).ShouldBeLessThan(0);
    }

    [Fact]
    public void Clear_WhatWasKept_IsForgotten()
    {
        var known = new KnownSectors();
        known.Keep(48, 70, [new PackCount(3, 2)]);

        known.Clear();

        known.ValueOf(48).ShouldBeLessThan(0);
        known.Of(48).IsEmpty.ShouldBeTrue();
    }

    // A tree that is hung after others is the tree that is hung first: nothing that was known of others is left, and every sector is
    // there only as often as there are pieces and metal for it.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Hang_AfterOtherTrees_HangsTheSame(int seed)
    {
        var problem = Problems.Invent(seed + 1300, 14, 6);
        var (random, used) = (new Random(seed), new TreeHanging(problem));
        for (var i = 0; i < 3; i++)
        {
            Hung(used, problem, [.. problem.Items.Select(_ => (long)random.Next(1, 1000))], random.Next(3));
        }

        long[] values = [.. problem.Items.Select(_ => (long)random.Next(1, 1000))];

        Hung(used, problem, values, 1).ShouldBe(Hung(new TreeHanging(problem), problem, values, 1));
    }

    private static string Hung(TreeHanging hanging, PackProblem problem, long[] values, int size)
    {
        int[] left = [.. problem.Items.Select(i => i.Quantity)];
        var candidates = problem.ByTail[size];
        hanging.Hang(size, candidates, left, values);
        var flask = hanging.Hung(candidates);
        flask.Content.ShouldAllBe(c => c.Count + left[c.Item] == problem.Items[c.Item].Quantity && left[c.Item] >= 0);
        flask.Content.Sum(c => c.Count * problem.Metals[c.Item]).ShouldBeLessThanOrEqualTo(problem.Sizes[size].Metal);
        return string.Join('|', flask.Columns.Select(c => string.Join(',', c)));
    }
}
