namespace CastBook.Workbooks.Sharing;

/// <summary>What may be shared beyond what CastBook knows by itself.</summary>
/// <param name="Keep">Names of sheets that the owner vouches for: all that stands in their cells is shared.</param>
/// <param name="KnownTexts">Texts of the starter books, which are nobody's secret wherever they explain something.</param>
public sealed record ShareWishes(IReadOnlyCollection<string> Keep, IReadOnlySet<string> KnownTexts)
{
    /// <summary>Nothing more.</summary>
    public static ShareWishes None { get; } = new([], new HashSet<string>());
}
