using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The shop's own burnout schedules.</summary>
internal static class SchedulesSheet
{
    public const string Name = "Schedules";

    public static SheetSpec Spec { get; } = new(Name, SchedulesWords.Purpose,
    [
        new("Schedule", 22, ColumnKind.Words, SchedulesWords.Schedule) { Needed = true },
        new("For", 9, ColumnKind.Words, SchedulesWords.For) { Choices = Choices.Of("wax", "resin", "stones") },
        new("Up to diameter (mm)", 11, ColumnKind.Number, SchedulesWords.UpToDiameter) { Format = Formats.Whole },
        new("Up to height (mm)", 10, ColumnKind.Number, SchedulesWords.UpToHeight) { Format = Formats.Whole },
        new("Load at (°C)", 10, ColumnKind.Number, SchedulesWords.LoadAt) { Format = Formats.Whole },
        new("Stage", 9, ColumnKind.Number, SchedulesWords.Stage) { Format = Formats.Whole, Needed = true },
        new("Target (°C)", 10, ColumnKind.Number, SchedulesWords.Target) { Format = Formats.Whole, Needed = true },
        new("Rate (°C/h)", 10, ColumnKind.Number, SchedulesWords.Rate) { Format = Formats.Whole },
        new("Hold (h)", 9, ColumnKind.Number, SchedulesWords.Hold) { Format = Formats.Hundredths, Needed = true },
    ]);
}
