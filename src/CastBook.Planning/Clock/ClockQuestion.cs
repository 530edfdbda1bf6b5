namespace CastBook.Planning.Clock;

/// <summary>The hour from which a night is counted.</summary>
/// <param name="At">The hour.</param>
/// <param name="IsPour">Whether the first flask of the first load is to be poured then; else the first powder is weighed then.</param>
/// <param name="Zone">The zone in which the shop's clocks run.</param>
public sealed record ClockQuestion(DateTimeOffset At, bool IsPour, TimeZoneInfo Zone)
{
    /// <summary>The hour that clocks of a zone show.</summary>
    /// <param name="shown">What the clocks show.</param>
    /// <param name="zone">The zone.</param>
    /// <returns>The hour, the first of the two where clocks show it twice; missing where they skip it.</returns>
    public static DateTimeOffset? Shown(DateTime shown, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var local = DateTime.SpecifyKind(shown, DateTimeKind.Unspecified);
        return zone.IsInvalidTime(local) ? null
            : zone.IsAmbiguousTime(local) ? new DateTimeOffset(local, zone.GetAmbiguousTimeOffsets(local).Max())
            : new DateTimeOffset(local, zone.GetUtcOffset(local));
    }

    /// <summary>The hour that clocks of a zone show; one that they skip is the one after the change.</summary>
    /// <param name="shown">What the clocks show.</param>
    /// <param name="zone">The zone.</param>
    public static DateTimeOffset Nearest(DateTime shown, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return Shown(shown, zone) ?? new DateTimeOffset(shown, zone.GetUtcOffset(shown.AddHours(-3)));
    }
}
