using CastBook.Templates.Sheets;

namespace CastBook.Templates.Demo;

/// <summary>The list of the night. Every name, weight and order in it is invented.</summary>
internal static class WrenmoorPieces
{
    private const string Silver = WrenmoorShop.Silver;
    private const string Bronze = WrenmoorShop.Bronze;
    private const string Gold = WrenmoorShop.Gold;
    private const string Resin = WrenmoorShop.Resin;
    private const string Wax = WrenmoorShop.Wax;
    private const string Carving = WrenmoorShop.Carving;

    private static readonly string[] Unused = ["Gate length (mm)", "Stones in", "Printed at (°C)", "Night", "Keep in flask"];

    /// <summary>The shop's own version of the list: columns it never fills are gone, two of its own have come.</summary>
    public static SheetSpec Spec { get; } = PiecesSheet.Spec with { Columns = Columns() };

    /// <summary>The lines, in the order of the columns.</summary>
    public static IReadOnlyList<IReadOnlyList<object?>> Rows { get; } =
        [.. Night().Select(p => (IReadOnlyList<object?>)[.. Spec.Columns.Select(c => p.Under(c.Heading))])];

    private static List<ShopColumn> Columns()
    {
        List<ShopColumn> columns = [.. PiecesSheet.Spec.Columns.Where(c => !Unused.Contains(c.Heading, StringComparer.Ordinal))];
        columns.Insert(1, new ShopColumn("Customer", 14, ColumnKind.Words, ""));
        columns.Add(new ShopColumn("Bench note", 25, ColumnKind.Words, ""));
        return columns;
    }

    private static IEnumerable<DemoPiece> Night() => [.. SilverRings(), .. SilverSmall(), .. Golds(), .. Bronzes(), .. Slips()];

    private static DemoPiece[] SilverRings() =>
    [
        new("Band, plain 5 mm", "shop window", 8, 0.62, Resin, Silver, 3) { Ring = (22.2, 5.0), Thick = 1.8, Washed = 2.5, Cured = 6 },
        new("Band, hammered 7 mm", "order 2231", 2, 0.94, Resin, Silver, 4) { Ring = (23.0, 7.0), Thick = 2.0, Washed = 2.5, Cured = 6 },
        new("Stacking ring, rope", "shop window", 12, 0.21, Resin, Silver, 10) { Ring = (20.6, 1.8), Thick = 1.7, Sections = (1.2, 1.7), Washed = 2.5, Cured = 6 },
        new("Signet, oval top", "order 2218", 1, 1.46, Wax, Silver, 3) { Ring = (25.5, 14.0), Thick = 3.2, Sections = (1.6, 3.2), Gates = 2, Note = "seal is cut after polishing" },
        new("Ring, thistle shank", "order 2240", 1, 0.88, Resin, Silver, 11) { Ring = (23.4, 9.0), Thick = 2.4, Washed = 2.5, Cured = 6 },
        new("Ring, open twig", "harbour fair", 4, 0.55, Resin, Silver, 18) { Ring = (21.8, 6.0), Thick = 2.2, Washed = 8, Cured = 6, Note = "forgot them in the bath" },
    ];

    private static DemoPiece[] SilverSmall() =>
    [
        new("Stud, small pebble", "shop window", 16, 0.08, Resin, Silver, 10) { Box = (9.0, 6.0, 3.0), Washed = 2.5, Cured = 6 },
        new("Stud, wren", "shop window", 10, 0.11, Resin, Silver, 10) { Box = (10.0, 8.0, 2.5), Washed = 2.5, Cured = 6 },
        new("Drop, fern frond", "order 2229", 4, 0.24, Resin, Silver, 4) { Box = (26.0, 9.0, 1.6), Sections = (1.2, 1.6), Washed = 2.5, Cured = 6 },
        new("Pendant, leaf", "harbour fair", 6, 0.58, Wax, Silver, 18) { Box = (28.0, 15.0, 2.4) },
        new("Pendant, tide disc", "order 2233", 3, 0.72, Wax, Silver, 8) { Box = (24.0, 24.0, 2.0) },
        new("Charm, anchor", "harbour fair", 12, 0.19, Wax, Silver, 18) { PerTree = "75 × 100: 40; 90 × 125: 60" },
        new("Cufflink face", "order 2236", 4, 0.66, Wax, Silver, 8) { Box = (18.0, 14.0, 3.5) },
        new("Clasp, hook", "stock", 10, 0.24, Wax, Silver, null) { PerTree = "30" },
        new("Bail, tapered", "stock", 20, 0.06, Wax, Silver, null) { Box = (8.0, 4.0, 3.0) },
        new("Brooch, heron", "order 2227", 1, null, Resin, Silver, 4) { Volume = 1.22, Box = (27.0, 22.0, 4.0), Gates = 2, GateDiameter = 3.0, Washed = 2.5, Cured = 6, Note = "volume from the drawing" },
    ];

    private static DemoPiece[] Golds() =>
    [
        new("Wedding band, 4 mm court", "order 2220", 2, 0.49, Resin, Gold, 3) { Ring = (21.4, 4.0), Thick = 1.8, Washed = 2.5, Cured = 6, Note = "pair, keep together" },
        new("Ring, three claw", "order 2224", 1, 0.57, Resin, Gold, 4) { Ring = (22.0, 6.0), Thick = 2.0, Sections = (0.9, 2.0), Washed = 2.5, Cured = 6 },
        new("Stud, acorn", "order 2241", 4, 0.13, Resin, Gold, 11) { Box = (9.0, 7.0, 5.0), Washed = 2.5, Cured = 6 },
        new("Pendant, small sun", "shop window", 2, 0.28, Wax, Gold, 10) { Box = (16.0, 16.0, 1.8) },
        new("Signet, shield", "order 2238", 1, 1.12, Wax, Gold, 8) { Ring = (24.0, 12.0), Thick = 2.8, Gates = 2 },
    ];

    private static DemoPiece[] Bronzes() =>
    [
        new("Drawer knob, shell", "order 2215", 2, 3.40, Wax, Bronze, 15) { Box = (22.0, 22.0, 14.0), Sections = (2.5, 6.0), GateDiameter = 5.5 },
        new("Key fob, wave", "harbour fair", 5, 1.35, Wax, Bronze, 18) { Box = (28.0, 18.0, 3.5), GateDiameter = 3.0 },
        new("Buckle, plain", "order 2230", 2, 2.10, Resin, Bronze, 11) { Box = (27.0, 30.0, 4.5), Gates = 2, GateDiameter = 4.0, Washed = 2.5, Cured = 6 },
        new("Button, knot", "stock", 24, 0.44, Wax, Bronze, null) { Box = (15.0, 15.0, 3.0) },
        new("Small hare, standing", "order 2212", 1, 4.20, Wax, Bronze, 15) { Box = (24.0, 20.0, 16.0), Sections = (3.0, 7.5), Gates = 2, GateDiameter = 6.0 },
        new("Bell, thimble size", "harbour fair", 3, 1.90, Wax, Bronze, 18) { Box = (20.0, 18.0, 18.0) },
    ];

    private static DemoPiece[] Slips() =>
    [
        new("Torc, test piece", "stock", 1, "12O.5", Wax, Silver, 15) { PerTree = "90 × 125: 1", Note = "weigh again?" },
        new("Paperweight, sea urchin", "order 2219", 1, 58.0, Wax, Bronze, 15) { PerTree = "100 × 150: 1", Gates = 3, GateDiameter = 8.0 },
        new("Hair pin, long", "order 2226", 2, 2.10, Wax, Silver, 8) { Box = (135.0, 12.0, 3.0) },
        new("Carved toggle", "order 2239", 2, 1.05, Carving, Bronze, 11) { Box = (22.0, 10.0, 8.0) },
        new("Spoon bowl, try-out", "stock", 1, 1.60, Wax, Silver, null) { Box = (27.0, 22.0, 6.0), LeaveOut = true, Note = "not tonight, remake the wax" },
    ];
}
