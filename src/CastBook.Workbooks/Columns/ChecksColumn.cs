using CastBook.Planning.Findings;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>
/// What was found about the row: <c>stop: weight. "12O.5" has a letter in it.</c> The marks of the row's cells hang on
/// these words.
/// </summary>
internal sealed class ChecksColumn : ComputedColumn
{
    // What a page beside the names of the pieces holds.
    private const int LongestSeen = 80;

    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.Checks;

    /// <inheritdoc/>
    public override string Heading => ColumnWords.Checks;

    /// <inheritdoc/>
    public override double Width => 48;

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line) => line.Findings switch
    {
        [] => CellValue.Empty,
        [var only] => CellValue.Of(only.Said),
        var several => CellValue.Of(string.Join(" ", several.Select(f => f.Said))),
    };

    /// <summary>
    /// What is said of a finding in the row; of a note only what it is about, and of a long sentence what stands before its colon, or the
    /// list would print on more pages. The rest stands in the note of the cell and on the sheet Checks.
    /// </summary>
    /// <param name="finding">The finding.</param>
    /// <param name="field">About which field.</param>
    public static string Say(Finding finding, string field) =>
        finding.Severity == Severity.Note ? Words(finding.Severity, field) : $"{Words(finding.Severity, field)} {Short(finding.Seen)}";

    // A colon in a name, which stands between quotes, does not end what is said.
    private static string Short(string seen)
    {
        var isQuoted = false;
        for (var at = 0; at < seen.Length - 1 && seen.Length > LongestSeen; at++)
        {
            isQuoted ^= seen[at] == '"';
            if (!isQuoted && seen[at] == ':' && seen[at + 1] == ' ')
            {
                return seen[..at] + ".";
            }
        }

        return seen;
    }

    /// <summary>The words that a mark looks for, such as <c>stop: weight.</c></summary>
    /// <param name="severity">The severity.</param>
    /// <param name="field">The field, a constant of <see cref="PieceField"/>; empty for the whole row.</param>
    public static string Words(Severity severity, string field) => $"{MarkRules.WordOf(severity)}: {FieldWords.Of(field)}.";
}
