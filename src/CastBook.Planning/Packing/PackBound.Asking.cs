namespace CastBook.Planning.Packing;

/// <content>What pieces are said to be worth.</content>
internal sealed partial class PackBound
{
    private const int RoundsBySpace = 60;

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
