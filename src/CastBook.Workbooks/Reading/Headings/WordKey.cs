using System.Text;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Parts a text into words that compare equal however they are written: small letters, no accents, no punctuation.</summary>
internal static class WordKey
{
    /// <summary>The words of a text. They part at blanks, at punctuation and where camelCase turns; <c>l'</c> and <c>d'</c> are dropped, <c>N°</c> is <c>no</c>.</summary>
    public static List<string> Parts(ReadOnlySpan<char> text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        for (var at = 0; at < text.Length; at++)
        {
            var c = text[at];
            if (c is '\'' or '’' && word.Length is > 0 and <= 4)
            {
                word.Clear();
            }
            else if (c is '°' or 'º' && word is { Length: 1 } && word[0] == 'n')
            {
                word.Append('o');
                End(words, word);
            }
            else if (c == '№')
            {
                words.Add("no");
            }
            else if (IsPart(c))
            {
                if (char.IsUpper(c) && at > 0 && char.IsLower(text[at - 1]))
                {
                    End(words, word);
                }

                AppendPlain(word, c);
            }
            else
            {
                End(words, word);
            }
        }

        End(words, word);
        return words;
    }

    /// <summary>A text in small letters without accents, its blanks and punctuation kept.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            AppendPlain(plain, c);
        }

        return plain.ToString();
    }

    /// <summary>One key for the words in any order, without the little words between them.</summary>
    public static string Of(List<string> words)
    {
        var kept = words.Count > 1 ? words.FindAll(w => !SmallWords.Links.Contains(w)) : words;
        if (kept.Count < 2)
        {
            return kept.Count == 0 ? string.Join(' ', words) : kept[0];
        }

        var sorted = kept.ToArray();
        Array.Sort(sorted, StringComparer.Ordinal);
        return string.Join(' ', sorted);
    }

    /// <summary>The key of a text.</summary>
    public static string Of(ReadOnlySpan<char> text) => Of(Parts(text));

    private static void End(List<string> words, StringBuilder word)
    {
        if (word.Length > 0)
        {
            words.Add(word.ToString());
            word.Clear();
        }
    }

    private static bool IsPart(char c) => char.IsLetterOrDigit(c) ? c != 'º' : c is '#' or '%' or '⌀' or '∅';

    // By hand, because the decomposition of Unicode is not at hand without culture data.
    private static void AppendPlain(StringBuilder word, char c)
    {
        var lower = char.ToLowerInvariant(c);
        switch (lower)
        {
            case 'à' or 'á' or 'â' or 'ã' or 'ä' or 'å' or 'ª':
                word.Append('a');
                break;
            case 'è' or 'é' or 'ê' or 'ë':
                word.Append('e');
                break;
            case 'ì' or 'í' or 'î' or 'ï':
                word.Append('i');
                break;
            case 'ò' or 'ó' or 'ô' or 'õ' or 'ö':
                word.Append('o');
                break;
            case 'ù' or 'ú' or 'û' or 'ü':
                word.Append('u');
                break;
            case 'ç':
                word.Append('c');
                break;
            case 'ñ':
                word.Append('n');
                break;
            case 'ß':
                word.Append("ss");
                break;
            case 'œ':
                word.Append("oe");
                break;
            case 'æ':
                word.Append("ae");
                break;
            case '⌀' or '∅':
                word.Append('ø');
                break;
            default:
                word.Append(lower);
                break;
        }
    }
}
