using System.Globalization;
using CastBook.Casting.Burnout;
using CastBook.Planning;
using CastBook.Planning.Clock;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>The kiln loads: the programme to dial in, with its hours, and a chart of kiln and core.</summary>
internal static class KilnSheet
{
    // More in one page would be too small to be read from the kiln.
    private const int MostLoadsOnAPage = 3;

    private const int ChartRows = 18;
    private const double ChartWidthMm = 170;
    private const double ChartHeightMm = 85;

    // In degrees Celsius; less is the reading of a display itself.
    private const double LeastWorthSaying = 1;
    private const string Quiet = "8A97A0";
    private const string Measured = "B3541E";

    private static readonly string[] StageAnswers =
    [
        AnswerField.StageTarget, AnswerField.StageTargetFahrenheit, AnswerField.StageRate, AnswerField.StageRateFahrenheit, AnswerField.StageHold,
        AnswerField.StepBegins, AnswerField.StepEnds, AnswerField.CoreSlow, AnswerField.CoreFast, AnswerField.CoreArrivesSlow, AnswerField.CoreArrivesFast,
    ];

    private static readonly string[] CourseAnswers = [AnswerField.CourseHours, AnswerField.CourseKiln, AnswerField.CoreSlow, AnswerField.CoreFast];

    private static readonly CellLook Hold = CellLook.Strong with { Size = 14, Horizontal = CellLook.Right };
    private static readonly CellLook Time = CellLook.Text with { Horizontal = CellLook.Right };

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    public static OwnedSheet Make(SheetContext context)
    {
        var sheet = new OwnedSheet(KilnSheetWords.Sheet) { Widths = [8, 11, 11, 10, 10, 12, 16, 16, 11, 11, 13, 13] };
        sheet.Set(1, 1, KilnSheetWords.Title(context.BookName), CellLook.Title);
        sheet.Set(2, 1, KilnSheetWords.Under[0], CellLook.Small);
        sheet.Set(3, 1, KilnSheetWords.Under[1], CellLook.Small);
        var row = 3;
        var loaded = (context.Plan.Clock?.Loads ?? []).SelectMany(l => l.Flasks).ToHashSet(StringComparer.Ordinal);
        if (context.Plan.Flasks.Where(f => f.State < FlaskState.InKiln && !loaded.Contains(f.Letter)).Select(f => f.Letter).ToList() is { Count: > 0 } without)
        {
            sheet.Set(++row, 1, KilnSheetWords.NoProgramme(without), CellLook.Strong with { Wrap = false, Border = Line.None });
        }

        if (context.Plan.Clock is not { } clock)
        {
            return sheet;
        }

        var unit = context.Units.Temperature;
        var charts = new List<int>();
        foreach (var load in clock.Loads)
        {
            row = WriteLoad(sheet, row + 1, clock, load, unit);
            charts.Add(row + 1);
            row += ChartRows;
        }

        row = WriteLines(sheet, row, clock, unit);
        sheet.OnePage = clock.Loads.Count <= MostLoadsOnAPage;
        for (var i = 0; i < clock.Loads.Count; i++)
        {
            row = WriteChart(sheet, row, charts[i], clock, clock.Loads[i], unit);
        }

        return sheet;
    }

    private static int WriteLoad(OwnedSheet sheet, int row, NightClock clock, KilnLoad load, WrittenTemperature unit)
    {
        var nextAfter = load.FreeAfter is { } free ? Say.Hours(free) : null;
        var title = KilnSheetWords.Load(load.Number, load.Kiln, load.Flasks, load.Schedule.Name, Say.Hours(load.Takes), nextAfter);
        sheet.Set(row, 1, title, CellLook.Strong with { Wrap = false, Border = Line.None });
        row++;
        var headings = KilnSheetWords.Headings(unit.Name);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(row, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : CellLook.NumberHeading);
        }

        sheet.Height(row, 45);
        var stages = KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour);
        var steps = clock.Steps.Index().Where(s => s.Item.Load == load.Number && s.Item.Kind is ClockStepKind.Stage or ClockStepKind.Fall).ToList();
        for (var i = 0; i < steps.Count; i++)
        {
            WriteStage(sheet, ++row, i + 1, clock, steps[i].Item);
            for (var answer = 0; answer < StageAnswers.Length; answer++)
            {
                sheet.Answer(row, answer + 2, new Subject(SubjectKind.Step, steps[i].Index.ToString(CultureInfo.InvariantCulture)), StageAnswers[answer]);
            }

            var rate = i < stages.Count && !stages[i].WayInHold && stages[i].Target > stages[i].From ? load.Schedule.Stages[i].RateDegreesPerHour : null;
            sheet.Set(row, 4, CellValue.Of(rate), CellLook.Number(CellLook.Whole));
            sheet.Set(row, 5, CellValue.Of(rate * 1.8), CellLook.Number(CellLook.Whole));
            var core = i < load.Heat.StageEnds.Count ? load.Heat.StageEnds[i] : (CoreSpan?)null;
            sheet.Set(row, 9, CellValue.Of(unit.In(core?.Slow)), CellLook.Number(CellLook.Whole));
            sheet.Set(row, 10, CellValue.Of(unit.In(core?.Fast)), CellLook.Number(CellLook.Whole));
            var arrival = i < load.Heat.Arrivals.Count ? load.Heat.Arrivals[i] : (CoreArrival?)null;
            sheet.Set(row, 11, arrival is { } late ? Arrives(late.Slow) : null, Time);
            sheet.Set(row, 12, arrival is { } soon ? Arrives(soon.Fast) : null, Time);
        }

        foreach (var mould in load.Heat.Moulds.Skip(1))
        {
            sheet.Set(++row, 1, KilnSheetWords.FollowsSooner(mould.Flasks, mould.Size, Arrivals(mould)), CellLook.Text with { Wrap = false, Border = Line.None });
        }

        if (load.Pours.FirstOrDefault(p => p.Temperature is null) is { } unknown)
        {
            sheet.Set(++row, 1, KilnSheetWords.FlaskTemperatureUnknown(unknown.Flasks), CellLook.Strong with { Wrap = false, Border = Line.None });
        }

        if (load.IsReadingUnread)
        {
            sheet.Set(++row, 1, KilnSheetWords.ReadingUnread(load.Kiln), CellLook.Strong with { Wrap = false, Border = Line.None });
        }

        if (load.ReadsHighBy is { } high && Math.Abs(high.DegreesCelsius) >= LeastWorthSaying)
        {
            sheet.Set(++row, 1, DisplayReadsOff(load, high, unit), CellLook.Strong with { Wrap = false, Border = Line.None });
        }

        return row;
    }

    // The targets are what must be inside, whatever the display says.
    private static string DisplayReadsOff(KilnLoad load, TemperatureDelta high, WrittenTemperature unit)
    {
        var top = Temperature.FromDegreesCelsius(load.Schedule.Stages.Max(s => s.Target.DegreesCelsius));
        var (degrees, set, target) = (unit.SayDegrees(Math.Abs(high.DegreesCelsius)), unit.Say(top + high), unit.Say(top));
        return high.DegreesCelsius > 0 ? KilnSheetWords.ReadsHigh(load.Kiln, degrees, set, target) : KilnSheetWords.ReadsLow(load.Kiln, degrees, set, target);
    }

    private static void WriteStage(OwnedSheet sheet, int row, int number, NightClock clock, ClockStep step)
    {
        sheet.Height(row, 22);
        sheet.Set(row, 1, number.ToString(CultureInfo.InvariantCulture), CellLook.Strong);
        sheet.Set(row, 2, CellValue.Of(CellNumbers.Celsius(step.Target)), CellLook.Big(CellLook.Whole));
        sheet.Set(row, 3, CellValue.Of(step.Target is { } target ? Math.Round(target.DegreesFahrenheit, MidpointRounding.AwayFromZero) : null), CellLook.Big(CellLook.Whole));
        sheet.Set(row, 6, HoursAndMinutes(step.Hold ?? step.Takes), Hold);
        sheet.Set(row, 7, At(clock, step.Begins), Time);
        sheet.Set(row, 8, At(clock, step.Ends), Time);
    }

    private static string Arrivals(MouldHeat mould) => string.Join("; ", mould.Arrivals.Select(
        (a, i) => a.Slow is null && a.Fast is null ? KilnSheetWords.StageNotYet(i + 1) : KilnSheetWords.StageArrives(i + 1, Arrives(a.Slow), Arrives(a.Fast))));

    private static string Arrives(Duration? after) => after is { } known ? HoursAndMinutes(known) : KilnSheetWords.NotYet;

    private static string At(NightClock clock, Duration after) =>
        clock.Shown(after) is { } shown ? shown.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture) : ClockWords.Time(clock, after);

    private static string HoursAndMinutes(Duration duration)
    {
        var minutes = (long)Math.Round(duration.Minutes, MidpointRounding.AwayFromZero);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00}");
    }

    private static int WriteLines(OwnedSheet sheet, int row, NightClock clock, WrittenTemperature unit)
    {
        if (clock.Loads is [var load, ..])
        {
            var open = load.Heat.InTheOpen;
            sheet.Set(++row, 1, KilnSheetWords.InTheOpen(unit.Degrees(open.Slow.DegreesCelsius), unit.SayDegrees(open.Fast.DegreesCelsius), open.Depth.Millimeters), CellLook.Small);
            sheet.Set(++row, 1, KilnSheetWords.CoreIsThere(unit.SayDegrees(load.Heat.ToleranceDegrees)), CellLook.Small);
        }

        if (clock.Loads.Any(l => KilnProgram.Of(l.Schedule, l.CoolsDegreesPerHour).Any(s => s.WayInHold && s.Target > s.From)))
        {
            sheet.Set(++row, 1, KilnSheetWords.RiseIsFromMemory(unit.SayDegrees(ProgramStage.UsualRiseDegreesPerHour)), CellLook.Small);
        }

        foreach (var line in KilnSheetWords.CoreIsAnEstimate(unit.Say(100)))
        {
            sheet.Set(++row, 1, line, CellLook.Small);
        }

        return row + 1;
    }

    private static int WriteChart(OwnedSheet sheet, int row, int at, NightClock clock, KilnLoad load, WrittenTemperature unit)
    {
        var course = new HiddenCourse(sheet, row + 1, load, KilnSheetWords.CourseHeadings(unit.Name), CourseAnswers, load.Heat.Course, unit);
        var lines = new List<ChartLine>
        {
            course.Line(KilnSheetWords.CoreSlow, 4, Quiet, 1.5, dashed: true), course.Line(KilnSheetWords.CoreFast, 5, Quiet, 1.5), course.Line(KilnSheetWords.Kiln, 3, Shape.Ink, 2.25),
        };
        row = course.LastRow + 1;
        if (clock.Logged is { } logged && logged.Load.Number == load.Number)
        {
            var measured = new HiddenCourse(sheet, row + 1, load, KilnSheetWords.LogHeadings(unit.Name), [], HiddenCourse.Thinned(logged.Course), unit);
            lines.AddRange(measured.Line(KilnSheetWords.CoreByLog, 4, Measured, 1.5, dashed: true), measured.Line(KilnSheetWords.KilnByLog, 3, Measured, 2.25));
            row = measured.LastRow + 1;
        }

        var number = load.Number.ToString(CultureInfo.InvariantCulture);
        sheet.Drawing.Add(new Chart(
            $"load{number}", KilnSheetWords.ChartTells(load.Number, load.Heat.Flask), new Frame(at, 1, ChartWidthMm, ChartHeightMm),
            KilnSheetWords.Chart(load.Number, load.Heat.Flask), KilnSheetWords.HoursFromLoading, unit.Name, lines));
        return row;
    }
}
