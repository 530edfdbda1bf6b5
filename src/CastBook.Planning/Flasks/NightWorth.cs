using CastBook.Planning.Clock;

namespace CastBook.Planning.Flasks;

/// <summary>What the flasks of a night are worth together by the order of wishes.</summary>
/// <remarks>To look for room on a kiln's floor is slow: it is done only where nothing wished before it decides.</remarks>
/// <param name="cost">What a flask costs.</param>
/// <param name="kiln">What flasks ask of the kiln.</param>
internal sealed class NightWorth(FlaskCost cost, KilnNeeds kiln)
{
    /// <summary>What they ask of the kiln.</summary>
    /// <param name="answers">The answer of each group.</param>
    public KilnNeed Kiln(IEnumerable<GroupAnswer> answers) => kiln.Of(Moulds(answers));

    /// <summary>Less than 0 where the first is better: more placed, then by each wish in turn.</summary>
    /// <param name="one">The answer of each group.</param>
    /// <param name="other">Other answers.</param>
    public int Compare(IReadOnlyList<GroupAnswer> one, IReadOnlyList<GroupAnswer> other)
    {
        var before = (Lost(one), BeforeKiln(one)).CompareTo((Lost(other), BeforeKiln(other)));
        var byKiln = before != 0 || AreAlike(one, other) ? before : Kiln(one).CompareTo(Kiln(other));
        return byKiln != 0 ? byKiln : Cost(one).CompareTo(Cost(other));
    }

    /// <summary>Loads and half hours that the second saves the kiln; less than 0 where it asks more.</summary>
    /// <param name="one">The answer of each group.</param>
    /// <param name="other">Other answers.</param>
    public KilnNeed KilnSaved(IReadOnlyList<GroupAnswer> one, IReadOnlyList<GroupAnswer> other)
    {
        if (AreAlike(one, other))
        {
            return default;
        }

        var (was, now) = (Kiln(one), Kiln(other));
        return new KilnNeed(was.Loads - now.Loads, was.HalfHours - now.HalfHours);
    }

    private bool AreAlike(IEnumerable<GroupAnswer> one, IEnumerable<GroupAnswer> other) => Moulds(one).Order().SequenceEqual(Moulds(other).Order());

    private IEnumerable<KilnMould> Moulds(IEnumerable<GroupAnswer> answers) =>
        answers.SelectMany(a => a.Flasks).Select(f => kiln.Mould(f.Size, f.Kind, f.StonesIn));

    private long BeforeKiln(IEnumerable<GroupAnswer> answers) => answers.Sum(a => a.Flasks.Sum(f => cost.BeforeKiln(f.Size)));

    private static decimal Lost(IEnumerable<GroupAnswer> answers) => answers.Sum(a => a.Lost);

    private static long Cost(IEnumerable<GroupAnswer> answers) => answers.Sum(a => a.Cost);
}
