namespace CastBook.Workbooks.Sharing;

/// <summary>What sharing a book came to.</summary>
/// <param name="Kept">What the template has of the book.</param>
/// <param name="Removed">What was left behind, with counts.</param>
/// <param name="LeftSheets">The sheets that were left behind, and why.</param>
/// <param name="UnknownHeadings">Headings that are shared although nobody but the shop knows what they mean.</param>
public sealed record ShareResult(
    IReadOnlyList<string> Kept, IReadOnlyList<string> Removed, IReadOnlyList<string> LeftSheets, IReadOnlyList<string> UnknownHeadings)
{
    /// <summary>Headings of the template that only <c>castbook.json</c> makes known, by field: whoever uses the template needs them too.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Words { get; init; } = new Dictionary<string, IReadOnlyList<string>>();
}
