namespace CastBook.Planning.Flasks;

/// <summary>The letters scratched into moulds: A, B … Z, AA, AB …</summary>
internal static class FlaskLetters
{
    /// <summary>The letter at a place, from 0.</summary>
    /// <param name="place">The place.</param>
    public static string At(int place)
    {
        var letters = "";
        for (var n = place + 1; n > 0; n = (n - 1) / 26)
        {
            letters = (char)('A' + ((n - 1) % 26)) + letters;
        }

        return letters;
    }

    /// <summary>The place of a letter, for sorting; letters of other kinds come last.</summary>
    /// <param name="letter">The letter.</param>
    public static int Place(string letter) =>
        IsLetter(letter) ? letter.Aggregate(0, (place, c) => (place * 26) + (c - 'A' + 1)) - 1 : int.MaxValue;

    /// <summary>A letter as it is written on moulds.</summary>
    /// <param name="written">As typed.</param>
    public static string Clean(string written) => written.Trim().ToUpperInvariant();

    /// <summary>Whether a cleaned word is a flask letter.</summary>
    /// <param name="cleaned">The word.</param>
    public static bool IsLetter(string cleaned) => cleaned.Length is 1 or 2 or 3 && cleaned.All(char.IsAsciiLetterUpper);

    /// <summary>The letters nobody has taken yet, in order, without end.</summary>
    /// <param name="taken">The letters taken.</param>
    public static IEnumerable<string> Free(IReadOnlySet<string> taken)
    {
        for (var place = 0; ; place++)
        {
            var letter = At(place);
            if (!taken.Contains(letter))
            {
                yield return letter;
            }
        }
    }
}
