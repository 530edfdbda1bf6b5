using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Mixes says.</summary>
internal static class MixesSheetWords
{
    public static string Sheet => "Mixes";

    public static string Title(string book) => $"Mixes: {book}";

    public static string Under => "Minutes count from the first powder in the water. Wear a mask: the powder holds silica.";

    // Headings; those of the cells that are the shop's are known again by these words.
    public static string Flasks => "Flasks";

    public static string Mixed => "Mixed";

    public static string Remarks => "Remarks";

    public static string[] Headings(string powder, string water) =>
    [
        Flasks, "Mix", "Begin at", $"Powder ({powder})", $"Water ({water})", $"Slurry ({water})", "Takes (min)", "Pour done by (min)", "Gloss-off (min)", Mixed, Remarks,
    ];

    // Below the mixes.
    public static string Before(string least, string most) =>
        $"Before: the wetting agent on the trees is dry; tape or collars on the flasks; the water at {least} to {most} unless the maker's sheet says otherwise.";

    public static string Filling => "Fill the flasks in the order given. After gloss-off nothing is moved until the moulds have set.";

    public static string Set(string atLeast) =>
        $"Set: {atLeast} at least, counted from the last pour; overnight is usual. Then base off, rim cleaned, the flask's letter scratched in.";

    public static string Steam(double minutes, string kilnAt) =>
        string.Create(CultureInfo.InvariantCulture, $"Steam: {minutes:0} min, moulds of wax only; then straight into a kiln at {kilnAt}, ten minutes in the open at most.");

    public static string BagDamp => "Bag the moulds damp as soon as they have set: so they keep a week. One that stands open for more than a day dries half way and cracks.";

    public static string OpenDries => "A mould that stands open for more than a day dries half way and cracks: bag it damp, and it keeps a week.";
}
