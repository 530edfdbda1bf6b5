using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>A heading below the list's own that says something else of its column.</summary>
/// <param name="Row">The row of it.</param>
/// <param name="Column">Its column.</param>
/// <param name="Text">What it says.</param>
/// <param name="Above">What the list's own heading says there; empty where there is none.</param>
internal sealed record OtherHeading(int Row, int Column, string Text, string Above);

/// <summary>Compares headings that stand once more below rows of a list with those at its top.</summary>
/// <param name="grid">The sheet.</param>
/// <param name="fields">The list's columns.</param>
/// <param name="topRow">The first row of its headings.</param>
/// <param name="headingRow">The last row of them.</param>
/// <param name="words">The shop's own words for headings.</param>
internal sealed class HeadingsAgain(
    SheetGrid grid, IReadOnlyDictionary<string, FieldColumn> fields, int topRow, int headingRow, IReadOnlyDictionary<string, IReadOnlyList<string>> words)
{
    // Fewer may be words of a piece.
    private const int LeastFields = 3;

    /// <summary>Whether a row of words is one of headings, where nothing tells it from a piece but what they mean.</summary>
    /// <param name="row">The row.</param>
    public bool AreIn(int row) => Match(row).Fields is var found && found.Count >= LeastFields
        && (found.ContainsKey(PieceField.Quantity) || found.ContainsKey(PieceField.PatternMass) || found.ContainsKey(PieceField.PatternVolume));

    /// <summary>The first heading of a row that says something else than the list's own; null where all say the same.</summary>
    /// <param name="row">A row of headings.</param>
    public OtherHeading? Differing(int row)
    {
        var theirs = Match(row).Fields;
        foreach (var ours in fields.Values.OrderBy(f => f.Column))
        {
            if (TextAt(row, ours.Column) is { Length: > 0 } text && !StandsAbove(text, ours.Column)
                && !SaysSame(theirs.Values.FirstOrDefault(f => f.Column == ours.Column), ours))
            {
                return At(row, ours.Column, text);
            }

            // The upper one of two rows of headings has its groups where the lower one need not have their fields.
            if (theirs.TryGetValue(ours.Field, out var moved) && moved.Column != ours.Column && TextAt(row, ours.Column) is not { Length: > 0 }
                && !StandsAbove(TextAt(row, moved.Column), moved.Column))
            {
                return At(row, moved.Column, moved.Heading.Text);
            }
        }

        return null;
    }

    // A section's name often stands over the names of its pieces.
    private static bool SaysSame(FieldColumn? theirs, FieldColumn ours) => theirs is null
        ? ours.Field is PieceField.Piece or PieceField.Customer
        : theirs.Field == ours.Field
            && (theirs.Unit is null || (theirs.Unit.Factor == (ours.Unit?.Factor ?? 1) && theirs.Unit.Offset == (ours.Unit?.Offset ?? 0)))
            && (theirs.Word.Meaning == WeightMeaning.Unknown || theirs.Word.Meaning == ours.Word.Meaning)
            && (theirs.Word.Material is null || theirs.Word.Material == ours.Word.Material)
            && theirs.Word.WithGates == ours.Word.WithGates;

    private OtherHeading At(int row, int column, string text) =>
        new(row, column, text, TextAt(headingRow, column) is { Length: > 0 } below ? below : TextAt(topRow, column));

    private bool StandsAbove(string text, int column) =>
        text.Equals(TextAt(topRow, column), StringComparison.OrdinalIgnoreCase) || text.Equals(TextAt(headingRow, column), StringComparison.OrdinalIgnoreCase);

    private string TextAt(int row, int column) => grid.Cell(row, column) is { Kind: CellKind.Text, Text: { } text } ? CellValues.Clean(text) : "";

    private HeadingMatch Match(int row) => HeadingMatch.Of(HeadingRow.Read(grid, row), HeadingWords.PieceIndex, words);
}
