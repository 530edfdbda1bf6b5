namespace CastBook.Casting.Names;

/// <summary>Measures how far two spellings are apart, and finds the names that a misspelt one most likely means.</summary>
/// <remarks>
/// <para><b>Source.</b> The steps are the edit distance of V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707, filled in row by row; how many make two spellings close is memory of practice.</para>
/// </remarks>
public static class Spelling
{
    // Shorter words are near to too many others: Note is no night.
    private const int ShortestGuessed = 5;

    // The shortest word that says something, and the shortest beginning of one that is cut short.
    private const int ShortestBeginning = 3;
    private const int MostNames = 3;

    /// <summary>The number of letters to change, add or drop.</summary>
    /// <param name="a">One spelling.</param>
    /// <param name="b">The other.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static int Steps(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(changed, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }

    /// <summary>Whether two spellings differ in a letter of three at most; short ones are never close.</summary>
    /// <param name="a">One spelling.</param>
    /// <param name="b">The other.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static bool AreClose(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return a.Length >= ShortestGuessed && b.Length >= ShortestGuessed && Steps(a, b) * 3 <= Math.Max(a.Length, b.Length);
    }

    /// <summary>
    /// The known names that are like a name, at most three, the likest first: they share a word of letters with it, or are
    /// close to it as a whole. A number alone makes no name like another. None where nothing is like it.
    /// </summary>
    /// <param name="forms">The words of the name, in each form in which names may be compared, with the words of the known names in that form and what to call them.</param>
    /// <exception cref="ArgumentNullException">The forms are missing.</exception>
    public static IReadOnlyList<string> Nearest(
        IEnumerable<(IReadOnlyList<string> Wanted, IEnumerable<(IReadOnlyList<string> Words, string Called)> Known)> forms)
    {
        ArgumentNullException.ThrowIfNull(forms);
        return
        [
            .. forms.SelectMany(f => f.Known.Select(k => (k.Called, Likeness: Likeness(f.Wanted, k.Words)))).Where(k => k.Likeness > 0)
                .OrderByDescending(k => k.Likeness).ThenBy(k => k.Called, StringComparer.Ordinal)
                .Select(k => k.Called).Distinct(StringComparer.Ordinal).Take(MostNames),
        ];
    }

    // From nothing to one: the share of the words of both that the other has too, or of the letters where the whole is close.
    private static double Likeness(IReadOnlyList<string> wanted, IReadOnlyList<string> known)
    {
        var shared = wanted.Where(w => known.Any(k => IsLike(w, k))).ToList();
        var byWords = shared.Any(w => w.Length >= ShortestBeginning && char.IsLetter(w[0])) ? 2.0 * shared.Count / (wanted.Count + known.Count) : 0;
        var (one, other) = (string.Concat(wanted), string.Concat(known));
        var byLetters = AreClose(one, other) ? 1 - ((double)Steps(one, other) / Math.Max(one.Length, other.Length)) : 0;
        return Math.Max(byWords, byLetters);
    }

    private static bool IsLike(string wanted, string known) =>
        wanted == known || (!char.IsDigit(wanted[0]) && (AreClose(wanted, known) || BeginsWith(known, wanted) || BeginsWith(wanted, known)));

    private static bool BeginsWith(string word, string beginning) =>
        beginning.Length >= ShortestBeginning && word.StartsWith(beginning, StringComparison.Ordinal);
}
