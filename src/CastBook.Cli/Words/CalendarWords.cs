using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>What is said of a night's calendar, and what stands in it.</summary>
/// <remarks>The words of a step are <see cref="Planning.Clock.ClockWords"/>.</remarks>
internal static class CalendarWords
{
    public static string MustEndIn(string path, string extension) => $"'{path}' must end in {extension}, as calendars do.";

    public static string IsFolder(string path) => $"'{path}' is a folder. Type the calendar's path after --calendar.";

    public static string IsAnothers(string path) => $"'{path}' is not a calendar that CastBook made, and is left as it is. Type another name after --calendar.";

    public static string NoHours => "calendar: not written, for the night has no hours yet. Give --start or --pour-at, or fill in \"Start at\" on the Shop sheet.";

    public static string NotWritten(string path, string why) => $"the workbook is filled, but the calendar '{path}' could not be written: {why}";

    public static string Written(string path, int events) => events == 1
        ? $"calendar: {path}, 1 event with alarms"
        : string.Create(CultureInfo.InvariantCulture, $"calendar: {path}, {events} events with alarms");

    // Inside the calendar.
    public static string Title(string book) => $"Casting: {book}";

    public static string Mix(int mix, IEnumerable<string> flasks) => string.Create(CultureInfo.InvariantCulture, $"Mix {mix}: {string.Join(' ', flasks)}");

    public static string ForTwo(string step) => $"{step} (two people)";

    public static string Of(string book) => $"{book}.";
}
