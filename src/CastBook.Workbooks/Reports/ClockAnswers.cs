using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Columns;
using UnitsNet;

namespace CastBook.Workbooks.Reports;

/// <summary>Turns kiln loads and the clock into the answer for machines.</summary>
internal static class ClockAnswers
{
    /// <summary>The clock.</summary>
    /// <param name="clock">The clock.</param>
    public static ClockAnswer Make(NightClock clock) => new(
        At(clock, Duration.Zero),
        CellNumbers.Hours(clock.Takes)!.Value,
        [.. clock.Steps.Select(s => new StepAnswer(
            KindOf(s.Kind), ClockWords.Of(s), Minutes(s.Begins), Minutes(s.Ends), At(clock, s.Begins), At(clock, s.Ends), s.Hands, s.IsOutside, s.IsDone,
            s.Flasks, s.Mix, s.Load, CellNumbers.Celsius(s.Target)))]);

    /// <summary>A kiln load.</summary>
    /// <param name="load">The load.</param>
    public static LoadAnswer Load(KilnLoad load) => new(
        load.Number,
        load.Kiln,
        load.Flasks,
        load.Schedule.Name,
        CellNumbers.Celsius(load.Schedule.LoadAt),
        [.. load.Schedule.Stages.Zip(load.Heat.StageEnds, (s, core) => new StageAnswer(
            CellNumbers.Celsius(s.Target)!.Value, s.RateDegreesPerHour, CellNumbers.Hours(s.Hold)!.Value, CellNumbers.Celsius(core.Slow), CellNumbers.Celsius(core.Fast)))],
        CellNumbers.Hours(load.Takes)!.Value,
        [.. load.Pours.Select(p => new PourAnswer(CellNumbers.Celsius(p.Temperature), p.Flasks))],
        load.Heat.Flask);

    private static double Minutes(Duration after) => CellNumbers.TenthsOfMinutes(after)!.Value;

    // To the minute, as the sheet shows it, with the difference to the world's clock that holds then.
    private static string? At(NightClock clock, Duration after) => clock.Start is { } start
        ? TimeZoneInfo.ConvertTime(DateTimeOffset.UnixEpoch.AddMinutes(Math.Round((start - DateTimeOffset.UnixEpoch).TotalMinutes + after.Minutes, MidpointRounding.AwayFromZero)), clock.Zone)
            .ToString("yyyy-MM-ddTHH:mmzzz", CultureInfo.InvariantCulture)
        : null;

    private static string KindOf(ClockStepKind kind) => kind switch
    {
        ClockStepKind.Weigh => "weigh",
        ClockStepKind.Mix => "mix",
        ClockStepKind.BowlVacuum => "bowl vacuum",
        ClockStepKind.Fill => "fill",
        ClockStepKind.FlaskVacuum => "flask vacuum",
        ClockStepKind.CleanUp => "clean up",
        ClockStepKind.Set => "set",
        ClockStepKind.KilnOn => "kiln on",
        ClockStepKind.BaseOff => "base off",
        ClockStepKind.Steam => "steam",
        ClockStepKind.LoadKiln => "load kiln",
        ClockStepKind.Timer => "timer",
        ClockStepKind.Stage => "stage",
        ClockStepKind.Fall => "fall",
        ClockStepKind.Pour => "pour",
        ClockStepKind.Quench => "quench",
        _ => "cool alone",
    };
}
