namespace CastBook.Planning.Packing.Bounds;

/// <content>What pieces are said to be worth.</content>
internal sealed partial class PackBound
{
    private const int RoundsBySpace = 60;

    // Looks for trees stop a little over what they are asked (TreeLimit).
    private const double LittleLess = 1 - 4e-6;

    /// <summary>Learns what the space that pieces take says; all that can be asked of more kinds than a master ends for.</summary>
    public void AskBySpace()
    {
        unit = costs.Max();
        AskBy(problem.Spaces);
        var worths = new long[free.Length];
        foreach (var (limit, _) in kinds.Where(k => free[k.Limit.Size] > 0))
        {
            worths[limit.Size] = Math.Max(worths[limit.Size], limit.Of(asked, 0, RoundsBySpace, 0, out _));
        }

        Learn(worths);
    }

    // What pieces are worth by the room they take: a start that is seldom far off.
    private void AskBy(long[] weights)
    {
        Array.Clear(asked);
        for (var i = 0; i < weights.Length; i++)
        {
            asked[i] = (long)(weights[i] * unit / 1e6);
        }
    }

    // What one flask costs where all cost the same.
    private long? CostOfEach
    {
        get
        {
            var of = costs.Where((_, size) => free[size] > 0).Distinct().Take(2).ToArray();
            return of.Length == 1 ? of[0] : null;
        }
    }

    private static long Whole(double reach, long one) => (long)Math.Ceiling((reach / one) - 1e-6);

    // A bound over this is worth looking for: that no fewer whole flasks do than what trees in parts cost.
    private long Aim(long enough, double reach) => CostOfEach is { } one ? Math.Min(enough, (Whole(reach, one) - 1) * one) : enough;

    // How much more than they cost trees may be worth, by what is asked, so that the bound is still over the aim; at least once as much.
    private double RoomFor(long aim)
    {
        var (total, besides) = (0.0, (double)asked[^1] * mostFlasks);
        for (var i = 0; i < problem.Items.Length; i++)
        {
            total += (double)asked[i] * problem.Items[i].Quantity;
        }

        for (var size = 0; size < free.Length; size++)
        {
            besides += (double)asked[problem.Items.Length + size] * Math.Max(0, free[size]);
        }

        return Math.Max(1, total / (besides + aim + 1) * LittleLess);
    }

    // What the master says swings widely at first; between that and what gave the best bound so far it settles sooner.
    private void Ask(double share)
    {
        for (var i = 0; i < asked.Length; i++)
        {
            asked[i] = (long)((share * center[i]) + ((1 - share) * values[i]));
        }
    }

    private void Value()
    {
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Math.Max(0, (long)(master.Duals[i] * unit));
        }
    }
}
