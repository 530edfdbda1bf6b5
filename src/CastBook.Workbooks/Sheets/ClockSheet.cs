using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>The night hour by hour: what to do when, what runs by itself, with a box to tick.</summary>
internal static class ClockSheet
{
    /// <summary>The column that tells which line is which.</summary>
    public const int KeyColumn = 4;

    /// <summary>The column of the cell in which the shop types what hour it is.</summary>
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

    private static readonly CellLook SmallTime = CellLook.Text with { Horizontal = CellLook.Right };

    /// <summary>How a time looks that somebody must keep.</summary>
    public static CellLook BigTime { get; } = CellLook.Strong with { Size = 14, Horizontal = CellLook.Right };

    /// <summary>The headings of the cells that are the shop's.</summary>
    public static IReadOnlyCollection<string> ShopHeadings { get; } = [ClockSheetWords.DoneAt, ClockSheetWords.Remarks];

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    /// <param name="kept">What the shop wrote on it.</param>
    public static OwnedSheet Make(SheetContext context, KeptCells kept)
    {
        var staffed = context.Plan.Clock?.Steps.Any(s => s.TwoPeople || s.Watched) == true;
        string[] headings =
        [
            ClockSheetWords.Day, ClockSheetWords.From, ClockSheetWords.Until, ClockSheetWords.Step, ClockSheetWords.DoneAt,
            .. staffed ? [ClockSheetWords.Who] : (string[])[], ClockSheetWords.Remarks,
        ];
        var sheet = new OwnedSheet(ClockSheetWords.Sheet) { HeadingRow = HeadingRow, Widths = [13, 9, 9, 58, 11, .. staffed ? [13.0] : (double[])[], 20] };
        sheet.Set(1, 1, ClockSheetWords.Title(context.BookName), CellLook.Title);
        var clock = context.Plan.Clock;
        sheet.Set(2, 1, Under(clock), CellLook.Small);
        if (clock?.Start is not null)
        {
            sheet.Set(NowRow, KeyColumn, ClockSheetWords.HourItIsNow, CellLook.Small with { Horizontal = CellLook.Right });
            var now = kept.Of(ClockSheetWords.HourItIsNow, KeptCells.AboveHeadings);
            sheet.Set(NowRow, NowColumn, now, Hour(now));
        }

        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : column <= 3 ? CellLook.NumberHeading : CellLook.Heading);
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
                sheet.Set(row, headings.Length - 1, step.TwoPeople ? ClockSheetWords.TwoPeople : step.Watched ? ClockSheetWords.StayWithIt : null, CellLook.Strong);
            }

            sheet.Set(row, headings.Length, Kept(kept, step, ClockSheetWords.Remarks), CellLook.Box with { Wrap = true });
            var subject = new Subject(SubjectKind.Step, place.ToString(CultureInfo.InvariantCulture));
            sheet.Answer(row, 2, subject, AnswerField.StepBegins);
            sheet.Answer(row, 3, subject, AnswerField.StepEnds);
            day = shown;
        }

        row++;
        foreach (var line in clock is null ? [] : ClockSheetWords.Lines)
        {
            sheet.Set(++row, 1, line, CellLook.Small);
        }

        sheet.OnePage = row <= MostRowsOnAPage;
        return sheet;
    }

    private static string Under(NightClock? clock) => clock switch
    {
        null => ClockSheetWords.NothingIsPlanned,
        { Start: null } => ClockSheetWords.CountsFromFirstStep,
        _ => ClockSheetWords.Takes(clock.Loads.Count, Say.Hours(clock.Takes)),
    };

    // The minutes within a mix stand on the Mixes sheet.
    private static bool IsShown(ClockStep step) => step.Kind is not (ClockStepKind.BowlVacuum or ClockStepKind.FlaskVacuum or ClockStepKind.CleanUp);

    private static void WriteStep(OwnedSheet sheet, int row, SheetContext context, ClockStep step, DateOnly? day, KeptCells kept)
    {
        var (clock, words) = (context.Plan.Clock!, ClockWords.Of(step, context.Units.Temperature));
        sheet.Set(row, 1, day?.ToString("ddd d MMM", CultureInfo.InvariantCulture), CellLook.Strong);
        sheet.Set(row, 2, ClockWords.Time(clock, step.Begins), step.Hands ? BigTime with { Size = 12 } : SmallTime);
        sheet.Set(row, 3, step.Takes.Minutes < 1 ? null : ClockWords.Time(clock, step.Ends), SmallTime);
        sheet.Set(row, 4, words, step.Hands ? CellLook.Strong : CellLook.Text);
        var done = Kept(kept, step, ClockSheetWords.DoneAt);
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
    private static CellLook Hour(CellValue typed) => CellLook.Box with
    {
        Horizontal = CellLook.Centre,
        NumberFormat = typed.Number switch { < 1 => "hh:mm", > EarliestDay => "d mmm hh:mm", _ => null },
    };

    /// <summary>A day of the week and a time where the hour is known; nothing without, for a plan on paper promises no hours.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="after">The time, from the first step on.</param>
    public static string? DayAndTime(NightClock? clock, Duration? after) => after is { } known ? clock?.Shown(known)?.ToString("ddd HH:mm", CultureInfo.InvariantCulture) : null;
}
