using CastBook.Casting.Names;

namespace CastBook.Workbooks.Settings;

/// <summary>Days of the week as a shop types them, in English, German, French, Spanish, Italian and Portuguese.</summary>
internal static class WeekdayWords
{
    /// <summary>What is asked for.</summary>
    public const string Expected = "days of the week, with commas, such as Saturday, Sunday";

    private static readonly TradeWords Table = new(
        """
        = none, nothing, never, the, on, am, der, die, den, le, la, les, il, lo, o, a, and, und, et, y, e, too, auch, feira
        monday = mondays, mon, montag, montags, lundi, lunes, lunedì, segunda
        tuesday = tuesdays, tue, dienstag, dienstags, mardi, martes, martedì, terça
        wednesday = wednesdays, wed, mittwoch, mittwochs, mercredi, miércoles, mercoledì, quarta
        thursday = thursdays, thu, donnerstag, donnerstags, jeudi, jueves, giovedì, quinta
        friday = fridays, fri, freitag, freitags, vendredi, viernes, venerdì, sexta
        saturday = saturdays, sat, samstag, samstags, sonnabend, samedi, sábado, sabato
        sunday = sundays, sun, sonntag, sonntags, dimanche, domingo, domenica
        weekend = weekends, wochenende, fin de semana, fine settimana
        """);

    /// <summary>The days; nothing where a word is none of them, or where days are given from one to another.</summary>
    /// <param name="text">The text.</param>
    public static IReadOnlyList<DayOfWeek>? Read(string text)
    {
        var days = new List<DayOfWeek>();
        if (text.Replace("-feira", "", StringComparison.OrdinalIgnoreCase).AsSpan().ContainsAny('-', '–'))
        {
            return null;
        }

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

    private static readonly string[] Names = ["SUNDAY", "MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY"];
}
