using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Tests.Packing;

public sealed class CrowdedTreesTests
{
    private const long Work = 3_000_000;
    private const int Eight = 8;

    // Wherever eight pieces stood, at one of two settings: what is found hangs, and is as near as it says.
    [Fact]
    public void Cool_TreesThatHang_AreSoundAndMoveAsManyAsTheySay()
    {
        var found = 0;
        for (var seed = 1; seed <= 60; seed++)
        {
            var (problem, homes) = Made(new Random(seed));

            var (plan, near) = new CrowdedTrees(problem, homes, [(0, 0, 1), (1, 0, 2)], (ulong)seed).Cool(Work, homes.Pieces, 0, CancellationToken.None);

            if (plan is not null)
            {
                found++;
                PackCheck.Sound(plan);
                plan.Lost.ShouldBe(0m);
                homes.Moved(plan).ShouldBeLessThanOrEqualTo((int)near, $"seed {seed}");
            }
        }

        found.ShouldBeGreaterThan(40);
    }

    // By hand: four half turns of 100 fill two trunks of 100; a fifth stands over wherever it is.
    [Fact]
    public void Cool_MoreThanHangs_NothingHowMuchWorkThereIs()
    {
        var problem = new PackProblem([new PackItem(5, 1, [new PackShape(PackShape.Turn / 2, 100, 0, 0)])], [new PackSize(100, PackProblem.AnyMetal, 1000, 2)]);
        var homes = new PackHomes(problem, [new PackedFlask(0, [new(0, 2)], []), new PackedFlask(0, [new(0, 2)], [])]);

        var (plan, near) = new CrowdedTrees(problem, homes, [(0, 0, 0), (1, 0, 0)], 1).Cool(Work, homes.Pieces, 0, CancellationToken.None);

        plan.ShouldBeNull();
        near.ShouldBeGreaterThan(0);
    }

    // The flask in which each stood is too hot or too cold for it now.
    [Fact]
    public void Cool_PieceThatMayNotStay_HangsInTheOther()
    {
        var problem = new PackProblem([Half(1), Half(2)], [new PackSize(100, PackProblem.AnyMetal, 1000, 2)]);
        var homes = new PackHomes(problem, [new PackedFlask(0, [new(0, 1)], []), new PackedFlask(0, [new(1, 1)], [])]);

        var (plan, near) = new CrowdedTrees(problem, homes, [(0, 0, 2), (1, 0, 1)], 1).Cool(Work, homes.Pieces, 2, CancellationToken.None);

        near.ShouldBe(2);
        PackCheck.Sound(plan.ShouldNotBeNull());
        plan!.Flasks.Count.ShouldBe(2);

        static PackItem Half(int setting) =>
            new(1, 1, [new PackShape(PackShape.Turn / 2, 100, 0, 0)]) { Lowest = setting, Highest = setting };
    }

    // Pieces of two settings, some of which may be cast at both.
    private static (PackProblem Problem, PackHomes Homes) Made(Random random)
    {
        var problem = new PackProblem([.. Enumerable.Range(0, Eight).Select(_ => Piece(random))], [new PackSize(100, 1100, 1000, 2)]);
        int[] flask = [.. problem.Items.Select(i => i.Lowest == i.Highest ? i.Lowest - 1 : random.Next(2))];
        return (problem, new PackHomes(problem, [Stood(0), Stood(1)]));

        PackedFlask Stood(int at) => new(0, [.. Enumerable.Range(0, Eight).Where(i => flask[i] == at).Select(i => new PackCount(i, 1))], []);
    }

    private static PackItem Piece(Random random)
    {
        var lowest = random.Next(1, 3);
        return new(1, random.Next(100, 300), [new PackShape(random.Next(30, 73), random.Next(20, 45), random.Next(0, 20), 0)])
        {
            Lowest = lowest,
            Highest = random.Next(lowest, 3),
        };
    }
}
