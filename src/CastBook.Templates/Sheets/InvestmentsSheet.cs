namespace CastBook.Templates.Sheets;

/// <summary>The investment powders of the shop.</summary>
internal static class InvestmentsSheet
{
    public const string Name = "Investments";

    public static SheetSpec Spec { get; } = new(Name, "The investment powders you use. The maker's data sheet comes first.",
    [
        new("Investment", 22, CellKind.Words, "The name you know it by.") { Needed = true },
        new("Kind", 18, CellKind.Words, "gypsum for silver, gold and copper alloys; high temperature for platinum and palladium.")
            { Choices = Choices.Of("gypsum", "high temperature") },
        new("Water per 100", 10, CellKind.Number, "Grams of water to 100 g of powder, from the maker's data sheet.") { Format = Formats.Tenths },
        new("Powder density (g/cm³)", 11, CellKind.Number, "Density of the powder's solid. Empty: 2.60.") { Format = Formats.Hundredths },
        new("Working time (min)", 11, CellKind.Number, "From first water to gloss-off.") { Format = Formats.Tenths },
        new("Set at least (h)", 10, CellKind.Number, "Before the kiln.") { Format = Formats.Tenths },
        new("Never above (°C)", 10, CellKind.Number, "The hottest kiln it stands. Empty: 732 for gypsum.") { Format = Formats.Whole },
        new("Silica", 12, CellKind.Words, "What the maker says is in it. It turns over near 573 °C (quartz) or from 200 to 270 °C (cristobalite). Empty: both.")
            { Choices = Choices.Of("quartz", "cristobalite", "both") },
        new("Inversion at most (°C/h)", 12, CellKind.Number, "How fast the kiln may go through those temperatures, by the maker's data sheet.") { Format = Formats.Whole },
        new("Kept hot at most (h)", 10, CellKind.Number, "How long a mould may be kept at its flask temperature before it is poured, by the maker's data sheet. Empty: not looked at.") { Format = Formats.Tenths },
        new("In stock (g)", 11, CellKind.Number, "Powder in the shop.") { Format = Formats.Whole },
    ]);
}
