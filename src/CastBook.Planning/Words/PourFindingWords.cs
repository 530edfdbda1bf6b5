namespace CastBook.Planning.Words;

/// <summary>What findings about pouring say beside their temperatures.</summary>
internal static class PourFindingWords
{
    // Why a metal temperature cannot be.
    public static string PouredBetween(string least, string most) => $"metal is poured between {least} and {most}";

    public static string MoreThanNeeded(string liquidus, string most) => $"its liquidus is {liquidus}, and {most} is more than anybody needs";

    public static string NotAllLiquid(string least) => $"it is not all liquid up to {least}";

    // Why a flask temperature cannot be.
    public static string NotSolidAbove(string limit) => $"the metal is not solid above {limit}";

    public static string InvestmentBears(string limit) => $"the investment bears no more than {limit}";

    // The work a flask temperature is for.
    public static string FineWork => "fine work";

    public static string OrdinaryWork => "ordinary work";

    public static string HeavyWork => "heavy work";

    // The way of casting, at the begin of a sentence.
    public static string Spinning => "Spinning";

    public static string Vacuum => "Vacuum";
}
