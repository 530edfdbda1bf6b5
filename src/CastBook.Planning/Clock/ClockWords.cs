using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>The steps of a night in the words of the bench.</summary>
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
        var mix = step.Mix is { } number ? Inv($"mix {number}") : $"flask {flasks}";
        return step.Kind switch
        {
            ClockStepKind.Weigh => $"Weigh out {mix}",
            ClockStepKind.Mix => $"Powder into the water, {mix}",
            ClockStepKind.BowlVacuum => $"Bowl under vacuum, {mix}",
            ClockStepKind.Fill => $"Fill {flasks}",
            ClockStepKind.FlaskVacuum => $"{flasks} under vacuum",
            ClockStepKind.CleanUp => $"Clean bowl and tools after {mix}",
            ClockStepKind.Set => $"{flasks} set and are not moved",
            ClockStepKind.KilnOn => Inv($"Kiln of load {step.Load} on, to {Degrees(step, unit)}"),
            ClockStepKind.BaseOff => $"Base off, rim cleaned, letter scratched in: {flasks}",
            ClockStepKind.Steam => $"Steam {flasks}",
            ClockStepKind.LoadKiln => $"Load the kiln, sprue down: {flasks}",
            ClockStepKind.Timer => Inv($"Kiln of load {step.Load} waits for its timer"),
            ClockStepKind.Stage or ClockStepKind.Fall => Stage(step, unit),
            ClockStepKind.Pour => step.Target is null ? $"Pour {flasks}, only once the temperature of its flask is known" : $"Pour {flasks}, flask at {Degrees(step, unit)}",
            ClockStepKind.Quench => $"Quench {flasks}, and only when the button shows no red in shade",
            ClockStepKind.CoolAlone => $"{flasks} cools by itself",
            _ => throw new ArgumentOutOfRangeException(nameof(step), step.Kind, "No such step."),
        };
    }

    /// <summary>The flasks that a step's words name, by letter; none where they name a mix or a load.</summary>
    /// <param name="words">The words, as <see cref="Of(ClockStep)"/> gives them.</param>
    public static IEnumerable<string> FlasksIn(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var before = Array.Find(BeforeFlasks, b => words.StartsWith(b, StringComparison.Ordinal));
        var behind = Array.Find(BehindFlasks, b => words.EndsWith(b, StringComparison.Ordinal));
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

    private static readonly string[] BeforeFlasks =
        ["Fill ", "Base off, rim cleaned, letter scratched in: ", "Steam ", "Load the kiln, sprue down: ", "Pour ", "Quench "];

    private static readonly string[] BehindFlasks = [" under vacuum", " set and are not moved", " cools by itself"];

    private static string Stage(ClockStep step, WrittenTemperature unit)
    {
        var way = step.Kind == ClockStepKind.Fall ? "falls to" : "to";
        var hold = step.Arrives is { } arrives ? $"there after {Say.Hours(arrives)}, then held" : "held";
        var turn = step.Turn is { } one ? Inv($" (stage {one.Number} of {one.Of})") : "";
        return Inv($"Kiln of load {step.Load} {way} {Degrees(step, unit)}, {hold} {Say.Hours(step.Hold ?? step.Takes)}{turn}");
    }

    private static string Degrees(ClockStep step, WrittenTemperature unit) => step.Target is { } target ? unit.Say(target) : "its temperature";

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
