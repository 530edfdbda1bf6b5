using CastBook.Cli.Words;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Reading.Values;

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
            : HourText.ReadEither(text) is var (first, other) ? FillWords.HourOfTwoDays(text, first, other)
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
}
