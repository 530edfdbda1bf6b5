using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Says the steps of a night and the hours of its clock; the words are those of <see cref="StepWords"/>.</summary>
public static class ClockWords
{
    /// <summary>What is done in a step, by which it is known again too: its temperatures are in degrees Celsius.</summary>
    /// <param name="step">The step.</param>
    public static string Of(ClockStep step) => Of(step, WrittenTemperature.Celsius);

    /// <summary>What is done in a step, for a reader.</summary>
    /// <param name="step">The step.</param>
    /// <param name="unit">The unit of its temperatures.</param>
    public static string Of(ClockStep step, WrittenTemperature unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(step);
        var flasks = string.Join(' ', step.Flasks);
        var mix = step.Mix is { } number ? StepWords.Mix(number) : StepWords.MixOf(flasks);
        return step.Kind switch
        {
            ClockStepKind.Weigh => StepWords.Weigh(mix),
            ClockStepKind.Mix => StepWords.Powder(mix),
            ClockStepKind.BowlVacuum => StepWords.BowlVacuum(mix),
            ClockStepKind.Fill => StepWords.Fill(flasks),
            ClockStepKind.FlaskVacuum => StepWords.FlaskVacuum(flasks),
            ClockStepKind.CleanUp => StepWords.CleanUp(mix),
            ClockStepKind.Set => StepWords.Set(flasks),
            ClockStepKind.KilnOn => StepWords.KilnOn(step.Load, Degrees(step, unit)),
            ClockStepKind.BaseOff => StepWords.BaseOff(flasks),
            ClockStepKind.Steam => StepWords.Steam(flasks),
            ClockStepKind.LoadKiln => StepWords.LoadKiln(flasks),
            ClockStepKind.Timer => StepWords.Timer(step.Load),
            ClockStepKind.Stage or ClockStepKind.Fall => Stage(step, unit),
            ClockStepKind.Pour => step.Target is null ? StepWords.PourOnceKnown(flasks) : StepWords.Pour(flasks, Degrees(step, unit)),
            ClockStepKind.Quench => StepWords.Quench(flasks),
            ClockStepKind.CoolAlone => StepWords.CoolAlone(flasks),
            _ => throw new ArgumentOutOfRangeException(nameof(step), step.Kind, "Bug in CastBook: no such step."),
        };
    }

    /// <summary>The flasks that a step's words name, by letter; none where they name a mix or a load.</summary>
    /// <param name="words">The words, as <see cref="Of(ClockStep)"/> gives them.</param>
    public static IEnumerable<string> FlasksIn(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var before = Array.Find(StepWords.BeforeFlasks, b => words.StartsWith(b, StringComparison.Ordinal));
        var behind = Array.Find(StepWords.BehindFlasks, b => words.EndsWith(b, StringComparison.Ordinal));
        var named = before is not null ? words[before.Length..].Split(',')[0] : behind is not null ? words[..^behind.Length] : "";
        return named.Split(' ').Where(FlaskLetters.IsLetter);
    }

    /// <summary>A time of day, <c>07:05</c>.</summary>
    /// <param name="hour">The time.</param>
    public static string Hour(TimeOnly hour) => hour.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of the night: of the day where the hour is known, else hours and minutes from the first step on.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="after">The time, from the first step on.</param>
    public static string Time(NightClock clock, Duration after)
    {
        ArgumentNullException.ThrowIfNull(clock);
        if (clock.Shown(after) is { } shown)
        {
            return Hour(TimeOnly.FromDateTime(shown));
        }

        var minutes = (long)Math.Round(after.Minutes, MidpointRounding.AwayFromZero);
        return Inv($"{minutes / 60}:{minutes % 60:00}");
    }

    /// <summary>A day and an hour, <c>Thu 26 Nov, 07:05</c>.</summary>
    /// <param name="shown">What the clocks show.</param>
    public static string DayAndHour(DateTime shown) => shown.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A day and an hour as a shop types them, <c>2026-11-26 07:05</c>.</summary>
    /// <param name="shown">What the clocks show.</param>
    public static string Typed(DateTime shown) => shown.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A day of the week.</summary>
    /// <param name="shown">What the clocks show.</param>
    public static string Weekday(DateTime shown) => shown.DayOfWeek.ToString();

    private static string Stage(ClockStep step, WrittenTemperature unit)
    {
        var (degrees, hold) = (Degrees(step, unit), Say.Hours(step.Hold ?? step.Takes));
        var held = step.Arrives is { } arrives ? StepWords.ThereThenHeld(Say.Hours(arrives), hold) : StepWords.Held(hold);
        var turn = step.Turn is { } one ? StepWords.Turn(one.Number, one.Of) : "";
        return step.Kind == ClockStepKind.Fall ? StepWords.Fall(step.Load, degrees, held, turn) : StepWords.Stage(step.Load, degrees, held, turn);
    }

    private static string Degrees(ClockStep step, WrittenTemperature unit) => step.Target is { } target ? unit.Say(target) : StepWords.ItsTemperature;

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
