using CastBook.Planning.Shops;

namespace CastBook.Planning.Flasks;

/// <summary>What a flask costs by the order of wishes, as one whole number: what is wished first counts more than any amount of the rest.</summary>
internal sealed class FlaskCost
{
    // No flask has more tenths of a millilitre of trunk.
    private const int MostTrunk = 999;

    private readonly (long Flask, long Ml, long Trunk) unit;

    /// <summary>Takes the order.</summary>
    /// <param name="wishes">What is to be saved, first things first.</param>
    public FlaskCost(IReadOnlyList<Wish> wishes) => unit = (wishes[0], wishes[1]) switch
    {
        (Wish.Flasks, Wish.Investment) => (10_000_000_000, 1000, 1),
        (Wish.Flasks, _) => (10_000_000_000, 1, 100_000),
        (Wish.Investment, Wish.Flasks) => (1000, 1_000_000, 1),
        (Wish.Investment, _) => (1, 1_000_000, 100),
        (_, Wish.Flasks) => (1_000_000, 1, 1_000_000_000),
        _ => (1, 1000, 1_000_000_000),
    };

    /// <summary>The usual order.</summary>
    public static IReadOnlyList<Wish> Usual { get; } = [Wish.Flasks, Wish.Investment, Wish.Metal];

    /// <summary>What one of a size costs.</summary>
    /// <param name="size">The size.</param>
    public long Of(UsableSize size) =>
        unit.Flask + (unit.Ml * (long)Math.Ceiling(size.Inside.Milliliters)) + (unit.Trunk * (long)Math.Min(MostTrunk, size.Trunk.Milliliters * 10));

    /// <summary>A difference of costs as investment; right where as many flasks are used.</summary>
    /// <param name="cost">The difference.</param>
    public double Ml(long cost) => Math.Ceiling((double)cost / unit.Ml);
}
