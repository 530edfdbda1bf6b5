using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Filling;

public sealed class ClockSheetTests
{
    private static Filled WithStart(object hour) =>
        Filled.From(Nights.Whole()).AfterTyping(("Shop", "A21", "Start at"), ("Shop", "B21", hour), ("Kilns", "E1", "Cools (°C/h)"), ("Kilns", "E2", 100));

    // By hand: weighed 5, mixed 4, bowl vacuum 1.5, filled 0.5 min; set 2 h to 22:11; base off 3 and loading 10 min; 150, 370 and 732 °C
    // in 8 h; down to 538 °C in 1 h 56.4 and 2 h held: 10:20; poured after 10 min, quenched 20 min later, as 90 × 125 is of the large class.
    [Fact]
    public void Fill_StartOnTheShopSheet_GivesEveryStepItsHour()
    {
        var filled = WithStart("2026-11-25 20:00");

        filled["Clock", "A1"].ShouldBe("Clock: night");
        filled.Row("Clock", 4).ShouldBe(["Day", "From", "Until", "Step", "Done at", "Remarks"]);
        new[] { "A5", "B5", "C5", "D5" }.Select(c => filled["Clock", c]).ShouldBe(["Wed 25 Nov", "20:00", "20:05", "Weigh out mix 1"]);
        new[] { "A8", "B8", "C8", "D8" }.Select(c => filled["Clock", c]).ShouldBe([null, "20:11", "22:11", "A set and are not moved"]);
        new[] { "B12", "C12", "D12" }.Select(c => filled["Clock", c]).ShouldBe(["00:24", "02:24", "Kiln of load 1 to 370 °C, held 2 h"]);
        new[] { "B14", "D14" }.Select(c => filled["Clock", c]).ShouldBe(["06:24", "Kiln of load 1 falls to 538 °C, there after 1 h 56, then held 2 h"]);
        filled["Night plan", "M5"].ShouldBe("Thu 10:20");
        filled["Night plan", "O5"].ShouldBe("Thu 10:50");
        filled["Mixes", "C5"].ShouldBe("Wed 20:05");
    }

    [Fact]
    public void Fill_StepsOfTwoPeople_SaysWhoMustBeThereAndKeepsTheShopsCells()
    {
        var filled = WithStart("2026-11-25 20:00").AfterTyping(
            ("Shop", "A22", "Two people for"), ("Shop", "B22", "pour, quench"), ("Shop", "A23", "Stay with"), ("Shop", "B23", "burnout"));

        filled.Row("Clock", 4).ShouldBe(["Day", "From", "Until", "Step", "Done at", "Who", "Remarks"]);
        new[] { "F5", "F12", "F15", "F16" }.Select(c => filled["Clock", c]).ShouldBe([null, "stay with it", "two people", "two people"]);

        var typed = filled.AfterTyping(("Clock", "E5", "20:05"), ("Clock", "G5", "scale drifts"));
        new[] { "E5", "F5", "G5" }.Select(c => typed["Clock", c]).ShouldBe(["20:05", null, "scale drifts"]);
        typed.Sheets.ShouldNotContain("Clock (kept)");
    }

    [Fact]
    public void Fill_NoHourSaid_CountsFromTheFirstStepAndAsks()
    {
        var filled = Filled.From(Nights.Whole());

        filled["Clock", "A2"].ShouldBe("Hours and minutes count from the first step. For times of day type \"Start at\" or \"Pour at\" on the Shop sheet, such as 2026-11-25 20:00.");
        filled["Clock", "B5"].ShouldBe("0:00");
        filled["Clock", "B8"].ShouldBe("0:11");
        filled["Night plan", "M5"].ShouldBeNull();
        filled["Mixes", "C5"].ShouldBeNull();
    }

    // Investment stands in the mould: whatever comes into the list now hangs elsewhere.
    [Fact]
    public void Fill_FlaskFilledByTheClock_NothingInItIsMovedWhenTheListGrows()
    {
        var filled = WithStart("2026-11-25 20:00").AfterTyping(("Clock", "E7", "20:12"));
        filled["Clock", "D7"].ShouldBe("Fill A");
        var before = filled["Harbour list", "M5"];
        filled.Ids.ShouldContain("flask-done-counts-as-waxed");

        var grown = filled.AfterTyping(
            ("Harbour list", "B8", "Tide bell"), ("Harbour list", "C8", 8), ("Harbour list", "D8", 6.9), ("Harbour list", "E8", "harbour resin"),
            ("Harbour list", "F8", "house sterling"), ("Harbour list", "G8", 22), ("Harbour list", "H8", 14), ("Harbour list", "I8", 12));

        grown["Harbour list", "M5"].ShouldBe(before);
        grown["Harbour list", "M8"].ShouldBeOfType<string>().ShouldNotContain("A");
        grown.Plan.Flasks.Single(f => f.Letter == "A").Pieces.ShouldBe(filled.Plan.Flasks.Single(f => f.Letter == "A").Pieces);
    }

    [Fact]
    public void Fill_TicksOfAStep_StayWithItWhenTheHourMoves()
    {
        var filled = WithStart("2026-11-25 20:00").AfterTyping(("Clock", "E8", "x"), ("Clock", "F8", "cold room"), ("Shop", "B21", "2026-11-25 21:00"));

        filled["Clock", "B8"].ShouldBe("21:11");
        filled["Clock", "E8"].ShouldBe("x");
        filled["Clock", "F8"].ShouldBe("cold room");
        filled.Sheets.ShouldNotContain("Clock (kept)");
    }

    // Filled at 20:41 instead of 20:11: half an hour later all through. 0.86181 of a day is 20:41.
    [Theory]
    [InlineData("20:41")]
    [InlineData("2026-11-25 20:41")]
    [InlineData(0.861805555555556)]
    [InlineData(46351.861805555556)]
    public void Fill_HourOfAStepTyped_MovesTheRestAndIsKept(object hour)
    {
        var filled = WithStart("2026-11-25 20:00");
        filled["Clock", "D7"].ShouldBe("Fill A");

        var late = Filled.From(Typed.Into(filled.Bytes, ("Clock", "E7", hour)));

        late["Clock", "B8"].ShouldBe("20:41");
        late["Night plan", "M5"].ShouldBe("Thu 10:50");
        late["Clock", "E7"].ShouldBe(hour);
        late.Sheets.ShouldNotContain("Clock (kept)");
        late.Ids.ShouldContain("night-runs-late");
        late.Again().Result.Changed.ShouldBeFalse();
    }

    // Fill A was to be done at 00:41.
    [Theory]
    [InlineData(1)]
    [InlineData("1")]
    [InlineData("01:00")]
    public void Fill_OneOClock_IsNoTick(object hour)
    {
        var filled = WithStart("2026-11-26 00:30");
        filled["Clock", "B8"].ShouldBe("00:41");

        Filled.From(Typed.Into(filled.Bytes, ("Clock", "E7", hour)))["Clock", "B8"].ShouldBe("01:00");
    }

    [Fact]
    public void Fill_HourItIsTyped_NothingBeginsBefore()
    {
        var late = WithStart("2026-11-25 20:00").AfterTyping(("Clock", "E3", "22:40"));

        late["Clock", "D3"].ShouldBe("If you are late, type the hour it is now:");
        late["Clock", "B5"].ShouldBe("22:40");
        late["Clock", "E3"].ShouldBe("22:40");
        late["Night plan", "M5"].ShouldBe("Thu 13:00");
        late.Sheets.ShouldNotContain("Clock (kept)");
    }

    [Theory]
    [InlineData("soon", "soon")]
    [InlineData(22.4, "22.4")]
    [InlineData(2240, "2240")]
    public void Fill_NoHourBesideAStep_SaysWhatToType(object typed, string shown)
    {
        var filled = WithStart("2026-11-25 20:00").AfterTyping(("Clock", "E7", typed));

        filled.Result.Findings.Single(f => f.Id == "done-hour-unreadable").Seen.ShouldBe($"\"{shown}\" beside \"Fill A\" on the Clock sheet is no hour.");
        filled["Clock", "E7"].ShouldBe(typed is int whole ? (double)whole : typed);
        filled["Night plan", "M5"].ShouldBe("Thu 10:20");
    }

    [Fact]
    public void Fill_HourWithoutDay_AsksForIt()
    {
        var filled = WithStart("20:00");

        filled.Result.Findings.Single(f => f.Id == "hour-without-day").Seen.ShouldBe("\"Start at\" is \"20:00\", which does not say a day and an hour.");
        filled["Clock", "B5"].ShouldBe("0:00");
    }

    // 12/24 and 24/12 can be read in one way only.
    [Theory]
    [InlineData("12/24/26", "2026-12-04 18:00")]
    [InlineData("24/12/26", "2026-04-12 18:00")]
    public void Fill_StartInDigits_IsReadInTheOrderOfTheBook(string due, string start)
    {
        var filled = WithDue(due, ("Start at", "12/4/26 6 PM"));

        filled.Result.Night.Clock?.At.ToString("yyyy-MM-dd HH:mm", null).ShouldBe(start);
        filled.Ids.ShouldNotContain("hour-of-two-days");
    }

    [Fact]
    public void Fill_StartAndPourInDigits_SettleEachOther() =>
        WithDue(null, ("Start at", "11/25/26 6 PM"), ("Pour at", "12/4/26 6 PM")).Result.Night.Clock?.At.ToString("yyyy-MM-dd HH:mm", null).ShouldBe("2026-12-04 18:00");

    [Theory]
    [InlineData(null)]
    [InlineData("12/4/26")]
    public void Fill_StartOfTwoDays_AsksWhichIsMeant(string? due)
    {
        var filled = WithDue(due, ("Start at", "12/4/26 6 PM"));

        filled.Result.Night.Clock.ShouldBeNull();
        filled.Result.Findings.Single(f => f.Id == "hour-of-two-days").Seen.ShouldBe("\"Start at\" is \"12/4/26 6 PM\": 2026-04-12 18:00 or 2026-12-04 18:00.");
    }

    // Clocks of central Europe go from 2:00 to 3:00 in the night to 29 March 2026, by the directive 2000/84/EC: the last Sunday of March.
    [Fact]
    public void Fill_StartInTheHourThatIsSkipped_IsSaid()
    {
        var filled = Filled.From(
            new BookBuilder()
                .Sheet("Sheet1", s => s.Row("Piece", "Qty", "Weight", "Metal").Row("Otter ring", 6, 2.1, "sterling"))
                .Sheet("Shop", s => s.Row("Setting", "Value").Row("Start at", "2026-03-29 02:30")).Build(),
            settings: BookSettings.None with { Zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin") });

        filled.Result.Night.Clock.ShouldBeNull();
        filled.Result.Findings.Single(f => f.Id == "hour-skipped").Seen.ShouldBe("\"Start at\" is \"2026-03-29 02:30\", an hour that the clocks skip that night.");
    }

    // What is asked on the command line is settled as what stands in the book.
    [Theory]
    [InlineData("12/24/26", "2026-12-04 18:00")]
    [InlineData("24/12/26", "2026-04-12 18:00")]
    public void Fill_HourAskedInDigits_IsReadInTheOrderOfTheBook(string due, string start) =>
        Filled.From(PlainDue(due), settings: Asked).Result.Night.Clock?.At.ToString("yyyy-MM-dd HH:mm", null).ShouldBe(start);

    [Fact]
    public void Fill_HourAskedOfTwoDays_IsRefused() =>
        Should.Throw<AskedHourException>(() => Filled.From(PlainDue("12/4/26"), settings: Asked)).IsSkipped.ShouldBeFalse();

    private static BookSettings Asked => BookSettings.None with
    {
        Hour = new AskedHour("12/4/26 6 PM", new DateTime(2026, 4, 12, 18, 0, 0), new DateTime(2026, 12, 4, 18, 0, 0), IsPour: false),
    };

    private static MemoryStream PlainDue(string due) => new BookBuilder().Sheet("Sheet1", s => s.Row("Piece", "Qty", "Weight", "Metal", "Due").Row("Otter ring", 6, 2.1, "sterling", due)).Build();

    // 11/30 as the start, or beside another step, says that 12/1 is the day after it.
    [Theory]
    [InlineData("11/30/26 11 PM", null)]
    [InlineData("2026-11-30 23:00", "11/30/26 23:05")]
    public void Fill_StepDoneOnADayInDigits_IsReadInTheOrderOfTheBook(string start, string? weighed)
    {
        var filled = WithStart(start).AfterTyping(("Clock", "E5", weighed), ("Clock", "E7", "12/1/26 00:20"));

        filled["Clock", "B8"].ShouldBe("00:20");
        filled.Ids.ShouldNotContain("done-hour-of-two-days");
    }

    [Fact]
    public void Fill_StepDoneOnOneOfTwoDays_AsksWhichIsMeant()
    {
        var filled = WithStart("2026-11-30 23:00").AfterTyping(("Clock", "E7", "12/1/26 00:20"));

        filled.Result.Findings.Single(f => f.Id == "done-hour-of-two-days").Seen.ShouldBe(
            "\"12/1/26 00:20\" beside \"Fill A\" on the Clock sheet is 2026-01-12 00:20 or 2026-12-01 00:20.");
        filled["Clock", "B8"].ShouldBe("23:11");
        filled["Clock", "E7"].ShouldBe("12/1/26 00:20");
    }

    private static Filled WithDue(string? due, params (string Setting, string Value)[] said) => Filled.From(new BookBuilder()
        .Sheet("Sheet1", s => s.Row("Piece", "Qty", "Weight", "Metal", "Due").Row("Otter ring", 6, 2.1, "sterling", due))
        .Sheet("Shop", s => _ = said.Aggregate(s.Row("Setting", "Value"), (rows, a) => rows.Row(a.Setting, a.Value)))
        .Build());

    // 46351 is 25 November 2026, and half an hour before the next day is 23.5 / 24 of it. A date without an hour is not midnight.
    [Theory]
    [InlineData(46351 + (23.5 / 24), "2026-11-25 23:30")]
    [InlineData(46351 + (20.0 / 24), "2026-11-25 20:00")]
    [InlineData(46351.0, null)]
    public void Fill_StartIsADateOfTheSpreadsheet_KeepsItsHour(double serial, string? start)
    {
        var filled = Filled.From(new BookBuilder()
            .Sheet("Sheet1", s => s.Row("Piece", "Qty", "Weight", "Metal").Row("Otter ring", 6, 2.1, "sterling"))
            .Sheet("Shop", s => s.Row("Setting", "Value").Row("Start at", new Cell(serial, BookBuilder.Style.Date)))
            .Build());

        filled.Result.Night.Clock?.At.ToString("yyyy-MM-dd HH:mm", null).ShouldBe(start);
        filled.Ids.Contains("hour-without-day").ShouldBe(start is null);
    }

    [Theory]
    [InlineData("7", "07:00")]
    [InlineData("07:05", "07:05")]
    [InlineData("19.30", "19:30")]
    [InlineData("19h30", "19:30")]
    [InlineData("8 pm", "20:00")]
    [InlineData("12:15 a.m.", "00:15")]
    [InlineData("24:00", null)]
    [InlineData("13 pm", null)]
    [InlineData("07:60", null)]
    [InlineData("evening", null)]
    public void Read_Hours_AsPeopleWriteThem(string text, string? hour) => HourText.Read(text)?.ToString("HH:mm", null).ShouldBe(hour);

    [Theory]
    [InlineData("2026-11-25 20:00", "2026-11-25 20:00")]
    [InlineData("2026-11-25T20:00", "2026-11-25 20:00")]
    [InlineData("25 Nov 2026 8 pm", "2026-11-25 20:00")]
    [InlineData("24.12.2026 19.30", "2026-12-24 19:30")]
    [InlineData("24.12.2026 um 19.30 Uhr", "2026-12-24 19:30")]
    [InlineData("Dec 4, 2026 at 6 p.m.", "2026-12-04 18:00")]
    [InlineData("4 décembre 2026 à 18h30", "2026-12-04 18:30")]
    [InlineData("12/24/26 6 PM", "2026-12-24 18:00")]
    [InlineData("12/4/26 6 PM", null)]
    [InlineData("2026-11-25", null)]
    [InlineData("20:00", null)]
    public void ReadWithDay_DaysWithAnHour_AsPeopleWriteThem(string text, string? hour) => HourText.ReadWithDay(text)?.ToString("yyyy-MM-dd HH:mm", null).ShouldBe(hour);
}
