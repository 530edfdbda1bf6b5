using System.Globalization;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Reads hours as people write them: <c>7</c>, <c>07:00</c>, <c>19.30</c>, <c>19h30</c>, <c>18.16 Uhr</c>, <c>7:30 pm</c>, and days with an hour.</summary>
public static class HourText
{
    /// <summary>Reads a time of day; missing where it is none.</summary>
    /// <param name="text">The text.</param>
    public static TimeOnly? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = text.Trim().ToUpperInvariant().Replace(".M.", "M", StringComparison.Ordinal);
        var half = plain.EndsWith("AM", StringComparison.Ordinal) ? 0 : plain.EndsWith("PM", StringComparison.Ordinal) ? 12 : -1;
        var digits = (half < 0 ? WithoutUhr(plain) : plain[..^2]).TrimEnd().TrimEnd('H').Split(':', '.', 'H');
        if (digits.Length is < 1 or > 3 || !Part(digits[0], 24, out var hour) || !Part(digits.ElementAtOrDefault(1) ?? "0", 60, out var minute)
            || !Part(digits.ElementAtOrDefault(2) ?? "0", 60, out _) || (half >= 0 && hour is 0 or > 12))
        {
            return null;
        }

        return new TimeOnly(half < 0 ? hour : (hour % 12) + half, minute);
    }

    /// <summary>Reads a day with an hour, such as <c>2026-11-25 20:00</c>; missing where it is none.</summary>
    /// <param name="text">The text.</param>
    public static DateTime? ReadWithDay(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = text.Trim().Replace(" am", "am", StringComparison.OrdinalIgnoreCase).Replace(" pm", "pm", StringComparison.OrdinalIgnoreCase).Replace(" uhr", "uhr", StringComparison.OrdinalIgnoreCase);
        var gap = plain.LastIndexOfAny([' ', 'T']);
        return gap > 0 && DayText.Read(plain[..gap], default).Day is { } day && Read(plain[(gap + 1)..]) is { } hour ? day.ToDateTime(hour) : null;
    }

    private static string WithoutUhr(string plain) => plain.EndsWith("UHR", StringComparison.Ordinal) ? plain[..^3] : plain;

    private static bool Part(string digits, int below, out int value) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value < below;
}
