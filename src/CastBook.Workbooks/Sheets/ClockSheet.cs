using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>The night hour by hour: what to do when, what runs by itself, with a box to tick.</summary>
internal static class ClockSheet
{
    /// <summary>The heading of the column that tells which line is which.</summary>
    public const string KeyHeading = "Step";

    /// <summary>The column of that heading.</summary>
    public const int KeyColumn = 4;

    /// <summary>The heading of the column in which the shop types when a step was done.</summary>
    public const string DoneHeading = "Done at";

    /// <summary>What stands before the cell in which the shop types what hour it is.</summary>
    public const string NowLabel = "If you are late, type the hour it is now:";

    /// <summary>The column of that cell.</summary>
    public const int NowColumn = KeyColumn + 1;

    /// <summary>Smaller numbers are hours, 22, and no days.</summary>
    public const double EarliestDay = 10_000;

    // More in one page would be too small to be read from the bench.
    private const int MostRowsOnAPage = 70;

    // A line that is ticked off with wet hands.
    private const double HandsHeight = 19;
    private const double QuietHeight = 16;

    private const int NowRow = 3;
    private const int HeadingRow = 4;

    private static readonly Look SmallTime = Look.Text with { Horizontal = "right" };

    private static readonly string[] Headings = ["Day", "From", "Until", KeyHeading, DoneHeading, "Remarks"];

    /// <summary>How a time looks that somebody must keep.</summary>
    public static Look BigTime { get; } = Look.Strong with { Size = 14, Horizontal = "right" };

    /// <summary>The headings of the cells that are the shop's.</summary>
    public static IReadOnlyCollection<string> ShopHeadings { get; } = [DoneHeading, "Remarks"];

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    /// <param name="kept">What the shop wrote on it.</param>
    public static OwnedSheet Make(SheetContext context, KeptCells kept)
    {
        var staffed = context.Plan.Clock?.Steps.Any(s => s.TwoPeople || s.Watched) == true;
        string[] headings = staffed ? [.. Headings[..^1], "Who", Headings[^1]] : Headings;
        var sheet = new OwnedSheet("Clock") { HeadingRow = HeadingRow, Widths = [13, 9, 9, 58, 11, .. staffed ? [13.0] : (double[])[], 20] };
        sheet.Set(1, 1, $"Clock: {context.BookName}", Look.Title);
        var clock = context.Plan.Clock;
        sheet.Set(2, 1, Under(clock), Look.Small);
        if (clock?.Start is not null)
        {
            sheet.Set(NowRow, KeyColumn, NowLabel, Look.Small with { Horizontal = "right" });
            var now = kept.Of(NowLabel, KeptCells.AboveHeadings);
            sheet.Set(NowRow, NowColumn, now, Hour(now));
        }

        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], column == 1 ? Look.FirstHeading : column <= 3 ? Look.NumberHeading : Look.Heading);
        }

        var row = HeadingRow;
        DateOnly? day = null;
        for (var place = 0; place < (clock?.Steps.Count ?? 0); place++)
        {
            var step = clock!.Steps[place];
            if (!IsShown(step))
            {
                continue;
            }

            var shown = clock.Shown(step.Begins) is { } at ? DateOnly.FromDateTime(at) : (DateOnly?)null;
            sheet.Height(++row, step.Hands ? HandsHeight : QuietHeight);
            WriteStep(sheet, row, context, step, shown == day ? null : shown, kept);
            if (staffed)
            {
                sheet.Set(row, headings.Length - 1, step.TwoPeople ? "two people" : step.Watched ? "stay with it" : null, Look.Strong);
            }

            sheet.Set(row, headings.Length, Kept(kept, step, Headings[^1]), Look.Box with { Wrap = true });
            var subject = new Subject(SubjectKind.Step, place.ToString(CultureInfo.InvariantCulture));
            sheet.Answer(row, 2, subject, AnswerField.StepBegins);
            sheet.Answer(row, 3, subject, AnswerField.StepEnds);
            day = shown;
        }

        row++;
        foreach (var line in Lines(clock))
        {
            sheet.Set(++row, 1, line, Look.Small);
        }

        sheet.OnePage = row <= MostRowsOnAPage;
        return sheet;
    }

    private static string Under(NightClock? clock) => clock switch
    {
        null => "Nothing is planned.",
        { Start: null } => "Hours and minutes count from the first step. For times of day type \"Start at\" or \"Pour at\" on the Shop sheet, such as 2026-11-25 20:00.",
        _ => $"{Loads(clock)}; {CellNumbers.HoursText(clock.Takes)} from the first step to the last. Bold lines need hands, the others run by themselves.",
    };

    private static string Loads(NightClock clock) =>
        string.Create(CultureInfo.InvariantCulture, $"{clock.Loads.Count} kiln {(clock.Loads.Count == 1 ? "load" : "loads")}");

    // The minutes within a mix stand on the Mixes sheet.
    private static bool IsShown(ClockStep step) => step.Kind is not (ClockStepKind.BowlVacuum or ClockStepKind.FlaskVacuum or ClockStepKind.CleanUp);

    private static void WriteStep(OwnedSheet sheet, int row, SheetContext context, ClockStep step, DateOnly? day, KeptCells kept)
    {
        var (clock, words) = (context.Plan.Clock!, ClockWords.Of(step, context.Units.Temperature));
        sheet.Set(row, 1, day?.ToString("ddd d MMM", CultureInfo.InvariantCulture), Look.Strong);
        sheet.Set(row, 2, ClockWords.Time(clock, step.Begins), step.Hands ? BigTime with { Size = 12 } : SmallTime);
        sheet.Set(row, 3, step.Takes.Minutes < 1 ? null : ClockWords.Time(clock, step.Ends), SmallTime);
        sheet.Set(row, 4, words, step.Hands ? Look.Strong : Look.Text);
        var done = Kept(kept, step, DoneHeading);
        sheet.Set(row, 5, done, Hour(done));
        if (step.IsOutside)
        {
            sheet.Mark(row, 2, Severity.Check);
        }
    }

    // The line may have been written in another unit than it is now.
    private static CellValue Kept(KeptCells kept, ClockStep step, string heading) =>
        WrittenTemperature.All.Select(unit => kept.Of(ClockWords.Of(step, unit), heading)).FirstOrDefault(value => !value.IsEmpty);

    // What was typed as a date of the spreadsheet is kept as one.
    private static Look Hour(CellValue typed) => Look.Box with
    {
        Horizontal = "center",
        NumberFormat = typed.Number switch { < 1 => "hh:mm", > EarliestDay => "d mmm hh:mm", _ => null },
    };

    /// <summary>A day of the week and a time where the hour is known; nothing without, for a plan on paper promises no hours.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="after">The time, from the first step on.</param>
    public static string? DayAndTime(NightClock? clock, Duration? after) => after is { } known ? clock?.Shown(known)?.ToString("ddd HH:mm", CultureInfo.InvariantCulture) : null;

    private static IEnumerable<string> Lines(NightClock? clock)
    {
        if (clock is null)
        {
            yield break;
        }

        yield return "Minutes of work are the Shop sheet's, or usual ones. Set, burnout and holds are never shortened: when you are late, all that follows is later.";
        yield return "Hottest flasks are poured first; then the kiln is lowered and held, so that the next moulds have its temperature to their core.";
        yield return "\"Done at\" is yours: type when a step was done, such as 22:40, and fill again; the rest of the night follows from it.";
        yield return "A mould that is burnt out is white; grey or black is not. A burnout that was broken off is begun again.";
    }
}
