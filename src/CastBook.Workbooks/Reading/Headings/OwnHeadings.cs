using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>The headings that CastBook itself writes, by which its columns are known where a program lost the hidden names.</summary>
internal static class OwnHeadings
{
    private static readonly (string Name, string Heading)[] All =
    [
        .. WrittenMass.OfMetal.Select(unit => (OwnName.MetalEach, $"{ColumnWords.MetalEach} ({unit.Name})")),
        .. WrittenMass.OfMetal.Select(unit => (OwnName.Metal, $"{ColumnWords.Metal} ({unit.Name})")),
        (OwnName.Flask, ColumnWords.Flask),
        (OwnName.Mix, ColumnWords.Mix),
        (OwnName.Burnout, ColumnWords.Burnout),
        (OwnName.Checks, ColumnWords.Checks),
    ];

    /// <summary>Our columns by heading alone: two or more side by side, in our order, right of the shop's last column.</summary>
    /// <remarks>One alone proves nothing: a shop may well have a column called Flask.</remarks>
    /// <param name="headings">The heading row.</param>
    /// <param name="after">The last column of the shop's that was recognised.</param>
    public static Dictionary<string, int> Find(IReadOnlyList<(int Column, Heading Heading)> headings, int after)
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        var last = -1;
        var lastColumn = 0;
        foreach (var (column, heading) in headings.Where(h => h.Column > after))
        {
            var at = Array.FindIndex(All, o => string.Equals(o.Heading, heading.Text, StringComparison.Ordinal));
            if (at > last && (lastColumn == 0 || column == lastColumn + 1))
            {
                found[All[at].Name] = column;
                (last, lastColumn) = (at, column);
            }
            else if (lastColumn > 0)
            {
                break;
            }
        }

        return found.Count >= 2 ? found : [];
    }
}
