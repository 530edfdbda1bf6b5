using System.Text;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A heading taken apart: its words, and the unit it names.</summary>
/// <remarks>
/// <c>Pattern weight (g)</c>, <c>Weight, g</c>, <c>Höhe [mm]</c>, <c>wax_weight_g</c> and <c>Wt g</c> all name their unit.
/// <c>Stones in</c> does not mean inches: so a last word that may be a unit is kept in <see cref="AllWords"/> and left off in <see cref="Words"/>.
/// </remarks>
internal sealed class Heading
{
    // Single letters that are words of their own more often than units: c, f, l, s, w.
    private static readonly HashSet<string> TooShortForLastWord = new(StringComparer.OrdinalIgnoreCase) { "c", "f", "l", "s", "w", "deg" };

    private readonly CellUnit? marked;
    private readonly CellUnit? lastWord;

    private Heading(string text, string allWords, string words, CellUnit? marked, CellUnit? lastWord) =>
        (Text, AllWords, Words, this.marked, this.lastWord) = (text, allWords, words, marked, lastWord);

    /// <summary>The heading as written, on one line.</summary>
    public string Text { get; }

    /// <summary>Its words without brackets, a last word that may be a unit included.</summary>
    public string AllWords { get; }

    /// <summary>Its words without brackets and unit.</summary>
    public string Words { get; }

    /// <summary>Whether the heading says this, and with which unit.</summary>
    /// <param name="said">Words of a heading, without unit.</param>
    /// <param name="unit">The unit named; missing where none is.</param>
    public bool Says(string said, out CellUnit? unit)
    {
        unit = marked;
        if (string.Equals(AllWords, said, StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        unit ??= lastWord;
        return lastWord is not null && string.Equals(Words, said, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Takes a heading apart.</summary>
    public static Heading Parse(string text)
    {
        var line = OneLine(text);
        var (outside, marked) = Brackets(line);
        if (marked is null && outside.LastIndexOf(',') is var comma and > 0 && CellUnit.TryParse(outside.AsSpan(comma + 1), out var afterComma))
        {
            (outside, marked) = (outside[..comma], afterComma);
        }

        var words = SplitWords(outside);
        var all = string.Join(' ', words);
        if (LastWordUnit(words) is var (unit, used) && unit is not null)
        {
            return new Heading(line, all, string.Join(' ', words[..^used]), marked, unit);
        }

        return new Heading(line, all, all, marked, null);
    }

    private static string OneLine(string text) =>
        string.Join(' ', text.Replace('\u00A0', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    // A unit in brackets may be followed by an explanation: "(mm, from the gate outwards)".
    private static (string Outside, CellUnit? Unit) Brackets(string line)
    {
        var open = line.IndexOfAny(['(', '[']);
        var close = line.LastIndexOfAny([')', ']']);
        if (open < 0 || close < open)
        {
            return (line, null);
        }

        CellUnit? unit = null;
        foreach (var part in line[(open + 1)..close].Split([',', ';']))
        {
            if (unit is null && CellUnit.TryParse(part, out var found))
            {
                unit = found;
            }
        }

        return ($"{line[..open]} {line[(close + 1)..]}", unit);
    }

    private static (CellUnit? Unit, int Words) LastWordUnit(List<string> words)
    {
        if (words.Count > 2 && CellUnit.TryParse($"{words[^2]} {words[^1]}", out var two))
        {
            return (two, 2);
        }

        return words.Count > 1 && !TooShortForLastWord.Contains(words[^1]) && CellUnit.TryParse(words[^1], out var one) ? (one, 1) : (null, 0);
    }

    // Words part at blanks, underscores and where camelCase turns; full stops, colons and stars say nothing.
    private static List<string> SplitWords(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        void End()
        {
            if (word.ToString().Trim('.', ':', '*') is { Length: > 0 } done)
            {
                words.Add(done);
            }

            word.Clear();
        }

        for (var at = 0; at < text.Length; at++)
        {
            var c = text[at];
            if (char.IsWhiteSpace(c) || c == '_')
            {
                End();
                continue;
            }

            if (char.IsUpper(c) && at > 0 && char.IsLower(text[at - 1]))
            {
                End();
            }

            word.Append(c);
        }

        End();
        return words;
    }
}
