using System.Globalization;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Reads how many fit a tree: <c>12</c>, or <c>75 × 100: 12; 90 × 125: 20</c>.</summary>
internal static class PerTreeText
{
    /// <summary>The counts by flask size, an empty name for any size; null where the text says no such thing.</summary>
    public static IReadOnlyDictionary<string, int>? Parse(string text)
    {
        var counts = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var part in text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var colon = part.LastIndexOf(':');
            var size = colon < 0 ? "" : part[..colon].Trim();
            if (!int.TryParse(part[(colon + 1)..].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count)
                || count is < 1 or > 10_000 || !counts.TryAdd(size, count))
            {
                return null;
            }
        }

        return counts.Count == 0 ? null : counts;
    }
}
