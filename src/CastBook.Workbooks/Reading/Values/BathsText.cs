using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Baths of a wash in one cell: <c>1.5 + 1.5</c>, <c>2 × 1.5 min</c>.</summary>
internal static class BathsText
{
    // Nobody takes a part through more baths than this.
    private const int Most = 9;
    private static readonly char[] Signs = ['×', 'x', 'X', '*'];

    /// <summary>The minutes of each bath, two or more; null where the text says no such thing.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">The unit of its column; missing means minutes. A unit in the cell wins, and one behind the last bath is that of all.</param>
    /// <param name="column">What the column settles about the signs in numbers.</param>
    public static IReadOnlyList<double>? Parse(string text, CellUnit? unit, NumberSigns column)
    {
        var baths = text.Split('+', StringSplitOptions.TrimEntries);
        if (baths.Length == 1 && text.IndexOfAny(Signs) is > 0 and var sign
            && NumberText.Read(text.AsSpan(0, sign), NumberSigns.None) is { Outcome: NumberOutcome.Read, Unit: null, Value: >= 2 and <= Most } times && times.Value == Math.Floor(times.Value))
        {
            baths = [.. Enumerable.Repeat(text[(sign + 1)..], (int)times.Value)];
        }

        if (baths.Length is < 2 or > Most)
        {
            return null;
        }

        var numbers = Array.ConvertAll(baths, bath => NumberText.Read(bath, column));
        if (Array.Exists(numbers, n => n.Outcome != NumberOutcome.Read || n.Value < 0 || n.Unit is { Dimension: not Dimension.Time }))
        {
            return null;
        }

        var last = numbers[^1].Unit ?? unit;
        return Array.ConvertAll(numbers, n => (n.Unit ?? last)?.ToBase(n.Value) ?? n.Value);
    }
}
