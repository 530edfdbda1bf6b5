namespace CastBook.Workbooks.Reading.Headings;

/// <summary>One way to read a heading: these words, with this unit.</summary>
/// <param name="Words">Its words, plain.</param>
/// <param name="Unit">The unit it names; null where it names none.</param>
/// <param name="IsOfOther">Whether words that were left out speak of something other than the piece, or of a total.</param>
internal sealed record HeadingReading(List<string> Words, CellUnit? Unit, bool IsOfOther)
{
    /// <summary>Whether words that were left out make a length that of something else than the outside of the piece.</summary>
    public bool IsOfOtherLength { get; private init; }

    // Single letters that are words of their own more often than units: c, f, l, s, w.
    private static readonly HashSet<string> TooShortForLastWord = new(StringComparer.OrdinalIgnoreCase) { "c", "f", "l", "s", "w", "deg" };

    /// <summary>The ways to read a heading, the first choice first.</summary>
    public static List<HeadingReading> Of(string line)
    {
        var (outside, inside, marked) = Brackets(line);
        if (marked is null && outside.LastIndexOf(',') is var comma and > 0 && HeadingUnit.TryParse(outside[(comma + 1)..], out var afterComma))
        {
            (outside, marked) = (outside[..comma], afterComma);
        }

        var readings = new List<HeadingReading>();
        var explained = WordKey.Parts(inside);
        var (left, unit) = LastWordUnit(SplitWords(outside));

        // A sign such as " is no word, so there is nothing else it could be.
        var isSign = unit is not null && WordKey.Parts(left).Count == WordKey.Parts(outside).Count;
        Add(readings, outside, explained, isSign ? marked ?? unit : marked);
        if (unit is not null && !isSign)
        {
            Add(readings, left, explained, marked ?? unit);
        }

        return readings;
    }

    /// <summary>The words without "each" or "per piece"; null where they say nothing of the kind, or nothing else.</summary>
    public List<string>? WithoutEach()
    {
        foreach (var phrase in SmallWords.Each)
        {
            for (var at = 0; at + phrase.Count <= Words.Count && phrase.Count < Words.Count; at++)
            {
                if (Words.GetRange(at, phrase.Count).SequenceEqual(phrase))
                {
                    return [.. Words[..at], .. Words[(at + phrase.Count)..]];
                }
            }
        }

        return null;
    }

    // What a bracket explains belongs to the words: "Weight (wax)". Where that is nothing known, the words alone count.
    private static void Add(List<HeadingReading> readings, string outside, List<string> inside, CellUnit? unit)
    {
        var words = WordKey.Parts(outside);
        if (inside.Count == 0)
        {
            readings.Add(new HeadingReading(words, unit, false));
            return;
        }

        readings.Add(new HeadingReading([.. words, .. inside], unit, false));
        readings.Add(new HeadingReading(words, unit, inside.Exists(SmallWords.Others.Contains)) { IsOfOtherLength = inside.Exists(SmallWords.OtherLengths.Contains) });
    }

    // A unit in brackets may be followed by an explanation: "(mm, from the gate outwards)".
    private static (string Outside, string Inside, CellUnit? Unit) Brackets(string line)
    {
        var open = line.IndexOfAny(['(', '[']);
        var close = line.LastIndexOfAny([')', ']']);
        if (open < 0 || close < open)
        {
            return (line, "", null);
        }

        CellUnit? unit = null;
        var inside = "";
        foreach (var part in line[(open + 1)..close].Split([',', ';', '(', ')', '[', ']']))
        {
            if (unit is null && HeadingUnit.TryParse(part, out var found))
            {
                unit = found;
            }
            else if (!(WordKey.Parts(part) is [var word] && SmallWords.Counts.Contains(word)))
            {
                inside += " " + part;
            }
        }

        return ($"{line[..open]} {line[(close + 1)..]}", inside, unit);
    }

    private static (string Left, CellUnit? Unit) LastWordUnit(List<string> words)
    {
        CellUnit? unit = null;
        var used = 0;
        for (var count = Math.Min(3, words.Count - 1); count > 0 && unit is null; count--)
        {
            var tail = string.Join(' ', words[^count..]);
            if (!TooShortForLastWord.Contains(tail) && HeadingUnit.TryParse(tail, out var found))
            {
                (unit, used) = (found, count);
            }
        }

        if (unit is null && words.Count > 0 && words[^1].Split('/') is [{ Length: > 0 } before, var after] && HeadingUnit.TryParse(after, out var behind))
        {
            return (string.Join(' ', [.. words[..^1], before]), behind);
        }

        return (string.Join(' ', words[..^used]), unit);
    }

    private static List<string> SplitWords(string text)
    {
        var words = new List<string>();
        foreach (var word in text.Split([' ', '_'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (word.Trim('.', ':', '*') is { Length: > 0 } bare)
            {
                words.Add(bare);
            }
        }

        return words;
    }
}
