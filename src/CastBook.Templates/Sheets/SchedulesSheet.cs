namespace CastBook.Templates.Sheets;

/// <summary>The shop's own burnout schedules.</summary>
internal static class SchedulesSheet
{
    public const string Name = "Schedules";

    public static SheetSpec Spec { get; } = new(Name, "Your own burnout schedules, a line a stage. The resin maker's schedule belongs here.",
    [
        new("Schedule", 22, CellKind.Words, "The schedule's name, the same on each of its lines.") { Needed = true },
        new("For", 9, CellKind.Words, "What it burns out: wax, resin or stones. Empty: anything.") { Choices = Choices.Of("wax", "resin", "stones") },
        new("Up to diameter (mm)", 11, CellKind.Number, "The widest flask it serves. Empty: any.") { Format = Formats.Whole },
        new("Up to height (mm)", 10, CellKind.Number, "The highest flask it serves. Empty: any.") { Format = Formats.Whole },
        new("Load at (°C)", 10, CellKind.Number, "Kiln temperature at which flasks go in.") { Format = Formats.Whole },
        new("Stage", 9, CellKind.Number, "1, 2, 3 … in order.") { Format = Formats.Whole, Needed = true },
        new("Target (°C)", 10, CellKind.Number, "Where the stage goes.") { Format = Formats.Whole, Needed = true },
        new("Rate (°C/h)", 10, CellKind.Number, "How fast. Empty: the way there counts as part of the hold.") { Format = Formats.Whole },
        new("Hold (h)", 9, CellKind.Number, "How long at the target.") { Format = Formats.Hundredths, Needed = true },
    ]);
}
