namespace CastBook.Planning.Words;

/// <summary>What accounts of <c>castbook explain</c> have in common: where an input comes from, how a result is rounded, what several of them name.</summary>
internal static class AccountWords
{
    // Where an input comes from, where the shop did not type it.
    public static string BuiltIn(string source) => $"built in, {source}";

    public static string SourceNotNoted => "source not noted";

    public static string CommonPractice => "common practice";

    public static string NotesOfPractitioners => "published notes of practitioners";

    public static string FromComposition => "worked out from the composition";

    public static string BesideIt => "the column beside it";

    // How a result is rounded.
    public static string ToWholeDegree => "to a whole degree";

    public static string UpToStep(string step) => $"up to a whole step of {step}";

    public static string UpToWhole(string step) => $"up to a whole {step}";

    // The last step, into the unit of the shop.
    public static string InUnit(string formula, string unit) => $"{formula}, in {unit}";

    // What several accounts name.
    public static string DensityOf(string name) => $"{name} density".TrimStart();

    public static string Flask(string letter) => $"flask {letter}";

    public static string Schedule => "schedule";

    public static string Tree => "tree";

    public static string Mix => "Mix";

    public static string SlowestMould => "slowest mould";
}
