using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

public sealed class ClockPlanningTests
{
    internal static Shop Kilned(double side = 300, Settings? settings = null) => Wrenmoor.Shop with
    {
        Kilns = [new Kiln { Name = "Front kiln", Shape = KilnShape.Square, InsideWidth = Wrenmoor.Mm(side), CoolsDegreesPerHour = 100 }],
        Settings = settings ?? Wrenmoor.Answered,
    };

    internal static Settings DayShift => Wrenmoor.Answered with { AtWorkFrom = new TimeOnly(7, 0), AtWorkUntil = new TimeOnly(23, 0) };

    // One ring a flask, so that the number of flasks is known.
    internal static Piece OneAFlask(int quantity) =>
        Wrenmoor.Ring(quantity) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } };

    internal static ClockQuestion Start(int hour, int minute = 0) => new(new DateTimeOffset(2026, 11, 25, hour, minute, 0, TimeSpan.Zero), IsPour: false, TimeZoneInfo.Utc);

    internal static NightPlan Plan(Shop shop, ClockQuestion? clock, params Piece[] pieces) => NightPlanner.Plan(Wrenmoor.Night(shop, pieces) with { Clock = clock });

    internal static string Hour(NightClock clock, ClockStepKind kind, int which = 0) =>
        ClockWords.DayAndHour(clock.Shown(clock.Steps.Where(s => s.Kind == kind).ElementAt(which).Begins)!.Value);

    // By hand from 20:00: weighed 20:05, mixed 20:09, bowl vacuum until 20:10:30, filled 20:11; two hours of set to 22:11; base off
    // 3 min, loading 10 min: 22:24; 2 + 2 + 3 h to 05:24; 732 to 540 °C at 100 an hour 1 h 55.2 and 1 h held: 08:19.
    // Poured after 10 min, 08:29, and 15 min later the quench.
    [Fact]
    public void Plan_OneFlaskFromItsStart_AddsUpByHand()
    {
        var clock = Plan(Kilned(), Start(20), Wrenmoor.Ring()).Clock!;

        Hour(clock, ClockStepKind.Weigh).ShouldBe("Wed 25 Nov, 20:00");
        Hour(clock, ClockStepKind.FlaskVacuum).ShouldBe("Wed 25 Nov, 20:11");
        Hour(clock, ClockStepKind.BaseOff).ShouldBe("Wed 25 Nov, 22:11");
        Hour(clock, ClockStepKind.Stage).ShouldBe("Wed 25 Nov, 22:24");
        Hour(clock, ClockStepKind.Fall).ShouldBe("Thu 26 Nov, 05:24");
        Hour(clock, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 08:19");
        Hour(clock, ClockStepKind.Quench).ShouldBe("Thu 26 Nov, 08:44");
        clock.Loads[0].Takes.Hours.ShouldBe(7 + 1.92 + 1, 1e-9);
    }

    [Fact]
    public void Plan_BackFromThePourOfAForwardPlan_IsTheSameNight()
    {
        var forward = Plan(Kilned(), Start(20), OneAFlask(3)).Clock!;
        var pour = forward.Start!.Value.AddMinutes(forward.Steps.First(s => s.Kind == ClockStepKind.Pour).Begins.Minutes);

        var backward = Plan(Kilned(), new ClockQuestion(pour, IsPour: true, TimeZoneInfo.Utc), OneAFlask(3)).Clock!;

        backward.Steps.Select(s => (ClockWords.Of(s), backward.Shown(s.Begins))).ShouldBe(forward.Steps.Select(s => (ClockWords.Of(s), forward.Shown(s.Begins))));
    }

    [Fact]
    public void Plan_NobodySaidAnHour_SaysDurationsOnly()
    {
        var clock = Plan(Kilned(), null, Wrenmoor.Ring()).Clock!;

        clock.Start.ShouldBeNull();
        clock.Shown(Duration.Zero).ShouldBeNull();
        clock.PourOf("A")!.Begins.Minutes.ShouldBe(739.2, 1e-6);
    }

    // Clocks go forward on 29 March 2026 at 02:00 in Berlin: the same hours end an hour later on the dial; in October an hour earlier.
    [Theory]
    [InlineData(2026, 3, 28, "Sun 29 Mar, 09:19")]
    [InlineData(2026, 10, 24, "Sun 25 Oct, 07:19")]
    [InlineData(2026, 6, 6, "Sun 7 Jun, 08:19")]
    public void Plan_NightOfAClockChange_HasTheSameHours(int year, int month, int day, string pour)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin");
        var start = ClockQuestion.Shown(new DateTime(year, month, day, 20, 0, 0, DateTimeKind.Unspecified), zone)!.Value;

        var clock = Plan(Kilned(), new ClockQuestion(start, IsPour: false, zone), Wrenmoor.Ring()).Clock!;

        Hour(clock, ClockStepKind.Pour).ShouldBe(pour);
        clock.PourOf("A")!.Begins.Minutes.ShouldBe(739.2, 1e-6);
    }

    // Without a wait the pour would be at 05:04. The moulds set on as long as hands are there until 20:00 to load them, and the
    // kiln's timer waits for the rest of the two hours.
    [Fact]
    public void Plan_PourFallsIntoTheNight_TheTimerWaits()
    {
        var plan = Plan(Kilned(settings: DayShift with { AtWorkUntil = new TimeOnly(20, 0) }), Start(16, 45), Wrenmoor.Ring());

        plan.Ids().ShouldNotContain("steps-outside-hours");
        Hour(plan.Clock!, ClockStepKind.BaseOff).ShouldBe("Wed 25 Nov, 19:41");
        plan.Clock!.Steps.Single(s => s.Kind == ClockStepKind.Timer).Takes.Minutes.ShouldBe(75);
        Hour(plan.Clock, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 07:04");
    }

    // Set ends at 23:41, so the moulds set on until morning: nine hours and a half, and eight to ten overnight are common practice.
    [Fact]
    public void Plan_KilnWouldBeLoadedAtNight_TheMouldsSetOn()
    {
        var clock = Plan(Kilned(settings: DayShift), Start(21, 30), Wrenmoor.Ring()).Clock!;

        Hour(clock, ClockStepKind.BaseOff).ShouldBe("Thu 26 Nov, 07:11");
        Hour(clock, ClockStepKind.Pour).ShouldBe("Thu 26 Nov, 17:19");
        clock.Steps.ShouldAllBe(s => !s.IsOutside);
        clock.Steps.Single(s => s.Kind == ClockStepKind.Set).Takes.Hours.ShouldBeInRange(8, 10);
    }

    [Fact]
    public void Plan_StartAtNight_SaysWhichStartIsBetter()
    {
        var plan = Plan(Kilned(settings: DayShift), Start(5), Wrenmoor.Ring());

        plan.The("steps-outside-hours").Text().ShouldBe(
            "6 steps fall outside the hours from 07:00 to 23:00, first this one: Weigh out mix 1 (Wed 25 Nov, 05:00). "
            + "Set, burnout and holds are never shortened to fit. "
            + "Type \"2026-11-25 07:00\" as \"Start at\" on the Shop sheet (Wednesday): then nothing falls outside, and the first pour is at Wed 25 Nov, 19:19.");
        plan.Clock!.Steps.Count(s => s.IsOutside).ShouldBe(6);
    }

    [Fact]
    public void Plan_PourAtNight_SaysWhichHourIsBetter()
    {
        var pour = Start(6) with { IsPour = true };

        Plan(Kilned(settings: DayShift), pour, Wrenmoor.Ring()).The("steps-outside-hours").Text().ShouldBe(
            "2 steps fall outside the hours from 07:00 to 23:00, first this one: Pour A, flask at 540 °C (Wed 25 Nov, 06:00). "
            + "Set, burnout and holds are never shortened to fit. "
            + "Type \"2026-11-25 07:00\" as \"Pour at\" on the Shop sheet (Wednesday): then nothing falls outside, and the first step is at Tue 24 Nov, 18:41.");
    }

    // Three flasks of 81 mm outside with 20 mm between them and to the wall need more than 230 mm; two stand across the corners.
    [Fact]
    public void Plan_SmallKiln_RunsLoadsOneAfterTheOther()
    {
        var clock = Plan(Kilned(side: 230), Start(20), OneAFlask(5)).Clock!;

        clock.Loads.Count.ShouldBeGreaterThan(1);
        clock.Loads.SelectMany(l => l.Flasks).Order().ShouldBe(["A", "B", "C", "D", "E"]);
        clock.Loads.ShouldAllBe(l => l.Spots.Count == l.Flasks.Count);
        for (var i = 1; i < clock.Loads.Count; i++)
        {
            // Empty, and from 540 down to the 149 °C of the first stage at 100 °C an hour.
            var emptied = clock.Steps.Where(s => s.Kind == ClockStepKind.Pour && s.Load == i).Max(s => s.Ends.Minutes);
            clock.Steps.Single(s => s.Kind == ClockStepKind.LoadKiln && s.Load == i + 1).Begins.Minutes.ShouldBeGreaterThanOrEqualTo(emptied + (60 * 3.91) - 1e-6);
        }
    }

    [Fact]
    public void Plan_KilnTooSmallForTheFlask_SaysSo()
    {
        var plan = Plan(Kilned(side: 110), Start(20), Wrenmoor.Ring());

        plan.The("flask-over-kiln").Text().ShouldBe(
            "Flask A is 81 mm wide outside and finds no room in any kiln with 20 mm around it. It is in no kiln load and not on the clock. "
            + "Check the inside sizes on the Kilns sheet and \"Gap in the kiln\" on the Shop sheet, or burn it out elsewhere.");
        plan.Clock!.Loads.ShouldBeEmpty();
    }

    // Bronze here is poured into flasks of 640 °C, silver into 540: bronze goes first, then the kiln falls 1 h and holds its hour.
    [Fact]
    public void Plan_TwoFlaskTemperatures_PoursTheHottestFirst()
    {
        var shop = Kilned() with
        {
            Alloys = [Wrenmoor.Silver, Wrenmoor.Bronze with { Alloy = Wrenmoor.Bronze.Alloy with { FlaskTemperatureOrdinary = Wrenmoor.Celsius(640) } }],
        };

        var plan = Plan(shop, Start(20), Wrenmoor.Ring(), Wrenmoor.Ring() with { Alloy = "Bell bronze" });

        var bronze = plan.Clock!.PourOf(plan.Flasks.Single(f => f.Alloy == "Bell bronze").Letter)!;
        var silver = plan.Clock.PourOf(plan.Flasks.Single(f => f.Alloy == "Bench silver").Letter)!;
        plan.Clock.Loads.ShouldHaveSingleItem().Pours.Select(p => p.Temperature!.Value.DegreesCelsius).ShouldBe([640, 540]);
        (silver.Begins - bronze.Ends).Hours.ShouldBe(2, 1e-9);
    }

    [Fact]
    public void Plan_KilnCoolingUnknown_IsAskedForWhenHoursAre()
    {
        var shop = Wrenmoor.Shop;

        Plan(shop, Start(20), Wrenmoor.Ring()).The("kiln-cooling-not-known").Text().ShouldBe(
            "Nothing says how fast the kiln cools, so 100 °C in an hour was counted for its fall to flask temperature. "
            + "Note its temperature every half hour on its way down, and type the fall in an hour as \"Cools\" on the Kilns sheet.");
        Plan(shop, null, Wrenmoor.Ring()).Ids().ShouldNotContain("kiln-cooling-not-known");
    }

    // RFC 5545, 3.3.5: an hour that comes twice is the first; one that does not come is refused here, where people type it.
    [Fact]
    public void Shown_HoursOfTheChange_AreTheFirstOrNone()
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/New_York");

        ClockQuestion.Shown(new DateTime(2007, 11, 4, 1, 30, 0, DateTimeKind.Unspecified), zone)!.Value.UtcDateTime.ShouldBe(new DateTime(2007, 11, 4, 5, 30, 0, DateTimeKind.Utc));
        ClockQuestion.Shown(new DateTime(2007, 3, 11, 2, 30, 0, DateTimeKind.Unspecified), zone).ShouldBeNull();
        ClockQuestion.Nearest(new DateTime(2007, 3, 11, 2, 30, 0, DateTimeKind.Unspecified), zone).UtcDateTime.ShouldBe(new DateTime(2007, 3, 11, 7, 30, 0, DateTimeKind.Utc));
    }

    // Twelve hours of burnout from 20:00 end at 09:00, for that night an hour is skipped.
    [Fact]
    public void Shown_BurnoutOverTheChange_EndsAnHourLaterOnTheDial()
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/New_York");
        var clock = new NightClock { Steps = [], Loads = [], Start = ClockQuestion.Shown(new DateTime(2007, 3, 10, 20, 0, 0, DateTimeKind.Unspecified), zone), Zone = zone };

        clock.Shown(Duration.FromHours(12)).ShouldBe(new DateTime(2007, 3, 11, 9, 0, 0, DateTimeKind.Unspecified));
    }
}
