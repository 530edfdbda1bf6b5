using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the hours of a night came to be.</summary>
/// <param name="settings">The shop's settings.</param>
/// <param name="clock">The clock.</param>
internal sealed class ClockAccounts(Settings settings, NightClock clock)
{
    // Under a minute nobody waits.
    private static readonly Duration Dust = Duration.FromMinutes(1);

    /// <summary>When a step begins; nothing where there is no such step.</summary>
    /// <param name="step">The step.</param>
    public Account? Begins(ClockStep? step)
    {
        if (step is null)
        {
            return null;
        }

        var name = ClockAccountWords.From(ClockWords.Of(step, settings.Units.Temperature));
        if (step.IsDone)
        {
            return new(name, ClockAccountWords.DoneBegins, "", null, "") { Inputs = Asked, ValidFor = ClockAccountWords.StepsHold };
        }

        return HeldUp(step) is var (before, formula)
            ? new(name, formula, "", null, "") { Inputs = [Done(before), .. Asked], ValidFor = ClockAccountWords.StepsHold }
            : new(name, Asked.Count == 0 ? ClockAccountWords.FirstStep : ClockAccountWords.FirstStepByHour, "", null, "")
            {
                Inputs = Asked,
                ValidFor = ClockAccountWords.StepsHold,
            };
    }

    /// <summary>When a step ends; nothing where there is no such step.</summary>
    /// <param name="step">The step.</param>
    public Account? Ends(ClockStep? step) => step is null ? null : new(
        ClockAccountWords.Until(ClockWords.Of(step, settings.Units.Temperature)),
        step.IsDone ? ClockAccountWords.DoneEnds : ClockAccountWords.BeginsAndTakes(ClockWords.Time(clock, step.Begins), Say.Plain(Math.Round(step.Takes.Minutes, 1))),
        "", null, "")
    {
        Inputs = Asked,
        ValidFor = ClockAccountWords.StepsHold,
    };

    /// <summary>When a mix begins.</summary>
    /// <param name="mix">The mix's number.</param>
    public Account? MixBegins(int mix) => Begins(clock.Steps.FirstOrDefault(s => s.Kind == ClockStepKind.Mix && s.Mix == mix));

    /// <summary>When a flask is poured.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Account? PourAt(string letter) => Begins(clock.PourOf(letter));

    /// <summary>When a flask is quenched.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Account? QuenchAt(string letter) => Begins(clock.QuenchOf(letter));

    /// <summary>A step of the clock; nothing where there is none of that place.</summary>
    /// <param name="place">Its place among the steps.</param>
    public ClockStep? Step(int place) => place < clock.Steps.Count ? clock.Steps[place] : null;

    private AccountInput Done(ClockStep step) => AccountInput.Reckoned(
        ClockWords.Of(step, settings.Units.Temperature), ClockAccountWords.UntilHour(ClockWords.Time(clock, step.Ends)), ClockAccountWords.OfTheClock);

    private IReadOnlyList<AccountInput> Asked =>
        settings.PourAt is { } pour ? [AccountInput.By(SettingName.PourAt, pour, Subject.Setting(SettingName.PourAt))]
        : settings.StartAt is { } start ? [AccountInput.By(SettingName.StartAt, start, Subject.Setting(SettingName.StartAt))]
        : [];

    // What ended when it begins held it up: its own work first, then whoever's hands it takes, then its kiln. Else it waits.
    private (ClockStep Before, string Formula)? HeldUp(ClockStep step)
    {
        var earlier = clock.Steps.Where(s => s.Begins < step.Begins && s.Ends <= step.Begins + Dust).ToList();
        var ending = earlier.Where(s => s.Ends >= step.Begins - Dust).ToList();
        if (step.Kind == ClockStepKind.Quench && clock.PourOf(step.Flasks[0]) is { } pour)
        {
            return step.Wait is { } wait && step.Begins > pour.Ends + wait + Dust && LastOf(ending.Where(s => s.Hands)) is { } busy
                ? (busy, ClockAccountWords.WaitAndHands(Say.Minutes(wait)))
                : (pour, ClockAccountWords.AfterPour(step.Wait is { } asked ? Say.Minutes(asked) : null));
        }

        // Its set goes on until then.
        if (KilnBefore(step) is { } emptied)
        {
            return (emptied, ClockAccountWords.KilnCooled);
        }

        if (LastOf(ending.Where(s => IsOneWork(s, step))) is { } own)
        {
            return (own, ClockAccountWords.BeforeIsDone);
        }

        if (step.Hands && LastOf(ending.Where(s => s.Hands)) is { } hands)
        {
            return (hands, ClockAccountWords.HandsAreFree);
        }

        if (step.Kind == ClockStepKind.Weigh && LastOf(earlier.Where(s => s.Hands)) is { } last)
        {
            return (last, ClockAccountWords.MouldsJustSet);
        }

        return (LastOf(earlier.Where(s => IsOneWork(s, step))) ?? LastOf(earlier.Where(s => s.Hands))) is { } before
            ? (before, settings is { AtWorkFrom: null, HoursOfWork: null } ? ClockAccountWords.HandsFreeForAll : ClockAccountWords.SomebodyThereForAll)
            : null;
    }

    private ClockStep? KilnBefore(ClockStep step)
    {
        var load = step.Kind is ClockStepKind.BaseOff or ClockStepKind.KilnOn ? clock.Loads.FirstOrDefault(l => l.Number == step.Load) : null;
        var last = load is null ? null : clock.Loads.LastOrDefault(l => l.Number < load.Number && l.Kiln == load.Kiln);
        return last is null ? null : LastOf(clock.Steps.Where(s => s.Load == last.Number && s.Kind == ClockStepKind.Pour));
    }

    private static ClockStep? LastOf(IEnumerable<ClockStep> steps) => steps.MaxBy(s => s.Ends.Minutes);

    private static bool IsOneWork(ClockStep one, ClockStep other) => one.Flasks.Any(other.Flasks.Contains)
        || (one.Mix is not null && one.Mix == other.Mix) || (one.Load is not null && one.Load == other.Load);
}
