using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>What a kiln did, as its controller or a logger wrote it down.</summary>
/// <param name="Readings">The readings, in their order; at least two.</param>
/// <param name="Begins">What the shop's clocks showed at the first one; missing where the log counts from its begin.</param>
public sealed record KilnLog(IReadOnlyList<KilnReading> Readings, DateTime? Begins)
{
    /// <summary>
    /// The heading of its temperatures where neither it nor they name a unit, so that they were taken for degrees Celsius; empty where the
    /// log has no headings; missing where a unit is named.
    /// </summary>
    public string? WithoutUnit { get; init; }

    /// <summary>From the first reading to the last.</summary>
    public Duration Takes => Readings[^1].After;

    /// <summary>A moment of the log in words: a day and an hour, or the time from its first reading on.</summary>
    /// <param name="after">The time from the first reading on.</param>
    public string When(Duration after) => Begins is { } begins
        ? ClockWords.DayAndHour(begins.AddMinutes(Math.Round(after.Minutes)))
        : ClockFindingWords.AfterFirstReading(Findings.Say.Hours(after));
}

/// <summary>A kiln temperature at a time.</summary>
/// <param name="After">The time, from the first reading on.</param>
/// <param name="Kiln">The temperature.</param>
public readonly record struct KilnReading(Duration After, Temperature Kiln);
