using System.Globalization;
using CastBook.Casting.Burnout;
using CastBook.Planning.Clock;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Drawing;
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
    private const int FirstCore = 9;
    private const string Quiet = "8A97A0";
    private const string Measured = "B3541E";

    private static readonly string[] Headings =
        ["Stage", "Target (°C)", "Target (°F)", "Rate (°C/h)", "Rate (°F/h)", "Hold (h:min)", "From", "Until", "Core then, slow", "Core then, fast", "Core there after, slow (h:min)", "Core there after, fast (h:min)"];

    private static string[] CourseHeadings(WrittenTemperature unit) => ["Load", .. Numbers(unit)];

    private static string[] LogHeadings(WrittenTemperature unit) => ["Log of load", .. Numbers(unit)];

    private static string[] Numbers(WrittenTemperature unit) => ["Hours", $"Kiln ({unit.Name})", $"Core, slow ({unit.Name})", $"Core, fast ({unit.Name})"];

    private static readonly string[] StageAnswers =
    [
        AnswerField.StageTarget, AnswerField.StageTargetFahrenheit, AnswerField.StageRate, AnswerField.StageRateFahrenheit, AnswerField.StageHold,
        AnswerField.StepBegins, AnswerField.StepEnds, AnswerField.CoreSlow, AnswerField.CoreFast, AnswerField.CoreArrivesSlow, AnswerField.CoreArrivesFast,
    ];

    private static readonly string[] CourseAnswers = [AnswerField.CourseHours, AnswerField.CourseKiln, AnswerField.CoreSlow, AnswerField.CoreFast];

    private static readonly Look Hold = Look.Strong with { Size = 14, Horizontal = "right" };
    private static readonly Look Time = Look.Text with { Horizontal = "right" };

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    public static OwnedSheet Make(SheetContext context)
    {
        var sheet = new OwnedSheet("Kiln") { Widths = [8, 11, 11, 10, 10, 12, 16, 16, 11, 11, 13, 13] };
        sheet.Set(1, 1, $"Kiln: {context.BookName}", Look.Title);
        sheet.Set(2, 1, "One schedule a load, that of its most demanding flask. Where no rate stands, the way up is inside the hold; falls take the time the kiln takes.", Look.Small);
        sheet.Set(3, 1, "Hours to the first pour count the fall and holds that are longer for the core; they are the \"Burnout (h)\" of each piece in the load.", Look.Small);
        if (context.Plan.Clock is not { } clock)
        {
            return sheet;
        }

        var (row, unit) = (3, context.Units.Temperature);
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
        var kiln = load.Kiln.Length == 0 ? "" : $"{load.Kiln}, ";
        var title = $"Load {load.Number.ToString(CultureInfo.InvariantCulture)}: {kiln}flasks {string.Join(' ', load.Flasks)}, \"{load.Schedule.Name}\", {CellNumbers.HoursText(load.Takes)} to the first pour{Next(load)}";
        sheet.Set(row, 1, title, Look.Strong with { Wrap = false, Border = Line.None });
        row++;
        for (var column = 1; column <= Headings.Length; column++)
        {
            sheet.Set(row, column, Headings[column - 1] + (column is FirstCore or FirstCore + 1 ? $" ({unit.Name})" : ""), column == 1 ? Look.FirstHeading : Look.NumberHeading);
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
            sheet.Set(row, 4, CellValue.Of(rate), Look.Number(Look.Whole));
            sheet.Set(row, 5, CellValue.Of(rate * 1.8), Look.Number(Look.Whole));
            var core = i < load.Heat.StageEnds.Count ? load.Heat.StageEnds[i] : (CoreSpan?)null;
            sheet.Set(row, 9, CellValue.Of(unit.In(core?.Slow)), Look.Number(Look.Whole));
            sheet.Set(row, 10, CellValue.Of(unit.In(core?.Fast)), Look.Number(Look.Whole));
            var arrival = i < load.Heat.Arrivals.Count ? load.Heat.Arrivals[i] : (CoreArrival?)null;
            sheet.Set(row, 11, arrival is { } late ? Arrives(late.Slow) : null, Time);
            sheet.Set(row, 12, arrival is { } soon ? Arrives(soon.Fast) : null, Time);
        }

        foreach (var mould in load.Heat.Moulds.Skip(1))
        {
            sheet.Set(++row, 1, $"{(mould.Flasks.Count == 1 ? "Flask" : "Flasks")} {string.Join(' ', mould.Flasks)} ({mould.Size}) {(mould.Flasks.Count == 1 ? "follows" : "follow")} sooner. Core there after, slow and fast: {Arrivals(mould)}.", Look.Text with { Wrap = false, Border = Line.None });
        }

        if (load.Pours.FirstOrDefault(p => p.Temperature is null) is { } unknown)
        {
            sheet.Set(++row, 1, $"The flask temperature of {string.Join(' ', unknown.Flasks)} is not known: what the last stage says is the schedule's, and nothing to pour at.", Look.Strong with { Wrap = false, Border = Line.None });
        }

        if (load.ReadsHighBy is { } high && Math.Abs(high.DegreesCelsius) >= LeastWorthSaying)
        {
            sheet.Set(++row, 1, DisplayReadsOff(load, high, unit), Look.Strong with { Wrap = false, Border = Line.None });
        }

        return row;
    }

    // The targets are what must be inside, whatever the display says.
    private static string DisplayReadsOff(KilnLoad load, TemperatureDelta high, WrittenTemperature unit)
    {
        var top = Temperature.FromDegreesCelsius(load.Schedule.Stages.Max(s => s.Target.DegreesCelsius));
        var (reads, set) = high.DegreesCelsius > 0 ? ("high", "higher") : ("low", "lower");
        var degrees = unit.SayDegrees(Math.Abs(high.DegreesCelsius));
        return $"{load.Kiln} reads {degrees} {reads}: set its controller {degrees} {set} than each target here, {unit.Say(top + high)} for {unit.Say(top)}.";
    }

    private static void WriteStage(OwnedSheet sheet, int row, int number, NightClock clock, ClockStep step)
    {
        sheet.Height(row, 22);
        sheet.Set(row, 1, number.ToString(CultureInfo.InvariantCulture), Look.Strong);
        sheet.Set(row, 2, CellValue.Of(CellNumbers.Celsius(step.Target)), Look.Big(Look.Whole));
        sheet.Set(row, 3, CellValue.Of(step.Target is { } target ? Math.Round(target.DegreesFahrenheit, MidpointRounding.AwayFromZero) : null), Look.Big(Look.Whole));
        sheet.Set(row, 6, HoursAndMinutes(step.Hold ?? step.Takes), Hold);
        sheet.Set(row, 7, At(clock, step.Begins), Time);
        sheet.Set(row, 8, At(clock, step.Ends), Time);
    }

    private static string Next(KilnLoad load) => load.FreeAfter is { } free ? $", next load after {CellNumbers.HoursText(free)}" : "";

    private static string Arrivals(MouldHeat mould)
    {
        var stages = mould.Arrivals.Select((a, i) => string.Create(CultureInfo.InvariantCulture, $"stage {i + 1} ") + (a.Slow is null && a.Fast is null ? "not yet" : $"{Arrives(a.Slow)} and {Arrives(a.Fast)}"));
        return string.Join("; ", stages);
    }

    private static string Arrives(Duration? after) => after is { } known ? HoursAndMinutes(known) : "not yet";

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
            sheet.Set(++row, 1, string.Create(CultureInfo.InvariantCulture, $"Outside the kiln a mould loses by estimate {unit.Degrees(open.Slow.DegreesCelsius)} to {unit.SayDegrees(open.Fast.DegreesCelsius)} in its first minute, {open.Depth.Millimeters:0} mm below its face where the outermost pieces begin, and nothing yet in its middle: pour at once."), Look.Small);
            sheet.Set(++row, 1, $"\"Core there\" is when the middle of the slowest mould is within {unit.SayDegrees(load.Heat.ToleranceDegrees)} of the kiln, from the begin of the stage on; \"Core tolerance\" on the Shop sheet changes it.", Look.Small);
        }

        sheet.Set(++row, 1, "The core is an estimate for the middle of the slowest mould of the load, between a slow and a fast case. Drying is not in it: a wet mould stays", Look.Small);
        sheet.Set(++row, 1, $"near {unit.Say(100)} until its water has gone, which is what the first hold is for. A hold may be lengthened for the core and is never shortened.", Look.Small);
        return row + 1;
    }

    private static int WriteChart(OwnedSheet sheet, int row, int at, NightClock clock, KilnLoad load, WrittenTemperature unit)
    {
        var course = new HiddenCourse(sheet, row + 1, load, CourseHeadings(unit), CourseAnswers, load.Heat.Course, unit);
        var lines = new List<ChartLine> { course.Line("core, slow case", 4, Quiet, 1.5), course.Line("core, fast case", 5, Quiet, 1.5), course.Line("kiln", 3, Shape.Ink, 2.25) };
        row = course.LastRow + 1;
        if (clock.Logged is { } logged && logged.Load.Number == load.Number)
        {
            var measured = new HiddenCourse(sheet, row + 1, load, LogHeadings(unit), [], HiddenCourse.Thinned(logged.Course), unit);
            lines.AddRange(measured.Line("core by the log, slow case", 4, Measured, 1.5), measured.Line("kiln by its log", 3, Measured, 2.25));
            row = measured.LastRow + 1;
        }

        var number = load.Number.ToString(CultureInfo.InvariantCulture);
        var title = $"Load {number}: kiln, and the core of flask {load.Heat.Flask}";
        sheet.Drawing.Add(new Chart(
            $"load{number}", $"Kiln temperature of load {number} and the core of flask {load.Heat.Flask} over the hours from loading.",
            new Frame(at, 1, ChartWidthMm, ChartHeightMm), title, "hours from loading", unit.Name, lines));
        return row;
    }
}
