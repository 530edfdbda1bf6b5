using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>What <c>castbook watch</c> says, most of it in the log of a folder, and <c>castbook status</c>.</summary>
internal static class WatchWords
{
    // The help of castbook watch.
    public static string Command => "Fill each workbook that is put or saved into a folder.\nWhat happens stands in castbook.log in the folder. Ctrl+C ends it.\n\nExample: castbook watch \"Casting nights\"";

    public static string Folders => "The folders to watch.";

    public static string SubFolders => "Watch the folders in them too.";

    public static string Once => "Look once, fill what is ready, and end; for schedulers.";

    public static string Polling => "Do not rely on the system's word that something changed; for network shares.";

    public static string Every => "Seconds between two full looks.";

    public static string EveryOutOfRange => "--every takes a number of seconds from 1 to 3600.";

    // The log.
    public static string Begins(int everySeconds) => string.Create(CultureInfo.InvariantCulture, $"watching this folder, a full look every {everySeconds} s");

    public static string Ends => "watching ended";

    public static string CannotLook(string why) => $"this folder cannot be looked at: {why}. It is tried again";

    public static string OfBook(string book, string words) => $"{book}: {words}";

    public static string FilledAlready(string summary) => $"{summary}; it was filled already";

    public static string HasItOpen(string book, string who) => $"{book}: {who} has it open; it is filled when it is closed";

    public static string ConflictAlone(string copy) => $"{copy}: a copy in conflict, left by a program that keeps folders in step. It is not filled. Rename it if it is the right one";

    public static string Conflict(string copy, string book) => $"{copy} and {book}: two copies of one book. Neither is filled. Keep the right one under the book's name and move the other away";

    // The help of castbook status.
    public static string StatusCommand => "Say what became of the workbooks of a watched folder.\nAnd whether it is being watched.\n\nExample: castbook status \"Casting nights\"";

    public static string StatusFolder => "The watched folder.";

    // Its answer.
    public static string Watched(string machine, string lastSign) => $"watched by {machine}, last sign of life {lastSign}";

    public static string NoLongerWatched(string machine, string lastSign) => $"not watched: the last sign of life is from {lastSign}, by {machine}";

    public static string NotWatched => "not watched";

    public static string NothingYet => "no workbook has been looked at here yet";

    // What became of a book, in a column of its own.
    public static string Filled => "filled";

    public static string Unchanged => "unchanged";

    public static string NotRead => "not read";

    public static string NotWritten => "not written";

    public static string Waits => "waits";

    public static string InConflict => "conflict";
}
