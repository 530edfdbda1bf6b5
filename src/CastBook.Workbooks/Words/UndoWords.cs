using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What was taken out of a book again.</summary>
internal static class UndoWords
{
    public static string Columns(int count, string sheet) => string.Create(CultureInfo.InvariantCulture, $"{count:#,##0} {(count == 1 ? "column" : "columns")} of {sheet}");

    public static string Sheets(IReadOnlyCollection<string> names) => $"{(names.Count == 1 ? "the sheet" : "the sheets")} {string.Join(", ", names)}";

    public static string Marks => "the marks";

    public static string Notes(int count) => string.Create(CultureInfo.InvariantCulture, $"{count:#,##0} {(count == 1 ? "note" : "notes")}");

    public static string Formula => "a formula";
}
