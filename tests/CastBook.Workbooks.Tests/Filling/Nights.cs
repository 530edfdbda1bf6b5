using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Books of Wrenmoor Foundry, small enough to work out by hand.</summary>
internal static class Nights
{
    /// <summary>The plainest list: piece, quantity, weight, metal.</summary>
    public static MemoryStream Plain() => new BookBuilder()
        .Sheet("Sheet1", s => s
            .Row("Piece", "Qty", "Weight", "Metal")
            .Row("Otter ring", 6, 2.1, "sterling")
            .Row("Fern stud", 20, 0.3, "sterling")
            .Row("Moth pendant", 4, 1.8, "sterling"))
        .Build();

    /// <summary>
    /// A night that plans without a stop: title lines, units in the headings, columns CastBook knows nothing of.
    /// Resin of 1.15 g/cm³; sterling of 10.36 g/cm³.
    /// </summary>
    public static MemoryStream Whole() => WholeBuilder().Build();

    /// <summary>
    /// The same night on two sheets: a table of its own layout on the second. Of the weights there the gull is 0.46 g as in
    /// the first list, the fob 3.45 g.
    /// </summary>
    public static BookBuilder TwoListsBuilder(Action<SheetBuilder>? second = null) => WholeBuilder().Sheet("Quarry list", s =>
    {
        s.Row("Alloy", "Qty", "Piece", "Pattern weight (g)", "Material", "Length (mm)", "Width (mm)", "Thickness (mm)")
            .Row("house sterling", 4, "Slate fob", 3.45, "harbour resin", 18, 12, 6)
            .Row("house sterling", 8, "Gull stud", 0.46, "harbour resin", 9, 8, 3);
        second?.Invoke(s);
    });

    /// <summary>Both lists of <see cref="TwoListsBuilder"/>, wanted by name.</summary>
    public static BookSettings BothLists { get; } = new() { Sheets = ["Harbour list", "Quarry list"] };

    public static BookBuilder WholeBuilder(Action<SheetBuilder>? pieces = null, string binder = "gypsum") => new BookBuilder()
        .Sheet("Harbour list", s =>
        {
            s.Row("Wrenmoor Foundry").Row("all of it for Friday").Row()
                .Row("Customer", "Piece", "Qty", "Pattern weight (g)", "Material", "Alloy", "Length (mm)", "Width [mm]", "Thickness, mm", "Bench note")
                .Row("Fernleaf", "Otter signet", 6, 2.3, "harbour resin", "house sterling", 24, 12, 6, "sprue on the back")
                .Row("Stock", "Gull stud", 12, 0.46, "harbour resin", "house sterling", 9, 8, 3, null)
                .Row("Tarn", "=Bell clapper", 2, 5.75, "harbour resin", "house sterling", 20, 14, 14, null);
            pieces?.Invoke(s);
        })
        .Sheet("Flasks", s => s
            .Row("Size", "Inside diameter (mm)", "Height (mm)", "Owned", "Sprue diameter (mm)", "Base height (mm)", "Cup (ml)")
            .Row("75 × 100", 75, 100, 2, 8, 20, 12)
            .Row("90 × 125", 90, 125, 2, 10, 20, 16))
        .Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("No. 2", 60))
        .Sheet("Alloys", s => s
            .Row("Alloy", "Density (g/cm³)", "Metal temp (°C)", "Flask temp fine (°C)", "Flask temp ordinary (°C)", "Flask temp heavy (°C)", "Quench after (min)", "Fresh (g)", "Re-melt (g)")
            .Row("house sterling", 10.36, 970, 600, 538, 480, "8/15/20", 800, 400))
        .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("harbour resin", "resin", 1.15).Row("sprue wax", "wax", 0.95))
        .Sheet("Kilns", s => s.Row("Kiln", "Shape", "Inside width (mm)", "Inside depth (mm)").Row("the kiln", "square", 300, 300))
        .Sheet("Investments", s => s.Row("Investment", "Kind", "Water per 100", "Powder density (g/cm³)", "Working time (min)", "Set at least (h)").Row("white powder", binder, 38, 2.6, 9.5, 2))
        .Sheet("Schedules", s => s
            .Row("Schedule", "For", "Up to diameter (mm)", "Up to height (mm)", "Stage", "Target (°C)", "Hold (h)")
            .Row("resin by the maker", "resin", 105, 205, 1, 150, 2).Row("resin by the maker", "resin", 105, 205, 2, 370, 2)
            .Row("resin by the maker", "resin", 105, 205, 3, 732, 4).Row("resin by the maker", "resin", 105, 205, 4, 538, 2))
        .Sheet("Shop", s => s
            .Row("Setting", "Value", "Unit").Row("Casting method", "vacuum perforated").Row("Button share", 20, "%").Row("Button at least", 1.5, "ml")
            .Row("Melt loss", 1, "%").Row("Fresh at least", 50, "%").Row("Charge step", 1, "g").Row("Powder step", 5, "g").Row("Mixing bowl", 4, "l").Row("Bowl fill", 50, "%")
            .Row("Mixing takes", 4, "min").Row("Bowl vacuum", 1.5, "min").Row("Filling a flask takes", 0.5, "min").Row("Flask vacuum", 1.5, "min")
            .Row("Margin before gloss-off", 1.5, "min").Row("Gap between pieces", 3, "mm").Row("Gate length", 5, "mm")
            .Row("Gate diameter", 2.5, "mm").Row("Gate angle", 50, "°").Row("Sprue wax density", 0.95, "g/cm³"));
}
