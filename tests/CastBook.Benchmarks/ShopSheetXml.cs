namespace CastBook.Benchmarks;

/// <summary>A small sheet of the shop: headings, then lines.</summary>
internal static class ShopSheetXml
{
    /// <summary>The sheet.</summary>
    /// <param name="strings">The book's strings.</param>
    /// <param name="rows">The headings, then a value for each of them a line: words, a number or null.</param>
    public static string Make(StringTable strings, IReadOnlyList<object?[]> rows)
    {
        var sheet = new SheetText(strings, rows[0].Length);
        for (var i = 0; i < rows.Count; i++)
        {
            sheet.Row();
            foreach (var value in rows[i])
            {
                _ = value switch
                {
                    null => sheet.Nothing(),
                    string words => sheet.Words(words, i == 0 ? 1 : 0),
                    int whole => sheet.Number(whole),
                    double number => sheet.Number(number),
                    _ => throw new ArgumentException($"A cell cannot hold a {value.GetType().Name}.", nameof(rows)),
                };
            }
        }

        return sheet.ToXml();
    }
}
