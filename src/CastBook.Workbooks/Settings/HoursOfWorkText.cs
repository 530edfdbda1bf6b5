using System.Text.RegularExpressions;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>Hours of work as a shop types them: hours with commas, after the days they are for; semicolons between days.</summary>
internal static partial class HoursOfWorkText
{
    private const string Hour = @"\d{1,2}(?:[:.h]\d{2})?\s*(?:am|pm|a\.m\.|p\.m\.|uhr|h)?";

    private static readonly char[] BetweenDays = [';', '\n', '\r'];

    /// <summary>Reads hours.</summary>
    /// <param name="text">The text: <c>Monday to Thursday 08:00-12:00, 13:30-19:00; Fri 8:00-14:00</c>.</param>
    /// <returns>The hours by day, the days that are not named having those without a day; nothing where a word or an hour cannot be read.</returns>
    public static WeekHours? Read(string text)
    {
        var named = new Dictionary<DayOfWeek, List<OpenHours>>();
        List<OpenHours>? others = null;
        foreach (var part in text.Split(BetweenDays, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var (days, hours) = Apart(part);
            if (hours is null || (days.Length > 0 ? WeekdayWords.Read(days) : []) is not { } on || (days.Length > 0 && on.Count == 0))
            {
                return null;
            }

            if (days.Length == 0)
            {
                others = [.. others ?? [], .. hours];
            }

            foreach (var day in on.Distinct())
            {
                named[day] = [.. named.GetValueOrDefault(day, []), .. hours];
            }
        }

        var week = Enum.GetValues<DayOfWeek>().ToDictionary(day => day, day => (IReadOnlyList<OpenHours>)(named.GetValueOrDefault(day) ?? others ?? []));
        return week.Values.All(hours => hours.Count == 0) ? null : new WeekHours(week);
    }

    // The days and their hours; no hours where the shop is closed, nothing where they cannot be read.
    private static (string Days, List<OpenHours>? Hours) Apart(string part)
    {
        if (Closed().Match(part) is { Success: true } closed)
        {
            var shut = part[..closed.Index].Trim(' ', ':', ',');
            return (shut, shut.Length == 0 ? null : []);
        }

        var spans = Spans().Matches(part);
        if (spans.Count == 0 || !IsOnlyCommas(part, spans))
        {
            return ("", null);
        }

        var hours = new List<OpenHours>();
        foreach (Match span in spans)
        {
            // Without minutes, 9-5 may be a day or a night.
            if (Time(span.Groups["from"].Value) is not { } from || Time(span.Groups["until"].Value) is not { } until
                || (until <= from && span.Value.All(c => char.IsAsciiDigit(c) || !char.IsAsciiLetter(c)) && !span.Value.ContainsAny(':', '.')))
            {
                return ("", null);
            }

            hours.Add(new OpenHours(from, until));
        }

        return (part[..spans[0].Index].Trim(' ', ':', ','), hours);
    }

    private static bool IsOnlyCommas(string part, MatchCollection spans)
    {
        var end = spans[0].Index;
        foreach (Match span in spans)
        {
            if (!Between().IsMatch(part[end..span.Index]))
            {
                return false;
            }

            end = span.Index + span.Length;
        }

        return Between().IsMatch(part[end..]);
    }

    // Midnight at the end of a day is often written so.
    private static TimeOnly? Time(string hour) => hour.Trim() is "24" or "24:00" or "24.00" ? TimeOnly.MinValue : HourText.Read(hour);

    [GeneratedRegex($@"(?<![\d:.])(?:from\s+|von\s+)?(?<from>{Hour})\s*(?:-|–|—|to|until|bis)\s*(?<until>{Hour})(?![\d:])", RegexOptions.IgnoreCase)]
    private static partial Regex Spans();

    [GeneratedRegex(@"^\s*(?:,|and|und|&|\+|\s)*\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Between();

    [GeneratedRegex(@"\b(?:closed|geschlossen|fermé|cerrado|chiuso|fechado)\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Closed();
}
