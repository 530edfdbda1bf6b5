using CastBook.Planning.Shops;

namespace CastBook.Planning.Flasks;

/// <summary>What a flask costs by the order of wishes, as one whole number: what is wished first counts more than any amount of the rest.</summary>
/// <remarks>Kiln loads are a matter of all flasks together (<see cref="NightWorth"/>), and like thicknesses of which pieces share one.</remarks>
internal sealed class FlaskCost
{
    // No flask has more tenths of a millilitre of trunk.
    private const int MostTrunk = 999;

    private readonly Wish[] ranked;
    private readonly HashSet<Wish> beforeKiln;
    private readonly (long Flask, long Ml, long Trunk) unit;

    /// <summary>Takes the order.</summary>
    /// <param name="wishes">What is to be saved, first things first.</param>
    public FlaskCost(IReadOnlyList<Wish> wishes)
    {
        ranked = [.. wishes.Where(w => w is Wish.Flasks or Wish.Investment or Wish.Metal)];
        beforeKiln = [.. wishes.TakeWhile(w => w != Wish.KilnLoads)];
        RanksMetalBeforeLikeness = wishes.TakeWhile(w => w != Wish.LikeThicknesses).Contains(Wish.Metal);
        unit = (ranked[0], ranked[1]) switch
        {
            (Wish.Flasks, Wish.Investment) => (10_000_000_000, 1000, 1),
            (Wish.Flasks, _) => (10_000_000_000, 1, 100_000),
            (Wish.Investment, Wish.Flasks) => (1000, 1_000_000, 1),
            (Wish.Investment, _) => (1, 1_000_000, 100),
            (_, Wish.Flasks) => (1_000_000, 1, 1_000_000_000),
            _ => (1, 1000, 1_000_000_000),
        };
    }

    /// <summary>The usual order.</summary>
    public static IReadOnlyList<Wish> Usual { get; } = [Wish.Flasks, Wish.Investment, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses];

    /// <summary>Whether a plan that costs least fills least investment, or so of as few flasks.</summary>
    public bool RanksInvestment => ranked[0] == Wish.Investment || IsFlasksThenInvestment;

    /// <summary>Whether flasks come first and investment next, apart from what no single flask decides.</summary>
    public bool IsFlasksThenInvestment => ranked[0] == Wish.Flasks && ranked[1] == Wish.Investment;

    /// <summary>Whether kiln loads come before flasks or before investment.</summary>
    public bool RanksKilnFirst => !beforeKiln.Contains(Wish.Flasks) || !beforeKiln.Contains(Wish.Investment);

    /// <summary>Whether metal comes before like thicknesses.</summary>
    public bool RanksMetalBeforeLikeness { get; }

    /// <summary>What one of a size costs.</summary>
    /// <param name="size">The size.</param>
    public long Of(UsableSize size) => unit.Flask + (unit.Ml * Ml(size)) + (unit.Trunk * Trunk(size));

    /// <summary>What of that is wished before kiln loads.</summary>
    /// <param name="size">The size.</param>
    public long BeforeKiln(UsableSize size) =>
        (beforeKiln.Contains(Wish.Flasks) ? unit.Flask : 0)
        + (beforeKiln.Contains(Wish.Investment) ? unit.Ml * Ml(size) : 0)
        + (beforeKiln.Contains(Wish.Metal) ? unit.Trunk * Trunk(size) : 0);

    /// <summary>A difference of costs as investment; right where as many flasks are used.</summary>
    /// <param name="cost">The difference.</param>
    public double Ml(long cost) => Math.Ceiling((double)cost / unit.Ml);

    private static long Ml(UsableSize size) => (long)Math.Ceiling(size.Inside.Milliliters);

    private static long Trunk(UsableSize size) => (long)Math.Min(MostTrunk, size.Trunk.Milliliters * 10);
}
