using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Kiln and its charts say.</summary>
internal static class KilnSheetWords
{
    public static string Sheet => "Kiln";

    public static string Title(string book) => $"Kiln: {book}";

    public static string[] Under =>
    [
        "One schedule a load, that of its most demanding flask. Where no rate stands, the way up is inside the hold; falls take the time the kiln takes.",
        "Hours to the first pour count the fall and holds that are longer for the core; they are the \"Burnout (h)\" of each piece in the load.",
    ];

    public static string[] Headings(string unit) =>
    [
        "Stage", "Target (°C)", "Target (°F)", "Rate (°C/h)", "Rate (°F/h)", "Hold (h:min)", "From", "Until", $"Core then, slow ({unit})", $"Core then, fast ({unit})",
        "Core there after, slow (h:min)", "Core there after, fast (h:min)",
    ];

    public static string[] CourseHeadings(string unit) => ["Load", "Hours", $"Kiln ({unit})", $"Core, slow ({unit})", $"Core, fast ({unit})"];

    public static string[] LogHeadings(string unit) => ["Log of load", "Hours", $"Kiln ({unit})", $"Core, slow ({unit})", $"Core, fast ({unit})"];

    // A load.
    public static string Load(int number, string kiln, IEnumerable<string> flasks, string schedule, string toFirstPour, string? nextAfter) => string.Create(
        CultureInfo.InvariantCulture,
        $"Load {number}: {(kiln.Length == 0 ? "" : $"{kiln}, ")}flasks {string.Join(' ', flasks)}, \"{schedule}\", {toFirstPour} to the first pour{(nextAfter is null ? "" : $", next load after {nextAfter}")}");

    public static string FollowsSooner(IReadOnlyCollection<string> flasks, string size, string arrivals) =>
        $"{(flasks.Count == 1 ? "Flask" : "Flasks")} {string.Join(' ', flasks)} ({size}) {(flasks.Count == 1 ? "follows" : "follow")} sooner. Core there after, slow and fast: {arrivals}.";

    public static string StageArrives(int stage, string slow, string fast) => string.Create(CultureInfo.InvariantCulture, $"stage {stage} {slow} and {fast}");

    public static string StageNotYet(int stage) => string.Create(CultureInfo.InvariantCulture, $"stage {stage} {NotYet}");

    public static string NotYet => "not yet";

    public static string FlaskTemperatureUnknown(IEnumerable<string> flasks) =>
        $"The flask temperature of {string.Join(' ', flasks)} is not known: what the last stage says is the schedule's, and nothing to pour at.";

    public static string ReadsHigh(string kiln, string degrees, string set, string target) =>
        $"{kiln} reads {degrees} high: set its controller {degrees} higher than each target here, {set} for {target}.";

    public static string ReadsLow(string kiln, string degrees, string set, string target) =>
        $"{kiln} reads {degrees} low: set its controller {degrees} lower than each target here, {set} for {target}.";

    public static string ReadingUnread(string kiln) =>
        $"The Kilns sheet says by how much {kiln} reads wrong, and nobody can read it: mend it there before the controller is set by these targets.";

    public static string NoProgramme(IReadOnlyCollection<string> flasks) =>
        $"{(flasks.Count == 1 ? "Flask" : "Flasks")} {string.Join(' ', flasks)} {(flasks.Count == 1 ? "has" : "have")} no programme. Checks says why.";

    // Below the loads.
    public static string InTheOpen(string least, string most, double depthMm) => string.Create(
        CultureInfo.InvariantCulture,
        $"Outside the kiln a mould loses by estimate {least} to {most} in its first minute, {depthMm:0} mm below its face where the outermost pieces begin, and nothing yet in its middle: pour at once.");

    public static string CoreIsThere(string tolerance) =>
        $"\"Core there\" is when the middle of the slowest mould is within {tolerance} of the kiln, from the begin of the stage on; \"Core tolerance\" on the Shop sheet changes it.";

    public static string RiseIsFromMemory(string rise) =>
        $"Where the way up is inside a hold, the core is reckoned as if the kiln rose by {rise} an hour: that is from memory and not your kiln's. If it rises slower, type rates on the Schedules sheet.";

    public static string[] CoreIsAnEstimate(string boiling) =>
    [
        "The core is an estimate for the middle of the slowest mould of the load, between a slow and a fast case. Drying is not in it: a wet mould stays",
        $"near {boiling} until its water has gone, which is what the first hold is for. A hold may be lengthened for the core and is never shortened.",
    ];

    // The chart.
    public static string CoreSlow => "core, slow case";

    public static string CoreFast => "core, fast case";

    public static string Kiln => "kiln";

    public static string CoreByLog => "core by the log, slow case";

    public static string KilnByLog => "kiln by its log";

    public static string Chart(int load, string flask) => string.Create(CultureInfo.InvariantCulture, $"Load {load}: kiln, and the core of flask {flask}");

    public static string ChartTells(int load, string flask) =>
        string.Create(CultureInfo.InvariantCulture, $"Kiln temperature of load {load} and the core of flask {flask} over the hours from loading.");

    public static string HoursFromLoading => "hours from loading";
}
