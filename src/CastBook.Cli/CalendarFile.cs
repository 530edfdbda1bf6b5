using CastBook.Planning;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;

namespace CastBook.Cli;

/// <summary>Puts the calendar of a night on the disk.</summary>
internal static class CalendarFile
{
    private const string Extension = ".ics";

    /// <summary>What is wrong with the place for it; null where nothing is. A calendar of somebody else is never written over.</summary>
    /// <param name="path">The text after <c>--calendar</c>.</param>
    public static string? Mistake(string? path) => path switch
    {
        null => null,
        _ when !Path.GetExtension(path).Equals(Extension, StringComparison.OrdinalIgnoreCase) => $"'{path}' must end in {Extension}, as calendars do.",
        _ when Directory.Exists(path) => $"'{path}' is a folder. Type the calendar's path after --calendar.",
        _ when !Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path))) => $"there is no folder for '{path}'.",
        _ when File.Exists(path) && !IsOurs(path) => $"'{path}' is not a calendar that CastBook made, and is left as it is. Type another name after --calendar.",
        _ => null,
    };

    /// <summary>Writes the calendar of a night.</summary>
    /// <param name="path">Where it goes.</param>
    /// <param name="plan">The night.</param>
    /// <param name="book">The book's file name.</param>
    /// <param name="shop">The shop's settings: the night's name and the unit of temperatures.</param>
    /// <param name="made">When it is made.</param>
    /// <returns>What there is to say of it.</returns>
    /// <exception cref="IOException">It could not be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It must not be written there.</exception>
    public static string Write(string path, NightPlan plan, string book, Settings shop, DateTimeOffset made)
    {
        if (plan.Clock is not { Start: not null } clock)
        {
            return "calendar: not written, for the night has no hours yet. Give --start or --pour-at, or type \"Start at\" on the Shop sheet.";
        }

        var (text, events) = NightCalendar.Make(clock, Path.GetFileNameWithoutExtension(book), shop.Night ?? "", made, shop.Units.Temperature);
        TemporaryFile.WriteLines(Path.GetFullPath(path), text.TrimEnd().Split("\r\n"), "\r\n");
        return $"calendar: {path}, {(events == 1 ? "1 event" : $"{events} events")} with alarms";
    }

    private static bool IsOurs(string path)
    {
        try
        {
            return File.ReadLines(path).Take(10).Contains($"PRODID:{NightCalendar.Maker}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
