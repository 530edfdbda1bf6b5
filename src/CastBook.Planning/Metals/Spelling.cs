namespace CastBook.Planning.Metals;

/// <summary>Measures how far two spellings are apart.</summary>
internal static class Spelling
{
    /// <summary>The number of letters to change, add or drop; a spelling that contains the other counts as near.</summary>
    /// <param name="a">What was written.</param>
    /// <param name="b">What is known.</param>
    public static int Steps(string a, string b)
    {
        if (a.Length > 0 && b.Contains(a, StringComparison.Ordinal))
        {
            return 1;
        }

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

    /// <summary>The known names that differ least from a name, at most three, nearest first.</summary>
    /// <param name="wanted">The name as written, in the form that is compared.</param>
    /// <param name="known">The known names in that form, each with what to call it.</param>
    public static IReadOnlyList<string> Nearest(string wanted, IEnumerable<(string Form, string Called)> known) => Nearest([(wanted, known)]);

    /// <summary>The same, where names may be compared in several forms; the nearest form counts.</summary>
    /// <param name="forms">Each form of the name with the known names in that form.</param>
    public static IReadOnlyList<string> Nearest(IReadOnlyList<(string Wanted, IEnumerable<(string Form, string Called)> Known)> forms) =>
    [
        .. forms.SelectMany(f => f.Known.Select(k => (k.Called, Far: Steps(f.Wanted, k.Form))))
            .OrderBy(k => k.Far).ThenBy(k => k.Called, StringComparer.Ordinal)
            .Select(k => k.Called).Distinct(StringComparer.Ordinal).Take(3),
    ];
}
