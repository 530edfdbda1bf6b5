using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading;

/// <summary>A list of pieces of the shop's as found: which sheet, where its heading, rows and columns are, and what stands to its right.</summary>
public sealed record PieceSheet
{
    /// <summary>The sheet.</summary>
    public required SheetPart Sheet { get; init; }

    /// <summary>Its cells: all of them down to the headings, below only those of our own columns; formats everywhere.</summary>
    public required SheetGrid Grid { get; init; }

    /// <summary>The heading row, from 1.</summary>
    public required int HeadingRow { get; init; }

    /// <summary>The list's number among those of the book, by which the names of its columns are told from theirs.</summary>
    public required int Number { get; init; }

    /// <summary>The <see cref="Piece.Id"/> of its first piece.</summary>
    public required int FirstId { get; init; }

    /// <summary>The sheet rows of its pieces, in the order of their ids.</summary>
    public required IReadOnlyList<int> Rows { get; init; }

    /// <summary>The shop's columns that were recognised, by field.</summary>
    public required IReadOnlyDictionary<string, int> Columns { get; init; }

    /// <summary>CastBook's own columns that stand in the book already, by their defined name such as <c>CastBook_MetalEach</c>.</summary>
    public required IReadOnlyDictionary<string, int> OwnColumns { get; init; }

    /// <summary>Names of own columns that the shop has deleted (their defined name says <c>#REF!</c>); they are not added again.</summary>
    public required IReadOnlyCollection<string> DeletedOwnColumns { get; init; }

    /// <summary>First and last column of the list itself, own columns included.</summary>
    public required int FirstColumn { get; init; }

    /// <summary>Last column of the list, own columns included.</summary>
    public required int LastColumn { get; init; }

    /// <summary>Last row of the list: of the table, totals row excluded, or of the last piece.</summary>
    public required int LastRow { get; init; }

    /// <summary>The table the list is, where it is one.</summary>
    public SheetTable? Table { get; init; }

    /// <summary>The first column to the right of the list that is occupied in any row of the list, heading included; missing where all is free.</summary>
    public int? OccupiedFrom { get; init; }

    /// <summary>The sheet's plain filter, where it has one.</summary>
    public CellRange? AutoFilter { get; init; }

    /// <summary>The ids of its pieces.</summary>
    public IEnumerable<int> Ids => Enumerable.Range(FirstId, Rows.Count);

    /// <summary>Whether a piece stands in this list.</summary>
    /// <param name="id">The piece's id.</param>
    public bool Holds(int id) => id >= FirstId && id < FirstId + Rows.Count;

    /// <summary>The sheet row of a piece.</summary>
    /// <param name="id">The piece's id.</param>
    public int RowOf(int id) => Rows[id - FirstId];

    /// <summary>A column of the list as findings name it.</summary>
    /// <param name="field">The field, or the hidden name of a column of ours.</param>
    public Subject Column(string field) => Subject.Column(field, FirstId == 0 ? "" : Sheet.Name);

    /// <summary>The hidden name of a column of ours in this list.</summary>
    /// <param name="ownName">The column's name.</param>
    internal string NameOf(string ownName) => OwnName.InList(ownName, Number);
}

/// <summary>A table of a sheet.</summary>
/// <param name="PartName">Its part in the package.</param>
/// <param name="Name">Its display name.</param>
/// <param name="Range">Heading, rows and totals row.</param>
/// <param name="HasTotalsRow">Whether the last row is a totals row.</param>
/// <param name="ColumnNames">The names of its columns, in order.</param>
/// <param name="IsPlain">False for a query or xml table, which must not be widened.</param>
public sealed record SheetTable(
    string PartName, string Name, CellRange Range, bool HasTotalsRow, IReadOnlyList<string> ColumnNames, bool IsPlain);
