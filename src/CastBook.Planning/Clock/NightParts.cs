using CastBook.Casting.Burnout;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Makes the parts of a night: mixing, and for each load what comes before the kiln, the burnout and the pours.</summary>
internal sealed class NightParts(ClockRules rules, PlannedFlasks night)
{
    private readonly Dictionary<string, FlaskPlan> flasks = night.Flasks.ToDictionary(f => f.Letter, StringComparer.Ordinal);

    /// <summary>The mixes one after the other; cleaning up is part of each.</summary>
    public NightPart Mixing()
    {
        var steps = new List<ClockStep>();
        var mixes = night.Mixes.Select(m => ((int?)m.Number, m.Flasks)).ToList();
        if (mixes.Count == 0)
        {
            mixes = [.. night.Flasks.Where(f => f is { State: < FlaskState.Invested, Powder: not null }).Select(f => ((int?)null, (IReadOnlyList<string>)[f.Letter]))];
        }

        foreach (var (number, letters) in mixes)
        {
            Add(ClockStepKind.Weigh, rules.Weighing);
            Add(ClockStepKind.Mix, rules.Steps.Mixing);
            Add(ClockStepKind.BowlVacuum, rules.Steps.BowlVacuum);
            Add(ClockStepKind.Fill, letters.Count * rules.Steps.Filling);
            Add(ClockStepKind.FlaskVacuum, rules.Steps.FlaskVacuum);
            Add(ClockStepKind.CleanUp, rules.CleanUp);

            void Add(ClockStepKind kind, Duration takes) =>
                steps.Add(new ClockStep { Kind = kind, Begins = End(steps), Takes = takes, Hands = true, Mix = number, Flasks = letters });
        }

        return rules.Staffed(steps);
    }

    /// <summary>From the set moulds to the loaded kiln.</summary>
    /// <param name="load">The load.</param>
    public NightPart BeforeKiln(KilnLoad load)
    {
        var steps = new List<ClockStep>();
        Add(ClockStepKind.BaseOff, load.Flasks.Count * rules.BaseOff, hands: true);
        var wax = load.Flasks.Where(l => flasks[l].IsWax).ToList();
        if (rules.Steam > Duration.Zero && wax.Count > 0)
        {
            steps.Add(new ClockStep { Kind = ClockStepKind.Steam, Begins = End(steps), Takes = rules.Steam, Load = load.Number, Flasks = wax });
        }

        if (!load.IsLoadedCold && load.Schedule.LoadAt is { } hot)
        {
            // Switched on first, so that it is hot when the moulds are ready; they wait where it is not.
            var wait = Duration.FromMinutes(Math.Max(0, ClockRules.Preheating.Minutes - End(steps).Minutes));
            steps = steps.ConvertAll(s => s.Later(wait));
            steps.Insert(0, new ClockStep
            {
                Kind = ClockStepKind.KilnOn,
                Begins = Duration.Zero,
                Takes = Duration.Zero,
                Hands = true,
                Load = load.Number,
                Target = hot,
            });
        }

        Add(ClockStepKind.LoadKiln, rules.Loading, hands: true);
        return rules.Staffed(steps);

        void Add(ClockStepKind kind, Duration takes, bool hands) =>
            steps.Add(new ClockStep { Kind = kind, Begins = End(steps), Takes = takes, Hands = hands, Load = load.Number, Flasks = load.Flasks });
    }

    /// <summary>The stages of a load's burnout, the fall to the first flask temperature included.</summary>
    /// <param name="load">The load.</param>
    public NightPart Burnout(KilnLoad load)
    {
        var steps = new List<ClockStep>();
        var stages = KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour);
        for (var i = 0; i < stages.Count; i++)
        {
            var falls = i > 0 && i == stages.Count - 1;
            steps.Add(Stage(stages[i], End(steps), load, falls ? ClockStepKind.Fall : ClockStepKind.Stage));
        }

        return rules.Staffed(ToldApart(steps));
    }

    /// <summary>The pours of a load, hottest flasks first, with the quenches as they fall due between them.</summary>
    /// <param name="load">The load.</param>
    public NightPart Pours(KilnLoad load) => rules.Staffed(new PourRound(rules, load, flasks).Run());

    /// <summary>A stage as a step.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="begins">When it begins.</param>
    /// <param name="load">The load.</param>
    /// <param name="kind">What it is.</param>
    public static ClockStep Stage(ProgramStage stage, Duration begins, KilnLoad load, ClockStepKind kind) => new()
    {
        Kind = kind,
        Begins = begins,
        Takes = stage.Takes,
        Load = load.Number,
        Target = stage.Target,
        Arrives = stage.WayInHold ? null : stage.Way,
        Hold = stage.Hold,
    };

    // A step is known again by its words, in whatever unit they were written: stages that share them say which they are.
    private static List<ClockStep> ToldApart(List<ClockStep> stages) =>
        [.. stages.Select((stage, i) => stages.Where((_, j) => j != i).Any(other => IsSaidAlike(stage, other)) ? stage with { Turn = (i + 1, stages.Count) } : stage)];

    private static bool IsSaidAlike(ClockStep one, ClockStep other) => WrittenTemperature.All.Any(unit => ClockWords.Of(one, unit) == ClockWords.Of(other, unit));

    private static Duration End(List<ClockStep> steps) => steps.Count == 0 ? Duration.Zero : steps[^1].Ends;
}
