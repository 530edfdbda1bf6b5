namespace CastBook.Workbooks.Clearing;

/// <summary>What was cleared in a book.</summary>
/// <param name="Cleared">How many rows, by sheet, in the order of the book.</param>
/// <param name="Kept">How many rows still bear the name of an example but were changed, by sheet.</param>
public sealed record ClearedRows(IReadOnlyList<(string Sheet, int Count)> Cleared, IReadOnlyList<(string Sheet, int Count)> Kept);
