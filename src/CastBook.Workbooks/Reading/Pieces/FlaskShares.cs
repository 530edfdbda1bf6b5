using System.Globalization;
using CastBook.Planning;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Reads back what stands in our Flask column: <c>A</c>, or <c>A ×6, B ×2</c>.</summary>
internal static class FlaskShares
{
    /// <summary>The shares; none where the text is no such list.</summary>
    /// <param name="text">The cell's text.</param>
    /// <param name="quantity">The row's quantity, which a letter alone means.</param>
    public static IReadOnlyList<FlaskShare> Parse(string? text, int? quantity)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return [];
        }

        var shares = new List<FlaskShare>();
        foreach (var part in text.Split(','))
        {
            var pieces = part.Trim().Split((char[]?)['×', ' ', 'x'], StringSplitOptions.RemoveEmptyEntries);
            if (pieces.Length is < 1 or > 2 || !pieces[0].All(char.IsAsciiLetterUpper) || pieces[0].Length > 3)
            {
                return [];
            }

            var count = quantity ?? 1;
            if (pieces.Length == 2 && !int.TryParse(pieces[1], NumberStyles.None, CultureInfo.InvariantCulture, out count))
            {
                return [];
            }

            shares.Add(new FlaskShare(pieces[0], count));
        }

        return shares.Any(s => s.Quantity < 1) ? [] : shares;
    }
}
