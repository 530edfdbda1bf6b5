namespace CastBook.Templates.Words;

/// <summary>What the sheet Crucibles says of itself and what is typed in its columns.</summary>
internal static class CruciblesWords
{
    public static string Purpose => "The crucibles you own.";

    public static string Crucible => "The name you know it by.";

    public static string Holds => "Volume to the brim, measured with water. Or give the maker's rating.";

    public static string Rated => "The maker's rating, where the volume is unknown.";

    public static string RatedFor => "The metal that the rating means. A rating of 1 kg usually means gold.";

    public static string Alloys => "The alloys it may hold, separated by semicolons. Empty: any.";

    public static string MadeOf => "Silica, ceramic, graphite: platinum and palladium are never melted in graphite.";

    public static string Owned => "How many you have. Empty: one.";
}
