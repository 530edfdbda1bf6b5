using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Floors and its drawings say.</summary>
internal static class FloorsSheetWords
{
    public static string Sheet => "Floors";

    public static string Title(string book) => $"Floors: {book}";

    public static string Under => "Where each flask stands in each load, from above with the door below, with the gaps of the plan between them and to the wall.";

    public static string Load(int number, string kiln) =>
        string.Create(CultureInfo.InvariantCulture, $"Load {number}{(kiln.Length == 0 ? "" : $", {kiln}")}");

    public static string Middle(string flask, string fromLeft, string fromFront) => $"{flask} {fromLeft} and {fromFront}";

    public static string Middles(string unit, bool isRound, IEnumerable<string> middles) =>
        $"Middles, {unit} from the {(isRound ? "left side and the front" : "left wall and the front")}: {string.Join("; ", middles)}.";

    // The drawing.
    public static string Door => "door";

    public static string Picture(int load) => string.Create(CultureInfo.InvariantCulture, $"floor of load {load}");

    public static string PictureTells(int load, IEnumerable<string> flasks) =>
        string.Create(CultureInfo.InvariantCulture, $"Load {load} on the floor of the kiln from above, the door below: flasks {string.Join(' ', flasks)}.");
}
