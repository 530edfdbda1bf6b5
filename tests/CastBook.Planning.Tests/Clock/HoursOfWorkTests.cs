using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

/// <summary>Hours of work with breaks, of days that differ, and days away. 25 November 2026 is a Wednesday.</summary>
public sealed class HoursOfWorkTests
{
    private static readonly OpenHours Morning = new(new TimeOnly(8, 0), new TimeOnly(12, 0));
    private static readonly OpenHours Afternoon = new(new TimeOnly(13, 30), new TimeOnly(19, 0));

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    // By hand from 10:30: weighed 10:35, mixed 10:39, filled 10:41, set at 12:41, in the break; a quarter of an hour four times is 13:41. Base
    // off and loading take 13 min and the burnout 9 h 55: the pour is at 23:49.
    [Fact]
    public void Plan_SetEndsInTheBreak_IsLongerUntilSomebodyIsThere()
    {
        var late = new OpenHours(new TimeOnly(13, 30), new TimeOnly(2, 0));

        var plan = Plan(Kilned(settings: Wrenmoor.Answered with { HoursOfWork = WeekHours.EveryDay(Morning, late) }), Start(10, 30), Wrenmoor.Ring());

        plan.Ids().ShouldNotContain("steps-outside-hours");
        Hour(plan.Clock!, ClockStepKind.BaseOff).ShouldBe("Wed 25 Nov, 13:41");
        Hour(plan.Clock!, ClockStepKind.Pour).ShouldBe("Wed 25 Nov, 23:49");
        var withoutBreak = Plan(Kilned(settings: Wrenmoor.Answered with { HoursOfWork = WeekHours.EveryDay(new OpenHours(Morning.From, late.Until)) }), Start(10, 30), Wrenmoor.Ring());
        Hour(withoutBreak.Clock!, ClockStepKind.BaseOff).ShouldBe("Wed 25 Nov, 12:41");
    }

    // From 12:55 on all six steps of the mix are in the break, which is over 35 min later.
    [Fact]
    public void Plan_MixInTheBreak_SaysHoursAsTheyAreTyped()
    {
        var friday = new Dictionary<DayOfWeek, IReadOnlyList<OpenHours>>(WeekHours.EveryDay(Morning, Afternoon).ByDay)
        {
            [DayOfWeek.Friday] = [new OpenHours(new TimeOnly(8, 0), new TimeOnly(14, 0))],
            [DayOfWeek.Sunday] = [],
        };
        var settings = Wrenmoor.Answered with
        {
            AtWorkFrom = new TimeOnly(3, 0),
            AtWorkUntil = new TimeOnly(4, 0),
            HoursOfWork = new WeekHours(friday),
            ClosedOn = [DayOfWeek.Saturday],
            Away = [new DaysAway(new DateOnly(2026, 12, 1), new DateOnly(2026, 12, 1)), new DaysAway(new DateOnly(2026, 12, 3), new DateOnly(2026, 12, 4)), new DaysAway(new DateOnly(2027, 5, 1), new DateOnly(2027, 5, 9))],
        };

        var finding = Plan(Kilned(settings: settings), Start(12, 55), Wrenmoor.Ring()).The("steps-outside-hours");

        finding.Seen.ShouldBe(
            "6 steps fall outside the hours from 08:00 to 12:00 and from 13:30 to 19:00 (on Friday from 08:00 to 14:00; closed on Saturday, Sunday, 1 Dec and 3 Dec to 4 Dec), "
            + "first this one: Weigh out mix 1 (Wed 25 Nov, 12:55).");
        finding.Subjects.ShouldHaveSingleItem().Key.ShouldBe("Hours of work");
        finding.Remedy.ShouldStartWith("Type \"2026-11-25 13:40\" as \"Start at\" on the Shop sheet (Wednesday): then nothing falls outside");
    }

    // Away from Tuesday to Sunday, and it is Wednesday: the night begins on Monday, more than a weekend later.
    [Fact]
    public void Plan_InTheMiddleOfATimeAway_ProposesTheFirstNightAfterIt()
    {
        var settings = Wrenmoor.Answered with { Away = [new DaysAway(new DateOnly(2026, 11, 24), new DateOnly(2026, 11, 29))] };
        var night = Wrenmoor.Night(Kilned(settings: settings), Wrenmoor.Ring()) with { Clock = Start(20), Today = new DateOnly(2026, 11, 25) };

        var finding = NightPlanner.Plan(night).The("steps-outside-hours");

        finding.Seen.ShouldContain("outside the hours of work (closed on 24 Nov to 29 Nov), first this one: Weigh out mix 1 (Wed 25 Nov, 20:00).");
        finding.Remedy.ShouldStartWith("Type \"2026-11-30 00:00\" as \"Start at\" on the Shop sheet (Monday): then nothing falls outside");
    }

    // Hours of one day that run into those of the next are counted once.
    [Fact]
    public void Plan_HoursUponEachOther_AreOne()
    {
        var hours = WeekHours.EveryDay(new OpenHours(new TimeOnly(18, 0), new TimeOnly(12, 0)), new OpenHours(new TimeOnly(10, 0), new TimeOnly(19, 0)));

        var plan = Plan(Kilned(settings: Wrenmoor.Answered with { HoursOfWork = hours }), Start(11, 55), Wrenmoor.Ring());

        plan.Clock!.Steps.ShouldAllBe(s => !s.IsOutside);
        Hour(plan.Clock, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 00:14");
    }

    // Piece by piece between the whole minutes at which hours begin and end: a step is marked where, and only where, somebody it takes is missing.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_AnyWeek_MarksTheStepsForWhichSomebodyIsMissing(int seed)
    {
        var night = Invent(seed);

        var plan = NightPlanner.Plan(night);

        var settings = night.Shop.Settings;
        foreach (var step in plan.Clock!.Steps)
        {
            var isMissing = step.Attended && Pieces(plan.Clock, step).Any(at => !IsThere(settings, at) || (step.TwoPeople && !IsSecondThere(settings, at)));
            step.IsOutside.ShouldBe(isMissing, ClockWords.Of(step));
        }

        plan.Ids().Contains("steps-outside-hours").ShouldBe(plan.Clock.Steps.Any(s => s.IsOutside));
    }

    /// <summary>An invented night of a shop whose days have up to three spans of hours each, in UTC.</summary>
    internal static Night Invent(int seed)
    {
        var random = new Random(1000 + seed);
        var night = ClockPropertyTests.Invent(seed);
        var week = Enum.GetValues<DayOfWeek>().ToDictionary(day => day, _ => (IReadOnlyList<OpenHours>)[.. Enumerable.Range(0, random.Next(4)).Select(_ => Hours(random))]);
        return night with
        {
            Clock = new ClockQuestion(new DateTimeOffset(2026, 11, 25, random.Next(24), random.Next(60), 0, TimeSpan.Zero), random.Next(3) == 0, TimeZoneInfo.Utc),
            Shop = night.Shop with
            {
                Settings = night.Shop.Settings with
                {
                    HoursOfWork = new WeekHours(week),
                    Away = random.Next(3) == 0 ? [new DaysAway(new DateOnly(2026, 11, random.Next(23, 27)), new DateOnly(2026, 11, random.Next(27, 30)))] : [],
                },
            },
        };
    }

    private static OpenHours Hours(Random random)
    {
        var from = random.Next(24 * 60);
        return new OpenHours(Time(from), Time(from + random.Next(60, 12 * 60)));

        static TimeOnly Time(int minutes) => TimeOnly.MinValue.AddMinutes(minutes);
    }

    private static IEnumerable<DateTime> Pieces(NightClock clock, ClockStep step)
    {
        var begins = step.Begins.Minutes + (clock.Start!.Value.UtcDateTime - DateTime.UnixEpoch).TotalMinutes;
        var ends = begins + Math.Max(1, step.Takes.Minutes);
        for (var from = begins; from < ends - 1e-4;)
        {
            var until = Math.Min(ends, Math.Floor(from + 1e-4) + 1);
            yield return DateTime.UnixEpoch.AddMinutes((from + until) / 2);
            from = until;
        }
    }

    // Hours that run past midnight are those of the day on which they begin.
    private static bool IsThere(Settings settings, DateTime at)
    {
        var (today, hour) = (DateOnly.FromDateTime(at), TimeOnly.FromDateTime(at));
        return On(today).Any(h => hour >= h.From && (h.Until <= h.From || hour < h.Until)) || On(today.AddDays(-1)).Any(h => h.Until <= h.From && hour < h.Until);

        IReadOnlyList<OpenHours> On(DateOnly day) =>
            settings.ClosedOn.Contains(day.DayOfWeek) || settings.Away.Any(a => day >= a.First && day <= a.Last) ? [] : settings.HoursOfWork!.On(day.DayOfWeek);
    }

    private static bool IsSecondThere(Settings settings, DateTime at) => IsThere(
        settings with { HoursOfWork = WeekHours.EveryDay(new OpenHours(settings.SecondFrom!.Value, settings.SecondUntil!.Value)) }, at);
}
