namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Checks says of itself, and how rows and findings are counted everywhere.</summary>
internal static class ChecksSheetWords
{
    public static string Sheet => "Checks";

    public static string[] Headings => ["", "Where", "What was seen", "Why it matters", "What to type or do", "id"];

    // The first line of every answer.
    public static string RowsRead(int rows) => rows == 1 ? "row read" : "rows read";

    public static string Planned => "planned";

    public static string PlannedInPart => "planned in part";

    public static string NotPlanned => "not planned";

    public static string LeftOut => "left out on purpose";

    public static string OfOtherNights => "of other nights";

    public static string Done => "done";
}
