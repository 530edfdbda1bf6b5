using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The burnout kilns of the shop.</summary>
internal static class KilnsSheet
{
    public const string Name = "Kilns";

    public static SheetSpec Spec { get; } = new(Name, KilnsWords.Purpose,
    [
        new("Kiln", 22, ColumnKind.Words, KilnsWords.Kiln) { Needed = true },
        new("Shape", 10, ColumnKind.Words, KilnsWords.Shape) { Choices = Choices.Of("square", "round") },
        new("Inside width (mm)", 11, ColumnKind.Number, KilnsWords.InsideWidth) { Format = Formats.Whole },
        new("Inside depth (mm)", 11, ColumnKind.Number, KilnsWords.InsideDepth) { Format = Formats.Whole },
        new("Inside diameter (mm)", 11, ColumnKind.Number, KilnsWords.InsideDiameter) { Format = Formats.Whole },
        new("Power (kW)", 10, ColumnKind.Number, KilnsWords.Power) { Format = Formats.Tenths },
        new("Cools (°C/h)", 10, ColumnKind.Number, KilnsWords.Cools) { Format = Formats.Whole },
        new("Reads high by (°C)", 11, ColumnKind.Number, KilnsWords.ReadsHighBy),
    ]);
}
