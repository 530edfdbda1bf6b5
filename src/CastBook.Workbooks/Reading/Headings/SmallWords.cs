namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Words of all languages that head no column but tell something of a heading or a unit.</summary>
internal static class SmallWords
{
    private const string UnitLine = "unit ";

    /// <summary>Little words between the others, which do not count.</summary>
    public static HashSet<string> Links { get; } = Single("link");

    /// <summary>The word between a quantity and its unit: <c>Gewicht in g</c>.</summary>
    public static HashSet<string> BeforeUnit { get; } = Single("inUnit");

    /// <summary>What stands for a count where others have a unit.</summary>
    public static HashSet<string> Counts { get; } = Single("count");

    /// <summary>What belongs to something other than the piece: a stone, a customer, a price.</summary>
    public static HashSet<string> Others { get; } = Single("other");

    /// <summary>What heads days other than that of the casting: of the order, of the print.</summary>
    public static HashSet<string> OtherDays { get; } = Single("otherDay");

    /// <summary>What makes a length that of something else than the outside of the piece: of its inside, of a stone.</summary>
    public static HashSet<string> OtherLengths { get; } = Single("otherLength");

    /// <summary>What heads a column of what the quantity counts: pieces, pairs.</summary>
    public static HashSet<string> Counted { get; } = Single("counted");

    /// <summary>What heads remarks.</summary>
    public static HashSet<string> Remarks { get; } = Single("remarks");

    /// <summary>What heads names of pattern materials, where names stand below it.</summary>
    public static HashSet<string> NamesMaterial { get; } = Single("namesMaterial");

    /// <summary>What says that a weight is that of one piece, the longest first.</summary>
    public static IReadOnlyList<List<string>> Each { get; } = EachPhrases();

    /// <summary>The same phrases, each written together.</summary>
    public static HashSet<string> EachKeys { get; } = Single("each");

    /// <summary>The words of units beside their signs, each with the sign of its unit.</summary>
    public static IEnumerable<(string Sign, string Word)> Units()
    {
        foreach (var language in LanguageWords.All)
        {
            foreach (var line in language.Lines)
            {
                if (line.About.StartsWith(UnitLine, StringComparison.Ordinal))
                {
                    foreach (var word in line.Words)
                    {
                        yield return (line.About[UnitLine.Length..], word);
                    }
                }
            }
        }
    }

    /// <summary>The words of all languages about one thing, as written.</summary>
    /// <param name="about">What they are about.</param>
    public static List<string> Of(string about)
    {
        var words = new List<string>();
        foreach (var language in LanguageWords.All)
        {
            foreach (var line in language.Lines)
            {
                if (line.About == about)
                {
                    words.AddRange(line.Words);
                }
            }
        }

        return words;
    }

    private static HashSet<string> Single(string about)
    {
        var all = new HashSet<string>(StringComparer.Ordinal);
        foreach (var word in Of(about))
        {
            all.Add(string.Concat(WordKey.Parts(word)));
        }

        return all;
    }

    private static List<List<string>> EachPhrases()
    {
        var phrases = Of("each").ConvertAll(p => WordKey.Parts(p));
        phrases.Sort((a, b) => b.Count.CompareTo(a.Count));
        return phrases;
    }
}
