using CastBook.Casting.Burnout;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Pours the flasks of a load one after the other with one pair of hands.</summary>
/// <remarks>
/// A quench that has fallen due goes before the next pour. The kiln goes on to a lower flask temperature when the last
/// flask of the one before is out, and holds there as long as the schedule holds at its end, or longer where the core of a
/// mould that is poured next needs it.
/// </remarks>
internal sealed class PourRound(ClockRules rules, KilnLoad load, IReadOnlyDictionary<string, FlaskPlan> flasks)
{
    private readonly List<ClockStep> steps = [];
    private readonly List<(Duration Due, string Flask)> waiting = [];
    private readonly LoadCores cores = load.Core!.Cores(load.Schedule);
    private Duration now = Duration.Zero;
    private Duration followed = Duration.Zero;

    /// <summary>The pours and quenches, from the end of the burnout on.</summary>
    public IReadOnlyList<ClockStep> Run()
    {
        Temperature? before = null;
        foreach (var stage in KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour))
        {
            cores.Run(stage);
        }

        foreach (var group in load.Pours)
        {
            if (before is { } hotter && group.Temperature is { } cooler && cooler < hotter)
            {
                Lower(hotter, cooler, group.Flasks);
            }

            before = group.Temperature ?? before;
            foreach (var flask in group.Flasks)
            {
                QuenchDue();
                Pour(flask);
            }
        }

        while (waiting.Count > 0)
        {
            now = now > waiting[0].Due ? now : waiting[0].Due;
            QuenchDue();
        }

        return [.. steps.OrderBy(s => s.Begins.Minutes)];
    }

    private void Pour(string flask)
    {
        steps.Add(Step(ClockStepKind.Pour, flask, rules.Pouring, hands: true));
        now += rules.Pouring;
        var plan = flasks[flask];
        if (plan is { NoQuench: false, QuenchAfter: { } wait })
        {
            waiting.Add((now + wait, flask));
            waiting.Sort((a, b) => a.Due.Minutes.CompareTo(b.Due.Minutes));
        }
        else
        {
            steps.Add(Step(ClockStepKind.CoolAlone, flask, Duration.Zero, hands: false));
        }
    }

    private void QuenchDue()
    {
        while (waiting.Count > 0 && waiting[0].Due <= now)
        {
            steps.Add(Step(ClockStepKind.Quench, waiting[0].Flask, rules.Quenching, hands: true) with { Wait = flasks[waiting[0].Flask].QuenchAfter });
            now += rules.Quenching;
            waiting.RemoveAt(0);
        }
    }

    // The kiln falls by itself; whoever poured quenches meanwhile.
    private void Lower(Temperature hotter, Temperature cooler, IReadOnlyList<string> next)
    {
        var way = Duration.FromHours((hotter.DegreesCelsius - cooler.DegreesCelsius) / load.CoolsDegreesPerHour);
        cores.Hold(now - followed);
        cores.Go(cooler, way);
        var (needed, asked) = (cores.HoldOf(next).Hold, load.Schedule.Stages[^1].Hold);
        var hold = needed > asked ? needed : asked;
        cores.Hold(hold);
        followed = now + way + hold;
        var fall = NightParts.Stage(new ProgramStage(hotter, cooler, way, hold, WayInHold: false), now, load, ClockStepKind.Fall);
        steps.Add(fall);
        while (waiting.Count > 0 && waiting[0].Due + rules.Quenching <= fall.Ends)
        {
            now = now > waiting[0].Due ? now : waiting[0].Due;
            QuenchDue();
        }

        now = now > fall.Ends ? now : fall.Ends;
    }

    private ClockStep Step(ClockStepKind kind, string flask, Duration takes, bool hands) => new()
    {
        Kind = kind,
        Begins = now,
        Takes = takes,
        Hands = hands,
        Load = load.Number,
        Flasks = [flask],
        Target = kind == ClockStepKind.Pour ? flasks[flask].FlaskTemperature : null,
    };
}
