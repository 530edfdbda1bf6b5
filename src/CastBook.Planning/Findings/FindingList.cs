using CastBook.Planning.Shops;

namespace CastBook.Planning.Findings;

/// <summary>Collects what a plan finds on its way. A finding that is said twice in the same words about the same thing folds at the end.</summary>
/// <param name="units">The units in which findings say their numbers; the usual ones where none are given.</param>
internal sealed class FindingList(ShopUnits? units = null)
{
    private readonly List<Finding> found = [];

    /// <summary>The units in which findings say their numbers.</summary>
    public ShopUnits Units { get; } = units ?? ShopUnits.Of(new Settings());

    /// <summary>Everything found, in the order it came.</summary>
    public IReadOnlyList<Finding> All => found;

    /// <summary>Adds a finding.</summary>
    /// <param name="finding">What was found.</param>
    public void Add(Finding finding) => found.Add(finding);
}
