using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What <c>castbook share</c> leaves behind, by kind and how many of it.</summary>
internal static class LeftBehindWords
{
    // Rows and cells.
    public static string RowsOfShopSheets(int count) =>
        Say(count, "row of a shop sheet with stock, prices or other text", "rows of a shop sheet with stock, prices or other text");

    public static string RowsOfPieces(int count) => Say(count, "row of pieces", "rows of pieces");

    public static string RowsAboveHeadings(int count) => Say(count, "row of text above the headings", "rows of text above the headings");

    public static string HiddenRows(int count) => Say(count, "hidden row, now shown", "hidden rows, now shown");

    public static string HiddenColumns(int count) => Say(count, "hidden column, now shown", "hidden columns, now shown");

    public static string QuotingFormulas(int count) => Say(count, "formula quoting text, numbers or what goes", "formulas quoting text, numbers or what goes");

    public static string QuotingMarks(int count) => Say(count, "mark quoting text", "marks quoting text");

    public static string QuotingLists(int count) => Say(count, "drop-down list quoting text", "drop-down lists quoting text");

    public static string InputMessages(int count) => Say(count, "input message", "input messages");

    public static string Tables(int count) => Say(count, "table, now plain cells", "tables, now plain cells");

    public static string Margins(int count) => Say(count, "line of words in the margin of pages", "lines of words in the margin of pages");

    // Names.
    public static string HiddenNames(int count) => Say(count, "hidden name", "hidden names");

    public static string NamesOfCells(int count) => Say(count, "name of cells that go", "names of cells that go");

    // Parts of the file.
    public static string ThreadedComments(int count) => Say(count, "threaded comment sheet", "threaded comment sheets");

    public static string ListsOfPeople(int count) => Say(count, "list of people", "lists of people");

    public static string SheetsWithNotes(int count) => Say(count, "sheet with notes", "sheets with notes");

    public static string DrawingsWithNotes(int count) => Say(count, "drawing with notes", "drawings with notes");

    public static string DocumentProperties(int count) => Say(count, "document property sheet", "document property sheets");

    public static string Macros(int count) => Say(count, "macro", "macros");

    public static string EmbeddedControls(int count) => Say(count, "embedded control", "embedded controls");

    public static string EmbeddedFiles(int count) => Say(count, "embedded file", "embedded files");

    public static string PrinterSettings(int count) => Say(count, "printer setting", "printer settings");

    public static string LinksToBooks(int count) => Say(count, "link to another book", "links to other books");

    public static string Connections(int count) => Say(count, "connection", "connections");

    public static string Queries(int count) => Say(count, "query", "queries");

    public static string PivotCaches(int count) => Say(count, "pivot cache", "pivot caches");

    public static string PivotTables(int count) => Say(count, "pivot table", "pivot tables");

    public static string Slicers(int count) => Say(count, "slicer", "slicers");

    public static string Timelines(int count) => Say(count, "timeline", "timelines");

    public static string LogsOfChanges(int count) => Say(count, "log of changes", "logs of changes");

    public static string Charts(int count) => Say(count, "chart", "charts");

    public static string Diagrams(int count) => Say(count, "diagram", "diagrams");

    public static string Drawings(int count) => Say(count, "drawing", "drawings");

    public static string Pictures(int count) => Say(count, "picture", "pictures");

    public static string Thumbnails(int count) => Say(count, "thumbnail", "thumbnails");

    public static string CustomXml(int count) => Say(count, "custom XML part", "custom XML parts");

    public static string RichValues(int count) => Say(count, "rich value part", "rich value parts");

    public static string UnknownParts(int count) => Say(count, "part of unknown kind", "parts of unknown kind");

    public static string MarksOfMacros(int count) => Say(count, "mark of a book with macros", "marks of a book with macros");

    private static string Say(int count, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{count:#,##0} {(count == 1 ? one : many)}");
}
