using System.Globalization;
using CastBook.Planning.Clock;
using Calendar = Ical.Net.Calendar;
using Duration = UnitsNet.Duration;

namespace CastBook.Cli.Tests;

/// <summary>The night as a calendar for a telephone.</summary>
public sealed class CalendarTests : IDisposable
{
    private const string Book = "wrenmoor-night.xlsx";
    private const string Plain = "09_sheetjs_export.xlsx";

    private static readonly string Demo = Path.Combine(ReadmeTests.Repository, "templates", "wrenmoor-night", Book);
    private static readonly DateTimeOffset Made = new(2026, 11, 24, 12, 0, 0, TimeSpan.Zero);

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Fill_WithCalendar_WritesEveryStepOfHandsWithItsHourAndAnAlarm()
    {
        File.Copy(Demo, Path.Combine(folder, Book));

        var run = CastBookRun.In(folder, ["fill", Book, "--start", "2026-11-25 20:00", "--calendar", "night.ics"], "TZ=America/New_York");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        var calendar = Calendar.Load(File.ReadAllText(Path.Combine(folder, "night.ics")))!;
        run.Output.ShouldContain($"calendar: night.ics, {calendar.Events.Count} events with alarms");
        calendar.Events.ShouldAllBe(e => e.Alarms.Count == 1);
        var first = calendar.Events.MinBy(e => e.Start!.AsUtc)!;
        first.Summary!.ShouldStartWith("Mix 1: ");
        first.Start!.AsUtc.ShouldBe(new DateTime(2026, 11, 26, 1, 0, 0, DateTimeKind.Utc)); // 20:00 in New York
        calendar.Events.Count(e => e.Summary!.StartsWith("Pour ", StringComparison.Ordinal)).ShouldBeGreaterThan(1);
        calendar.Events.Select(e => e.Uid).Distinct().Count().ShouldBe(calendar.Events.Count);
        Directory.GetFiles(folder, "*.tmp", new EnumerationOptions { AttributesToSkip = 0 }).ShouldBeEmpty();

        // Filled again an hour later: the same events, moved.
        CastBookRun.In(folder, ["fill", Book, "--start", "2026-11-25 21:00", "--calendar", "night.ics"], "TZ=America/New_York").ExitCode.ShouldBe(0);
        var later = Calendar.Load(File.ReadAllText(Path.Combine(folder, "night.ics")))!;
        later.Events.Select(e => e.Uid).Order().ShouldBe(calendar.Events.Select(e => e.Uid).Order());
        later.Events.Single(e => e.Uid == first.Uid).Start!.AsUtc.ShouldBe(first.Start.AsUtc.AddHours(1));
    }

    [Fact]
    public void Fill_NightWithoutHours_SaysSoAndWritesNoCalendar()
    {
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Books", Plain), Path.Combine(folder, Plain));

        var run = CastBookRun.In(folder, ["fill", Plain, "--json", "--calendar", "night.ics"]);

        run.ExitCode.ShouldBe(0);
        run.Errors.Trim().ShouldBe("calendar: not written, for the night has no hours yet. Give --start or --pour-at, or fill in \"Start at\" on the Shop sheet.");
        run.Output.ShouldStartWith("{");
        File.Exists(Path.Combine(folder, "night.ics")).ShouldBeFalse();
    }

    [Theory]
    [InlineData("plan.txt", "castbook: 'plan.txt' must end in .ics, as calendars do.")]
    [InlineData("nowhere/night.ics", "castbook: there is no folder for 'nowhere/night.ics'. Make the folder first, or type another path after --calendar.")]
    [InlineData("family.ics", "castbook: 'family.ics' is not a calendar that CastBook made, and is left as it is. Type another name after --calendar.")]
    public void Fill_PlaceForTheCalendarIsWrong_EndsWithTwoAndTouchesNothing(string path, string error)
    {
        File.Copy(Demo, Path.Combine(folder, Book));
        File.WriteAllText(Path.Combine(folder, "family.ics"), "BEGIN:VCALENDAR\r\nPRODID:-//Somebody//Else//EN\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n");

        var run = CastBookRun.In(folder, ["fill", Book, "--start", "2026-11-25 20:00", "--calendar", path]);

        (run.ExitCode, run.Errors.Trim(), run.Output).ShouldBe((2, error, ""));
        File.ReadAllText(Path.Combine(folder, "family.ics")).ShouldContain("Somebody");
        File.ReadAllBytes(Path.Combine(folder, Book)).ShouldBe(File.ReadAllBytes(Demo));
    }

    [Fact]
    public void Make_NamesWithSigns_AreReadBackAsTheyWere()
    {
        var flask = "A;B,C\\n\"\u00e9\"\r\nEND:VCALENDAR";
        var (text, events) = NightCalendar.Make(Night(Step(ClockStepKind.Quench, 0, 10, flask)), "night, one; \u00bd\\", "", Made);

        var made = Calendar.Load(text)!.Events.ShouldHaveSingleItem();

        events.ShouldBe(1);
        made.Summary.ShouldBe($"Quench {flask.ReplaceLineEndings("\n")}, and only when the button shows no red in shade");
        made.Description.ShouldBe($"20:00 Quench {flask.ReplaceLineEndings("\n")}, and only when the button shows no red in shade\nnight, one; \u00bd\\.");
        text.Split("\r\n").Count(l => l == "END:VCALENDAR").ShouldBe(1);
    }

    [Fact]
    public void Make_MixAndLaterSteps_OneEventAMixAndNoticeAfterAPause()
    {
        var mix = Step(ClockStepKind.Weigh, 0, 5, "A", 1);
        var (text, _) = NightCalendar.Make(
            Night(mix, mix with { Kind = ClockStepKind.Mix, Begins = Duration.FromMinutes(5) }, Step(ClockStepKind.Set, 10, 110, "A") with { Hands = false }, Step(ClockStepKind.BaseOff, 120, 3, "A"), Step(ClockStepKind.LoadKiln, 123, 10, "A")),
            "night", "", Made);

        var events = Calendar.Load(text)!.Events.OrderBy(e => e.Start!.AsUtc).ToList();

        events.Select(e => e.Summary).ShouldBe(["Mix 1: A", "Base off, rim cleaned, letter scratched in: A", "Load the kiln, sprue down: A"]);
        events.Select(e => e.Alarms.Single().Trigger!.Duration!.Value.ToTimeSpanUnspecified().TotalMinutes).ShouldBe([-10, -10, 0]);
        events[0].End!.AsUtc.ShouldBe(new DateTime(2026, 11, 25, 19, 10, 0, DateTimeKind.Utc));
    }

    // Published with the calendar format: 2007-11-04 01:30 in New York means the first of two, 05:30 of the world's clock;
    // a burnout that begins on the evening before the spring change at 20:00 and takes twelve hours ends at 09:00.
    [Theory]
    [InlineData("2007-11-04 01:30", 0, "2007-11-04 05:30", "01:30")]
    [InlineData("2007-03-10 20:00", 720, "2007-03-11 13:00", "09:00")]
    public void Make_ClocksChange_HoursOfTheWorldAreRight(string start, double after, string expected, string shown)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/New_York");
        var asked = ClockOption.Read(start, null, zone)!;
        var clock = Night(Step(ClockStepKind.Pour, after, 10, "A")) with { Start = asked.At, Zone = zone };

        var made = Calendar.Load(NightCalendar.Make(clock, "night", "", Made).Text)!.Events.Single();

        made.Start!.AsUtc.ShouldBe(DateTime.Parse(expected, CultureInfo.InvariantCulture));
        made.Description!.ShouldStartWith($"{shown} Pour A");
    }

    private static NightClock Night(params ClockStep[] steps) => new()
    {
        Steps = steps,
        Loads = [],
        Start = new DateTimeOffset(2026, 11, 25, 20, 0, 0, TimeSpan.FromHours(1)),
        Zone = TimeZoneInfo.CreateCustomTimeZone("one", TimeSpan.FromHours(1), "one", "one"),
    };

    private static ClockStep Step(ClockStepKind kind, double begins, double takes, string flask, int? mix = null) => new()
    {
        Kind = kind,
        Begins = Duration.FromMinutes(begins),
        Takes = Duration.FromMinutes(takes),
        Hands = true,
        Flasks = [flask],
        Mix = mix,
    };
}
