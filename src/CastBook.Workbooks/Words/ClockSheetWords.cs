using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Clock says; of its steps <see cref="CastBook.Planning.Clock.ClockWords"/> speaks.</summary>
internal static class ClockSheetWords
{
    public static string Sheet => "Clock";

    public static string Title(string book) => $"Clock: {book}";

    // Headings; those of the cells that are the shop's are known again by these words.
    public static string Day => "Day";

    public static string From => "From";

    public static string Until => "Until";

    public static string Step => "Step";

    public static string DoneAt => "Done at";

    public static string Who => "Who";

    public static string Remarks => "Remarks";

    public static string HourItIsNow => "If you are late, type the hour it is now:";

    // Who is needed for a step.
    public static string TwoPeople => "two people";

    public static string StayWithIt => "stay with it";

    // Under the title.
    public static string NothingIsPlanned => "Nothing is planned.";

    public static string CountsFromFirstStep =>
        "Hours and minutes count from the first step. For times of day type \"Start at\" or \"Pour at\" on the Shop sheet, such as 2026-11-25 20:00.";

    public static string Takes(int loads, string hours) => string.Create(
        CultureInfo.InvariantCulture,
        $"{loads} kiln {(loads == 1 ? "load" : "loads")}; {hours} from the first step to the last. Bold lines need hands, the others run by themselves.");

    // Below the last step.
    public static string[] Lines =>
    [
        "Minutes of work are the Shop sheet's, or usual ones. Set, burnout and holds are never shortened: when you are late, all that follows is later.",
        "Hottest flasks are poured first; then the kiln is lowered and held, so that the next moulds have its temperature to their core.",
        "\"Done at\" is yours: type when a step was done, such as 22:40, and fill again; the rest of the night follows from it.",
        "A mould that is burnt out is white; grey or black is not. A burnout that was broken off is begun again.",
    ];
}
