using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The pattern materials of the shop.</summary>
internal static class MaterialsSheet
{
    public const string Name = "Materials";

    public static SheetSpec Spec { get; } = new(Name, MaterialsWords.Purpose,
    [
        new("Material", 22, ColumnKind.Words, MaterialsWords.Material) { Needed = true },
        new("Kind", 9, ColumnKind.Words, MaterialsWords.Kind) { Choices = Choices.Of("wax", "resin"), Needed = true },
        new("Density (g/cm³)", 11, ColumnKind.Number, MaterialsWords.Density) { Format = Formats.Thousandths, Needed = true },
        new("Cube weighs (g)", 11, ColumnKind.Number, MaterialsWords.CubeWeighs) { Format = Formats.Thousandths },
        new("Cube edge (mm)", 11, ColumnKind.Number, MaterialsWords.CubeEdge) { Format = Formats.Tenths },
        new("Print at least (°C)", 11, ColumnKind.Number, MaterialsWords.PrintAtLeast) { Format = Formats.Whole },
        new("Wash at most (min)", 11, ColumnKind.Number, MaterialsWords.WashAtMost),
        new("Each bath at most (min)", 11, ColumnKind.Number, MaterialsWords.EachBathAtMost),
        new("Cure each side (min)", 11, ColumnKind.Number, MaterialsWords.CureEachSide),
        new("Water rinse", 8, ColumnKind.Words, MaterialsWords.WaterRinse) { Choices = Choices.Of("yes", "no") },
        new("Roughen", 9, ColumnKind.Words, MaterialsWords.Roughen) { Choices = Choices.Of("yes", "no") },
    ]);
}
