using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The alloys that the shop casts, and its stock of them.</summary>
internal static class AlloysSheet
{
    public const string Name = "Alloys";

    public static SheetSpec Spec { get; } = new(Name, AlloysWords.Purpose, [.. Metal(), .. Stock()]);

    private static ShopColumn[] Metal() =>
    [
        new("Alloy", 22, ColumnKind.Words, AlloysWords.Alloy) { Needed = true },
        new("Composition", 27, ColumnKind.Words, AlloysWords.Composition),
        new("Density (g/cm³)", 11, ColumnKind.Number, AlloysWords.Density) { Format = Formats.Hundredths, Needed = true },
        new("Solidus (°C)", 10.5, ColumnKind.Number, AlloysWords.Solidus) { Format = Formats.Whole },
        new("Liquidus (°C)", 11.5, ColumnKind.Number, AlloysWords.Liquidus) { Format = Formats.Whole },
        new("Metal temp (°C)", 10, ColumnKind.Number, AlloysWords.MetalTemp) { Format = Formats.Whole, Needed = true },
        new("Flask temp fine (°C)", 11.5, ColumnKind.Number, AlloysWords.FlaskTempFine) { Format = Formats.Whole },
        new("Flask temp ordinary (°C)", 11.5, ColumnKind.Number, AlloysWords.FlaskTempOrdinary) { Format = Formats.Whole, Needed = true },
        new("Flask temp heavy (°C)", 11.5, ColumnKind.Number, AlloysWords.FlaskTempHeavy) { Format = Formats.Whole },
        new("Quench after (min)", 10, ColumnKind.Words, AlloysWords.QuenchAfter),
    ];

    private static ShopColumn[] Stock() =>
    [
        new("Loss (%)", 9, ColumnKind.Number, AlloysWords.Loss) { Format = Formats.Tenths },
        new("Fresh (g)", 11, ColumnKind.Number, AlloysWords.Fresh) { Format = Formats.Tenths },
        new("Re-melt (g)", 12.5, ColumnKind.Number, AlloysWords.ReMelt) { Format = Formats.Tenths },
        new("Price (per g)", 13.5, ColumnKind.Number, AlloysWords.Price) { Format = Formats.Hundredths },
    ];
}
