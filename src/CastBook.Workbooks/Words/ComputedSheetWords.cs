namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Computed says.</summary>
internal static class ComputedSheetWords
{
    public static string Name => "Computed";

    public static string Title(IReadOnlyCollection<string> sheets) => $"Computed values of the {(sheets.Count == 1 ? "list" : "lists")} on {string.Join(" and ", sheets)}";

    // Headings; Sheet is known again by its word.
    public static string Row => "Row";

    public static string Piece => "Piece";

    public static string Sheet => "Sheet";
}
