namespace CastBook.Workbooks.Sharing;

/// <summary>The texts that are not shared, to be looked for in the names that are.</summary>
internal sealed class RemovedTexts
{
    private const int Shortest = 3;

    // A shorter one is found in many a word.
    private const int LongEnough = 6;

    private readonly HashSet<string> texts = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes a text that goes; short ones and those without a letter say nothing.</summary>
    /// <param name="text">The text of a cell.</param>
    public void Add(string text)
    {
        var plain = Plain(text);
        if (plain.Length >= Shortest && plain.Any(char.IsLetter))
        {
            texts.Add(plain);
        }
    }

    /// <summary>Forgets a text that is no secret: it is shared as well.</summary>
    /// <param name="text">The text.</param>
    public void Remove(string text) => texts.Remove(Plain(text));

    /// <summary>The text that goes and stands in a name as whole words; null where none does.</summary>
    /// <param name="name">The name.</param>
    public string? In(string name)
    {
        var plain = Plain(name);
        foreach (var text in texts)
        {
            for (var at = plain.IndexOf(text, StringComparison.OrdinalIgnoreCase); at >= 0; at = plain.IndexOf(text, at + 1, StringComparison.OrdinalIgnoreCase))
            {
                if (IsEdge(plain, at - 1) && IsEdge(plain, at + text.Length))
                {
                    return text;
                }
            }
        }

        return null;
    }

    /// <summary>Whether a text that goes stands in the name of a table or of cells, where blanks cannot stand.</summary>
    /// <param name="name">The name.</param>
    public bool IsInName(string name)
    {
        var letters = Letters(name);
        return In(name) is not null || texts.Any(t => Letters(t) is { Length: >= LongEnough } text && letters.Contains(text, StringComparison.OrdinalIgnoreCase));
    }

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetterOrDigit));

    // A name of the file writes blanks as underscores.
    private static string Plain(string text) => text.Replace('_', ' ').Trim();

    private static bool IsEdge(string text, int at) => at < 0 || at >= text.Length || !char.IsLetterOrDigit(text[at]);
}
