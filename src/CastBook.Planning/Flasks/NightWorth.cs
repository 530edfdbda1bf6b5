using CastBook.Planning.Clock;

namespace CastBook.Planning.Flasks;

/// <summary>What the flasks of a night are worth together by the order of wishes.</summary>
/// <param name="cost">What a flask costs.</param>
/// <param name="kiln">What flasks ask of the kiln.</param>
internal sealed class NightWorth(FlaskCost cost, KilnNeeds kiln)
{
    /// <summary>What they ask of the kiln.</summary>
    /// <param name="answers">The answer of each group.</param>
    public KilnNeed Kiln(IEnumerable<GroupAnswer> answers) => kiln.Of(answers.SelectMany(a => a.Flasks).Select(f => kiln.Mould(f.Size, f.Kind, f.StonesIn)));

    /// <summary>What they are worth; the least is the best.</summary>
    /// <param name="answers">The answer of each group.</param>
    public PlanWorth Of(IReadOnlyList<GroupAnswer> answers) => new(
        answers.Sum(a => a.Lost), answers.Sum(a => a.Flasks.Sum(f => cost.BeforeKiln(f.Size))), Kiln(answers), answers.Sum(a => a.Cost));
}

/// <summary>What a plan is worth; the least is the best.</summary>
/// <param name="Lost">What the pieces without a flask are worth.</param>
/// <param name="BeforeKiln">What of the cost is wished before kiln loads.</param>
/// <param name="Kiln">What it asks of the kiln.</param>
/// <param name="Cost">The whole cost of its flasks.</param>
internal readonly record struct PlanWorth(decimal Lost, long BeforeKiln, KilnNeed Kiln, long Cost) : IComparable<PlanWorth>
{
    /// <inheritdoc/>
    public int CompareTo(PlanWorth other) => (Lost, BeforeKiln, Kiln, Cost).CompareTo((other.Lost, other.BeforeKiln, other.Kiln, other.Cost));
}
