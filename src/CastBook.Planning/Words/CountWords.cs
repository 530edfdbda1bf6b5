using CastBook.Planning.Findings;

namespace CastBook.Planning.Words;

/// <summary>Numbers of things, as findings say them: one, or several.</summary>
internal static class CountWords
{
    public static string Pieces(long count) => Say.Count(count, "piece", "pieces");

    public static string PiecesWait(long count) => Say.Count(count, "piece waits", "pieces wait");

    public static string Rows(long count) => Say.Count(count, "row", "rows");

    public static string RowsTake(long count) => Say.Count(count, "row takes", "rows take");

    public static string Lines(long count) => Say.Count(count, "line", "lines");

    public static string Gates(long count) => Say.Count(count, "gate", "gates");

    public static string StepsFall(long count) => Say.Count(count, "step falls", "steps fall");

    public static string KilnLoads(long count) => Say.Count(count, "kiln load", "kiln loads");

    public static string Flasks(int count, string letters) => $"{(count == 1 ? "flask" : "flasks")} {letters}";

    // Examples that still stand among the pieces, beside the names of the sheets that have some.
    public static string ExamplePieces => "pieces";
}
