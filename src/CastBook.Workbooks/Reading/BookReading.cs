using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Reading;

/// <summary>A book as read: the night it asks for, where everything stands, and what was found on the way.</summary>
public sealed record BookReading
{
    /// <summary>The package, open for reading.</summary>
    public required BookPackage Package { get; init; }

    /// <summary>The book's shared strings; held once, as a long list has many.</summary>
    public required SharedStrings Strings { get; init; }

    /// <summary>The lists of pieces, one or more, each on a sheet of its own; the ids of their pieces go on from one to the next.</summary>
    public required IReadOnlyList<PieceSheet> Lists { get; init; }

    /// <summary>What is asked.</summary>
    public required Night Night { get; init; }

    /// <summary>The cell of each subject that has one: piece fields that stand in the list, settings, rows of shop sheets.</summary>
    public required CellMap Cells { get; init; }

    /// <summary>Hidden names of columns of ours on sheets whose lists are not read this time.</summary>
    public required IReadOnlyCollection<string> ColumnsElsewhere { get; init; }

    /// <summary>The sheets that bear our hidden name, by that name (such as <c>CastBook_NightPlan</c>).</summary>
    public required IReadOnlyDictionary<string, SheetPart> OwnSheets { get; init; }

    /// <summary>The shop's sheets that were found, by their usual name (<c>Shop</c>, <c>Flasks</c>, …).</summary>
    public required IReadOnlyDictionary<string, SheetPart> ShopSheets { get; init; }

    /// <summary>Who said which setting, by its name; settings that nobody has said are missing.</summary>
    public required IReadOnlyDictionary<string, SettingOrigin> Origins { get; init; }

    /// <summary>Whether the headings of all lists say that the gates are in the weights.</summary>
    internal bool WeightsHaveGates { get; init; }

    /// <summary>What its days settle about the order of day and month in hours that people type.</summary>
    internal DayOrders Days { get; init; }

    /// <summary>What reading found.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The list in which a piece stands.</summary>
    /// <param name="id">The piece's id.</param>
    public PieceSheet ListOf(int id) => Lists.Count == 1 ? Lists[0] : Lists.First(l => l.Holds(id));
}

/// <summary>Where each subject stands in the book.</summary>
public sealed class CellMap
{
    private readonly Dictionary<Subject, CellRef> cells = [];
    private readonly List<PieceSheet> lists = [];
    private ShopFile? file;

    /// <summary>Says where a subject stands; the last word wins.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="cell">Its cell.</param>
    public void Add(Subject subject, CellRef cell) => cells[subject] = cell;

    /// <summary>The cell of a subject, else the cell of the whole it is a field of; null where neither has one.</summary>
    /// <param name="subject">The subject.</param>
    public CellRef? Find(Subject subject) =>
        cells.TryGetValue(subject, out var cell) || TryList(subject, out cell)
        || (subject.Kind != SubjectKind.Column && cells.TryGetValue(subject with { Field = "" }, out cell))
            ? cell
            : null;

    /// <summary>Where a link leads: the cell of a subject, else the heading of the sheet where it can be typed; null where there is neither.</summary>
    /// <param name="subject">The subject.</param>
    public CellRef? FindPlace(Subject subject) => InFile(subject) is null ? Find(subject) ?? Find(new Subject(subject.Kind, "")) : null;

    /// <summary>Where a subject stands in the shop file, in words, if it stands there and not as exactly in the book: <c>shop.xlsx, Flasks!I2</c>.</summary>
    /// <param name="subject">The subject.</param>
    internal string? InFile(Subject subject) =>
        file is null || cells.ContainsKey(subject) || (Find(subject) is not null && !file.Cells.cells.ContainsKey(subject)) ? null : file.PlaceOf(subject);

    /// <summary>Says in which file the shop's lines stand that the book has not.</summary>
    /// <param name="below">The shop file.</param>
    internal void LiesOver(ShopFile below) => file = below;

    /// <summary>Whether some subject stands in a cell.</summary>
    /// <param name="cell">The cell.</param>
    internal bool Holds(CellRef cell) => cells.ContainsValue(cell);

    /// <summary>Says where a list stands: its fields, rows and columns then need no entry each.</summary>
    /// <param name="list">The list.</param>
    internal void AddList(PieceSheet list) => lists.Add(list);

    /// <summary>The list of a column: the one on the sheet that the subject names, else the first that has such a column, else the first.</summary>
    /// <param name="column">A column.</param>
    internal PieceSheet ListOf(Subject column) => column.Field.Length > 0
        ? lists.First(l => l.Sheet.Name == column.Field)
        : lists.FirstOrDefault(l => l.Columns.ContainsKey(column.Key) || l.OwnColumns.ContainsKey(column.Key)) ?? lists[0];

    private bool TryList(Subject subject, out CellRef cell)
    {
        cell = default;
        if (subject.Kind == SubjectKind.Column && lists.Count > 0)
        {
            var list = ListOf(subject);
            var known = list.Columns.TryGetValue(subject.Key, out var heading);
            cell = new CellRef(list.Sheet.Name, list.HeadingRow, heading);
            return known;
        }

        return subject.Kind == SubjectKind.Piece
            && int.TryParse(subject.Key, NumberStyles.None, CultureInfo.InvariantCulture, out var id)
            && TryPiece(id, subject.Field, out cell);
    }

    private bool TryPiece(int id, string field, out CellRef cell)
    {
        cell = default;
        if (lists.Find(l => l.Holds(id)) is not { } list)
        {
            return false;
        }

        var column = list.Columns.TryGetValue(field, out var own) ? own
            : field is PieceField.Length or PieceField.Width or PieceField.Thickness && list.Columns.TryGetValue(PieceField.Sizes, out var sizes) ? sizes
            : list.Columns.TryGetValue(PieceField.Piece, out var name) ? name
            : list.FirstColumn;
        cell = new CellRef(list.Sheet.Name, list.RowOf(id), column);
        return true;
    }
}
