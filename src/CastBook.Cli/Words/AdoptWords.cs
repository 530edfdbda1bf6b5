using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>What <c>castbook adopt</c> says; its questions stand in <see cref="QuestionWords"/>.</summary>
internal static class AdoptWords
{
    // Its help.
    public static string Command => "Get to know a workbook of your own.\nSays which columns it knows, asks what only you know, and writes the answers\ninto castbook.json and a shop file beside the book. Run it again to change an answer.\n\nExample: castbook adopt harbour-night.xlsx";

    public static string Book => "The workbook with your list, or the list as text. It is only read.";

    public static string Sheet => "Ask nothing here; make a shop file to fill in instead.";

    // What was seen in the book.
    public static string List(string book, string sheet, int headingRow) => string.Create(CultureInfo.InvariantCulture, $"{book}: the list is on sheet {sheet}, its headings in row {headingRow}");

    public static string NotKnown => "not known: left alone";

    public static string Sizes => "sizes, such as 20 × 10 × 3; the size of a ring is left alone";

    public static string NearlyKnown(string meaning) => $"not known; is it {meaning}?";

    public static string OfColumn(string seen, string remedy) => $"{seen} {remedy}";

    public static string OtherLists(string seen, string remedy) => $"{seen} {remedy}";

    public static string NoColumn(IEnumerable<string> meanings) => $"no column for: {string.Join(", ", meanings)}";

    // What was written.
    public static string NotWritten(string why) => $"the answers could not be written: {why}";

    public static string NothingAnswered => "Nothing was answered, so nothing was written.";

    public static string NothingChanged => "Nothing was changed: all answers are as they were.";

    public static string NothingOpen => "Nothing is open, so nothing was written.";

    public static string IsShopFile(string shop) => $"{shop} is the shop file of this folder: what you own and have decided belongs there. To go through its answers one by one, run castbook adopt in a terminal, without --sheet.";

    public static string FillNext(string book) => $"The book itself is as it was. Fill it with: castbook fill \"{book}\"";

    public static string ShopMade(string shop) => $"{shop}: made. It holds what you own and have decided, for every book of this folder.";

    public static string ShopUnchanged(string shop) => $"{shop}: as it was.";

    public static string ShopChanged(string shop, string backup) => $"{shop}: changed; as it was it stands in .castbook/{backup}";

    public static string NoPlace(string shop, string answer) => $"{shop} has no place for this, add it yourself: {answer}";

    public static string SettingsMade(string settings) => $"{settings}: made.";

    public static string SettingsChanged(string settings, string backup) => $"{settings}: added to; as it was it stands in {backup}";
}
