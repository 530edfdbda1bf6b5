namespace CastBook.Cli.Words;

/// <summary>What <c>castbook shortcut</c> says, and what its files are called.</summary>
internal static class ShortcutWords
{
    // Its help.
    public static string Command => "Write a file to double-click that fills a workbook.\nIts window stays open where something says stop.\n\nExample: castbook shortcut harbour-night.xlsx";

    public static string Book => "The workbook.";

    public static string ForSystem => "windows, macos or linux.";

    // What was done.
    public static string Written(string book, IEnumerable<string> files) => $"double-click to fill {book}: {string.Join(" or ", files)}";

    public static string OnlyThere => "It names the book and the program where they lie on this computer; make it anew on the other.";

    public static string NotWritten(string why) => $"the shortcut could not be written: {why}";

    // A file's name without its ending, and the last line in its window. It stands between single quotes in a script and must hold none.
    public static string Name(string book) => $"Fill {book}";

    public static string EnterCloses => "Enter closes this window. ";
}
