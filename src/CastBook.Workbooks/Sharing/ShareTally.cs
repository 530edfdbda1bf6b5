namespace CastBook.Workbooks.Sharing;

/// <summary>Counts what is left behind, by kind, in the order in which the kinds were met.</summary>
internal sealed class ShareTally
{
    private readonly List<Func<int, string>> kinds = [];
    private readonly Dictionary<Func<int, string>, int> counts = [];

    /// <summary>Counts.</summary>
    /// <param name="kind">How so many of it are called, a method of <see cref="Words.LeftBehindWords"/>.</param>
    /// <param name="count">How many.</param>
    public void Add(Func<int, string> kind, int count = 1)
    {
        if (count == 0)
        {
            return;
        }

        if (!counts.TryGetValue(kind, out var before))
        {
            kinds.Add(kind);
        }

        counts[kind] = before + count;
    }

    /// <summary>The kinds with their counts: <c>3 notes</c>.</summary>
    public IReadOnlyList<string> Lines => [.. kinds.Select(k => k(counts[k]))];
}
