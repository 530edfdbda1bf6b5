using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The investment powders of the shop.</summary>
internal static class InvestmentsSheet
{
    public const string Name = "Investments";

    public static SheetSpec Spec { get; } = new(Name, InvestmentsWords.Purpose,
    [
        new("Investment", 22, ColumnKind.Words, InvestmentsWords.Investment) { Needed = true },
        new("Kind", 18, ColumnKind.Words, InvestmentsWords.Kind) { Choices = Choices.Of("gypsum", "high temperature") },
        new("Water per 100", 10, ColumnKind.Number, InvestmentsWords.WaterPer100) { Format = Formats.Tenths },
        new("Powder density (g/cm³)", 11, ColumnKind.Number, InvestmentsWords.PowderDensity) { Format = Formats.Hundredths },
        new("Working time (min)", 11, ColumnKind.Number, InvestmentsWords.WorkingTime) { Format = Formats.Tenths },
        new("Set at least (h)", 10, ColumnKind.Number, InvestmentsWords.SetAtLeast) { Format = Formats.Tenths },
        new("Never above (°C)", 10, ColumnKind.Number, InvestmentsWords.NeverAbove) { Format = Formats.Whole },
        new("Silica", 12, ColumnKind.Words, InvestmentsWords.Silica) { Choices = Choices.Of("quartz", "cristobalite", "both") },
        new("Inversion at most (°C/h)", 12, ColumnKind.Number, InvestmentsWords.InversionAtMost) { Format = Formats.Whole },
        new("Kept hot at most (h)", 10, ColumnKind.Number, InvestmentsWords.KeptHotAtMost) { Format = Formats.Tenths },
        new("In stock (g)", 11, ColumnKind.Number, InvestmentsWords.InStock) { Format = Formats.Whole },
    ]);
}
