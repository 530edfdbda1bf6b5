using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>What <c>castbook restore</c> says.</summary>
internal static class RestoreWords
{
    // Its help.
    public static string Command => "List the backups of a workbook, or put one back in its place.\nWhat stands there becomes a backup first, so nothing is lost.\n\nExample: castbook restore harbour-night.xlsx 1";

    public static string Book => "The workbook; it may be gone itself.";

    public static string Number => "Which backup to put back; without it they are listed.";

    // What it answers.
    public static string NoBackup(string path) => $"there is no backup of '{path}'. Backups lie in the folder .castbook beside a workbook that was filled in place.";

    public static string Backups(string book, int count) => count == 1
        ? $"{book}: 1 backup"
        : string.Create(CultureInfo.InvariantCulture, $"{book}: {count} backups, the newest first");

    public static string Backup(int number, DateTime made, long kilobytes) => string.Create(CultureInfo.InvariantCulture, $"{number,4}  {made:yyyy-MM-dd HH:mm:ss}  {kilobytes,6} kB");

    public static string HowToPutBack(string path) => $"to put one back, type its number too, such as: castbook restore \"{path}\" 1";

    public static string PutBack(string book, DateTime made) => string.Create(CultureInfo.InvariantCulture, $"{book} is again what it was on {made:yyyy-MM-dd} at {made:HH:mm:ss}");

    public static string NothingStoodThere => "there was no file in its place";

    public static string KeptAsFirst(string backup) => $"what stood there is backup 1 now: {backup}";
}
