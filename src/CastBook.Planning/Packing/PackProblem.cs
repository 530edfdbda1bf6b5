namespace CastBook.Planning.Packing;

/// <summary>Pieces that may share flasks as far as metal and stones go, and the flasks there are, as whole numbers.</summary>
/// <remarks>
/// Nothing but whole numbers is known here: what takes room was rounded up and what gives room was rounded down, so that what fits
/// here fits the flask.
/// </remarks>
internal sealed class PackProblem
{
    private const long Most = 1_000_000;

    /// <summary>More metal than any flask takes; sums of it stay within whole numbers.</summary>
    public const long AnyMetal = 1_000_000_000_000;

    /// <summary>Prepares the problem.</summary>
    /// <param name="items">The pieces.</param>
    /// <param name="sizes">The flask sizes.</param>
    public PackProblem(IReadOnlyList<PackItem> items, IReadOnlyList<PackSize> sizes)
    {
        Items = [.. items];
        Sizes = [.. sizes];
        Shapes = [.. Enumerable.Range(0, Sizes.Length).Select(size => Items.Select(i => i.Shapes[size]).ToArray())];
        Metals = [.. Items.Select(i => i.Metal)];
        Spaces = [.. Items.Select(i => Least(i, SpaceOf))];
        Weights = [.. Items.Select(i => Math.Max(1, Least(i, Weigh)))];
        ByTail = [.. Sizes.Select((_, size) => Sorted(size))];
        Settings = [.. Items.Select(i => i.Highest).Distinct().Order()];
        IsOfOneSetting = Items.Length == 0 || Items.Max(i => i.Lowest) <= Items.Min(i => i.Highest);
        IsOfMany = Items.Sum(i => (long)i.Quantity) > PackWork.Many;
        Pins = Items.Length == 0 ? 0 : Math.Max(0, Items.Max(i => i.Pin) + 1);
    }

    /// <summary>The pieces.</summary>
    public PackItem[] Items { get; }

    /// <summary>The flask sizes.</summary>
    public PackSize[] Sizes { get; }

    /// <summary>For each size what one of each piece takes of it.</summary>
    public PackShape[][] Shapes { get; }

    /// <summary>The metal of one of each piece.</summary>
    public long[] Metals { get; }

    /// <summary>What one piece takes of the flask that suits it best, of space or of metal, in millionths; at least 1.</summary>
    public long[] Weights { get; }

    /// <summary>What one piece takes at least of the space of any flask, in millionths, rounded down.</summary>
    public long[] Spaces { get; }

    /// <summary>For each size the pieces that fit it, in the order in which they hang from the button up.</summary>
    /// <remarks>With the longest tail lowest, a sector is possible if any order of it is; between equal tails the heavier hangs nearer the button.</remarks>
    public int[][] ByTail { get; }

    /// <summary>Flask settings worth trying: pieces with a common setting share the highest setting of one of them.</summary>
    public int[] Settings { get; }

    /// <summary>Those of them that are needed: whatever hangs at another may hang at one of these.</summary>
    public int[] NeededSettings => field ??= [.. Settings.Where(s => !Array.Exists(Settings, t => t != s && IsNeedless(s, t)))];

    /// <summary>Whether every piece may be cast beside every other.</summary>
    public bool IsOfOneSetting { get; }

    /// <summary>Whether there are more pieces than all ways of a proof can be looked at for.</summary>
    public bool IsOfMany { get; }

    /// <summary>The number of flasks that pieces are pinned to.</summary>
    public int Pins { get; }

    /// <summary>Whether one piece fits a size, metal counted.</summary>
    /// <param name="item">The piece.</param>
    /// <param name="size">The size.</param>
    public bool Fits(int item, int size) => Items[item].Shapes[size].Fits && Items[item].Metal <= Sizes[size].Metal;

    /// <summary>What is lost when one piece finds no flask; of pieces that are alike the last of the list waits.</summary>
    /// <param name="item">The piece.</param>
    public decimal Loss(int item) => (Weights[item] << (10 + (3 * Items[item].Urgency))) + Math.Max(0, 1023 - item);

    /// <summary>What one piece takes at least of the metal of any flask, in millionths, rounded down.</summary>
    /// <param name="item">The piece.</param>
    public long MetalShare(int item) => Least(Items[item], MetalOf);

    // Whatever hangs at the one may hang at the other.
    private bool IsNeedless(int setting, int other)
    {
        var isSame = true;
        foreach (var item in Items)
        {
            var (here, there) = (item.MayBeCastAt(setting), item.MayBeCastAt(other));
            if (here && !there)
            {
                return false;
            }

            isSame &= here == there;
        }

        return !isSame || setting < other;
    }

    private static long Weigh(PackItem item, PackSize size, PackShape shape) => Math.Max(SpaceOf(item, size, shape), MetalOf(item, size, shape));

    private static long MetalOf(PackItem item, PackSize size, PackShape shape) => item.Metal * Most / size.Metal;

    private static long SpaceOf(PackItem item, PackSize size, PackShape shape) => shape.HasSector
        ? (long)shape.Theta * shape.Pitch * Most / ((long)PackShape.Turn * size.Rod)
        : shape.Share / (PackShape.Whole / Most);

    private long Least(PackItem item, Func<PackItem, PackSize, PackShape, long> of)
    {
        var least = Most;
        for (var i = 0; i < Sizes.Length; i++)
        {
            if (Sizes[i].Free > 0 && item.Shapes[i].Fits && Sizes[i].Metal > 0 && item.Metal <= Sizes[i].Metal)
            {
                least = Math.Min(least, of(item, Sizes[i], item.Shapes[i]));
            }
        }

        return least;
    }

    private int[] Sorted(int size) =>
    [
        .. Enumerable.Range(0, Items.Length).Where(i => Fits(i, size))
            .OrderByDescending(i => Items[i].Shapes[size].Tail).ThenByDescending(i => Items[i].Metal).ThenBy(i => i),
    ];
}
