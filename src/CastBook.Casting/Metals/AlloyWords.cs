using CastBook.Casting.Names;

namespace CastBook.Casting.Metals;

/// <summary>
/// What the words of an alloy's name mean: <c>750 Gelbgold</c>, <c>or jaune 18 ct</c> and <c>18KY</c> are all 18k and yellow.
/// </summary>
/// <remarks>
/// <para>A fineness is read as its usual carat number (585 as 14k), and the metal is left out where the number says it already.</para>
/// <para><b>Source.</b> The finenesses of the carat numbers are those of ISO 9202; the words are common practice.</para>
/// </remarks>
public static class AlloyWords
{
    private static readonly TradeWords Carats = new(AlloyWordTable.Carats);
    private static readonly TradeWords Table = new(AlloyWordTable.Words, Marks);

    /// <summary>The words, in the order written, each once.</summary>
    /// <param name="name">A name as written.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is missing.</exception>
    public static IReadOnlyList<string> Of(string name)
    {
        var words = Table.Of(name);
        var gold = words.Any(IsCarats);
        var silver = words.Contains("925");
        return gold || silver ? [.. words.Where(w => !(gold && w == "GOLD") && !(silver && w == "SILVER"))] : words;
    }

    /// <summary>The same text for names that mean the same, whatever the order of their words; empty where a name says nothing.</summary>
    /// <param name="name">A name as written.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is missing.</exception>
    public static string Key(string name)
    {
        var words = Of(name).ToArray();
        Array.Sort(words, StringComparer.Ordinal);
        return string.Join(' ', words);
    }

    /// <summary>Whether a word is a number of carats, which only gold has.</summary>
    /// <param name="word">A word of a name, as <see cref="Of"/> gives it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="word"/> is missing.</exception>
    public static bool IsCarats(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return word.Length > 1 && word[^1] == 'K' && char.IsAsciiDigit(word[0]);
    }

    /// <summary>Joins a number with the carats behind it, and takes out the thousand of <c>585/1000</c>.</summary>
    private static string[] Marks(string name)
    {
        List<string> words = [.. TradeWords.Split(name)];
        for (var i = words.Count - 1; i > 0; i--)
        {
            if (!char.IsAsciiDigit(words[i - 1][0]))
            {
                continue;
            }

            if (words[i] == "1000")
            {
                words.RemoveAt(i);
            }
            else if (Carats.Of(words[i]) is ["K", ..] carat)
            {
                words[i - 1] += "K";
                words.RemoveAt(i);
                words.InsertRange(i, carat.Skip(1));
            }
        }

        return [.. words];
    }
}
