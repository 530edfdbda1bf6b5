using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using UnitsNet;

namespace CastBook.Workbooks.Reports;

/// <summary>A kiln's log beside the programme of its load, for a terminal.</summary>
public static class KilnLogText
{
    /// <summary>The lines.</summary>
    /// <param name="burnout">The burnout.</param>
    /// <param name="log">The log.</param>
    /// <param name="unit">The scale in which the shop wants its temperatures.</param>
    public static IEnumerable<string> Lines(LoggedBurnout burnout, KilnLog log, WrittenTemperature unit)
    {
        ArgumentNullException.ThrowIfNull(burnout);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(unit);
        var load = burnout.Load;
        yield return Inv($"load {load.Number}: flasks {string.Join(' ', load.Flasks)}, \"{load.Schedule.Name}\"");
        yield return $"core of flask {load.Heat.Flask}, by estimate, without drying, when the kiln left the stage";
        foreach (var (stage, planned) in burnout.Stages.Zip(load.Heat.StageEnds))
        {
            var core = stage.Core is { } seen ? $"; core {Span(seen, unit)}, planned {Span(planned, unit)}" : "";
            yield return Inv($"  stage {stage.Number}  {unit.Say(stage.Target),7}  {Outcome(stage, unit)}{core}");
        }

        foreach (var finding in burnout.Findings)
        {
            yield return $"{Word(finding.Severity),-6}{string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(s => s.Length > 0))}";
        }

        if (burnout.Findings.All(f => f.Severity == Severity.Note))
        {
            yield return burnout.Stages.Any(s => s.Outcome == StageOutcome.NotInLog) ? "nothing is wrong as far as the log goes" : "the burnout ran as its programme says";
        }
    }

    private static string Outcome(LoggedStage stage, WrittenTemperature unit) => stage.Outcome switch
    {
        StageOutcome.Held => $"held {CellNumbers.HoursText(stage.Held)} of {CellNumbers.HoursText(stage.Asked)}",
        StageOutcome.TooShort => $"held {CellNumbers.HoursText(stage.Held)} of {CellNumbers.HoursText(stage.Asked)}, short by {CellNumbers.HoursText(stage.Missing)}",
        StageOutcome.NotReached => $"not reached: came to {unit.Say(stage.Nearest)}",
        _ => stage.Held > Duration.Zero ? $"held {CellNumbers.HoursText(stage.Held)} of {CellNumbers.HoursText(stage.Asked)} so far, the log ends" : "not in the log",
    };

    private static string Span(CoreSpan core, WrittenTemperature unit)
    {
        var (one, other) = (core.Slow.DegreesCelsius, core.Fast.DegreesCelsius);
        return $"{unit.Number(Math.Min(one, other))} to {unit.Say(Math.Max(one, other))}";
    }

    private static string Word(Severity severity) => severity switch { Severity.Stop => "stop", Severity.Check => "check", _ => "note" };

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
