using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading;

/// <summary>A book as read: the night it asks for, where everything stands, and what was found on the way.</summary>
public sealed record BookReading
{
    /// <summary>The package, open for reading.</summary>
    public required BookPackage Package { get; init; }

    /// <summary>The list of pieces.</summary>
    public required PieceSheet Pieces { get; init; }

    /// <summary>What is asked.</summary>
    public required Night Night { get; init; }

    /// <summary>The cell of each subject that has one: piece fields that stand in the list, settings, rows of shop sheets.</summary>
    public required CellMap Cells { get; init; }

    /// <summary>The sheets that bear our hidden name, by that name (such as <c>CastBook_NightPlan</c>).</summary>
    public required IReadOnlyDictionary<string, SheetPart> OwnSheets { get; init; }

    /// <summary>The shop's sheets that were found, by their usual name (<c>Shop</c>, <c>Flasks</c>, …).</summary>
    public required IReadOnlyDictionary<string, SheetPart> ShopSheets { get; init; }

    /// <summary>What reading found.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>Where each subject stands in the book.</summary>
public sealed class CellMap
{
    private readonly Dictionary<Subject, CellRef> cells = [];
    private PieceSheet? pieces;

    /// <summary>Says where a subject stands; the last word wins.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="cell">Its cell.</param>
    public void Add(Subject subject, CellRef cell) => cells[subject] = cell;

    /// <summary>The cell of a subject, else the cell of the whole it is a field of; null where neither has one.</summary>
    /// <param name="subject">The subject.</param>
    public CellRef? Find(Subject subject) =>
        cells.TryGetValue(subject, out var cell) || TryPiece(subject, out cell) || cells.TryGetValue(subject with { Field = "" }, out cell)
            ? cell
            : null;

    /// <summary>Where a link leads: the cell of a subject, else the heading of the sheet where it can be typed; null where there is neither.</summary>
    /// <param name="subject">The subject.</param>
    public CellRef? FindPlace(Subject subject) => Find(subject) ?? Find(new Subject(subject.Kind, ""));

    /// <summary>Says where the list stands: its fields, rows and columns then need no entry each.</summary>
    /// <param name="list">The list.</param>
    internal void AddList(PieceSheet list) => pieces = list;

    private bool TryPiece(Subject subject, out CellRef cell)
    {
        cell = default;
        if (pieces is null)
        {
            return false;
        }

        if (subject.Kind == SubjectKind.Column && pieces.Columns.TryGetValue(subject.Key, out var heading))
        {
            cell = new CellRef(pieces.Sheet.Name, pieces.HeadingRow, heading);
            return true;
        }

        if (subject.Kind != SubjectKind.Piece
            || !int.TryParse(subject.Key, NumberStyles.None, CultureInfo.InvariantCulture, out var id) || id >= pieces.RowOf.Count)
        {
            return false;
        }

        var column = pieces.Columns.TryGetValue(subject.Field, out var own) ? own
            : pieces.Columns.TryGetValue(PieceField.Piece, out var name) ? name
            : pieces.FirstColumn;
        cell = new CellRef(pieces.Sheet.Name, pieces.RowOf[id], column);
        return true;
    }
}
