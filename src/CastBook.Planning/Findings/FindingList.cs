namespace CastBook.Planning.Findings;

/// <summary>Collects what a plan finds on its way. A finding that is said twice in the same words about the same thing folds at the end.</summary>
internal sealed class FindingList
{
    private readonly List<Finding> found = [];

    /// <summary>Everything found, in the order it came.</summary>
    public IReadOnlyList<Finding> All => found;

    /// <summary>Adds a finding.</summary>
    /// <param name="finding">What was found.</param>
    public void Add(Finding finding) => found.Add(finding);
}
