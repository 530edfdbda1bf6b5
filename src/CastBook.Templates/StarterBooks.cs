using CastBook.Templates.Sheets;
using CastBook.Templates.Writing;

namespace CastBook.Templates;

/// <summary>The workbooks that a shop starts from.</summary>
public static class StarterBooks
{
    /// <summary>How many example lines there are.</summary>
    public const int MostExampleRows = 2;

    /// <summary>The first sheet, line by line.</summary>
    internal static readonly string[] HowTo =
    [
        "How to use this book",
        "1. Pieces: a line for each piece to cast. Only Piece, Qty, a weight or a volume, and Alloy are needed; every other column makes the plan better.",
        "2. Weigh a pattern as it goes on the tree: cured or waxed, supports off, without its sprue.",
        "3. Alloys: type density and temperatures from your supplier's data sheet, and your stock.",
        "4. Materials: type the density of your resin and wax. Weigh a solid test cube and divide by its volume.",
        "5. Flasks and Crucibles: measure inside, and say how many you own. What nobody owns is not used.",
        "6. Investments, Kilns and Schedules: what your own data sheets say. The resin maker's burnout schedule belongs under Schedules.",
        "7. Shop: answers that hold for every line. Leave empty what you do not know; you will be asked.",
        "8. Replace the example lines, save and close the book, then give it to CastBook. It adds its own columns and sheets and leaves yours as they are.",
        "9. Read the sheet Checks first: stops, then checks, then notes. Each says what to type and where.",
        "10. The makers' data sheets and local rules come first.",
    ];

    private static readonly string[] ExampleHeadings =
        ["Piece", "Qty", "Pattern weight (g)", "Pattern volume (ml)", "Material", "Alloy", "Shape", "Length (mm)", "Width (mm)", "Thickness (mm)"];

    private static readonly object?[][] Examples =
    [
        ["Example: plain band", 4, 0.62, null, "castable resin", "sterling silver", "ring", 22.0, 5.0, 1.8],
        ["Example: leaf pendant", 2, null, 0.48, "casting wax", "sterling silver", "other", 28.0, 15.0, 2.4],
    ];

    /// <summary>
    /// Writes the starter book of a casting night: the list of pieces, the shop's own sheets and a page that says how to use them.
    /// Example names of alloys and materials stand in it; no number that could hurt does.
    /// </summary>
    /// <param name="output">Where the .xlsx goes; left open.</param>
    /// <param name="exampleRows">How many example pieces, 0 to <see cref="MostExampleRows"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="exampleRows"/> is out of range.</exception>
    public static void CastingNight(Stream output, int exampleRows = MostExampleRows)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentOutOfRangeException.ThrowIfNegative(exampleRows);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(exampleRows, MostExampleRows);
        BookWriter.Write(Content(exampleRows), output);
    }

    private static BookContent Content(int exampleRows) => new("Casting night", HowTo,
    [
        .. ShopSheets.All.Select(spec => new SheetContent(spec, Rows(spec, exampleRows))),
    ]);

    private static IReadOnlyList<IReadOnlyList<object?>> Rows(SheetSpec spec, int exampleRows) => spec.Name switch
    {
        PiecesSheet.Name => [.. Examples.Take(exampleRows).Select(e => RowOf.Headings(spec, ExampleHeadings, e))],
        AlloysSheet.Name => Names(spec, ["sterling silver", "Ag 925 Cu 75"]),
        MaterialsSheet.Name => Names(spec, ["casting wax", "wax"], ["castable resin", "resin"]),
        InvestmentsSheet.Name => Names(spec, ["gypsum investment", "gypsum"]),
        SettingsSheet.Name => RowOf.Settings(answers: null),
        _ => [],
    };

    private static IReadOnlyList<IReadOnlyList<object?>> Names(SheetSpec spec, params string[][] firstCells) =>
        [.. firstCells.Select(cells => (IReadOnlyList<object?>)[.. cells, .. new object?[spec.Columns.Count - cells.Length]])];
}
