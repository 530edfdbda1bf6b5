using System.Security.Cryptography;
using System.Text;
using CastBook.Cli.Words;
using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using AlarmAction = Ical.Net.AlarmAction;
using Calendar = Ical.Net.Calendar;

namespace CastBook.Cli;

/// <summary>The steps of a night that need a person, as a calendar for a telephone.</summary>
/// <remarks>
/// A mix is one event, any other step is one of its own. Hours are written as such of the world's clock, so that they
/// are right in any zone and across a clock change. An event keeps its name from fill to fill: read in again it moves.
/// </remarks>
internal static class NightCalendar
{
    /// <summary>What calendars of CastBook say of their maker.</summary>
    public const string Maker = "-//CastBook//Night//EN";

    // Time to get up, or to come back to the bench. Whoever stands there needs no time.
    private const int Notice = 10;
    private static readonly TimeSpan AtTheBench = TimeSpan.FromMinutes(20);

    /// <summary>Makes the calendar.</summary>
    /// <param name="clock">The night; its hours must be known.</param>
    /// <param name="name">The book's name.</param>
    /// <param name="night">The night's name; may be empty.</param>
    /// <param name="made">When it is made.</param>
    /// <param name="unit">The unit of its temperatures; degrees Celsius where none is given.</param>
    /// <returns>Its text, and how many events are in it.</returns>
    public static (string Text, int Events) Make(NightClock clock, string name, string night, DateTimeOffset made, WrittenTemperature? unit = null)
    {
        var degrees = unit ?? WrittenTemperature.Celsius;
        var start = clock.Start!.Value;
        var calendar = new Calendar { ProductId = Maker };
        calendar.AddProperty("X-WR-CALNAME", CalendarWords.Title(name));
        var busyUntil = DateTimeOffset.MinValue;
        foreach (var steps in Works(clock))
        {
            var (begins, ends) = (At(start, steps[0].Begins.Minutes), At(start, steps[^1].Ends.Minutes));
            var words = ClockWords.Of(steps[0]);
            var what = new CalendarEvent
            {
                Uid = $"{Key($"{name}\n{night}\n{words}")}@castbook",
                DtStamp = Moment(made),
                Start = Moment(begins),
                End = Moment(ends > begins ? ends : begins.AddMinutes(1)),
                Summary = Title(steps, degrees),
                Description = string.Join('\n', steps.Select(s => $"{ClockWords.Time(clock, s.Begins)} {ClockWords.Of(s, degrees)}").Append(CalendarWords.Of(name))),
            };
            what.Alarms.Add(new Alarm
            {
                Action = AlarmAction.Display,
                Description = what.Summary,
                Trigger = new Trigger(Duration.FromMinutes(begins - busyUntil > AtTheBench ? -Notice : 0)),
            });
            calendar.Events.Add(what);
            busyUntil = ends > busyUntil ? ends : busyUntil;
        }

        return (new CalendarSerializer().SerializeToString(calendar)!, calendar.Events.Count);
    }

    // Between two quenches a mix is not taken up again, so that the steps of one follow each other.
    private static IEnumerable<List<ClockStep>> Works(NightClock clock)
    {
        var work = new List<ClockStep>();
        foreach (var step in clock.Steps.Where(s => s is { Attended: true, IsDone: false }))
        {
            if (work.Count > 0 && (step.Mix is null || step.Mix != work[^1].Mix))
            {
                yield return work;
                work = [];
            }

            work.Add(step);
        }

        if (work.Count > 0)
        {
            yield return work;
        }
    }

    private static string Title(List<ClockStep> steps, WrittenTemperature degrees) =>
        steps.Exists(s => s.TwoPeople) ? CalendarWords.ForTwo(Named(steps, degrees)) : Named(steps, degrees);

    private static string Named(List<ClockStep> steps, WrittenTemperature degrees) => steps is [{ Mix: { } mix } first, _, ..]
        ? CalendarWords.Mix(mix, first.Flasks)
        : ClockWords.Of(steps[0], degrees);

    private static DateTimeOffset At(DateTimeOffset start, double minutes) =>
        DateTimeOffset.UnixEpoch.AddMinutes(Math.Round((start - DateTimeOffset.UnixEpoch).TotalMinutes + minutes, MidpointRounding.AwayFromZero));

    private static CalDateTime Moment(DateTimeOffset moment) => new(moment.UtcDateTime);

    private static string Key(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 12));
}
