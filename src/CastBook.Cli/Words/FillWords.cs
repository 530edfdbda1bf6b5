using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>What <c>castbook fill</c> says.</summary>
internal static class FillWords
{
    // Its help.
    public static string Command => "Fill a workbook in place; a backup goes into .castbook.\nExample: castbook fill harbour-night.xlsx";

    public static string Book => "The workbook (.xlsx, .xlsm), or a list as text (.csv, .tsv, .txt).";

    public static string Out => "Write the filled workbook here and leave BOOK as it is.";

    public static string Night => "Plan this night, written as in the Night column.";

    public static string Start => "Weigh the first powder then, such as \"2026-11-25 20:00\".";

    public static string PourAt => "Pour the first flask then, and count every step back.";

    public static string Calendar => "Also write the steps as calendar events with alarms.";

    public static string KilnLog => "Lay the kiln's temperature log over the plan and its chart.";

    public static string MetalInHand => "Plan no more than the metal in stock allows.";

    public static string DryRun => "Say what would be done and write nothing.";

    public static string Json => "Print the whole answer as JSON.";

    public static string Strict => "Exit with 1 when something says stop.";

    public static string Brief => "One line of what happened, and what says stop.";

    public static string Undo => "Take everything of CastBook's out of BOOK again.";

    // What is wrong with what was typed.
    public static string OutIsNoFile(string path) => $"'{path}' is no file. Type the path of the filled workbook after --out.";

    public static string OutMustEndIn(string path, string extension) => $"'{path}' must end in {extension}, as the workbook does.";

    public static string UndoWithoutJson => "--undo has no answer as JSON; leave --json out.";

    public static string StartAndPourAt => "--start and --pour-at are two ways to say the same; give one of them.";

    public static string NoHour(string typed) => $"'{typed}' is no day and hour; type it like \"2026-11-25 20:00\".";

    public static string HourOfTwoDays(string typed, DateTime first, DateTime other) => string.Create(
        CultureInfo.InvariantCulture, $"'{typed}' may be {first:yyyy-MM-dd HH:mm} or {other:yyyy-MM-dd HH:mm}; type the one that is meant, year first as here.");

    public static string SkippedHour(string typed) => $"'{typed}' is an hour that the clocks skip that night; give one before or after the change.";

    // What was done.
    public static string WroteNothing => "dry run: nothing was written";

    public static string Unchanged => "nothing had changed, so the file was left as it is";

    public static string FilledTo(string path) => $"filled: {path}";

    public static string FilledInPlace(string backup) => $"filled in place; the book as it was: {backup}";

    public static string UndoneTo(string path) => $"undone: {path}";

    public static string UndoneInPlace(string backup) => $"undone in place; the book as it was: {backup}";

    public static string Reading(string book) => $"reading {book}";

    public static string Looking => "the book is read; looking for flasks";

    public static string StillLooking => "still looking for better flasks; Ctrl+C takes the best plan so far";
}
