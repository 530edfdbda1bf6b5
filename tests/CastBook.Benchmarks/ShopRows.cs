namespace CastBook.Benchmarks;

/// <summary>The shop of the large book. Invented values that make a whole plan possible.</summary>
internal static class ShopRows
{
    public const string Resin = "castable resin";
    public const string Wax = "injection wax";

    public static IReadOnlyList<string> AlloyNames { get; } = ["sterling silver", "tin bronze", "14k yellow"];

    public static IReadOnlyList<object?[]> Alloys { get; } =
    [
        ["Alloy", "Density (g/cm³)", "Solidus (°C)", "Liquidus (°C)", "Metal temp (°C)", "Flask temp fine (°C)", "Flask temp ordinary (°C)",
            "Flask temp heavy (°C)", "Quench after (min)", "Fresh (g)", "Re-melt (g)"],
        [AlloyNames[0], 10.36, 802, 893, 970, 590, 538, 455, "8/15/20", 400_000, 100_000],
        [AlloyNames[1], 8.80, 854, 1000, 1090, 600, 540, 450, "15/20/25", 400_000, 100_000],
        [AlloyNames[2], 13.94, 842, 895, 988, 595, 566, 480, "10/15/17", 400_000, 100_000],
    ];

    public static IReadOnlyList<object?[]> Materials { get; } =
    [
        ["Material", "Kind", "Density (g/cm³)"],
        [Resin, "resin", 1.15],
        [Wax, "wax", 0.95],
    ];

    public static IReadOnlyList<object?[]> Flasks { get; } =
    [
        ["Size", "Inside diameter (mm)", "Height (mm)", "Owned", "Sprue diameter (mm)", "Base height (mm)", "Cup (ml)"],
        ["75 × 100", 75.0, 100.0, 20, 8.0, 20.0, 10.0],
        ["90 × 125", 90.0, 125.0, 20, 10.0, 20.0, 14.0],
        ["100 × 150", 100.0, 150.0, 20, 12.0, 22.0, 18.0],
    ];

    public static IReadOnlyList<object?[]> Crucibles { get; } =
    [
        ["Crucible", "Holds (ml)", "Owned"],
        ["crucible", 90.0, 3],
    ];

    public static IReadOnlyList<object?[]> Investments { get; } =
    [
        ["Investment", "Kind", "Water per 100", "Powder density (g/cm³)", "Never above (°C)", "In stock (g)"],
        ["gypsum investment", "gypsum", 39.0, 2.60, 732, 9_000_000],
    ];

    public static IReadOnlyList<object?[]> Schedules { get; } =
    [
        ["Schedule", "For", "Up to diameter (mm)", "Up to height (mm)", "Load at (°C)", "Stage", "Target (°C)", "Rate (°C/h)", "Hold (h)"],
        ["all flasks", null, 105, 205, 20, 1, 150, 75, 3.0],
        ["all flasks", null, 105, 205, 20, 2, 370, 75, 3.0],
        ["all flasks", null, 105, 205, 20, 3, 732, 120, 4.0],
        ["all flasks", null, 105, 205, 20, 4, 540, 100, 2.0],
    ];

    public static IReadOnlyList<object?[]> Settings { get; } =
    [
        ["Setting", "Value", "Unit"],
        ["Casting method", "vacuum perforated", null],
        ["Sprue wax density", 0.95, "g/cm³"],
    ];
}
