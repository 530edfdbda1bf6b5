using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Says what of a night can no longer hold after what was really done.</summary>
/// <param name="clock">The night as it goes on.</param>
/// <param name="done">What was done.</param>
/// <param name="flasks">Its flasks and mixes.</param>
/// <param name="findings">Takes what is found.</param>
internal sealed class RunningChecks(NightClock clock, DoneTimes done, PlannedFlasks flasks, FindingList findings)
{
    // Hours are typed to the minute, and looked up when there is time for it.
    private static readonly Duration Typing = Duration.FromMinutes(1.5);
    private static readonly Duration Early = Duration.FromMinutes(5);

    // Memory: a loaded kiln may lag behind its programme so long; a mould cools through when it is off for longer.
    private static readonly Duration Slow = Duration.FromMinutes(20);

    /// <summary>Looks at the night.</summary>
    /// <param name="planned">The night as planned.</param>
    public void Look(NightClock planned)
    {
        SayLate(planned);
        LookAtOrder(planned);
        foreach (var step in clock.Steps)
        {
            switch (step)
            {
                case { Kind: ClockStepKind.Mix, IsDone: true, Mix: { } number }:
                    LookAtMix(step, flasks.Mixes.FirstOrDefault(m => m.Number == number));
                    break;
                case { Kind: ClockStepKind.Set, IsDone: true }:
                    LookAtSet(step);
                    break;
                case { Kind: ClockStepKind.Stage or ClockStepKind.Fall, IsDone: true }:
                    LookAtStage(step, (step.Arrives ?? Duration.Zero) + (step.Hold ?? Duration.Zero));
                    break;
                case { Kind: ClockStepKind.Quench, IsDone: true, Wait: { } wait }:
                    LookAtQuench(step, wait);
                    break;
                default:
                    break;
            }
        }
    }

    private void SayLate(NightClock planned)
    {
        // What people look for is the pour.
        var open = clock.Steps.Where(s => s is { Hands: true, IsDone: false }).ToList();
        if ((open.FirstOrDefault(s => s.Kind == ClockStepKind.Pour) ?? open.FirstOrDefault()) is not { } goal)
        {
            return;
        }

        var asPlanned = planned.Steps.First(s => ClockWords.Of(s) == ClockWords.Of(goal));
        var late = clock.Start!.Value.AddMinutes(goal.Begins.Minutes) - planned.Start!.Value.AddMinutes(asPlanned.Begins.Minutes);
        if (Math.Abs(late.TotalMinutes) >= 1)
        {
            var by = Say.Hours(Duration.FromMinutes(Math.Abs(late.TotalMinutes)));
            findings.Add(Catalogue.NightRunsLate.At(
                Subject.Book, late > TimeSpan.Zero ? ClockFindingWords.Late(by) : ClockFindingWords.Early(by),
                goal.Kind == ClockStepKind.Pour ? ClockFindingWords.NextPour : ClockFindingWords.NextStep, ClockWords.DayAndHour(clock.Shown(goal.Begins)!.Value)));
        }
    }

    private void LookAtOrder(NightClock planned)
    {
        ClockStep? last = null;
        foreach (var step in planned.Steps.Where(s => s.Hands).Select(s => clock.Steps.First(a => ClockWords.Of(a) == ClockWords.Of(s))).Where(s => done.Of(s) is not null))
        {
            if (last is { } before && step.Ends < before.Ends - Typing)
            {
                findings.Add(Catalogue.DoneOutOfOrder.At(
                    Subject.Book, ClockWords.Of(step, findings.Units.Temperature), ClockWords.Time(clock, step.Ends),
                    ClockWords.Of(before, findings.Units.Temperature), ClockWords.Time(clock, before.Ends)));
                return;
            }

            last = step;
        }
    }

    private void LookAtMix(ClockStep mix, MixPlan? plan)
    {
        var vacuum = clock.Steps.FirstOrDefault(s => s.Kind == ClockStepKind.FlaskVacuum && s.Mix == mix.Mix);
        if (plan is null || vacuum is null || vacuum.Ends - mix.Begins <= plan.GlossOff + Typing)
        {
            return;
        }

        var took = Duration.FromMinutes(Math.Round((vacuum.Ends - mix.Begins).Minutes));
        findings.Add(Catalogue.MixOutlived.At(
            new Subject(SubjectKind.Flask, plan.Flasks[0]), Say.Count(plan.Number), Say.Minutes(took), Say.Minutes(plan.GlossOff), Say.Together(plan.Flasks)));
    }

    private void LookAtSet(ClockStep set)
    {
        var least = flasks.SetAtLeast ?? Duration.Zero;
        if (set.Takes < least - Typing)
        {
            findings.Add(Catalogue.TakenUpTooEarly.At(
                new Subject(SubjectKind.Flask, set.Flasks[0]), Say.Together(set.Flasks), Say.Hours(set.Takes), Say.Hours(least), ClockWords.Time(clock, set.Begins + least)));
        }
    }

    private void LookAtStage(ClockStep stage, Duration asked)
    {
        var pour = clock.Steps.FirstOrDefault(s => s.Kind == ClockStepKind.Pour && s.Load == stage.Load && s.Begins >= stage.Ends - Typing);
        if (stage.Takes < asked - Early)
        {
            findings.Add(stage.Kind == ClockStepKind.Fall && pour is { IsDone: true }
                ? Catalogue.PouredTooEarly.At(Subject.Flask(pour.Flasks[0]), CountWords.Flasks(1, pour.Flasks[0]), Say.Hours(asked - stage.Takes), ClockWords.Time(clock, stage.Begins + asked))
                : Catalogue.StageTooShort.At(Subject.Book, ClockWords.Of(stage, findings.Units.Temperature), Say.Hours(stage.Takes), Say.Hours(asked), Say.Hours(asked - stage.Takes)));
        }
        else if (stage.Takes > asked + Slow)
        {
            findings.Add(Catalogue.BurnoutInterrupted.At(Subject.Book, ClockWords.Of(stage, findings.Units.Temperature), Say.Hours(stage.Takes), Say.Hours(asked)));
        }
    }

    private void LookAtQuench(ClockStep quench, Duration wait)
    {
        if (clock.PourOf(quench.Flasks[0]) is { } pour && quench.Begins - pour.Ends < wait - Typing)
        {
            findings.Add(Catalogue.QuenchedTooEarly.At(
                Subject.Flask(quench.Flasks[0]), quench.Flasks[0], Say.Minutes(Duration.FromMinutes(Math.Max(0, Math.Round((quench.Begins - pour.Ends).Minutes)))), Say.Minutes(wait)));
        }
    }
}
