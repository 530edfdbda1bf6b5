using System.Collections;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>A row of the list with all that is known of it.</summary>
/// <param name="Piece">The row as asked.</param>
/// <param name="Plan">The row as answered.</param>
/// <param name="Flasks">The night's flasks, by letter.</param>
/// <param name="Findings">What was found about this row, stops first.</param>
internal readonly record struct PieceLine(
    Piece Piece, PiecePlan Plan, IReadOnlyDictionary<string, FlaskPlan> Flasks, IReadOnlyList<RowFinding> Findings)
{
    /// <summary>Whether the row is another night's or done: nothing is written into it.</summary>
    public bool IsLeftAlone => Plan.Status is PieceStatus.OtherNight or PieceStatus.Done;

    /// <summary>
    /// Whether what CastBook wrote of another night's row no longer holds: what was found about it is not looked at again, and
    /// nothing is planned yet of a night still to come.
    /// </summary>
    /// <param name="column">The column.</param>
    public bool IsStale(ComputedColumn column) => Plan.Status == PieceStatus.OtherNight && (Plan.IsToCome || column is ChecksColumn);
}

/// <summary>The rows of the list, each put together when it is asked for.</summary>
/// <param name="pieces">The rows as asked.</param>
/// <param name="plan">What was answered.</param>
/// <param name="findings">What was found about rows, stops first; rows about which nothing was found are missing.</param>
internal sealed class PieceLines(
    IReadOnlyList<Piece> pieces, NightPlan plan, IReadOnlyDictionary<int, List<RowFinding>> findings) : IReadOnlyList<PieceLine>
{
    private static readonly List<RowFinding> NoFindings = [];

    private readonly Dictionary<string, FlaskPlan> flasks = plan.Flasks.ToDictionary(f => f.Letter, StringComparer.Ordinal);

    /// <inheritdoc/>
    public int Count => pieces.Count;

    /// <inheritdoc/>
    public PieceLine this[int index] => new(pieces[index], plan.Pieces[index], flasks, findings.TryGetValue(index, out var found) ? found : NoFindings);

    /// <inheritdoc/>
    public IEnumerator<PieceLine> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Something found about a row.</summary>
/// <param name="Finding">What was found.</param>
/// <param name="Field">About which field, a constant of <see cref="PieceField"/>; empty for the whole row.</param>
/// <param name="Said">What the row's Checks cell says of it; one text for all rows of the finding.</param>
internal readonly record struct RowFinding(Finding Finding, string Field, string Said);

/// <summary>A column that CastBook fills in the shop's list. One file each; <see cref="ComputedColumns"/> lists them.</summary>
internal abstract class ComputedColumn
{
    /// <summary>The hidden name by which it is known again.</summary>
    public abstract string OwnName { get; }

    /// <summary>Its heading, the unit in it.</summary>
    public abstract string Heading { get; }

    /// <summary>Width in characters where it is new.</summary>
    public abstract double Width { get; }

    /// <summary>Number format; null for words.</summary>
    public virtual string? NumberFormat => null;

    /// <summary>What it shows in a row.</summary>
    /// <param name="line">The row.</param>
    public abstract CellValue Show(PieceLine line);
}
