using System.Globalization;

namespace CastBook.Workbooks.Writing;

/// <summary>The <c>spans</c> of a row: between which columns its cells stand, for readers that make room before they read.</summary>
internal static class RowSpans
{
    private const string Name = " spans=\"";

    /// <summary>The row's opening tag with spans that hold the edited cells, and no longer reach over cells taken out at their end.</summary>
    /// <param name="tag">The tag.</param>
    /// <param name="cells">The row's edits, in column order.</param>
    public static string Fitted(string tag, List<CellEdit> cells)
    {
        var start = tag.IndexOf(Name, StringComparison.Ordinal) + Name.Length;
        var end = start < Name.Length ? -1 : tag.IndexOf('"', start);
        var colon = end < 0 ? -1 : tag.IndexOf(':', start, end - start);
        var lastColon = colon < 0 ? -1 : tag.LastIndexOf(':', end, end - start);
        if (colon < 0
            || !int.TryParse(tag.AsSpan(start, colon - start), NumberStyles.None, CultureInfo.InvariantCulture, out var first)
            || !int.TryParse(tag.AsSpan(lastColon + 1, end - lastColon - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var last))
        {
            return tag;
        }

        var (newFirst, newLast) = (first, last);
        for (var at = cells.Count - 1; at >= 0 && cells[at].IsRemoval && cells[at].Column == newLast && newLast > first; at--)
        {
            newLast--;
        }

        foreach (var edit in cells)
        {
            newFirst = edit.IsRemoval ? newFirst : Math.Min(newFirst, edit.Column);
            newLast = edit.IsRemoval ? newLast : Math.Max(newLast, edit.Column);
        }

        return newFirst == first && newLast == last
            ? tag
            : string.Create(CultureInfo.InvariantCulture, $"{tag.AsSpan(0, start)}{newFirst}{tag.AsSpan(colon, lastColon + 1 - colon)}{newLast}{tag.AsSpan(end)}");
    }
}
