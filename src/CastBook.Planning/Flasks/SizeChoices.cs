namespace CastBook.Planning.Flasks;

/// <summary>So many flasks of each size for one group.</summary>
/// <param name="Counts">How many, by size.</param>
/// <param name="BeforeKiln">What of their cost is wished before kiln loads.</param>
/// <param name="Cost">What they cost.</param>
internal sealed record SizeChoice(int[] Counts, long BeforeKiln, long Cost);

/// <summary>The choices of flasks near those of an answer that are no cheaper, cheapest first: all there are where they are few.</summary>
internal static class SizeChoices
{
    private const int Most = 1000;

    /// <summary>Lists them; the first is that of the answer.</summary>
    /// <param name="answer">The answer; everything is placed.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="cost">What a flask costs.</param>
    public static List<SizeChoice> Near(GroupAnswer answer, IReadOnlyList<UsableSize> sizes, int[] free, FlaskCost cost)
    {
        int[] was = [.. sizes.Select(s => answer.Used(s.Index))];
        var own = Choice(was);
        var found = new List<int[]>();
        for (var apart = answer.Flasks.Count; !All(apart); apart--)
        {
            found.Clear();
        }

        return
        [
            own,
            .. found.Where(c => c.Sum() >= answer.LeastFlasks && !c.AsSpan().SequenceEqual(was)).Select(Choice)
                .Where(c => c.Cost >= own.Cost && c.BeforeKiln >= own.BeforeKiln).OrderBy(c => c.BeforeKiln).ThenBy(c => c.Cost),
        ];

        SizeChoice Choice(int[] counts) => new(
            counts, sizes.Sum(s => counts[s.Index] * cost.BeforeKiln(s)), sizes.Sum(s => counts[s.Index] * cost.Of(s)));

        // So many flasks may go, and twice as many come.
        bool All(int apart)
        {
            var counts = new int[was.Length];
            return apart <= 0 || Choose(0, apart, 2 * apart);

            bool Choose(int size, int gone, int come)
            {
                if (size == counts.Length)
                {
                    found.Add([.. counts]);
                    return found.Count <= Most;
                }

                for (var count = Math.Max(0, was[size] - gone); count <= Math.Min(free[size], was[size] + come); count++)
                {
                    counts[size] = count;
                    if (!Choose(size + 1, gone - Math.Max(0, was[size] - count), come - Math.Max(0, count - was[size])))
                    {
                        return false;
                    }
                }

                return true;
            }
        }
    }
}
