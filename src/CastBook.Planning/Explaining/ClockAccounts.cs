using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the hours of a night came to be.</summary>
/// <param name="settings">The shop's settings.</param>
/// <param name="clock">The clock.</param>
internal sealed class ClockAccounts(Settings settings, NightClock clock)
{
    private const string Range = "steps that take what the shop says or what is usual; set, burnout and holds are never shortened";

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

        var name = $"{ClockWords.Of(step, settings.Units.Temperature)}, from";
        if (step.IsDone)
        {
            return new(name, "its end, as typed on the Clock sheet or as the next step was, and the minutes it takes", "", null, "") { Inputs = Asked, ValidFor = Range };
        }

        return HeldUp(step) is var (before, formula)
            ? new(name, formula, "", null, "") { Inputs = [Done(before), .. Asked], ValidFor = Range }
            : new(name, Asked.Count == 0 ? "times count from the first step" : "the first step, counted from the hour that was asked for", "", null, "")
            {
                Inputs = Asked,
                ValidFor = Range,
            };
    }

    /// <summary>When a step ends; nothing where there is no such step.</summary>
    /// <param name="step">The step.</param>
    public Account? Ends(ClockStep? step) => step is null ? null : new(
        $"{ClockWords.Of(step, settings.Units.Temperature)}, until", step.IsDone ? "as typed on the Clock sheet, or when the next step was begun" : $"{ClockWords.Time(clock, step.Begins)} and {Say.Plain(Math.Round(step.Takes.Minutes, 1))} min of it", "", null, "")
    {
        Inputs = Asked,
        ValidFor = Range,
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

    private AccountInput Done(ClockStep step) => AccountInput.Reckoned(ClockWords.Of(step, settings.Units.Temperature), $"until {ClockWords.Time(clock, step.Ends)}", "the clock");

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
                ? (busy, $"its wait of {Say.Minutes(wait)} is over, and then when hands are free after what comes before it")
                : (pour, $"after its pour, by the wait of the alloy in this size{(step.Wait is { } asked ? $": {Say.Minutes(asked)}" : "")}");
        }

        // Its set goes on until then.
        if (KilnBefore(step) is { } emptied)
        {
            return (emptied, "when its kiln has cooled after the load before; longer where hands are busy or nobody is there");
        }

        if (LastOf(ending.Where(s => IsOneWork(s, step))) is { } own)
        {
            return (own, "when what comes before it is done");
        }

        if (step.Hands && LastOf(ending.Where(s => s.Hands)) is { } hands)
        {
            return (hands, "when hands are free after what comes before it");
        }

        if (step.Kind == ClockStepKind.Weigh && LastOf(earlier.Where(s => s.Hands)) is { } last)
        {
            return (last, "so late that its moulds have just set when their kiln load is taken up, when hands are free");
        }

        return (LastOf(earlier.Where(s => IsOneWork(s, step))) ?? LastOf(earlier.Where(s => s.Hands))) is { } before
            ? (before, settings is { AtWorkFrom: null, HoursOfWork: null } ? "after what comes before it, when hands are free for all that follows" : "after what comes before it, when somebody is there for all that follows")
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
