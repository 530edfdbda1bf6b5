using CastBook.Planning.Investing;

namespace CastBook.Planning.Mixes;

/// <summary>Puts the flasks of one water ratio into as few mixes as bowl and working time allow.</summary>
/// <remarks>
/// First fit from the largest on, then a search for fewer that is bounded by its number of steps and not by time, so that the
/// answer is the same on any machine.
/// </remarks>
internal sealed class MixPacking
{
    private const int MostSteps = 20_000;

    private readonly IReadOnlyList<FlaskFill> fills;
    private readonly int mostFlasks;
    private readonly Func<FlaskFill, bool> fits;
    private readonly int[] order;
    private readonly List<Mix> open = [];
    private List<List<int>> best = [];
    private int steps;

    private MixPacking(IReadOnlyList<FlaskFill> fills, int mostFlasks, Func<FlaskFill, bool> fits)
    {
        this.fills = fills;
        this.mostFlasks = mostFlasks;
        this.fits = fits;
        order = [.. Enumerable.Range(0, fills.Count).OrderByDescending(i => fills[i].Net.Milliliters + fills[i].Chart.Grams).ThenBy(i => i)];
    }

    /// <summary>The mixes, each as places in <paramref name="fills"/>, in order of their first flask.</summary>
    /// <param name="fills">What each flask needs; each fits the bowl alone.</param>
    /// <param name="mostFlasks">How many flasks the working time allows in one mix; one or more.</param>
    /// <param name="fits">Whether the bowl takes so much.</param>
    public static IReadOnlyList<IReadOnlyList<int>> Fewest(IReadOnlyList<FlaskFill> fills, int mostFlasks, Func<FlaskFill, bool> fits)
    {
        var packing = new MixPacking(fills, mostFlasks, fits);
        packing.Place(0);
        foreach (var mix in packing.best)
        {
            mix.Sort();
        }

        return [.. packing.best.OrderBy(m => m[0])];
    }

    private int LeastByCount => (fills.Count + mostFlasks - 1) / mostFlasks;

    // Depth first: the first way down is first fit, and each later one must beat the best so far.
    private void Place(int at)
    {
        if (at == order.Length)
        {
            best = [.. open.Select(m => m.Flasks.ToList())];
            return;
        }

        var flask = order[at];
        for (var i = 0; i < open.Count && IsWorthMore(open.Count); i++)
        {
            // A flask fares the same in two mixes that hold the same.
            var (before, mix) = (open[i].Fill, open[i]);
            var together = before.With(fills[flask]);
            if (mix.Flasks.Count < mostFlasks && !open.Take(i).Any(m => m.Fill == before && m.Flasks.Count == mix.Flasks.Count) && fits(together))
            {
                mix.Fill = together;
                mix.Flasks.Add(flask);
                Place(at + 1);
                mix.Flasks.RemoveAt(mix.Flasks.Count - 1);
                mix.Fill = before;
            }
        }

        if (IsWorthMore(open.Count + 1))
        {
            open.Add(new Mix { Fill = fills[flask], Flasks = [flask] });
            Place(at + 1);
            open.RemoveAt(open.Count - 1);
        }
    }

    private bool IsWorthMore(int mixes) =>
        best.Count == 0 || (mixes < best.Count && best.Count > LeastByCount && ++steps < MostSteps);

    private sealed class Mix
    {
        public required FlaskFill Fill { get; set; }

        public required List<int> Flasks { get; init; }
    }
}
