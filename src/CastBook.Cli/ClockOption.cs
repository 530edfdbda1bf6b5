using CastBook.Cli.Words;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;

namespace CastBook.Cli;

/// <summary>Reads the hour that <c>--start</c> or <c>--pour-at</c> asks for.</summary>
internal static class ClockOption
{
    /// <summary>What is wrong with them; null where nothing is.</summary>
    /// <param name="start">The text after <c>--start</c>.</param>
    /// <param name="pourAt">The text after <c>--pour-at</c>.</param>
    /// <param name="zone">The zone in which the shop's clocks run.</param>
    public static string? Mistake(string? start, string? pourAt, TimeZoneInfo zone)
    {
        if (start is not null && pourAt is not null)
        {
            return FillWords.StartAndPourAt;
        }

        return (start ?? pourAt) is not { } text ? null
            : HourText.ReadEither(text) is not null ? null
            : HourText.ReadWithDay(text) is not { } shown ? FillWords.NoHour(text)
            : ClockQuestion.Shown(shown, zone) is null ? FillWords.SkippedHour(text)
            : null;
    }

    /// <summary>The question; null where none is asked.</summary>
    /// <param name="start">The text after <c>--start</c>.</param>
    /// <param name="pourAt">The text after <c>--pour-at</c>.</param>
    /// <param name="zone">The zone in which the shop's clocks run.</param>
    public static ClockQuestion? Read(string? start, string? pourAt, TimeZoneInfo zone) =>
        (start ?? pourAt) is { } text && HourText.ReadWithDay(text) is { } shown && ClockQuestion.Shown(shown, zone) is { } at
            ? new ClockQuestion(at, start is null, zone)
            : null;

    /// <summary>The hour whose day may be two, for the book to settle; null where it is plain, or none is asked.</summary>
    /// <param name="start">The text after <c>--start</c>.</param>
    /// <param name="pourAt">The text after <c>--pour-at</c>.</param>
    public static AskedHour? Either(string? start, string? pourAt) =>
        (start ?? pourAt) is { } text && HourText.ReadEither(text) is var (dayFirst, monthFirst) ? new AskedHour(text, dayFirst, monthFirst, start is null) : null;

    /// <summary>What is wrong with an hour that the book could not settle.</summary>
    /// <param name="hour">The hour.</param>
    /// <param name="isSkipped">Whether the clocks skip it that night.</param>
    public static string Mistake(AskedHour hour, bool isSkipped) =>
        isSkipped ? FillWords.SkippedHour(hour.Typed) : FillWords.HourOfTwoDays(hour.Typed, hour.DayFirst, hour.MonthFirst);
}
