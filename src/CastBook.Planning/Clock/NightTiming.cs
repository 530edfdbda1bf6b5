using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Puts the parts of a night on the clock, and lengthens the set or the timer's wait where that keeps hands within their hours.</summary>
/// <remarks>
/// Nothing is ever shortened. Waits are tried in steps of a quarter of an hour: the set may last a day, after
/// which the hours of people are the same again, and a loaded cold kiln may wait half a day for its timer. Minutes count from the hour that was asked for.
/// </remarks>
internal sealed class NightTiming
{
    private const double Quarter = 15;
    private const int MostSetWaits = 96;
    private const int MostTimerWaits = 48;
    private const int MostMixMoves = 80;

    // A typed hour may be a minute off.
    private const double Rounding = 1;

    private readonly ClockQuestion? question;
    private readonly WorkingHours? hours;
    private readonly double setMinutes;
    private readonly Duration keep;
    private readonly MixingPart mixing;
    private readonly List<LoadParts> loads;

    /// <summary>Prepares the parts.</summary>
    /// <param name="parts">Makes the parts.</param>
    /// <param name="loads">The kiln loads.</param>
    /// <param name="set">The least set.</param>
    /// <param name="keep">How long moulds keep before the kiln.</param>
    /// <param name="question">The hour that was asked for.</param>
    /// <param name="hours">The hours in which somebody is there; missing where it is always so.</param>
    public NightTiming(NightParts parts, IReadOnlyList<KilnLoad> loads, Duration set, Duration keep, ClockQuestion? question, WorkingHours? hours)
    {
        this.question = question;
        this.hours = hours;
        this.keep = keep;
        mixing = new MixingPart(parts.Mixing().Steps);
        setMinutes = mixing.Steps.Count == 0 ? 0 : set.Minutes;
        this.loads = [.. loads.Select(l => new LoadParts(l, parts.BeforeKiln(l), parts.Burnout(l), parts.Pours(l)))];
    }

    /// <summary>The night when its hour is moved.</summary>
    /// <param name="later">By how many minutes.</param>
    public TimedNight Plan(double later)
    {
        var night = Plan(later, mixing, [])!;
        return mixing.LateOnes(night, loads.Skip(1).Select(l => l.Load), keep) is { Count: > 0 } late && mixing.Without(late.Values) is { Steps.Count: > 0 } tonight
            ? Plan(later, tonight, late) ?? night
            : night;
    }

    // Nothing where the mixes of a late load find no hour.
    private TimedNight? Plan(double later, MixingPart tonight, Dictionary<int, MixingPart> late)
    {
        var night = new TimedNight(setMinutes);
        var backwards = question is { IsPour: true } && loads.Count > 0;
        var first = backwards ? Backwards(later, tonight) : (Start: later, Kiln: 0.0, Timer: 0.0);
        night.Add(tonight, first.Start, Outside(tonight, first.Start));
        foreach (var load in loads)
        {
            var own = late.GetValueOrDefault(load.Load.Number);
            var filled = first.Start + (own is null ? tonight.Filled : tonight.Minutes + own.Filled);
            var earliest = Math.Max(Math.Max(filled + setMinutes, first.Start + tonight.Minutes), night.KilnFree(load.Load));
            var (before, timer) = backwards && ReferenceEquals(load, loads[0]) ? (first.Kiln, first.Timer) : Place(load, earliest, night);
            if (own is not null)
            {
                if (MixLate(own, first.Start + tonight.Minutes, before, night) is not { } at)
                {
                    return null;
                }

                night.Add(own, at, 0);
                filled = at + own.Filled;
            }

            night.Add(load, filled, before, timer, Outside(load.Before, before), OutsideHot(load, load.PourAt(before, timer)));
        }

        return night;
    }

    /// <summary>Whether the moved hour can be typed: of two that clocks show alike only the first can.</summary>
    /// <param name="later">By how many minutes.</param>
    public bool CanBeTyped(double later) => question is null
        || (question.At.AddMinutes(later) is var moved && ClockQuestion.Shown(TimeZoneInfo.ConvertTime(moved, question.Zone).DateTime, question.Zone) == moved);

    /// <summary>The night as it goes on from what was done.</summary>
    /// <param name="planned">The night as planned.</param>
    /// <param name="done">What was done.</param>
    public TimedNight Continue(TimedNight planned, DoneTimes done)
    {
        var (night, kilnsPlanned) = (new TimedNight(setMinutes), new TimedNight(setMinutes));
        var running = new RunningSteps(done, night, setMinutes);
        var mixed = running.Mixing([.. planned.Steps.OrderBy(s => s.Load ?? 0)]);
        var begun = planned.Steps.Count == 0 ? 0 : planned.Steps[0].Begins.Minutes;
        var late = MixingPart.LateIn(planned);
        night.Add(mixed, Outside(mixed));
        foreach (var load in loads)
        {
            var steps = planned.Steps.Where(s => s.Load == load.Load.Number).ToList();
            var moulds = mixed.FindAll(IsFor);
            var filled = moulds.LastOrDefault(s => s.Kind == ClockStepKind.FlaskVacuum)?.Begins.Minutes ?? begun;
            if (steps.Any(s => done.Of(s) is not null))
            {
                var followed = running.Load(steps, filled, night.KilnFree(load.Load));
                night.Add(followed, Outside(followed));
                night.Empty(load, LastPour(followed));
            }
            else
            {
                var (ready, was) = (Ready(moulds, filled, night), Ready([.. planned.Steps.Where(IsFor)], begun, kilnsPlanned));
                var keeps = ready >= was - Rounding || (ReferenceEquals(load, loads[0]) && question is { IsPour: true });
                AddUnbegun(load, steps, filled, Math.Max(ready, done.Now), keeps, night);
            }

            kilnsPlanned.Empty(load, LastPour(steps));

            bool IsFor(ClockStep s) => s.Load is null && (s.Mix is not { } mix || !late.Contains(mix) || s.Flasks.Any(load.Load.Flasks.Contains));

            double Ready(List<ClockStep> mixes, double otherwise, TimedNight kilns) =>
                mixes.Select(s => s.Kind == ClockStepKind.FlaskVacuum ? Math.Max(s.Begins.Minutes + setMinutes, s.Ends.Minutes) : s.Ends.Minutes)
                    .DefaultIfEmpty(otherwise + setMinutes).Append(kilns.KilnFree(load.Load)).Max();
        }

        return night;
    }

    private static double LastPour(List<ClockStep> steps) => steps.Where(s => s.Kind == ClockStepKind.Pour).Max(s => s.Ends.Minutes);

    // The latest moment from which moulds just set before they are taken up, with hands free and there.
    private double? MixLate(MixingPart own, double notBefore, double takenUp, TimedNight night)
    {
        var latest = takenUp - setMinutes - own.Filled;
        for (var at = latest; at >= notBefore && at > latest - (Quarter * MostMixMoves); at -= Quarter)
        {
            if (!night.IsBusy(own, at) && Outside(own, at) <= 0)
            {
                return at;
            }
        }

        return null;
    }

    // What is not earlier than planned, and a pour that was asked for, stays where it is as long as it can; hours are typed to the minute.
    private void AddUnbegun(LoadParts load, List<ClockStep> planned, double filled, double earliest, bool keep, TimedNight night)
    {
        var before = planned.First(s => s.Kind is ClockStepKind.BaseOff or ClockStepKind.KilnOn).Begins.Minutes;
        var timer = planned.FirstOrDefault(s => s.Kind == ClockStepKind.Timer)?.Takes.Minutes ?? 0;
        var late = Math.Max(0, earliest - before);
        var (at, waits) = (before + late, Math.Max(0, timer - late));
        if (!keep || late >= Quarter || night.IsBusy(load.Before, at) || night.IsBusy(load.Pours, load.PourAt(at, waits)))
        {
            (at, waits) = Place(load, earliest, night);
        }

        night.Add(load, filled, at, waits, Outside(load.Before, at), OutsideHot(load, load.PourAt(at, waits)));
    }

    private double Outside(IReadOnlyList<ClockStep> timed) =>
        hours is null ? 0 : timed.Where(s => s is { Attended: true, IsDone: false }).Sum(s => hours.MinutesOutside(s, question!.At.AddMinutes(s.Begins.Minutes)));

    // From the pour back: the timer's wait first, then the set, each as short as hands allow.
    private (double Start, double Kiln, double Timer) Backwards(double pour, MixingPart tonight)
    {
        var load = loads[0];
        var kilnAt = pour - load.PourAt(0, 0);
        var startAt = kilnAt - Math.Max(tonight.Filled + setMinutes, tonight.Minutes);
        var timers = load.MayWait && hours is not null ? MostTimerWaits : 0;
        var sets = hours is not null ? MostSetWaits : 0;
        var kiln = Costs(timers + 1, i => Outside(load.Before, kilnAt - (Quarter * i)));
        var start = Costs(timers + sets + 1, i => Outside(tonight, startAt - (Quarter * i)));
        var (bestTotal, bestTimer, least) = (0, 0, double.PositiveInfinity);
        for (var total = 0; total <= timers + sets && least > 0; total++)
        {
            for (var timer = Math.Max(0, total - sets); timer <= Math.Min(timers, total); timer++)
            {
                if (kiln(timer) + start(total) < least)
                {
                    (bestTotal, bestTimer, least) = (total, timer, kiln(timer) + start(total));
                }
            }
        }

        return (startAt - (Quarter * bestTotal), kilnAt - (Quarter * bestTimer), Quarter * bestTimer);
    }

    private (double Kiln, double Timer) Place(LoadParts load, double earliest, TimedNight night)
    {
        var timers = load.MayWait ? MostTimerWaits : 0;
        var kiln = Costs(MostSetWaits + 1, i => Cost(load.Before, earliest + (Quarter * i), night));
        var pourAt = load.PourAt(earliest, 0);
        var pours = Costs(
            MostSetWaits + timers + 1,
            i => Cost(load.Pours, pourAt + (Quarter * i), night) + Outside(load.Burnout, pourAt - load.Burnout.Minutes + (Quarter * i)));
        var (bestSet, bestTimer, least) = (0, 0, double.PositiveInfinity);
        for (var total = 0; total <= MostSetWaits + timers && least > 0; total++)
        {
            for (var timer = Math.Max(0, total - MostSetWaits); timer <= Math.Min(timers, total); timer++)
            {
                var cost = kiln(total - timer) + pours(total);
                if (cost < least)
                {
                    (bestSet, bestTimer, least) = (total - timer, timer, cost);
                }
            }
        }

        return (earliest + (Quarter * bestSet), Quarter * bestTimer);
    }

    // Two things at once are impossible; unwelcome hours are only dear.
    private double Cost(NightPart part, double at, TimedNight night) => night.IsBusy(part, at) ? double.PositiveInfinity : Outside(part, at);

    // Burnout and pours hang together.
    private double OutsideHot(LoadParts load, double pourAt) => Outside(load.Burnout, pourAt - load.Burnout.Minutes) + Outside(load.Pours, pourAt);

    private double Outside(NightPart part, double at)
    {
        var minutes = 0.0;
        if (hours is not null)
        {
            foreach (var step in part.Attended)
            {
                minutes += hours.MinutesOutside(step, question!.At.AddMinutes(at + step.Begins.Minutes));
            }
        }

        return minutes;
    }

    private static Func<int, double> Costs(int count, Func<int, double> cost)
    {
        var known = new double[count];
        Array.Fill(known, -1);
        return i => known[i] >= 0 ? known[i] : known[i] = cost(i);
    }
}
