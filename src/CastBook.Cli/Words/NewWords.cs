namespace CastBook.Cli.Words;

/// <summary>What <c>castbook new</c> and <c>castbook clear-examples</c> say.</summary>
internal static class NewWords
{
    // The help of castbook new.
    public static string Command => "Make a workbook to start from.\nNothing that exists is written over.\n\nExample: castbook new night harbour-night.xlsx";

    public static string Kind => "night (pieces and all sheets of a shop), list (pieces only), shop (what many books share) or results (a log).";

    public static string Book => "The workbook to make; left out, one named for its kind.";

    public static string Units => "Units of the headings: metric or us.";

    public static string Empty => "Leave the example rows out.";

    // Its answer.
    public static string NoKind(string typed, IEnumerable<string> kinds) => $"'{typed}' is no kind of book; the kinds are {string.Join(", ", kinds)}.";

    public static string MustEndIn(string path, string extension) => $"'{path}' must end in {extension}.";

    public static string Exists(string path) => $"'{path}' exists and was left as it is. Name another file.";

    public static string NotWritten(string path, string why) => $"'{path}' could not be written: {why}";

    public static string Made(string book) => $"{book}: made. Its first sheet says how to use it.";

    public static string SettingsMade(string settings) => $"{settings}: made. The books beside it use the shop file from now on.";

    public static string PutIntoSettings(string shop, string settings) => $"To have the books beside it use it, put \"shop\": \"{shop}\" into {settings}.";

    // The help of castbook clear-examples.
    public static string ClearCommand => "Empty the example rows of a new workbook.\nA row that you changed stays.\n\nExample: castbook clear-examples casting-night.xlsx";

    public static string ClearBook => "The workbook, made by castbook new. A backup goes into the folder .castbook beside it.";

    // Its answer.
    public static string NothingToClear(string book) => $"{book}: no example rows to take out";

    public static string Cleared(string book, IEnumerable<string> rows) => $"{book}: example rows taken out: {string.Join(", ", rows)}";

    public static string Kept(IEnumerable<string> rows) => $"left, because something in them was changed: {string.Join(", ", rows)}";

    public static string Backup(string backup) => $"the book as it was: .castbook/{backup}";
}
