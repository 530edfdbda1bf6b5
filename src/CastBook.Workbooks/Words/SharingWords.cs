using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What <c>castbook share</c> takes into a template, and which sheets and lines it leaves behind.</summary>
internal static class SharingWords
{
    // What is kept.
    public static string HeadingsOf(string sheet) => $"the headings of the list on {sheet}";

    public static string Rows(string sheet, int rows) => string.Create(CultureInfo.InvariantCulture, $"{sheet} ({rows} {(rows == 1 ? "row" : "rows")})");

    public static string Settings(string sheet, int settings) =>
        string.Create(CultureInfo.InvariantCulture, $"{sheet} ({settings} {(settings == 1 ? "setting" : "settings")})");

    public static string AsWished(string sheet) => $"{sheet}, as you wished";

    public static string Table(string name) => $"the table {name}";

    public static string Name(string name) => $"the name {name}";

    public static string Layout => "column widths, formats, frozen headings, drop-down lists and the set-up of pages";

    // What is taken from around the book.
    public static string RowsOfFile(string sheet, int rows, string file) =>
        string.Create(CultureInfo.InvariantCulture, $"{sheet} ({rows} {(rows == 1 ? "row" : "rows")} of {file})");

    public static string SettingsOf(int settings, IEnumerable<string> files) =>
        string.Create(CultureInfo.InvariantCulture, $"{settings} {(settings == 1 ? "setting" : "settings")} of {string.Join(" and ", files)}");

    // What stays behind.
    public static string NoSheetOfCells(string sheet) => $"{sheet} (no sheet of cells)";

    public static string Hidden(string sheet) => $"{sheet} (hidden)";

    public static string NeitherListNorSettings(string sheet) => $"{sheet} (neither a list of pieces nor a sheet of settings)";

    public static string OtherHeadings(string sheet, string file) => $"the lines of {sheet} in {file}: the sheet of that name has other headings";

    public static string StockAndPrices(string sheet, string file) => $"stock and prices on {sheet} in {file}";

    public static string NoHeadingsOnShop => "the settings around the book: its Shop sheet has no headings";
}
