using CastBook.Planning.Clock;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

/// <summary>Steps that take two people, and steps that are not left alone.</summary>
public sealed class PeopleOfTheNightTests
{
    // The pour at 08:19 takes two people, and the second is there from 9 to 17: what comes before it waits.
    [Fact]
    public void Plan_PourTakesTwoPeople_WaitsForTheSecond()
    {
        var settings = Wrenmoor.Answered with { TwoPeopleFor = [ClockStepKind.Pour], SecondFrom = new TimeOnly(9, 0), SecondUntil = new TimeOnly(17, 0) };

        var plan = Plan(Kilned(settings: settings), Start(20), Wrenmoor.Ring());

        plan.Ids().ShouldNotContain("steps-outside-hours");
        Hour(plan.Clock!, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 09:04");
        plan.Clock!.Steps.Where(s => s.TwoPeople).Select(s => s.Kind).ShouldBe([ClockStepKind.Pour]);
        Hour(Plan(Kilned(settings: settings with { TwoPeopleFor = [] }), Start(20), Wrenmoor.Ring()).Clock!, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 08:19");
    }

    // Mixing begins at 20:05, three hours after the second person has left.
    [Fact]
    public void Plan_MixTakesTwoPeopleAtNight_NamesTheHoursOfBoth()
    {
        var settings = DayShift with
        {
            TwoPeopleFor = [ClockStepKind.Mix, ClockStepKind.BowlVacuum, ClockStepKind.Fill, ClockStepKind.FlaskVacuum],
            SecondFrom = new TimeOnly(8, 0),
            SecondUntil = new TimeOnly(17, 0),
        };

        Plan(Kilned(settings: settings), Start(20), Wrenmoor.Ring()).The("steps-outside-hours").Text().ShouldBe(
            "4 steps fall outside the hours from 07:00 to 23:00, or those of the second person from 08:00 to 17:00, first this one: "
            + "Powder into the water, mix 1 (Wed 25 Nov, 20:05). Set, burnout and holds are never shortened to fit. "
            + "Type \"2026-11-25 16:45\" as \"Start at\" on the Shop sheet (Wednesday): then nothing falls outside, and the first pour is at Thu 26 Nov, 07:04.");
    }

    // From Friday evening on the pour would be on Saturday; 25 November 2026 is a Wednesday.
    [Fact]
    public void Plan_PourOnADayOff_SaysWhichDayIsBetter()
    {
        var settings = DayShift with { ClosedOn = [DayOfWeek.Saturday, DayOfWeek.Sunday] };
        var friday = Start(20) with { At = Start(20).At.AddDays(2) };

        var plan = Plan(Kilned(settings: settings), friday, Wrenmoor.Ring());

        plan.The("steps-outside-hours").Text().ShouldBe(
            "2 steps fall outside the hours from 07:00 to 23:00 (closed on Saturday and Sunday), first this one: Pour A, flask at 540 °C (Sat 28 Nov, 08:19). "
            + "Set, burnout and holds are never shortened to fit. "
            + "Type \"2026-11-27 10:00\" as \"Start at\" on the Shop sheet (Friday): then nothing falls outside, and the first pour is at Fri 27 Nov, 22:19.");
        Plan(Kilned(settings: settings), friday with { At = friday.At.AddHours(-10) }, Wrenmoor.Ring()).Ids().ShouldNotContain("steps-outside-hours");
    }

    // From Saturday noon on no hour of half a day helps.
    [Fact]
    public void Plan_WholeNightOnDaysOff_FindsTheDayBeforeOrAfter()
    {
        var settings = Wrenmoor.Answered with { ClosedOn = [DayOfWeek.Saturday, DayOfWeek.Sunday] };

        var plan = Plan(Kilned(settings: settings), Start(12) with { At = Start(12).At.AddDays(3) }, Wrenmoor.Ring());

        plan.The("steps-outside-hours").Text().ShouldContain("outside the hours of work (closed on Saturday and Sunday), first this one: Weigh out mix 1 (Sat 28 Nov, 12:00).");
        plan.The("steps-outside-hours").Remedy.ShouldStartWith("Type \"2026-11-27 10:00\" as \"Start at\" on the Shop sheet (Friday): then nothing falls outside");
    }

    // It is Saturday: Friday is gone, and Monday is the next.
    [Fact]
    public void Plan_BetterDayIsGone_ProposesTheNextOne()
    {
        var settings = Wrenmoor.Answered with { ClosedOn = [DayOfWeek.Saturday, DayOfWeek.Sunday] };
        var night = Wrenmoor.Night(Kilned(settings: settings), Wrenmoor.Ring()) with { Clock = Start(12) with { At = Start(12).At.AddDays(3) }, Today = new DateOnly(2026, 11, 28) };

        NightPlanner.Plan(night).The("steps-outside-hours").Remedy.ShouldStartWith("Type \"2026-11-30 00:00\" as \"Start at\" on the Shop sheet (Monday): then nothing falls outside");
    }

    // A burnout of ten hours that nobody leaves alone, in a shop that is open for sixteen: its timer waits until morning.
    [Fact]
    public void Plan_BurnoutIsNotLeftAlone_RunsWhileSomebodyIsThere()
    {
        var settings = DayShift with { StayWith = [ClockStepKind.Stage, ClockStepKind.Fall] };

        var plan = Plan(Kilned(settings: settings), Start(20), Wrenmoor.Ring());

        plan.Ids().ShouldNotContain("steps-outside-hours");
        Hour(plan.Clock!, ClockStepKind.Stage).ShouldBe("Thu 26 Nov, 07:09");
        plan.Clock!.Steps.Count(s => s.Watched).ShouldBe(4);
        plan.Clock.Steps.ShouldAllBe(s => !s.Watched || !s.Hands);
    }
}
