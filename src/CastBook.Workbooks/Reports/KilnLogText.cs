using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
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
        yield return KilnLogLines.Load(load.Number, load.Flasks, load.Schedule.Name);
        yield return KilnLogLines.CoreOf(load.Heat.Flask);
        foreach (var (stage, planned) in burnout.Stages.Zip(load.Heat.StageEnds))
        {
            var core = stage.Core is { } seen ? KilnLogLines.Core(Span(seen, unit), Span(planned, unit)) : "";
            yield return KilnLogLines.Stage(stage.Number, unit.Say(stage.Target), Outcome(stage, unit), core);
        }

        foreach (var finding in burnout.Findings)
        {
            yield return $"{MarkRules.WordOf(finding.Severity),-6}{string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(s => s.Length > 0))}";
        }

        if (burnout.Findings.All(f => f.Severity == Severity.Note))
        {
            yield return burnout.Stages.Any(s => s.Outcome == StageOutcome.NotInLog) ? KilnLogLines.NothingWrongSoFar : KilnLogLines.AsProgrammed;
        }
    }

    private static string Outcome(LoggedStage stage, WrittenTemperature unit) => stage.Outcome switch
    {
        StageOutcome.Held => KilnLogLines.Held(Say.Hours(stage.Held), Say.Hours(stage.Asked)),
        StageOutcome.TooShort => KilnLogLines.HeldShort(Say.Hours(stage.Held), Say.Hours(stage.Asked), Say.Hours(stage.Missing)),
        StageOutcome.NotReached => KilnLogLines.NotReached(unit.Say(stage.Nearest)),
        _ => stage.Held > Duration.Zero ? KilnLogLines.HeldSoFar(Say.Hours(stage.Held), Say.Hours(stage.Asked)) : KilnLogLines.NotInLog,
    };

    private static string Span(CoreSpan core, WrittenTemperature unit)
    {
        var (one, other) = (core.Slow.DegreesCelsius, core.Fast.DegreesCelsius);
        return KilnLogLines.Between(unit.Number(Math.Min(one, other)), unit.Say(Math.Max(one, other)));
    }
}
