namespace CastBook.Templates.Words;

/// <summary>What the sheet Results says of itself and what is typed in its columns.</summary>
internal static class ResultsWords
{
    public static string Purpose => "What came out of the flasks, a line a piece or a tree.";

    public static string Piece => "The piece's name or job number, or tree where the whole tree is meant.";

    public static string PouredOn => "The day it was poured, such as 4 Dec 2026.";

    public static string Flask => "The letter on the mould.";

    public static string Alloy => "The metal, as you call it elsewhere.";

    public static string Material => "What the pattern was made of.";

    public static string Washed => "Time in the wash, all baths together.";

    public static string Cured => "Cure of each side.";

    public static string Schedule => "The burnout that was run, by the name you know it by.";

    public static string MetalTemp => "The temperature it was really poured at.";

    public static string FlaskTemp => "The temperature that the flask really had.";

    public static string Poured => "How many were poured.";

    public static string Good => "How many of them came out well.";

    public static string Fault => "The worst that was wrong, as it looks. none where nothing was.";

    public static string Remarks => "Where on the piece or the tree, and what you would do otherwise.";
}
