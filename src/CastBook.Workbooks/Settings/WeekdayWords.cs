using System.Text.RegularExpressions;
using CastBook.Casting.Names;

namespace CastBook.Workbooks.Settings;

/// <summary>Days of the week as a shop types them, in English, German, French, Spanish, Italian and Portuguese.</summary>
internal static partial class WeekdayWords
{
    private static readonly TradeWords Table = new(
        """
        = none, nothing, never, the, on, from, am, von, vom, der, die, den, de, du, del, dal, da, le, la, les, il, lo, o, and, und, et, y, e, too, auch, feira
        monday = mondays, mon, montag, montags, lundi, lunes, lunedì, segunda
        tuesday = tuesdays, tue, dienstag, dienstags, mardi, martes, martedì, terça
        wednesday = wednesdays, wed, mittwoch, mittwochs, mercredi, miércoles, mercoledì, quarta
        thursday = thursdays, thu, donnerstag, donnerstags, jeudi, jueves, giovedì, quinta
        friday = fridays, fri, freitag, freitags, vendredi, viernes, venerdì, sexta
        saturday = saturdays, sat, samstag, samstags, sonnabend, samedi, sábado, sabato
        sunday = sundays, sun, sonntag, sonntags, dimanche, domingo, domenica
        weekend = weekends, wochenende, fin de semana, fine settimana
        """);

    /// <summary>The days, from one to another too; nothing where a word is none of them.</summary>
    /// <param name="text">The text.</param>
    public static IReadOnlyList<DayOfWeek>? Read(string text)
    {
        var days = new List<DayOfWeek>();
        var lists = FromTo().Split(text.Replace("-feira", "", StringComparison.OrdinalIgnoreCase));
        foreach (var list in lists)
        {
            if (Listed(list) is not { } listed || (lists.Length > 1 && listed.Count == 0))
            {
                return null;
            }

            // From the last day of one list to the first of the next.
            while (days.Count > 0 && Next(days[^1]) != listed[0])
            {
                days.Add(Next(days[^1]));
            }

            days.AddRange(listed);
        }

        return [.. days.Distinct()];
    }

    private static DayOfWeek Next(DayOfWeek day) => (DayOfWeek)(((int)day + 1) % 7);

    private static List<DayOfWeek>? Listed(string text)
    {
        var days = new List<DayOfWeek>();
        foreach (var word in Table.Of(text))
        {
            if (word == "WEEKEND")
            {
                days.AddRange([DayOfWeek.Saturday, DayOfWeek.Sunday]);
            }
            else if (Array.FindIndex(Names, n => n == word) is >= 0 and var day)
            {
                days.Add((DayOfWeek)day);
            }
            else
            {
                return null;
            }
        }

        return days;
    }

    [GeneratedRegex(@"-|–|—|\b(?:to|bis|a|à|al|au|até)\b", RegexOptions.IgnoreCase)]
    private static partial Regex FromTo();

    private static readonly string[] Names = ["SUNDAY", "MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY"];
}
