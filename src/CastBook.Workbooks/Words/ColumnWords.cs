using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the columns say that CastBook fills in the shop's list.</summary>
internal static class ColumnWords
{
    // Headings, masses without their unit.
    public static string MetalEach => "Metal each";

    public static string Metal => "Metal";

    public static string Flask => "Flask";

    public static string Mix => "Mix";

    public static string Burnout => "Burnout (h)";

    public static string Checks => "Checks";

    // In their cells.
    public static string SeveralFlasks => "see Night plan";

    // What CastBook would write beside what a person typed, where it would write nothing.
    public static string Nothing => "nothing";

    public static string OfMix(string powderAndWater, int mix) => string.Create(CultureInfo.InvariantCulture, $"{powderAndWater}, mix {mix}");
}
