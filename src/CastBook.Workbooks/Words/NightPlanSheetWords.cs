using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Night plan says; its cautions stand in <see cref="Cautions"/>.</summary>
internal static class NightPlanSheetWords
{
    public static string Sheet => "Night plan";

    public static string Title(string book) => $"Night plan: {book}";

    public static string Under(int pieces, int flasks, string worth) =>
        string.Create(CultureInfo.InvariantCulture, $"{pieces:#,##0} pieces in {flasks} {(flasks == 1 ? "flask" : "flasks")}; {worth}.");

    public static string[] Headings(string metal, string powder, string water, string degrees) =>
    [
        "Flask", "Size", "Alloy", "Pieces", $"Charge ({metal})", "from", $"Powder ({powder})", $"Water ({water})", "Mix", "Burnout",
        $"Metal ({degrees})", $"Flask ({degrees})", "Pour at", "Quench after (min)", "Quench at", .. ShopHeadings,
    ];

    // The cells that are the shop's; they are known again by these words.
    public static string[] ShopHeadings => ["Waxed", "Invested", "Poured", "Remarks"];

    public static string[] TotalHeadings(string metal) => ["Alloy", "", "", "", $"Charges ({metal})", "", $"In stock ({metal})", $"To buy ({metal})", ""];

    // A flask's line.
    public static string WeighedTree => "weighed tree";

    public static string Estimate => "estimate";

    public static string NoQuench => "no quench";

    // What the bench must see to for each way of casting.
    public static string PerforatedFlasks =>
        "Perforated flasks: the sleeve stays on while investing and comes off before the kiln; the gasket of the vacuum chamber is whole and seals under the flange.";

    public static string SolidFlasks => "Solid flasks: the rim is scraped clean so that it seals on the pad, and the mould is open to the pad at its foot.";

    public static string Gravity => "By gravity: the flask stands level and firm in dry sand; pour in one stream without a break, until the metal stands in the cup and in every vent.";

    public static string Spinning => "Spinning: balance the arm with the flask and charge of this line before it is wound, stand clear behind the guard.";
}
