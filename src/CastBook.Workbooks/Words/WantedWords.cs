using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What a value must look like, as it stands inside the sentences of the catalogue: "It must be …".</summary>
internal static class WantedWords
{
    // One of several words.
    public static string Methods => "vacuum perforated, vacuum solid, spin or gravity";

    public static string Kinds => "wax or resin";

    public static string Meanings => "pattern or finished metal";

    public static string Inclusions => "piece alone or gates too";

    public static string Stabilities => "keep, worthwhile or best";

    public static string YesNo => "yes or no";

    public static string Wishes => "some of flasks, investment, kiln loads, metal and like thicknesses, the first one first, with semicolons";

    public static string StepsOfHands => "some of mix, base off, load, pour and quench, with commas";

    public static string StepsAlone => "steam or burnout";

    public static string Silicas => "quartz, cristobalite or both";

    public static string Shapes => "square or round";

    public static string Units(IReadOnlyCollection<string> signs) => $"{string.Join(", ", signs.SkipLast(1))} or {signs.Last()}";

    // Numbers.
    public static string Number(string unit) => $"a number in {unit}";

    public static string SuchAs(string unit, double number) => string.Create(CultureInfo.InvariantCulture, $"{unit}, such as {number}");

    public static string Between(string unit, double least, double most) => string.Create(CultureInfo.InvariantCulture, $"{unit}, from {least} to {most}");

    public static string Minutes => "minutes";

    public static string Degrees => "degrees";

    public static string WholeNumber => "a whole number, such as 1";

    public static string AnyNumber => "a number";

    public static string NumberInColumnsUnit => "a number in the unit of its column";

    public static string NumberAboveZero => "a number above zero";

    public static string AnyWholeNumber => "a whole number";

    public static string OneOrThreeTimes => "one number of minutes, or three such as 8/15/20";

    public static string SavedValue => "a value that is saved in the file";

    public static string Composition(string fault) => $"a composition such as Au 583 Ag 104 Cu 313 ({fault})";

    // Words of the shop's own.
    public static string Name => "a name";

    public static string Flasks => "letters of flasks, such as A B; C D";

    public static string Sheets => "names of sheets, or all";

    // Days and hours.
    public static string DayAndHour => "a day and an hour";

    public static string Hour(string suchAs) => $"an hour, such as {suchAs}";

    public static string HoursOfWork => "hours, such as 08:00-12:00, 13:30-19:00; Friday 08:00-14:00; Saturday closed";

    public static string ClosedDays => "days of the week and dates, with commas, such as Saturday, Sunday, 2026-12-24 to 2027-01-02";

    // The end of the sentence, where a word is near.
    public static string MostLikely(string word) => $" Most likely {word} is meant.";

    // What a stage of a schedule lacks.
    public static string TargetTemperature => "target temperature";

    public static string Hold => "hold";
}
