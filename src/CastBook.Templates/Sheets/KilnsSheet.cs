namespace CastBook.Templates.Sheets;

/// <summary>The burnout kilns of the shop.</summary>
internal static class KilnsSheet
{
    public const string Name = "Kilns";

    public static SheetSpec Spec { get; } = new(Name, "The kilns you burn out in.",
    [
        new("Kiln", 22, CellKind.Words, "The name you know it by.") { Needed = true },
        new("Shape", 10, CellKind.Words, "Shape of the floor: square (any rectangle) or round.") { Choices = Choices.Of("square", "round") },
        new("Inside width (mm)", 11, CellKind.Number, "Usable width of the floor.") { Format = Formats.Whole },
        new("Inside depth (mm)", 11, CellKind.Number, "Usable depth of the floor.") { Format = Formats.Whole },
        new("Inside diameter (mm)", 11, CellKind.Number, "Usable diameter of a round floor.") { Format = Formats.Whole },
        new("Power (kW)", 10, CellKind.Number, "Electrical power, from the plate.") { Format = Formats.Tenths },
        new("Cools (°C/h)", 10, CellKind.Number, "How fast it cools with the door shut, as you have timed it.") { Format = Formats.Whole },
        new("Reads high by (°C)", 11, CellKind.Number, "By how much its controller shows more than a second thermometer. Minus where it shows less."),
    ]);
}
