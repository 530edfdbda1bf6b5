using CastBook.Casting.Names;

namespace CastBook.Planning.Metals;

/// <summary>
/// The words by which a crucible is known to hold graphite, in English, German, French, Spanish, Italian and Portuguese: platinum and
/// palladium melted in it take up carbon.
/// </summary>
internal static class GraphiteWords
{
    // Parts of the words for graphite, carbon, coal and plumbago. Silicon carbide is among them: it is sold bonded with carbon too
    // (memory), and its name does not tell.
    private static readonly string[] Parts = ["GRAPH", "GRAF", "CARB", "KARB", "KOHLE", "PLUMBAG", "PLOMBAG", "PIOMBAG"];

    /// <summary>Whether something is said of what a crucible is made of, and none of it is graphite.</summary>
    /// <param name="madeOf">What it is made of, as the shop writes it; may be empty.</param>
    public static bool IsKnownFree(string madeOf)
    {
        var words = TradeWords.Split(madeOf);
        return words.Length > 0 && !words.Any(word => word == "SIC" || Parts.Any(part => word.Contains(part, StringComparison.Ordinal)));
    }
}
