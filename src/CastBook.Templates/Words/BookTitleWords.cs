namespace CastBook.Templates.Words;

/// <summary>The titles of new books.</summary>
internal static class BookTitleWords
{
    public static string Night => "Casting night";

    public static string List => "Pieces to cast";

    public static string Shop => "Shop file";

    public static string Results => "Casting results";
}
