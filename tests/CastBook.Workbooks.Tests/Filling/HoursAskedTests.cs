using System.Globalization;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>The lines for the night's hours on the Shop sheet that is added with the first questions.</summary>
public sealed class HoursAskedTests
{
    [Fact]
    public void Fill_PlainList_HasLinesForTheNightsHours()
    {
        var filled = Filled.From(Nights.Plain());

        string[] hours = ["Start at", "Pour at", "At work from", "At work until", "Closed on"];
        hours.ShouldAllBe(h => Line(filled, h) > 4 && filled["Shop", $"B{Line(filled, h)}"] == null);
    }

    // Asked first and answered first, while sizes of flasks, alloys and a powder are still open.
    [Fact]
    public void Fill_HoursAnsweredFirst_AreTaken()
    {
        var filled = Filled.From(Nights.Plain());

        var answered = filled.AfterTyping(
            ("Shop", $"B{Line(filled, "Start at")}", "2026-11-27 20:00"), ("Shop", $"B{Line(filled, "At work from")}", "7:00"), ("Shop", $"B{Line(filled, "At work until")}", "23:00"),
            ("Shop", $"B{Line(filled, "Closed on")}", "Sunday"));

        answered.Result.Night.Clock!.At.ShouldBe(new DateTimeOffset(2026, 11, 27, 20, 0, 0, TimeSpan.Zero));
        var settings = answered.Result.Night.Shop.Settings;
        (settings.AtWorkFrom, settings.AtWorkUntil).ShouldBe((new TimeOnly(7, 0), new TimeOnly(23, 0)));
        settings.ClosedOn.ShouldBe([DayOfWeek.Sunday]);
    }

    private static int Line(Filled filled, string setting) => Enumerable.Range(5, 60).FirstOrDefault(r => filled["Shop", string.Create(CultureInfo.InvariantCulture, $"A{r}")] is string name && name == setting);
}
