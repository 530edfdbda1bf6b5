using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>In which order a heading such as <c>H x W x D</c> names the sizes of a piece.</summary>
internal static class SizeOrder
{
    private const int Least = 2;
    private const int Most = 3;

    // Those before come first where a word is as sure of both.
    private static readonly string[] Sizes = [PieceField.Length, PieceField.Width, PieceField.Thickness];

    /// <summary>The fields that the words name, in their order: length and width, and a thickness where three are named; null where they name anything else.</summary>
    /// <param name="words">The words of a heading, or those of them that name sizes.</param>
    /// <param name="index">The words to look for.</param>
    public static IReadOnlyList<string>? Of(IReadOnlyList<string> words, WordIndex index)
    {
        if (words.Count is < Least or > Most || words.Distinct(StringComparer.Ordinal).Count() < words.Count)
        {
            return null;
        }

        var order = new string?[words.Count];
        var senses = Enumerable.Range(0, words.Count).SelectMany(at => Senses(words[at], index).Select(s => (At: at, s.Size, s.Rank)));
        foreach (var (at, size, _) in senses.OrderBy(s => s.Rank).ThenBy(s => s.Size).ThenBy(s => s.At))
        {
            order[at] ??= order.Contains(Sizes[size]) ? null : Sizes[size];
        }

        return Sizes[..words.Count].All(s => order.Contains(s)) ? [.. order.OfType<string>()] : null;
    }

    /// <summary>Whether a word alone names a size of a piece.</summary>
    /// <param name="word">The word.</param>
    /// <param name="index">The words to look for.</param>
    public static bool IsSize(string word, WordIndex index) => Senses(word, index).Any();

    private static IEnumerable<(int Size, int Rank)> Senses(string word, WordIndex index) => index.Find([word])
        .Select(known => (Size: Array.IndexOf(Sizes, index.Fields[known.FieldAt].Field), known.Rank)).Where(s => s.Size >= 0);
}
