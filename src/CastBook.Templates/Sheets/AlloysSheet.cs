namespace CastBook.Templates.Sheets;

/// <summary>The alloys that the shop casts, and its stock of them.</summary>
internal static class AlloysSheet
{
    public const string Name = "Alloys";

    public static SheetSpec Spec { get; } = new(Name, "The alloys you cast and what you have of them. Your supplier's data sheet comes first.", [.. Metal(), .. Stock()]);

    private static ShopColumn[] Metal() =>
    [
        new("Alloy", 22, CellKind.Words, "The name you use in the list of pieces.") { Needed = true },
        new("Composition", 27, CellKind.Words, "Parts per thousand, such as Ag 925 Cu 75."),
        new("Density (g/cm³)", 11, CellKind.Number, "From the supplier's data sheet. Metal weights depend on it.") { Format = Formats.Hundredths, Needed = true },
        new("Solidus (°C)", 10.5, CellKind.Number, "Where melting begins.") { Format = Formats.Whole },
        new("Liquidus (°C)", 11.5, CellKind.Number, "Where melting ends.") { Format = Formats.Whole },
        new("Metal temp (°C)", 10, CellKind.Number, "The temperature you pour at.") { Format = Formats.Whole, Needed = true },
        new("Flask temp fine (°C)", 11.5, CellKind.Number, "Flask temperature for fine sections.") { Format = Formats.Whole },
        new("Flask temp ordinary (°C)", 11.5, CellKind.Number, "Flask temperature for ordinary work.") { Format = Formats.Whole, Needed = true },
        new("Flask temp heavy (°C)", 11.5, CellKind.Number, "Flask temperature for heavy sections.") { Format = Formats.Whole },
        new("Quench after (min)", 10, CellKind.Words, "Wait between pour and quench: one number, or small/medium/large flasks such as 8/15/20."),
    ];

    private static ShopColumn[] Stock() =>
    [
        new("Loss (%)", 9, CellKind.Number, "Lost in melting, where it differs from the Shop sheet.") { Format = Formats.Tenths },
        new("Fresh (g)", 11, CellKind.Number, "Fresh metal in the drawer.") { Format = Formats.Tenths },
        new("Re-melt (g)", 12.5, CellKind.Number, "Clean re-melt of this alloy in the drawer.") { Format = Formats.Tenths },
        new("Price (per g)", 13.5, CellKind.Number, "In your own currency.") { Format = Formats.Hundredths },
    ];
}
