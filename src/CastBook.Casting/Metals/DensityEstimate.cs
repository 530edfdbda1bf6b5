using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>A density from the mixing rule, and how far the rule is known to hold for it.</summary>
/// <param name="Density">Density of the solid alloy at room temperature.</param>
/// <param name="Doubtful">The elements for which the rule reads low or has not been compared; none when it can be relied on.</param>
/// <param name="LowBy">
/// The most that the rule was found low with those elements; missing when there are none, or one has not been compared at all.
/// </param>
public sealed record DensityEstimate(Density Density, IReadOnlyList<string> Doubtful, Ratio? LowBy)
{
    /// <summary>True when measured alloys of these elements agree with the rule within 1 %.</summary>
    public bool Reliable => Doubtful.Count == 0;
}
