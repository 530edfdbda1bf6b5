using System.Globalization;
using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>The lines for the night's hours on the Shop sheet that is added with the first questions.</summary>
public sealed class HoursAskedTests
{
    [Fact]
    public void Fill_PlainList_HasLinesForTheNightsHours()
    {
        var filled = Filled.From(Nights.Plain());

        string[] hours = ["Start at", "Pour at", "At work from", "At work until", "Hours of work", "Closed on"];
        hours.ShouldAllBe(h => Line(filled, h) > 4 && filled["Shop", $"B{Line(filled, h)}"] == null);
    }

    // Asked first and answered first, while sizes of flasks, alloys and a powder are still open.
    [Fact]
    public void Fill_HoursAnsweredFirst_AreTaken()
    {
        var filled = Filled.From(Nights.Plain());

        var answered = filled.AfterTyping(
            ("Shop", $"B{Line(filled, "Start at")}", "2026-11-27 20:00"), ("Shop", $"B{Line(filled, "At work from")}", "7:00"), ("Shop", $"B{Line(filled, "At work until")}", "23:00"),
            ("Shop", $"B{Line(filled, "Hours of work")}", "08:00-12:00, 13:30-19:00; Friday 08:00-14:00"), ("Shop", $"B{Line(filled, "Closed on")}", "Sunday, 2026-12-24"));

        answered.Result.Night.Clock!.At.ShouldBe(new DateTimeOffset(2026, 11, 27, 20, 0, 0, TimeSpan.Zero));
        var settings = answered.Result.Night.Shop.Settings;
        (settings.AtWorkFrom, settings.AtWorkUntil).ShouldBe((new TimeOnly(7, 0), new TimeOnly(23, 0)));
        settings.HoursOfWork!.On(DayOfWeek.Friday).ShouldBe([new OpenHours(new TimeOnly(8, 0), new TimeOnly(14, 0))]);
        settings.HoursOfWork.On(DayOfWeek.Monday).Count.ShouldBe(2);
        settings.ClosedOn.ShouldBe([DayOfWeek.Sunday]);
        settings.Away.ShouldBe([new DaysAway(new DateOnly(2026, 12, 24), new DateOnly(2026, 12, 24))]);
    }

    private static int Line(Filled filled, string setting) => Enumerable.Range(5, 60).FirstOrDefault(r => filled["Shop", string.Create(CultureInfo.InvariantCulture, $"A{r}")] is string name && name == setting);
}
