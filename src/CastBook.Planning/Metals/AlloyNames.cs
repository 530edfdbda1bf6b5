namespace CastBook.Planning.Metals;

/// <summary>Compares alloy names as people write them.</summary>
internal static class AlloyNames
{
    /// <summary>The name with letters and digits only, in one case: <c>Ag 925</c> and <c>ag-925</c> are the same.</summary>
    /// <param name="name">A name as written.</param>
    public static string Normal(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToUpperInvariant();

    /// <summary>The names that differ least from a name, at most three, nearest first.</summary>
    /// <param name="name">The name as written.</param>
    /// <param name="known">The known names.</param>
    public static IReadOnlyList<string> Nearest(string name, IEnumerable<string> known)
    {
        var wanted = Normal(name);
        return
        [
            .. known.Distinct(StringComparer.Ordinal)
                .Select(k => (Name: k, Far: Steps(wanted, Normal(k))))
                .OrderBy(k => k.Far).ThenBy(k => k.Name, StringComparer.Ordinal)
                .Take(3).Select(k => k.Name),
        ];
    }

    // The number of letters to change, add or drop; a name that contains the other counts as near.
    private static int Steps(string a, string b)
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
}
