using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class MetalAloneTests
{
    private const int ProblemsOfASeed = 100;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    // On 100 mm of trunk 60 mm are left below the tail, so two pieces of 30 mm; 14 sectors of 10 go round. 28 pieces hang, and metal for
    // more than these makes trees short.
    [Theory]
    [InlineData(280, true)]
    [InlineData(289, true)]
    [InlineData(290, false)]
    public void Suits_AsManyPiecesAsHang_IsTrue(long metal, bool suits)
    {
        PackSize[] sizes = [new(100, metal, 1000, 9)];

        MetalAlone.Suits(new PackProblem([new PackItem(50, 10, [new PackShape(10, 30, 40, 0)])], sizes)).ShouldBe(suits);
    }

    [Fact]
    public void Suits_MoreThanMetalCanBeShort_IsFalse()
    {
        PackSize[] sizes = [new(100, 100, 1000, 9)];
        PackShape[] piece = [new(10, 30, 40, 0)];

        MetalAlone.Suits(new PackProblem([new PackItem(2, 10, piece)], sizes)).ShouldBeTrue();
        MetalAlone.Suits(new PackProblem([new PackItem(2, 10, piece) { Pin = 0 }], sizes)).ShouldBeFalse();
        MetalAlone.Suits(new PackProblem([new PackItem(1, 10, piece), new PackItem(1, 10, piece) { Lowest = 1, Highest = 1 }], sizes)).ShouldBeFalse();
        MetalAlone.Suits(new PackProblem([new PackItem(2, 0, piece)], sizes)).ShouldBeFalse();
        MetalAlone.Suits(new PackProblem([new PackItem(2, 10, [new PackShape(0, 0, 0, 10)])], sizes)).ShouldBeFalse();
    }

    // Whatever metal reaches for hangs: loads are filled by chance until nothing more can be poured.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_LoadsByChance_Hang(int seed)
    {
        var random = new Random(seed);
        var suited = 0;
        for (var turn = 0; turn < ProblemsOfASeed; turn++)
        {
            var problem = Invent(random);
            if (!MetalAlone.Suits(problem))
            {
                continue;
            }

            suited++;
            PackCheck.Sound(MetalAlone.Plan(problem, [.. Loads(problem, random)]));
        }

        suited.ShouldBeInRange(10, ProblemsOfASeed - 10);
    }

    private static IEnumerable<MetalLoad> Loads(PackProblem problem, Random random)
    {
        int[] left = [.. problem.Items.Select(i => i.Quantity)];
        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            var (room, counts) = (problem.Sizes[size].Metal, new int[left.Length]);
            int[] offered;
            while ((offered = [.. problem.ByTail[size].Where(i => left[i] > 0 && problem.Metals[i] <= room)]).Length > 0)
            {
                var item = random.Next(3) == 0 ? offered[random.Next(offered.Length)] : offered.MinBy(i => problem.Metals[i]);
                counts[item]++;
                left[item]--;
                room -= problem.Metals[item];
            }

            PackCount[] content = [.. counts.Select((count, item) => new PackCount(item, count)).Where(c => c.Count > 0)];
            if (content.Length > 0)
            {
                yield return new MetalLoad(size, room, content);
            }
        }
    }

    private static PackProblem Invent(Random random)
    {
        PackSize[] sizes = [new(100, random.Next(40, 120), 1000, 1), new(70, random.Next(40, 120), 700, 1)];
        return new PackProblem([.. Enumerable.Range(0, random.Next(1, 6)).Select(_ => Item())], sizes);

        PackItem Item()
        {
            var (theta, pitch, tail) = (random.Next(10, 40), random.Next(5, 30), random.Next(0, 30));
            return new PackItem(random.Next(1, 9), random.Next(4, 20), [new(theta, pitch, tail, 0), random.Next(4) == 0 ? PackShape.None : new(theta, pitch, tail, 0)]);
        }
    }
}
