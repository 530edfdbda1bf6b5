using System.Globalization;

namespace CastBook.Workbooks.Sharing;

/// <summary>Counts what is left behind, by kind, in the order in which the kinds were met.</summary>
internal sealed class ShareTally
{
    private static readonly string[] Ends = [" of ", " in ", " with ", " quoting ", ", "];

    private readonly List<string> kinds = [];
    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);

    /// <summary>Counts.</summary>
    /// <param name="kind">One of it, in words.</param>
    /// <param name="count">How many.</param>
    public void Add(string kind, int count = 1)
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
    public IReadOnlyList<string> Lines => [.. kinds.Select(k => Say(k, counts[k]))];

    /// <summary>A count in words.</summary>
    /// <param name="kind">One of it.</param>
    /// <param name="count">How many.</param>
    public static string Say(string kind, int count) => string.Create(CultureInfo.InvariantCulture, $"{count:#,##0} {(count == 1 ? kind : Many(kind))}");

    // The word before "of", "with" or "in" takes the ending.
    private static string Many(string kind)
    {
        var end = Ends.Select(w => kind.IndexOf(w, StringComparison.Ordinal)).Where(i => i > 0).DefaultIfEmpty(kind.Length).Min();
        var word = kind[..end];
        return $"{(word.EndsWith('y') ? word[..^1] + "ies" : word.EndsWith('x') ? word + "es" : word + "s")}{kind[end..]}";
    }
}
