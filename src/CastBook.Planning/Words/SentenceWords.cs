namespace CastBook.Planning.Words;

/// <summary>What sentences of findings are joined with, whatever they are about.</summary>
internal static class SentenceWords
{
    // Between the last two of a list.
    public static string Or => " or ";

    public static string And => " and ";

    // At the end of a list that goes on.
    public static string More(string count) => $"{count} more";

    // Behind the words that ask for a name; the names are in quotes.
    public static string Nearest(bool isOne, string names) => $" (the nearest {(isOne ? "is" : "are")} {names})";

    // Instead of a name that is missing.
    public static string ThisPiece => "this piece";

    public static string FirstRow => "The first row";

    public static string FromTo(string from, string to) => $"{from} to {to}";

    public static string Degrees(string number) => $"{number} degrees";
}
