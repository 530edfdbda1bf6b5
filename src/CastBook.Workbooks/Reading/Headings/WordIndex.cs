using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Words of a heading that were found, and the field they mean.</summary>
/// <param name="FieldAt">The field's place among <see cref="WordIndex.Fields"/>.</param>
/// <param name="Word">The words.</param>
/// <param name="Rank">How sure they are; the lowest is the surest.</param>
internal sealed record KnownWord(int FieldAt, HeadingWord Word, int Rank);

/// <summary>The words of a list's headings, to be looked up.</summary>
internal sealed class WordIndex
{
    // Room between two ranks for what makes words a little surer or less sure.
    internal const int RankStep = 10;

    private static readonly string[] BetweenSizes = ["x", "by"];

    private readonly int sizesAt;
    private readonly Dictionary<string, List<KnownWord>> byKey = new(StringComparer.Ordinal);

    public WordIndex(IReadOnlyList<FieldHeadings> fields)
    {
        Fields = fields;
        sizesAt = fields.ToList().FindIndex(f => f.Field == PieceField.Sizes);
        for (var at = 0; at < fields.Count; at++)
        {
            var words = fields[at].Words;
            for (var place = 0; place < words.Count; place++)
            {
                var rank = words[place].Rank > 0 ? words[place].Rank : place + 1;
                Add(new KnownWord(at, words[place], rank * RankStep));
            }
        }
    }

    /// <summary>The fields; earlier ones choose first.</summary>
    public IReadOnlyList<FieldHeadings> Fields { get; }

    /// <summary>What words may mean; empty where nothing knows them.</summary>
    /// <param name="words">The words, in their order.</param>
    public IReadOnlyList<KnownWord> Find(List<string> words)
    {
        if (words.Count == 0)
        {
            return [];
        }

        if (byKey.TryGetValue(WordKey.Of(words), out var found)
            || byKey.TryGetValue(WordKey.Of(words.ConvertAll(Singular)), out found)
            || (words.Count > 1 && byKey.TryGetValue(string.Concat(words), out found)))
        {
            return found;
        }

        return SizesIn(words);
    }

    // H x W x D in any order, in any language.
    private List<KnownWord> SizesIn(List<string> words)
    {
        var named = words.FindAll(w => !BetweenSizes.Contains(w));
        return sizesAt >= 0 && SizeOrder.Of(named, this) is not null ? [new KnownWord(sizesAt, string.Join(" x ", named), RankStep)] : [];
    }

    private static string Singular(string word) => word.Length > 3 && word[^1] == 's' ? word[..^1] : word;

    private void Add(KnownWord known)
    {
        AddKeys(known, known.Word.Text);
        var spelled = known.Word.Text
            .Replace("ä", "ae", StringComparison.OrdinalIgnoreCase)
            .Replace("ö", "oe", StringComparison.OrdinalIgnoreCase)
            .Replace("ü", "ue", StringComparison.OrdinalIgnoreCase);
        if (spelled != known.Word.Text)
        {
            AddKeys(known, spelled);
        }
    }

    private void AddKeys(KnownWord known, string text)
    {
        var words = WordKey.Parts(text);
        AddKey(WordKey.Of(words), known);
        if (words.Count > 1)
        {
            AddKey(string.Concat(words), known);
        }
    }

    private void AddKey(string key, KnownWord known)
    {
        if (!byKey.TryGetValue(key, out var all))
        {
            byKey[key] = all = [];
        }

        all.Add(known);
    }
}
