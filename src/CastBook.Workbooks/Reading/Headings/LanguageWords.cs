using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A line of a language's file: what its words are about, and the words.</summary>
/// <param name="About">A field of a piece, or what else the words are: <c>link</c>, <c>each</c>, <c>unit g</c>, <c>remark wax</c> and so on.</param>
/// <param name="Rank">How sure they are; 1 is the surest.</param>
/// <param name="NeedsUnit">Whether they count only beside a unit.</param>
/// <param name="IsHeight">Whether they speak of a height.</param>
/// <param name="IsStatus">Whether they head a column that says how far a row is.</param>
/// <param name="Of">What a weight under them is the weight of: <c>pattern</c>, <c>wax</c>, <c>resin</c> or <c>metal</c>; empty where they do not tell.</param>
/// <param name="Words">The words as written.</param>
internal sealed record WordLine(string About, int Rank, bool NeedsUnit, bool IsHeight, bool IsStatus, string Of, IReadOnlyList<string> Words)
{
    /// <summary>Whether they ask what is cast, so that a name beside them is a person's.</summary>
    public bool IsWhat { get; init; }

    /// <summary>Whether they name a person where another column says what is cast.</summary>
    public bool IsPerson { get; init; }

    /// <summary>Whether a weight under them is that of the piece with its gates on.</summary>
    public bool WithGates { get; init; }

    /// <summary>What a weight under these words is the weight of.</summary>
    public WeightMeaning Meaning => Of switch
    {
        "" => WeightMeaning.Unknown,
        "metal" => WeightMeaning.FinishedMetal,
        _ => WeightMeaning.Pattern,
    };

    /// <summary>The pattern material they tell of; null where they tell of none.</summary>
    public string? Material => Of is "wax" or "resin" ? Of : null;
}

/// <summary>The words of one language, from its file among the resources.</summary>
internal sealed class LanguageWords
{
    private static readonly string[] Names = ["English", "German", "French", "Spanish", "Italian", "Portuguese"];

    private LanguageWords(string language, IReadOnlyList<WordLine> lines) => (Language, Lines) = (language, lines);

    /// <summary>All languages.</summary>
    public static IReadOnlyList<LanguageWords> All { get; } = Array.ConvertAll(Names, Load);

    /// <summary>The language.</summary>
    public string Language { get; }

    /// <summary>Its lines, in order.</summary>
    public IReadOnlyList<WordLine> Lines { get; }

    /// <summary>Reads a language's file.</summary>
    /// <param name="language">Its name.</param>
    /// <param name="text">The file's text.</param>
    /// <exception cref="FormatException">A line has no colon, or says something of its words that nothing knows.</exception>
    public static LanguageWords Parse(string language, TextReader text)
    {
        var lines = new List<WordLine>();
        while (text.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
            {
                lines.Add(ParseLine(line));
            }
        }

        return new LanguageWords(language, lines);
    }

    private static LanguageWords Load(string language)
    {
        using var stream = typeof(LanguageWords).Assembly.GetManifestResourceStream($"{language}.txt")
            ?? throw new InvalidOperationException($"Bug in CastBook: the words in {language} are not among the resources.");
        using var reader = new StreamReader(stream);
        return Parse(language, reader);
    }

    private static WordLine ParseLine(string line)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            throw new FormatException($"\"{line}\" has no colon.");
        }

        var words = line[(colon + 1)..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var head = line[..colon];
        if (head.StartsWith("unit ", StringComparison.Ordinal) || head.StartsWith(RemarkWords.Line, StringComparison.Ordinal))
        {
            return new WordLine(head, 1, false, false, false, "", words);
        }

        var said = head.Split(' ');
        var (rank, needsUnit, isHeight, isStatus, of) = (1, false, false, false, "");
        var (isWhat, isPerson, withGates) = (false, false, false);
        for (var at = 1; at < said.Length; at++)
        {
            switch (said[at])
            {
                case [>= '1' and <= '9' and var digit]:
                    rank = digit - '0';
                    break;
                case "height":
                    isHeight = true;
                    break;
                case "what":
                    isWhat = true;
                    break;
                case "person":
                    isPerson = true;
                    break;
                case "status":
                    isStatus = true;
                    break;
                case "with" when at + 1 < said.Length && said[at + 1] == "unit":
                    (needsUnit, at) = (true, at + 1);
                    break;
                case "with" when at + 1 < said.Length && said[at + 1] == "gates":
                    (withGates, at) = (true, at + 1);
                    break;
                case "of" when at + 1 < said.Length && said[at + 1] is "pattern" or "wax" or "resin" or "metal":
                    (of, at) = (said[at + 1], at + 1);
                    break;
                default:
                    throw new FormatException($"\"{head}\" says \"{said[at]}\" of its words, which means nothing.");
            }
        }

        return new WordLine(said[0], rank, needsUnit, isHeight, isStatus, of, words) { IsWhat = isWhat, IsPerson = isPerson, WithGates = withGates };
    }
}
