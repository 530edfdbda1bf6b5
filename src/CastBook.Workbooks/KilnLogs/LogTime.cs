using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.KilnLogs;

/// <summary>Reads the times of a log, each after the one before it: days with hours, hours alone, or minutes from its begin.</summary>
/// <param name="zone">The zone in which the shop's clocks run.</param>
/// <param name="order">The order of day and month, where both could come first.</param>
/// <param name="minutesEach">How many minutes a plain number is; missing where nothing says.</param>
internal sealed class LogTime(TimeZoneInfo zone, DayOrders order, double? minutesEach)
{
    private const double DayMinutes = 24 * 60;

    // Seconds since 1970 are more than this since long, and thousandths of them more than this; nothing is more than the last for ages.
    private const double EarliestSecond = 1e9;
    private const double EarliestThousandth = 1e11;
    private const double LatestThousandth = 1e14;

    private double? last;

    /// <summary>What the clocks showed at the first reading, where the log says days.</summary>
    public DateTime? Begins { get; private set; }

    /// <summary>Whether a text is a day.</summary>
    /// <param name="text">The text.</param>
    public static bool IsDay(string text) => DayText.Read(text, DayOrders.DayFirst).Day is not null;

    /// <summary>Reads the next time, in minutes from anywhere; missing where it is none.</summary>
    /// <param name="text">The text.</param>
    public double? Next(string text)
    {
        var typed = text.Trim();
        var minutes = OfWorld(typed) ?? OfDay(typed) ?? OfHours(typed) ?? OfNumber(typed);
        last = minutes ?? last;
        return minutes;
    }

    private double? OfWorld(string typed) =>
        typed.Length > 16 && typed[10] == 'T' && (typed.EndsWith('Z') || typed.LastIndexOfAny(['+', '-']) > 15)
        && DateTimeOffset.TryParse(typed, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment)
            ? Of(moment)
            : null;

    private double? OfDay(string typed)
    {
        var colon = typed.IndexOf(':', StringComparison.Ordinal);
        var gap = colon < 0 ? -1 : typed.LastIndexOfAny([' ', 'T'], colon);
        if (gap <= 0 || DayText.Read(typed[..gap].TrimEnd(','), order).Day is not { } day || Clock(typed[(gap + 1)..]) is not { } minutes || minutes >= DayMinutes)
        {
            return null;
        }

        var shown = day.ToDateTime(TimeOnly.MinValue).AddMinutes(minutes);
        var first = ClockQuestion.Nearest(shown, zone);

        // The second time that clocks show the hours of a change.
        var moment = last > (first - DateTimeOffset.UnixEpoch).TotalMinutes && zone.IsAmbiguousTime(shown)
            ? new DateTimeOffset(shown, zone.GetAmbiguousTimeOffsets(shown).Min())
            : first;
        return Of(moment);
    }

    private double? OfHours(string typed)
    {
        if (!typed.Contains(':', StringComparison.Ordinal) || Clock(typed) is not { } minutes)
        {
            return null;
        }

        // Past midnight a clock begins anew; a counter does not.
        while (last is { } before && minutes < before - (DayMinutes / 2))
        {
            minutes += DayMinutes;
        }

        return minutes;
    }

    private double? OfNumber(string typed) =>
        NumberText.Read(typed, NumberSigns.DecimalPoint) is not { Outcome: NumberOutcome.Read, Unit: null } number ? null
        : number.Value >= LatestThousandth ? null
        : number.Value > EarliestThousandth ? Of(DateTimeOffset.FromUnixTimeMilliseconds((long)number.Value))
        : number.Value > EarliestSecond ? Of(DateTimeOffset.FromUnixTimeSeconds((long)number.Value))
        : number.Value * minutesEach;

    private double Of(DateTimeOffset moment)
    {
        Begins ??= TimeZoneInfo.ConvertTime(moment, zone).DateTime;
        return (moment - DateTimeOffset.UnixEpoch).TotalMinutes;
    }

    // 22:24, 22:24:05.5, 10:24:05 PM and counters such as 31:10:00.
    private static double? Clock(string typed)
    {
        var plain = typed.Trim().ToUpperInvariant();
        var half = plain.EndsWith("AM", StringComparison.Ordinal) ? 0 : plain.EndsWith("PM", StringComparison.Ordinal) ? 12 : -1;
        var parts = (half < 0 ? plain : plain[..^2]).Trim().Split(':');
        if (parts.Length is < 2 or > 3 || !Part(parts[0], out var hours) || !Part(parts[1], out var minutes) || minutes >= 60 || (half >= 0 && hours is < 1 or > 12))
        {
            return null;
        }

        var seconds = 0.0;
        if (parts.Length == 3 && !Part(parts[2].Replace(',', '.'), out seconds))
        {
            return null;
        }

        return ((half < 0 ? hours : (hours % 12) + half) * 60) + minutes + (seconds / 60);
    }

    private static bool Part(string digits, out double value) =>
        double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
}
