namespace CastBook.Casting.Names;

/// <summary>
/// Brings the words of a name to the few that a table means by them, whatever the language, so that names can be compared:
/// capitals, accents, blanks and punctuation do not matter.
/// </summary>
/// <remarks>
/// A line of the table is a meaning, an equals sign, and the words that have it, separated by commas. Each of them, and the
/// meaning, may be several words. A line without a meaning holds words that say nothing. A word that the table lacks means itself.
/// </remarks>
public sealed class TradeWords
{
    private readonly Dictionary<string, string[]> meanings = new(StringComparer.Ordinal);
    private readonly Func<string, string[]> split;
    private readonly int longest = 1;

    /// <summary>Reads a table.</summary>
    /// <param name="table">Its lines.</param>
    /// <param name="split">Takes a name apart; missing means <see cref="Split"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="table"/> is missing.</exception>
    public TradeWords(string table, Func<string, string[]>? split = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        this.split = split ?? Split;
        foreach (var line in table.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = line.IndexOf('=', StringComparison.Ordinal);
            var meaning = this.split(line[..equals]);
            foreach (var words in line[(equals + 1)..].Split(','))
            {
                var said = this.split(words);
                meanings[string.Join(' ', said)] = meaning;
                longest = Math.Max(longest, said.Length);
            }
        }
    }

    /// <summary>What the words of a name mean, in the order written, each once.</summary>
    /// <param name="name">A name as written.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is missing.</exception>
    public IReadOnlyList<string> Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var words = split(name);
        var meant = new List<string>(words.Length);
        for (var at = 0; at < words.Length;)
        {
            at += Next(words, at, out var meaning);
            foreach (var word in meaning)
            {
                if (!meant.Contains(word))
                {
                    meant.Add(word);
                }
            }
        }

        return meant;
    }

    /// <summary>The words and numbers of a text, folded to plain capitals; <c>92.5</c> and <c>.925</c> both give 925.</summary>
    /// <param name="text">Any text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is missing.</exception>
    public static string[] Split(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var words = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            var start = at;
            if (char.IsAsciiDigit(text[at]))
            {
                while (at < text.Length && (char.IsAsciiDigit(text[at]) || IsPointBetweenDigits(text, at)))
                {
                    at++;
                }

                Add(words, string.Concat(text[start..at].Where(char.IsAsciiDigit)).TrimStart('0'));
            }
            else if (char.IsLetter(text[at]))
            {
                while (at < text.Length && IsPartOfWord(text[at]))
                {
                    at++;
                }

                Add(words, Folding.Of(text[start..at]));
            }
            else
            {
                at++;
            }
        }

        return [.. words];
    }

    private int Next(string[] words, int at, out string[] meaning)
    {
        for (var length = Math.Min(longest, words.Length - at); length > 0; length--)
        {
            if (meanings.TryGetValue(string.Join(' ', words, at, length), out meaning!))
            {
                return length;
            }
        }

        meaning = [words[at]];
        return 1;
    }

    private static void Add(List<string> words, string word)
    {
        if (word.Length > 0)
        {
            words.Add(word);
        }
    }

    private static bool IsPointBetweenDigits(string text, int at) =>
        text[at] is '.' or ',' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);

    // An accent may stand behind its letter as a character of its own.
    private static bool IsPartOfWord(char c) => char.IsLetter(c) || c is >= '\u0300' and <= '\u036F';
}
