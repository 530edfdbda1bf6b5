namespace CastBook.Planning.Words;

/// <summary>What findings about the night's clock say beside their hours.</summary>
internal static class ClockFindingWords
{
    // What to do about steps outside the hours of work.
    public static string NightUnderWay => "The night is under way: have somebody there, or let the moulds set on or the timer wait.";

    public static string NoBetterHour(string within, bool loadsToo) =>
        $"No other hour within {within} of it {(loadsToo ? "and no other kiln loads are" : "is")} better: have somebody there, or make the night smaller.";

    public static string HalfADay => "half a day";

    public static string Days(int count) => Findings.Say.Count(count, "day", "days");

    public static string NothingLeftOutside => "then nothing falls outside";

    public static string LeftOutside(int count) => $"then {Findings.Say.Count(count, "step is", "steps are")} left outside";

    public static string FirstStepAt(string hour) => $", and the first step is at {hour}";

    public static string FirstPourAt(string hour) => $", and the first pour is at {hour}";

    public static string Better(string move, string result, string follows) => $"{move}: {result}{follows}.";

    // What to type on the Shop sheet.
    public static string Typed(string value, string setting) => $"\"{value}\" as \"{setting}\"";

    public static string Type(string typed, string behind) => $"Type {typed} on the Shop sheet{behind}";

    public static string OnADay(string weekday) => $" ({weekday})";

    public static string AndOnADay(string typed, string weekday) => $" and {typed} ({weekday})";

    // Mixes that fill moulds of two loads; of none nothing.
    public static string PartMixes(bool isOne, string mixes) => $"; part mix {mixes} for that, which {(isOne ? "fills" : "fill")} moulds of two loads";

    // Moulds that wait hot.
    public static string FlasksInFront(int count, string letters) => $"Flask{(count == 1 ? "" : "s")} {letters}";

    public static string Wait(int count) => count == 1 ? "waits" : "wait";

    public static string ThePowder => "the powder";

    // What was really done.
    public static string Late(string by) => $"{by} later";

    public static string Early(string by) => $"{by} earlier";

    public static string NextPour => "the next pour";

    public static string NextStep => "the next step";

    public static string AfterFirstReading(string time) => $"{time} after its first reading";

    // Where a log's unit should stand, and a heading that has it.
    public static string OfLog(string heading) => heading.Length == 0 ? "the kiln's log" : $"\"{heading}\" of the kiln's log";

    public static string TemperatureIn(string unit) => $"Temperature ({unit})";

    // The hours of those who work.
    public static string OfWork => "of work";

    public static string Hours(string from, string until) => $"from {from} to {until}";

    public static string OfSecondPerson(string hours) => $"{hours} of the second person";

    public static string OrOfSecondPerson(string hours, string second) => $"{hours}, or those of the second person {second}";

    public static string OnDays(string days, string hours) => $"on {days} {hours}";

    public static string ClosedOn(string days) => $"closed on {days}";
}
