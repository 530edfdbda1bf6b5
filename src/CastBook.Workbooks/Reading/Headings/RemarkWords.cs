using System.Globalization;
using CastBook.Planning;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Finds in a remark the words of all languages that speak of resin, wax, stones, of being done, of waiting or of a number of pieces.</summary>
internal static class RemarkWords
{
    /// <summary>How the lines of these words begin in a language's file.</summary>
    public const string Line = "remark ";

    private const RemarkTopics Negation = (RemarkTopics)(-1);

    // How far a "no" may stand before its word: "no set stones".
    private const int NegationReach = 2;

    private static readonly (string About, RemarkTopics Topic, int Pieces)[] Kinds =
    [
        ("resin", RemarkTopics.Resin, 0), ("wax", RemarkTopics.Wax, 0), ("stones", RemarkTopics.Stones, 0),
        ("done", RemarkTopics.Done, 0), ("hold", RemarkTopics.Hold, 0), ("2", RemarkTopics.None, 2), ("3", RemarkTopics.None, 3), ("without", Negation, 0),
    ];

    // What stands between such a word and its day, or approves of it, in the six languages.
    private static readonly HashSet<string> DayLinks = new(StringComparer.Ordinal) { "on", "the", "ok", "am", "den", "le", "el", "il", "em", "de" };

    private static readonly Dictionary<string, List<(List<string> Words, RemarkTopics Topic, int Pieces)>> ByFirstWord = Index();

    private static readonly List<(List<string> Words, RemarkTopics Topic, int Pieces)> None = [];

    /// <summary>What a remark speaks of.</summary>
    /// <param name="text">The remark.</param>
    /// <returns>The topics, and how many pieces; 0 where it names no number of them.</returns>
    public static (RemarkTopics Topics, int Pieces) In(string text)
    {
        var words = WordKey.Parts(text.Replace('×', 'x'));
        var (topics, pieces, negatedUntil) = (RemarkTopics.None, 0, -1);
        for (var at = 0; at < words.Count; at++)
        {
            pieces = Math.Max(pieces, Times(words, at));
            foreach (var (phrase, topic, number) in ByFirstWord.GetValueOrDefault(words[at], None))
            {
                if (!StandsAt(words, at, phrase))
                {
                    continue;
                }

                if (topic == Negation)
                {
                    negatedUntil = at + phrase.Count - 1 + NegationReach;
                }
                else if (at > negatedUntil && Counts(topic, words, at, phrase.Count))
                {
                    topics |= topic;
                    pieces = Math.Max(pieces, number);
                }
            }
        }

        return (topics, pieces);
    }

    // "HOLD, waiting for the stone" begins with its word; "must hold a stone" says nothing of waiting.
    private static bool Counts(RemarkTopics topic, List<string> words, int at, int count) => topic switch
    {
        RemarkTopics.Done => IsAllButADay(words, at, count),
        RemarkTopics.Hold => at == 0 || count > 1,
        _ => true,
    };

    // "DONE", "cast 12 March", "am 3.12. gegossen"; but "engraving to be done" and "cast in place" speak of other things.
    private static bool IsAllButADay(List<string> words, int from, int count)
    {
        for (var at = 0; at < words.Count; at++)
        {
            if ((at < from || at >= from + count) && !IsOfADay(words[at]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsOfADay(string word) =>
        word.All(char.IsAsciiDigit) || DayLinks.Contains(word) || MonthWords.Month(word) > 0 || MonthWords.IsWeekday(word);

    // "2x", "x2", "2 x", "2 pcs"; but "2 x 3 mm" are sizes.
    private static int Times(List<string> words, int at)
    {
        var (word, next, afterNext) = (words[at], At(at + 1), At(at + 2));
        var isBeforeX = word.EndsWith('x') && !StartsWithDigit(next);
        var isAfterX = word.StartsWith('x') && (at == 0 || !StartsWithDigit(words[at - 1]));
        var isCounted = SmallWords.Counts.Contains(next) || (next == "x" && !StartsWithDigit(afterNext));
        var digits = isBeforeX ? word.AsSpan(..^1) : isAfterX ? word.AsSpan(1) : isCounted ? word : [];
        return int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var times) ? times : 0;

        string At(int place) => place < words.Count ? words[place] : "";
    }

    private static bool StartsWithDigit(string word) => word.Length > 0 && char.IsAsciiDigit(word[0]);

    private static bool StandsAt(List<string> words, int at, List<string> phrase)
    {
        for (var word = 0; word < phrase.Count; word++)
        {
            if (at + word >= words.Count || words[at + word] != phrase[word])
            {
                return false;
            }
        }

        return true;
    }

    private static Dictionary<string, List<(List<string> Words, RemarkTopics Topic, int Pieces)>> Index()
    {
        var index = new Dictionary<string, List<(List<string>, RemarkTopics, int)>>(StringComparer.Ordinal);
        foreach (var (about, topic, pieces) in Kinds)
        {
            foreach (var text in SmallWords.Of(Line + about))
            {
                var words = WordKey.Parts(text);
                if (!index.TryGetValue(words[0], out var phrases))
                {
                    index[words[0]] = phrases = [];
                }

                phrases.Add((words, topic, pieces));
            }
        }

        return index;
    }
}
