namespace CastBook.Planning.Words;

/// <summary>What findings about burnout schedules say beside their numbers.</summary>
internal static class BurnoutFindingWords
{
    // Why a flask has no schedule.
    public static string NothingForStones => "stones are in it and the Schedules sheet has nothing for stones";

    public static string KindUnreadable(string powder) => $"nobody can read what kind of powder {powder} is, and the usual schedules are for one kind";

    public static string NotGypsum(string powder) => $"{powder} is not gypsum-bonded, and the usual schedules are for powders that are";

    public static string LargerThanServed(string size) => $"\"{size}\" is larger than the usual schedules serve";

    // Which silica changes where.
    public static string Quartz => "quartz";

    public static string Cristobalite => "cristobalite";

    public static string TurnsOverAt(string silica, string at) => $"{silica} turns over at {at}";

    public static string TurnsOverBetween(string silica, string from, string to) => $"{silica} turns over from {from} to {to}";
}
