using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Plans kiln loads and the hours of a night, and says what falls outside the shop's hours and which start is better.</summary>
internal sealed class ClockPlanning
{
    // Of more loads than these, other ways to group them are too many to be timed.
    private const int MostLoadsToRegroup = 12;

    private readonly Night night;
    private readonly FindingList findings;
    private readonly IReadOnlyList<KilnLoad> loads;
    private readonly ClockRules rules;
    private readonly NightTiming timing;
    private readonly PlannedFlasks flasks;

    private ClockPlanning(Night night, PlannedFlasks flasks, FindingList findings)
    {
        this.night = night;
        this.flasks = flasks;
        this.findings = findings;
        rules = new ClockRules(night.Shop.Settings);
        loads = new KilnLoading(night.Shop, findings, night.Clock is not null).Plan(flasks.Flasks);
        if (night.Clock is not null)
        {
            rules.Note(new Assumptions(findings));
        }

        timing = Timing(loads);
    }

    /// <summary>The clock of a night; missing where there is nothing to do, or nobody can read how long moulds set.</summary>
    /// <param name="night">The night.</param>
    /// <param name="flasks">Its flasks and mixes.</param>
    /// <param name="findings">Takes what is found.</param>
    public static NightClock? Plan(Night night, PlannedFlasks flasks, FindingList findings)
    {
        if (flasks.Flasks.Count == 0 || flasks.IsSetUnread)
        {
            return null;
        }

        var clock = new ClockPlanning(night, flasks, findings).Plan();
        return clock.Steps.Count == 0 ? null : clock;
    }

    private NightClock Plan()
    {
        var planned = timing.Plan(0);
        var done = Done(planned);
        var timed = done is null ? planned : timing.Continue(planned, done);
        var clock = Answer(timed);
        if (done is not null)
        {
            new RunningChecks(clock, done, flasks, findings).Look(Answer(planned));
        }
        else
        {
            new PastHours(night, findings).Look(clock);
        }

        new HotWaits(night.Shop, findings).Look(clock);

        if (timed.Outside > 0)
        {
            SayOutside(clock, done is null ? Better(timed) : ClockFindingWords.NightUnderWay);
        }

        var stand = night.Shop.Settings.KeptDamp == true ? Catalogue.DampMouldsStandLong : Catalogue.MouldsStandLong;
        foreach (var set in clock.Steps.Where(s => s.Kind == ClockStepKind.Set && s.Takes > rules.MouldsKeep))
        {
            findings.Add(stand.At(Subject.Book, Say.Together(set.Flasks), Say.Plain(Math.Round(set.Takes.Hours)), Shared(set)));
        }

        if (night.Clock is not null)
        {
            foreach (var load in loads.Where(l => night.Shop.Kilns.All(k => k.Name != l.Kiln || k.CoolsDegreesPerHour is not > 0)))
            {
                findings.Add(Catalogue.KilnCoolingNotKnown.At(
                    new Subject(SubjectKind.Kiln, load.Kiln, ShopField.Cools), findings.Units.Temperature.SayDegrees(ClockRules.UsualCooling)));
            }
        }

        return night.Log is { } log ? Logged(clock, log) : clock;
    }

    private NightClock Logged(NightClock clock, KilnLog log)
    {
        if (LoggedLoad.Of(clock, log, null) is not { } load)
        {
            findings.Add(Catalogue.LogOfNoLoad.At(Subject.Book, CountWords.KilnLoads(clock.Loads.Count)));
            return clock;
        }

        var logged = KilnLogCheck.Compare(load, log, findings.Units.Temperature);
        foreach (var finding in logged.Findings)
        {
            findings.Add(finding);
        }

        return clock with { Logged = logged };
    }

    private DoneTimes? Done(TimedNight planned)
    {
        if (night.Clock is { } question)
        {
            return DoneTimes.Of(night.Done, question, planned);
        }

        if (night.Done is { Steps.Count: > 0 })
        {
            findings.Add(Catalogue.DoneHoursWithoutStart.At(Subject.Setting(SettingName.StartAt)));
        }

        return null;
    }

    private NightClock Answer(TimedNight timed)
    {
        var steps = timed.Steps;
        var first = steps.Count == 0 ? Duration.Zero : steps[0].Begins;
        var clock = new NightClock
        {
            Steps = [.. steps.Select(s => s.Later(-first))],
            Loads = [.. loads.Select(l => timed.FreeAfter(l) is { } free ? l with { FreeAfter = free } : l)],
            Start = night.Clock?.At.AddMinutes(first.Minutes),
            Zone = night.Clock?.Zone ?? TimeZoneInfo.Utc,
        };
        return WorkingHours.Around(night.Shop.Settings, night.Clock) is { } hours
            ? clock with { Steps = [.. clock.Steps.Select(s => IsOutside(s, hours) ? s with { IsOutside = true } : s)] }
            : clock;

        bool IsOutside(ClockStep step, WorkingHours hours) =>
            step is { Attended: true, IsDone: false } && hours.MinutesOutside(step, clock.Start!.Value.AddMinutes(step.Begins.Minutes)) > 0;
    }

    // Mixes of a late load are made late, unless they fill moulds of another load too.
    private string Shared(ClockStep set)
    {
        var shared = flasks.Mixes.Where(m => m.Flasks.Any(set.Flasks.Contains) && !m.Flasks.All(set.Flasks.Contains)).Select(m => Say.Count(m.Number)).ToList();
        return shared.Count == 0 ? "" : ClockFindingWords.PartMixes(shared.Count == 1, Say.Together(shared));
    }

    private void SayOutside(NightClock clock, string move)
    {
        var outside = clock.Steps.Where(s => s.IsOutside).ToList();
        findings.Add(Catalogue.StepsOutsideHours.At(
            Subject.Setting(WorkingHours.Setting(night.Shop.Settings)),
            CountWords.StepsFall(outside.Count), WorkingHours.Said(night.Shop.Settings, night.Clock!),
            ClockWords.Of(outside[0], findings.Units.Temperature), ClockWords.DayAndHour(clock.Shown(outside[0].Begins)!.Value), move));
    }

    // An hour that is better, or loads that are; the one that leaves least outside.
    private string Better(TimedNight timed)
    {
        var limits = new MoveLimits(WorkingHours.DaysToMove(night.Shop.Settings, night.Clock!), night.Today is { } today
            ? (ClockQuestion.Nearest(today.ToDateTime(TimeOnly.MinValue), night.Clock!.Zone) - night.Clock.At).TotalMinutes
            : double.NegativeInfinity);
        var best = new NightMoves(timing, limits).Best(timed);
        var regroups = loads.Count <= MostLoadsToRegroup;
        if (best.Night.Outside > 0 && regroups)
        {
            var quiet = new KilnLoading(night.Shop, new FindingList(), asksPower: false);
            best = NightMoves.OfLoads(loads).Select(groups => new NightMoves(Timing(quiet.Plan(flasks.Flasks, groups)), limits, groups).Best(best.Night))
                .Where(m => m.Groups is not null).Append(best).MinBy(m => m.Night.Outside)!;
        }

        if (ReferenceEquals(best.Night, timed))
        {
            return ClockFindingWords.NoBetterHour(limits.Days < 1 ? ClockFindingWords.HalfADay : ClockFindingWords.Days((int)limits.Days), regroups);
        }

        var clock = Answer(best.Night);
        var left = clock.Steps.Count(s => s.IsOutside);
        var result = left == 0 ? ClockFindingWords.NothingLeftOutside : ClockFindingWords.LeftOutside(left);
        var pour = clock.Steps.FirstOrDefault(s => s.Kind == ClockStepKind.Pour);
        var follows = night.Clock!.IsPour ? ClockFindingWords.FirstStepAt(ClockWords.DayAndHour(clock.Shown(Duration.Zero)!.Value))
            : pour is null ? "" : ClockFindingWords.FirstPourAt(ClockWords.DayAndHour(clock.Shown(pour.Begins)!.Value));
        return ClockFindingWords.Better(Move(best), result, follows);
    }

    // As the shop types it.
    private string Move(NightMove move)
    {
        var shown = TimeZoneInfo.ConvertTime(night.Clock!.At.AddMinutes(move.Later), night.Clock.Zone).DateTime;
        var hour = ClockFindingWords.Typed(ClockWords.Typed(shown), night.Clock.IsPour ? SettingName.PourAt : SettingName.StartAt);
        var day = ClockWords.Weekday(shown);
        return move.Groups is null ? ClockFindingWords.Type(hour, ClockFindingWords.OnADay(day))
            : ClockFindingWords.Type(ClockFindingWords.Typed(KilnLoading.Typed(move.Groups), SettingName.KilnLoads), move.Later == 0 ? "" : ClockFindingWords.AndOnADay(hour, day));
    }

    private NightTiming Timing(IReadOnlyList<KilnLoad> planned) =>
        new(new NightParts(rules, flasks), planned, flasks.SetAtLeast ?? Duration.Zero, rules.MouldsKeep, night.Clock, WorkingHours.Around(night.Shop.Settings, night.Clock));
}
