namespace CastBook.Templates.Words;

/// <summary>What the sheet Schedules says of itself and what is typed in its columns.</summary>
internal static class SchedulesWords
{
    public static string Purpose => "Your own burnout schedules, a line a stage. The resin maker's schedule belongs here.";

    public static string Schedule => "The schedule's name, the same on each of its lines.";

    public static string For => "What it burns out: wax, resin or stones. Empty: wax and resin.";

    public static string UpToDiameter => "The widest flask it serves. Empty: any.";

    public static string UpToHeight => "The highest flask it serves. Empty: any.";

    public static string LoadAt => "Kiln temperature at which flasks go in.";

    public static string Stage => "1, 2, 3 … in order.";

    public static string Target => "Where the stage goes.";

    public static string Rate => "How fast. Empty: the way there counts as part of the hold.";

    public static string Hold => "How long at the target.";
}
