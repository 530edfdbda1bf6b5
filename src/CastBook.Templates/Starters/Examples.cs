using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using CastBook.Templates.Writing;

namespace CastBook.Templates.Starters;

/// <summary>
/// Example rows of the Wrenmoor Foundry, an invented shop: plausible answers, to show a full plan with. They are nobody's data
/// sheet and no example to cast by, so every one of them says that it is an example, and a filled book says so again.
/// </summary>
internal static class Examples
{
    public const string Silver = ExampleName.Start + "silver";
    public const string Bronze = ExampleName.Start + "bronze";
    public const string Gold = ExampleName.Start + "gold";
    public const string Resin = ExampleName.Start + "resin";
    public const string Wax = ExampleName.Start + "wax";

    private const string Powder = ExampleName.Start + "gypsum powder";
    private const string Perforated = "vacuum perforated";

    private static readonly string[] PieceHeadings =
    [
        "Piece", "Qty", "Pattern weight (g)", "Pattern volume (ml)", "Material", "Alloy", "Shape", "Length (mm)", "Width (mm)", "Thickness (mm)",
    ];

    private static readonly object?[][] Pieces =
    [
        [ExampleName.Start + "band, 5 mm", 8, 0.62, null, Resin, Silver, "ring", 22.2, 5.0, 1.8],
        [ExampleName.Start + "signet, oval", 1, 1.46, null, Wax, Silver, "ring", 25.5, 14.0, 3.2],
        [ExampleName.Start + "leaf pendant", 6, 0.58, null, Wax, Silver, "other", 28.0, 15.0, 2.4],
        [ExampleName.Start + "heron brooch", 1, null, 1.22, Resin, Silver, "other", 27.0, 22.0, 4.0],
        [ExampleName.Start + "court band", 2, 0.49, null, Resin, Gold, "ring", 21.4, 4.0, 1.8],
        [ExampleName.Start + "wave key fob", 5, 1.35, null, Wax, Bronze, "other", 28.0, 18.0, 3.5],
    ];

    private static readonly object?[][] Flasks =
    [
        // Size, inside diameter, height, owned, method, holds, powder, water, sprue diameter, base height, cup, above tree, to wall, per tree.
        [ExampleName.Start + "75 × 100", 75.0, 100.0, 4, Perforated, null, null, null, 8.0, 20.0, 9.0, null, null, null],
        [ExampleName.Start + "90 × 125", 90.0, 125.0, 3, Perforated, null, null, null, 10.0, 20.0, 14.0, null, null, null],
    ];

    private static readonly object?[][] Crucibles =
    [
        [ExampleName.Start + "silver crucible", 60.0, null, null, Silver, "graphite", 1],
        [ExampleName.Start + "bronze crucible", 60.0, null, null, Bronze, "clay-graphite", 1],
        [ExampleName.Start + "gold crucible", 30.0, null, null, Gold, "graphite", 1],
    ];

    private static readonly object?[][] Kilns = [[ExampleName.Start + "front loader", "square", 320, 320, null, 3.6, 100, 5]];

    private static readonly object?[][] Alloys =
    [
        // Alloy, composition, density, solidus, liquidus, metal, flask fine, ordinary, heavy, quench, loss, fresh, re-melt, price.
        [Silver, "Ag 925 Cu 75", 10.36, 802, 893, 970, 590, 538, 455, "8/15/20", null, 900.0, 420.0, 1.05],
        [Bronze, "Cu 877 Sn 83 Zn 40", 8.80, 854, 1000, 1090, 600, 540, 450, "15/20/25", 2.0, 2400.0, 1100.0, 0.03],
        [Gold, "Au 585 Ag 300 Cu 115", 13.94, 842, 895, 988, 595, 566, 480, "10/15/17", 0.5, 90.0, 8.0, 62.40],
    ];

    private static readonly object?[][] Materials =
    [
        [Resin, "resin", 1.15, 9.2, 20.0, 25, 3, 1.5, 5, "no", "yes"],
        [Wax, "wax", 0.95, null, null, null, null, null, null, null, null],
    ];

    private static readonly object?[][] Investments = [[Powder, "gypsum", 39.0, 2.60, 9.5, 2.0, 732, "both", 200, null, 22_000]];

    private static readonly object?[][] Schedules =
    [
        .. Stages("resin burnout", "resin", (150, 130, 1.5), (370, 130, 2.0), (732, 180, 3.0), (540, 180, 1.5)),
        .. Stages("wax burnout", "wax", (150, 130, 1.0), (370, 180, 1.0), (732, 180, 2.5), (540, 180, 1.0)),
    ];

    private static readonly string[] ResultHeadings =
    [
        "Piece", "Poured on", "Flask", "Alloy", "Material", "Washed (min)", "Cured (min)", "Schedule", "Metal temp (°C)", "Flask temp (°C)",
        "Poured", "Good", "Fault", "Remarks",
    ];

    private static readonly object?[][] Results =
    [
        [ExampleName.Start + "band, 5 mm", Day, "A", Silver, Resin, 2.5, 6, "resin burnout", 972, 540, 8, 8, "none", null],
        [ExampleName.Start + "leaf pendant", Day, "B", Silver, Wax, null, null, "wax burnout", 965, 520, 6, 4, "not filled", "tips nearest the top; hang them lower"],
        [ExampleName.Start + "court band", Day, "C", Gold, Resin, 8, 6, "resin burnout", 990, 566, 2, 1, "ash or residue", "was washed too long"],
    ];

    private static DateOnly Day => new(2026, 12, 1);

    /// <summary>The example rows of a sheet; none where it has none.</summary>
    /// <param name="spec">The sheet.</param>
    /// <param name="kind">The book it stands in.</param>
    public static IReadOnlyList<IReadOnlyList<object?>> Rows(SheetSpec spec, StarterKind kind) => spec.Name switch
    {
        PiecesSheet.Name => [.. Pieces.Select(p => RowOf.Headings(spec, PieceHeadings, kind == StarterKind.List ? WithUsualNames(p) : p))],
        FlasksSheet.Name => Flasks,
        CruciblesSheet.Name => Crucibles,
        KilnsSheet.Name => Kilns,
        AlloysSheet.Name => Alloys,
        MaterialsSheet.Name => Materials,
        InvestmentsSheet.Name => Investments,
        SchedulesSheet.Name => Schedules,
        ResultsSheet.Name => [.. Results.Select(r => RowOf.Headings(spec, ResultHeadings, r))],
        _ => [],
    };

    // In a book without the shop's sheets a name means what it means to everybody; these mean one alloy each, so that nothing is asked.
    private static object?[] WithUsualNames(object?[] piece)
    {
        var usual = (object?[])piece.Clone();
        usual[4] = piece[4] is Resin ? "resin" : "wax";
        usual[5] = piece[5] switch { Silver => "sterling without deoxidant", Gold => "14k yellow 1N", _ => "tin bronze C90300" };
        return usual;
    }

    private static IEnumerable<object?[]> Stages(string name, string use, params (int TargetC, int RateCPerHour, double HoldHours)[] stages) =>
        stages.Select((s, i) => new object?[] { ExampleName.Start + name, use, 105, 205, 20, i + 1, s.TargetC, s.RateCPerHour, s.HoldHours });
}
