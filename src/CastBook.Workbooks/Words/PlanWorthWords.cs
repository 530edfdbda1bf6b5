using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What a plan of flasks is worth, in the titles of sheets; where the summary says the same it stands in <see cref="SummaryWords"/>.</summary>
internal static class PlanWorthWords
{
    // Under the title of Night plan.
    public static string NoFlask => "no flask planned";

    public static string ProvedBoth => "proved fewest flasks and least investment";

    public static string ProvedLeastInvestment => "proved least investment";

    public static string ProvedFewest => "proved fewest flasks";

    // Under the title of Trees.
    public static string Worth(int flasks, string proof) =>
        string.Create(CultureInfo.InvariantCulture, $"{flasks} {(flasks == 1 ? "flask" : "flasks")}; {proof}. That holds for trees in columns, with each piece hung the way it is drawn.");

    public static string NoneTakesFewer => "proved: no plan takes fewer";

    public static string NoneFillsLess => "proved: no plan fills less investment";

    public static string AtMostTooMany(int least, int tooMany) => string.Create(CultureInfo.InvariantCulture, $"no plan takes fewer than {least}, so at most {tooMany} too many");

    public static string NotEverythingFound => "not everything found room";

    public static string NorLessInvestment(string proof) => $"{proof}, nor less investment";

    public static string AtMostLessInvestment(string proof, string less) => $"{proof}, and none of as many fills more than {less} less";

    // Where kiln loads come before flasks or investment.
    public static string ThenKind(string kind, bool fewestLoads) => kind + (fewestLoads ? "; proved fewest kiln loads" : "; fewest kiln loads not proved");

    public static string ThenLoads(string proof, bool fewestLoads) => proof + (fewestLoads ? "; proved: no plan takes fewer kiln loads" : "; that no plan takes fewer kiln loads is not proved");
}
