using CastBook.Planning.Clock;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

public sealed class PastHoursTests
{
    // From 20:00 on Wednesday, 25 November, to 08:47 on Thursday.
    private static NightPlan Plan(int today, ClockQuestion clock, DoneHours? done = null) =>
        NightPlanner.Plan(Wrenmoor.Night(Kilned(), Wrenmoor.Ring()) with { Clock = clock, Today = new DateOnly(2026, 11, today), Done = done });

    [Fact]
    public void Plan_NightIsOver_SaysSo() => Plan(27, Start(20)).The("hour-is-past").Text().ShouldBe(
        "\"Start at\" 2026-11-25 20:00 lies in the past: the night that is counted from it was over on Thu 26 Nov, 08:47. "
        + "Its days are those of a night gone by. Type the day and hour of the next night on the Shop sheet, or clear them there.");

    [Fact]
    public void Plan_PourOfANightThatIsOver_NamesThePour() => Plan(27, Start(8) with { IsPour = true }).The("hour-is-past").Text().ShouldStartWith("\"Pour at\" 2026-11-25 08:00 lies in the past: ");

    // The book is filled again on the morning after.
    [Theory]
    [InlineData(24)]
    [InlineData(25)]
    [InlineData(26)]
    public void Plan_NightIsToComeOrUnderWay_SaysNothing(int today) => Plan(today, Start(20)).Ids().Where(id => id.EndsWith("-past", StringComparison.Ordinal)).ShouldBeEmpty();

    // Poured at eight on Wednesday it begins at 19:41 on Tuesday; a day later is the earliest.
    [Fact]
    public void Plan_PourAskedTooEarly_SaysWhichIsTheEarliest() => Plan(25, Start(8) with { IsPour = true }).The("first-step-is-past").Text().ShouldBe(
        "To pour at Wed 25 Nov, 08:00 the first step lies in the past: Tue 24 Nov, 19:41. Set, burnout and holds are never shortened to make up for it. "
        + "If the night is under way, type under \"Done at\" on the Clock sheet when its steps were done; else type \"2026-11-26 08:00\" or later as \"Pour at\" on the Shop sheet.");

    [Fact]
    public void Plan_LaterAsToldOrUnderWay_SaysNothing()
    {
        var under = new DoneHours([new DoneStep("Weigh out mix 1", new TypedHour(new DateOnly(2026, 11, 24), new TimeOnly(19, 46)))], null);

        Plan(25, Start(8) with { IsPour = true, At = Start(8).At.AddDays(1) }).Ids().ShouldNotContain("first-step-is-past");
        Plan(25, Start(8) with { IsPour = true }, under).Ids().ShouldNotContain("first-step-is-past");
    }
}
