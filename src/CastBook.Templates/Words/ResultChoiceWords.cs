namespace CastBook.Templates.Words;

/// <summary>What the sheet Words of a log of results says of itself and what is typed in its columns.</summary>
internal static class ResultChoiceWords
{
    public static string Purpose => "The words that the drop-down lists offer. Change them as you like.";

    public static string Fault => "A fault as it looks, in your own words. Keep none for what came out well.";

    public static string Alloy => "An alloy that you cast.";

    public static string Material => "A material that your patterns are made of.";

    // A fault as it looks.
    public static string[] Faults =>
    [
        "none", "not filled", "porous", "shrunk", "grit inside", "fins", "rough skin", "bubbles on skin", "ash or residue", "cracked", "bent", "other",
    ];
}
