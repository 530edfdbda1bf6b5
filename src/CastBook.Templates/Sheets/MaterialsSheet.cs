namespace CastBook.Templates.Sheets;

/// <summary>The pattern materials of the shop.</summary>
internal static class MaterialsSheet
{
    public const string Name = "Materials";

    public static SheetSpec Spec { get; } = new(Name, "What your patterns are made of.",
    [
        new("Material", 22, CellKind.Words, "The name you use in the list of pieces.") { Needed = true },
        new("Kind", 9, CellKind.Words, "wax melts out, resin burns out.") { Choices = Choices.Of("wax", "resin"), Needed = true },
        new("Density (g/cm³)", 11, CellKind.Number, "Solid and cured. Weigh a solid test cube and divide by its volume, or take it from the maker's data sheet.")
            { Format = Formats.Thousandths, Needed = true },
        new("Cube weighs (g)", 11, CellKind.Number, "A solid test cube, washed and cured: its density is learnt from it where none is given.") { Format = Formats.Thousandths },
        new("Cube edge (mm)", 11, CellKind.Number, "The edge of that cube as a caliper reads it; 20 mm or more.") { Format = Formats.Tenths },
        new("Print at least (°C)", 11, CellKind.Number, "The coldest resin that prints well, from the maker's data sheet.") { Format = Formats.Whole },
        new("Wash at most (min)", 11, CellKind.Number, "The longest wash, all baths together."),
        new("Each bath at most (min)", 11, CellKind.Number, "The longest time in one bath of the wash."),
        new("Cure each side (min)", 11, CellKind.Number, "The shortest cure of each side."),
        new("Water rinse", 8, CellKind.Words, "no where its maker allows none.") { Choices = Choices.Of("yes", "no") },
        new("Roughen", 9, CellKind.Words, "yes where the surface is roughened so that sprue wax holds.") { Choices = Choices.Of("yes", "no") },
    ]);
}
