using CastBook.Cli.Words;
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
        _ when !Path.GetExtension(path).Equals(Extension, StringComparison.OrdinalIgnoreCase) => CalendarWords.MustEndIn(path, Extension),
        _ when Directory.Exists(path) => CalendarWords.IsFolder(path),
        _ when !Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path))) => SharedWords.NoFolderFor(path, "--calendar"),
        _ when File.Exists(path) && !IsOurs(path) => CalendarWords.IsAnothers(path),
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
            return CalendarWords.NoHours;
        }

        var (text, events) = NightCalendar.Make(clock, Path.GetFileNameWithoutExtension(book), shop.Night ?? "", made, shop.Units.Temperature);
        TemporaryFile.WriteLines(Path.GetFullPath(path), text.TrimEnd().Split("\r\n"), "\r\n");
        return CalendarWords.Written(path, events);
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
