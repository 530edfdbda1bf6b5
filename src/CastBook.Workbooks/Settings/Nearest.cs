namespace CastBook.Workbooks.Settings;

/// <summary>The known name that a misspelt one most likely means.</summary>
internal static class Nearest
{
    // Shorter words are near to too many others: Note is no night.
    private const int ShortestGuessed = 5;

    /// <summary>The nearest of some names, by the least number of letters to change, put in or leave out.</summary>
    public static string To(string typed, IEnumerable<string> known) =>
        known.MinBy(k => Distance(ShopWords.Key(typed), ShopWords.Key(k))) ?? "";

    /// <summary>A name that differs in a letter of three at most; null where none is that near, or the words are short.</summary>
    public static string? Close(string typed, IEnumerable<string> known)
    {
        var key = ShopWords.Key(typed);
        return key.Length < ShortestGuessed ? null : known.FirstOrDefault(k => ShopWords.Key(k) is { Length: >= ShortestGuessed } other && Distance(key, other) * 3 <= Math.Max(key.Length, other.Length));
    }

    private static int Distance(string a, string b)
    {
        var previous = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var current = new int[b.Length + 1];
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                current[j] = Math.Min(change, 1 + Math.Min(previous[j], current[j - 1]));
            }

            previous = current;
        }

        return previous[^1];
    }
}
