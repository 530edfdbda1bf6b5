namespace CastBook.Templates.Words;

/// <summary>What the sheet Investments says of itself and what is typed in its columns.</summary>
internal static class InvestmentsWords
{
    public static string Purpose => "The investment powders you use. The maker's data sheet comes first.";

    public static string Investment => "The name you know it by.";

    public static string Kind => "gypsum for silver, gold and copper alloys; high temperature for platinum and palladium.";

    public static string WaterPer100 => "Grams of water to 100 g of powder, from the maker's data sheet.";

    public static string PowderDensity => "Density of the powder's solid. Empty: 2.60.";

    public static string WorkingTime => "From first water to gloss-off.";

    public static string SetAtLeast => "Before the kiln.";

    public static string NeverAbove => "The hottest kiln it stands. Empty: 732 for gypsum.";

    public static string Silica => "What the maker says is in it. It turns over near 573 °C (quartz) or from 200 to 270 °C (cristobalite). Empty: both.";

    public static string InversionAtMost => "How fast the kiln may go through those temperatures, by the maker's data sheet.";

    public static string KeptHotAtMost => "How long a mould may be kept at its flask temperature before it is poured, by the maker's data sheet. Empty: not looked at.";

    public static string InStock => "Powder in the shop.";
}
