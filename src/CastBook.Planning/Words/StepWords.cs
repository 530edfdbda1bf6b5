using System.Globalization;

namespace CastBook.Planning.Words;

/// <summary>The steps of a night in the words of the bench. A line of the Clock sheet is known again by these words, so no two steps may be said alike.</summary>
internal static class StepWords
{
    // The investing.
    public static string Mix(int number) => string.Create(CultureInfo.InvariantCulture, $"mix {number}");

    public static string MixOf(string flasks) => $"flask {flasks}";

    public static string Weigh(string mix) => $"Weigh out {mix}";

    public static string Powder(string mix) => $"Powder into the water, {mix}";

    public static string BowlVacuum(string mix) => $"Bowl under vacuum, {mix}";

    public static string Fill(string flasks) => $"Fill {flasks}";

    public static string FlaskVacuum(string flasks) => $"{flasks} under vacuum";

    public static string CleanUp(string mix) => $"Clean bowl and tools after {mix}";

    public static string Set(string flasks) => $"{flasks} set and are not moved";

    // The kiln.
    public static string KilnOn(int? load, string degrees) => string.Create(CultureInfo.InvariantCulture, $"Kiln of load {load} on, to {degrees}");

    public static string BaseOff(string flasks) => $"Base off, rim cleaned, letter scratched in: {flasks}";

    public static string Steam(string flasks) => $"Steam {flasks}";

    public static string LoadKiln(string flasks) => $"Load the kiln, sprue down: {flasks}";

    public static string Timer(int? load) => string.Create(CultureInfo.InvariantCulture, $"Kiln of load {load} waits for its timer");

    public static string Stage(int? load, string degrees, string held, string turn) =>
        string.Create(CultureInfo.InvariantCulture, $"Kiln of load {load} to {degrees}, {held}{turn}");

    public static string Fall(int? load, string degrees, string held, string turn) =>
        string.Create(CultureInfo.InvariantCulture, $"Kiln of load {load} falls to {degrees}, {held}{turn}");

    public static string Held(string hours) => $"held {hours}";

    public static string ThereThenHeld(string arrives, string hours) => $"there after {arrives}, then held {hours}";

    public static string Turn(int number, int of) => string.Create(CultureInfo.InvariantCulture, $" (stage {number} of {of})");

    public static string ItsTemperature => "its temperature";

    // The pour.
    public static string Pour(string flasks, string degrees) => $"Pour {flasks}, flask at {degrees}";

    public static string PourOnceKnown(string flasks) => $"Pour {flasks}, only once the temperature of its flask is known";

    public static string Quench(string flasks) => $"Quench {flasks}, and only when the button shows no red in shade";

    public static string CoolAlone(string flasks) => $"{flasks} cools by itself";

    // What stands before the letters of flasks, or behind them, in the steps that name any; behind the letters may come a comma.
    public static string[] BeforeFlasks => [Fill(""), BaseOff(""), Steam(""), LoadKiln(""), "Pour ", "Quench "];

    public static string[] BehindFlasks => [FlaskVacuum(""), Set(""), CoolAlone("")];
}
