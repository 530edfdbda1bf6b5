namespace CastBook.Planning.Words;

/// <summary>The accounts of the hours of a night: what a step waits for.</summary>
internal static class ClockAccountWords
{
    public static string StepsHold => "steps that take what the shop says or what is usual; set, burnout and holds are never shortened";

    // When a step begins.
    public static string From(string step) => $"{step}, from";

    public static string DoneBegins => "its end, as typed on the Clock sheet or as the next step was, and the minutes it takes";

    public static string FirstStep => "times count from the first step";

    public static string FirstStepByHour => "the first step, counted from the hour that was asked for";

    public static string UntilHour(string hour) => $"until {hour}";

    public static string OfTheClock => "the clock";

    // When it ends.
    public static string Until(string step) => $"{step}, until";

    public static string DoneEnds => "as typed on the Clock sheet, or when the next step was begun";

    public static string BeginsAndTakes(string begins, string minutes) => $"{begins} and {minutes} min of it";

    // What holds it up.
    public static string WaitAndHands(string wait) => $"its wait of {wait} is over, and then when hands are free after what comes before it";

    public static string AfterPour(string? wait) => $"after its pour, by the wait of the alloy in this size{(wait is null ? "" : $": {wait}")}";

    public static string KilnCooled => "when its kiln has cooled after the load before; longer where hands are busy or nobody is there";

    public static string BeforeIsDone => "when what comes before it is done";

    public static string HandsAreFree => "when hands are free after what comes before it";

    public static string MouldsJustSet => "so late that its moulds have just set when their kiln load is taken up, when hands are free";

    public static string HandsFreeForAll => "after what comes before it, when hands are free for all that follows";

    public static string SomebodyThereForAll => "after what comes before it, when somebody is there for all that follows";
}
