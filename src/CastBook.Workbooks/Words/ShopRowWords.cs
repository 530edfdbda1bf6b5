namespace CastBook.Workbooks.Words;

/// <summary>What findings call a row of a shop sheet, before its name.</summary>
internal static class ShopRowWords
{
    public static string FlaskSize => "flask size";

    public static string Crucible => "crucible";

    public static string Kiln => "kiln";

    public static string Alloy => "alloy";

    public static string Material => "material";

    public static string Investment => "investment";

    public static string Schedule => "schedule";

    public static string Flask => "flask";
}
