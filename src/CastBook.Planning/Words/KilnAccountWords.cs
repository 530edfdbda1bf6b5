namespace CastBook.Planning.Words;

/// <summary>The accounts of the Kiln sheet: a load's programme and the core of its slowest mould.</summary>
internal static class KilnAccountWords
{
    public static string ProgrammeHolds => "kilns that follow the programme; the maker's data sheet and the shop's own kiln have the last word";

    public static string CoreHolds => "a dry mould of gypsum investment, between a slow and a fast case; drying is left out";

    public static string LongestSchedule => "the longest among the load's flasks";

    // A stage.
    public static string Target(bool fahrenheit) => fahrenheit ? "Target in °F" : "Target";

    public static string TargetOfFall => "the flask temperature of what is poured next";

    public static string TargetOfStage => "the schedule's target of this stage; the last is the flask temperature, where that is known";

    public static string Rate(bool fahrenheit) => fahrenheit ? "Rate in °F/h" : "Rate";

    public static string RateOfStage => "the schedule's rate of this stage";

    public static string Hold => "Hold";

    public static string HoldOfStage =>
        "the schedule's hold, counted from arrival; where moulds are poured, as long as the slowest core among them needs to follow, if that is longer";

    public static string SlowestPoured => "the slowest of those that are poured at this temperature";

    // The core.
    public static string Core(bool slow) => slow ? "Core, slow" : "Core, fast";

    public static string CoreRule => "conduction into the middle of a cylinder that follows the programme";

    public static string CoreThereAfter => "Core there after";

    public static string CoreThereRule =>
        "from the begin of the stage until the core is within the tolerance of the kiln; not yet, where the stage ends before";

    public static string ToFiveMinutes => "to five minutes";

    public static string SlowestOfLoad => "the load's slowest, by its width and height";

    public static string CoreTolerance => "core tolerance";

    public static string ToleranceOr(string usual) => $"\"Core tolerance\" on the Shop sheet, or {usual} where it does not say";

    // The course.
    public static string Hours => "Hours";

    public static string HoursRule => "from loading on, as far as the programme goes";

    public static string ToHundredths => "to hundredths";

    public static string Kiln => "Kiln";

    public static string KilnRule => "where the programme has the kiln then";
}
