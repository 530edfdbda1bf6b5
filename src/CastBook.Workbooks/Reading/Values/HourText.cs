using System.Globalization;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Reads hours as people write them: <c>7</c>, <c>07:00</c>, <c>19.30</c>, <c>19h30</c>, <c>18.16 Uhr</c>, <c>7:30 pm</c>, and days with an hour.</summary>
public static class HourText
{
    // What belongs to the hour before it.
    private static readonly string[] Joined = ["a.m.", "p.m.", "am", "pm", "uhr"];

    // What stands between a day and its hour, in the six languages of headings.
    private static readonly string[] Between = ["at", "um", "à", "a las", "alle", "alle ore", "ore", "às"];

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

    /// <summary>Reads a day with an hour, such as <c>2026-11-25 20:00</c>; missing where it is none, or may be two.</summary>
    /// <param name="text">The text.</param>
    public static DateTime? ReadWithDay(string text) => ReadWithDay(text, DayOrders.None).Moment;

    /// <summary>The two hours that a text may mean which says not whether day or month comes first; missing where it means one or none.</summary>
    /// <param name="text">The text, such as <c>12/4/26 6 PM</c>.</param>
    public static (DateTime First, DateTime Other)? ReadEither(string text) =>
        ReadWithDay(text, DayOrders.None) is { First: { } first, Other: { } other } ? (first, other) : null;

    /// <summary>Reads a day with an hour, such as <c>12/4/26 6 PM</c> or <c>4. Dez. 2026 um 18 Uhr</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="orders">What is settled about the order of day and month.</param>
    internal static DayWithHour ReadWithDay(string text, DayOrders orders)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = Joined.Aggregate(text.Trim(), (joined, word) => joined.Replace(" " + word, word, StringComparison.OrdinalIgnoreCase));
        var gap = plain.LastIndexOfAny([' ', 'T']);
        if (gap <= 0 || Read(plain[(gap + 1)..]) is not { } hour)
        {
            return default;
        }

        var day = DayText.Read(WithoutAt(plain[..gap].TrimEnd(' ', ',')), orders);
        return new DayWithHour(day.Day?.ToDateTime(hour), day.First?.ToDateTime(hour), day.Other?.ToDateTime(hour), day.Settles);
    }

    private static string WithoutAt(string day) =>
        Between.FirstOrDefault(w => day.EndsWith(" " + w, StringComparison.OrdinalIgnoreCase)) is { } at ? day[..^at.Length].TrimEnd(' ', ',') : day;

    private static string WithoutUhr(string plain) => plain.EndsWith("UHR", StringComparison.Ordinal) ? plain[..^3] : plain;

    private static bool Part(string digits, int below, out int value) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value < below;
}

/// <summary>A day with an hour as text.</summary>
/// <param name="Moment">The moment; missing where the text means none, or may mean two.</param>
/// <param name="First">The first of two that it may mean.</param>
/// <param name="Other">The second.</param>
/// <param name="Settles">What its own form settles about the order of day and month.</param>
internal readonly record struct DayWithHour(DateTime? Moment, DateTime? First, DateTime? Other, DayOrders Settles);
