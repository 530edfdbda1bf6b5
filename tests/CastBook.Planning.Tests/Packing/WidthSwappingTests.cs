using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

public sealed class WidthSwappingTests
{
    private const int Rod = 150;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    // Sectors are filled by chance until the shortest piece finds no room; of the pieces alone a way to fill them is found again.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Look_PiecesOfSectorsThatWereFilled_AreHungAgain(int seed)
    {
        var random = new Random(seed);
        int[] wide = [.. Enumerable.Range(0, random.Next(2, 8)).Select(_ => random.Next(14, 40))];
        PackItem[] items = [.. wide.SelectMany(w => Filled(random, w))];
        var (swapping, widths) = Swapping(items, wide);

        swapping.Look(20_000_000).ShouldBeTrue();

        var content = swapping.Content;
        for (var item = 0; item < items.Length; item++)
        {
            content.SelectMany(c => c).Where(c => c.Item == item).Sum(c => c.Count).ShouldBe(1);
        }

        foreach (var (pieces, width) in content.Zip(widths))
        {
            pieces.ShouldAllBe(p => items[p.Item].Shapes[0].Theta <= width);
            Top([.. pieces.Select(p => items[p.Item].Shapes[0])]).ShouldBeLessThanOrEqualTo(Rod);
        }
    }

    // Three pieces of 80 stand in no two sectors of 150, and one that is 30 wide in none of 20.
    [Theory]
    [InlineData(20, 80, 3)]
    [InlineData(30, 40, 1)]
    public void Look_PiecesThatHaveNoRoom_AreNeverHung(int theta, int pitch, int pieces)
    {
        PackItem[] items = [.. Enumerable.Repeat(new PackItem(1, 1, [new(theta, pitch, 0, 0)]), pieces), new PackItem(1, 1, [new(20, 10, 0, 0)])];

        Swapping(items, [20, 20]).Swapping.Look(1_000_000).ShouldBeFalse();
    }

    private static (WidthSwapping Swapping, int[] Widths) Swapping(PackItem[] items, int[] widths)
    {
        var problem = new PackProblem(items, [new PackSize(Rod, PackProblem.AnyMetal, 1000, 9)]);
        SectorType[] types = [new(problem, 0, 0)];
        types[0].Price([.. items.Select(i => i.Quantity)], [.. items.Select(_ => 1)], 0, PackShape.Turn);
        int[] places = [.. widths.Select(w => types[0].Widths.Count(other => other <= w) - 1)];
        return (new WidthSwapping(problem, types, [.. places.Select(p => new WidthChoice(0, 0, p))]), [.. places.Select(p => types[0].Widths[p])]);
    }

    private static List<PackItem> Filled(Random random, int width)
    {
        var sector = new List<PackShape> { new(width, 20, 20, 0) };
        for (var tries = 0; tries < 40; tries++)
        {
            var shape = new PackShape(random.Next(10, width + 1), random.Next(12, 45), random.Next(0, 40), 0);
            if (Top([.. sector, shape]) <= Rod)
            {
                sector.Add(shape);
            }
        }

        return [.. sector.Select(s => new PackItem(1, 1, [s]))];
    }

    // With the longest tail nearest the button.
    private static int Top(IReadOnlyList<PackShape> sector)
    {
        var (height, top) = (0, 0);
        foreach (var shape in sector.OrderByDescending(s => s.Tail))
        {
            height += shape.Pitch;
            top = Math.Max(top, height + shape.Tail);
        }

        return top;
    }
}
