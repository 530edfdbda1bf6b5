using System.Buffers;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Fractions as a ruler has them: <c>7/8</c>, <c>1 1/2</c>, <c>2-1/2</c>, <c>1½</c>.</summary>
internal static class Fraction
{
    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private static readonly SearchValues<char> Bars = SearchValues.Create(Vulgar + "/⁄");

    private static readonly double[] VulgarValues = [1 / 2.0, 1 / 3.0, 2 / 3.0, 1 / 4.0, 3 / 4.0, 1 / 5.0, 2 / 5.0, 3 / 5.0, 4 / 5.0, 1 / 6.0, 5 / 6.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0];

    /// <summary>Whether a text may hold a fraction.</summary>
    public static bool IsIn(ReadOnlySpan<char> text) => text.ContainsAny(Bars);

    /// <summary>Reads the fraction that a text begins with; false where it begins with none. A day such as 1/2/2026 is none.</summary>
    /// <param name="text">The text.</param>
    /// <param name="value">The number.</param>
    /// <param name="end">Where it ends.</param>
    public static bool TryRead(ReadOnlySpan<char> text, out double value, out int end)
    {
        var whole = Digits(text, 0, out var at);
        value = whole ?? 0;
        if (whole is not null && TryPart(text, at, whole.Value, out var proper, out end))
        {
            value = proper;
            return true;
        }

        if (whole is not null && at < text.Length && text[at] is ' ' or '-')
        {
            at++;
        }

        if (TryVulgar(text, at, out var part, out end) || (Digits(text, at, out var bar) is { } numerator && bar > at && TryPart(text, bar, numerator, out part, out end)))
        {
            value += part;
            return true;
        }

        return false;
    }

    private static bool TryVulgar(ReadOnlySpan<char> text, int at, out double part, out int end)
    {
        var known = at < text.Length ? Vulgar.IndexOf(text[at], StringComparison.Ordinal) : -1;
        (part, end) = known < 0 ? (0, at) : (VulgarValues[known], at + 1);
        return known >= 0;
    }

    // The bar and what stands under it. Only parts less than one, and only divisions people measure in: 12/5 may be two numbers.
    private static bool TryPart(ReadOnlySpan<char> text, int bar, int numerator, out double part, out int end)
    {
        (part, end) = (0, bar);
        if (bar >= text.Length || text[bar] is not ('/' or '⁄') || Digits(text, bar + 1, out end) is not { } denominator)
        {
            return false;
        }

        part = (double)numerator / denominator;
        return numerator > 0 && numerator < denominator && denominator is 2 or 3 or 4 or 5 or 8 or 10 or 16 or 32 or 64
            && (end == text.Length || text[end] is not ('/' or '⁄' or '.' or ','));
    }

    private static int? Digits(ReadOnlySpan<char> text, int from, out int end)
    {
        var number = 0;
        for (end = from; end < text.Length && end - from < 5 && char.IsAsciiDigit(text[end]); end++)
        {
            number = (number * 10) + text[end] - '0';
        }

        return end > from ? number : null;
    }
}
