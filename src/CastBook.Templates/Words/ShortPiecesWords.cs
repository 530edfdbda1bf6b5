namespace CastBook.Templates.Words;

/// <summary>What is typed in the columns of a list that has no other sheet beside it.</summary>
internal static class ShortPiecesWords
{
    public static string Remarks => "Whatever else there is to say. CastBook leaves it alone.";

    public static string Material => "What the pattern is made of: wax, resin, or the name you know it by.";

    public static string Alloy => "The metal to cast it in, such as sterling silver, 14k yellow or tin bronze.";
}
