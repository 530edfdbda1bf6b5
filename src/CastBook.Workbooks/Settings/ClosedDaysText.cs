using System.Text.RegularExpressions;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>Days on which nobody is there as a shop types them: days of the week, dates, and dates from one to another.</summary>
internal static partial class ClosedDaysText
{
    // More is a slip in a year.
    private const int LongestDays = 366;

    /// <summary>Reads days.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The days of the week and the dates; nothing where a word is neither, or a date may mean two days.</returns>
    public static (IReadOnlyList<DayOfWeek> Weekdays, IReadOnlyList<DaysAway> Away)? Read(string text)
    {
        var (words, away) = (new List<string>(), new List<DaysAway>());
        foreach (var item in Between().Split(text).Where(i => !string.IsNullOrWhiteSpace(i)))
        {
            if (!item.Any(char.IsAsciiDigit))
            {
                words.Add(item);
            }
            else if (Dates(item) is { } dates)
            {
                away.Add(dates);
            }
            else
            {
                return null;
            }
        }

        return WeekdayWords.Read(string.Join(", ", words)) is { } weekdays ? (weekdays, away) : null;
    }

    private static DaysAway? Dates(string item)
    {
        var ends = FromTo().Split(item);
        return ends.Length <= 2 && Day(ends[0]) is { } first && Day(ends[^1]) is { } last && last >= first && last.DayNumber - first.DayNumber < LongestDays
            ? new DaysAway(first, last)
            : null;
    }

    private static DateOnly? Day(string text) => DayText.Read(text, default).Day;

    [GeneratedRegex(@"[,;\r\n]|\s(?:and|und|et|y|e)\s", RegexOptions.IgnoreCase)]
    private static partial Regex Between();

    [GeneratedRegex(@"\s+(?:-|–|—|to|until|bis)\s+|–|—", RegexOptions.IgnoreCase)]
    private static partial Regex FromTo();
}
