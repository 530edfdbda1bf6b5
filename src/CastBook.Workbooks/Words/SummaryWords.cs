using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the answer in a few lines says, of filling and of taking out again.</summary>
internal static class SummaryWords
{
    // The flasks.
    public static string SearchStopped(int least, int flasks) => $"search stopped, the best so far; {NoFewer(least, flasks)}";

    public static string ProvedFewest => "proved fewest";

    // A bound that is no less than the flasks in use counts pieces that found none.
    public static string NoFewer(int least, int flasks) =>
        flasks > least ? string.Create(CultureInfo.InvariantCulture, $"no plan needs fewer than {least}") : PlanWorthWords.NotEverythingFound;

    public static string Flasks(int pieces, int flasks, string worth) =>
        string.Create(CultureInfo.InvariantCulture, $"{pieces:#,##0} pieces in {flasks} {(flasks == 1 ? "flask" : "flasks")} ({worth})");

    // What another plan would change.
    public static string NothingMoves(string afresh) => $"nothing moves; planned afresh, {afresh} (\"When little changed\": best)";

    public static string Moved(string change) => $"{change} (\"When little changed\": keep leaves them)";

    public static string LeftAsItStands(string said, string more) => $"{said}; with best, {more} too";

    // Metal and investment.
    public static string HaveAndBuy(string have, string buy) => $" (have {have}: buy {buy})";

    public static string Have(string have) => $" (have {have})";

    public static string PowderIsOpen => "powder and water are open";

    public static string Mixed(string powder, string water) => $"powder {powder}, water {water}";

    public static string InMixes(int mixes) => string.Create(CultureInfo.InvariantCulture, $" in {mixes} {(mixes == 1 ? "mix" : "mixes")}");

    public static string LongestBurnout(string mixed, string hours) => $"{mixed}; longest burnout {hours}";

    public static string MoreStops(int more) => string.Create(CultureInfo.InvariantCulture, $"and {more} more; all of them stand on the sheet Checks");

    // What was taken out.
    public static string AsBefore => "as it was before CastBook filled it, byte for byte";

    public static string TakenOut(IEnumerable<string> what) => $"taken out: {string.Join("; ", what)}";

    public static string NamesTakenOut => "CastBook's names were taken out";

    public static string LeftAsItIs => "left as it is";
}
