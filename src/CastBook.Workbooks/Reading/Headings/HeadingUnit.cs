namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Reads the unit a heading names, with what may stand around it: <c>in g</c>, <c>g/pc</c>, <c>[mm]</c>.</summary>
internal static class HeadingUnit
{
    public static bool TryParse(string text, out CellUnit unit)
    {
        var bare = text.Trim(' ', '(', ')', '[', ']', '.');
        if (CellUnit.TryParse(bare, out unit))
        {
            return true;
        }

        var blank = bare.IndexOf(' ', StringComparison.Ordinal);
        if (blank > 0 && SmallWords.BeforeUnit.Contains(bare[..blank].ToLowerInvariant()))
        {
            return TryParse(bare[(blank + 1)..], out unit);
        }

        return PerPiece(bare) is { } amount && CellUnit.TryParse(amount, out unit);
    }

    /// <summary>What stands before "each" or "/pc"; null where neither does.</summary>
    private static string? PerPiece(string text)
    {
        var at = text.IndexOfAny(['/', ' ']);
        if (at <= 0)
        {
            return null;
        }

        var words = WordKey.Parts(text.AsSpan(at + 1));
        var isEach = (words is [var one] && SmallWords.Counts.Contains(one)) || SmallWords.EachKeys.Contains(string.Concat(words));
        return isEach ? text[..at] : null;
    }
}
