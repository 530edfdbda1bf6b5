using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// Cells of computed columns in which a person typed: they are kept. A flask letter typed there is a wish for that flask, and
/// a number typed as the metal of one piece, or given by a formula there, is that metal.
/// </summary>
/// <param name="record">What CastBook wrote last.</param>
internal sealed class TypedCells(FillRecord record)
{
    private readonly HashSet<(int Piece, string OwnName)> cells = [];

    /// <summary>Finds them.</summary>
    /// <param name="reading">The book as read.</param>
    /// <param name="record">What CastBook wrote last; a column it knows nothing of has none.</param>
    public static TypedCells Find(BookReading reading, FillRecord record)
    {
        var typed = new TypedCells(record);
        foreach (var list in reading.Lists)
        {
            typed.FindIn(list);
        }

        return typed;
    }

    /// <summary>Whether there are any.</summary>
    public bool Any => cells.Count > 0;

    /// <summary>Whether a person typed into a piece's cell of a computed column.</summary>
    /// <param name="piece">The piece's id.</param>
    /// <param name="ownName">The column's hidden name.</param>
    public bool Contains(int piece, string ownName) => cells.Contains((piece, ownName));

    /// <summary>The night with typed flask letters as wishes, and with the metal of one piece where the shop says it.</summary>
    /// <param name="reading">The book as read.</param>
    public Night Heard(BookReading reading)
    {
        var changed = new Dictionary<int, Piece>();
        foreach (var piece in reading.Night.Pieces.Where(p => IsShops(reading.ListOf(p.Id), p.Id, OwnName.MetalEach)))
        {
            if (Metal(reading, piece.Id) is { } each)
            {
                changed[piece.Id] = piece with { MetalEach = each };
            }
        }

        foreach (var (id, _) in cells.Where(c => c.OwnName == OwnName.Flask))
        {
            var piece = changed.TryGetValue(id, out var heard) ? heard : reading.Night.Pieces[id];
            var letter = CellOf(reading.ListOf(id), id, OwnName.Flask).Text?.Trim().ToUpperInvariant() ?? "";
            if (piece.KeepInFlask is null && letter.Length is 1 or 2 && letter.All(char.IsAsciiLetterUpper))
            {
                changed[id] = piece with { KeepInFlask = letter };
            }
        }

        return changed.Count == 0
            ? reading.Night
            : reading.Night with { Pieces = [.. reading.Night.Pieces.Select(p => changed.GetValueOrDefault(p.Id, p))] };
    }

    /// <summary>What to say of them.</summary>
    /// <param name="reading">The book as read; the cells are added to its map.</param>
    /// <param name="lists">The lists with their columns.</param>
    /// <param name="lines">The rows, from which CastBook's own values follow.</param>
    public IEnumerable<Finding> Say(BookReading reading, IReadOnlyList<ListColumns> lists, IReadOnlyList<PieceLine> lines)
    {
        foreach (var (piece, ownName) in cells.Order().Where(c => !lines[c.Piece].IsLeftAlone))
        {
            var list = reading.ListOf(piece);
            var cell = new CellRef(list.Sheet.Name, list.RowOf(piece), list.OwnColumns[ownName]);
            var column = lists.First(l => l.List == list).Standing.First(s => s.Column.OwnName == ownName).Column;
            var theirs = CellOf(list, piece, ownName);
            var used = Metal(reading, piece) is not null ? column as MetalEachColumn : null;
            var isUsed = used is not null;
            var unit = isUsed ? " " + used!.Unit.Name : "";
            var ours = FillRecord.TextOf(isUsed ? CellValue.Of(used!.Unit.In(lines[piece].Plan.MetalWorkedOut)) : column.Show(lines[piece]));
            if (ours != FillRecord.TextOf(theirs))
            {
                var subject = Subject.Piece(piece, ownName);
                reading.Cells.Add(subject, cell);
                yield return (isUsed ? Catalogue.TypedMetalUsed : Catalogue.TypedValueKept)
                    .At(subject, column.Heading, isUsed ? FillRecord.TextOf(theirs) + unit : FillRecord.TextOf(theirs), ours.Length == 0 ? ColumnWords.Nothing : ours + unit);
            }
        }
    }

    private void FindIn(PieceSheet list)
    {
        foreach (var (ownName, column) in list.OwnColumns.Where(c => record.Knows(c.Key) && c.Key != OwnName.Checks))
        {
            foreach (var piece in list.Ids)
            {
                var cell = list.Grid.Cell(list.RowOf(piece), column);
                if (cell is { HasFormula: false, Kind: not CellKind.Empty } and not { Text.Length: 0 } && !record.Wrote(ownName, cell))
                {
                    cells.Add((piece, ownName));
                }
            }
        }
    }

    private static GridCell CellOf(PieceSheet list, int piece, string ownName) =>
        list.OwnColumns.TryGetValue(ownName, out var column) ? list.Grid.Cell(list.RowOf(piece), column) : default;

    // In the unit that its heading says.
    private Mass? Metal(BookReading reading, int piece)
    {
        var list = reading.ListOf(piece);
        return CellOf(list, piece, OwnName.MetalEach) is { Kind: CellKind.Number, Number: > 0 } cell
            ? new MetalUnits(list, record, reading.Night.Shop.Settings.Units.Metal).Read(OwnName.MetalEach, cell.Number)
            : null;
    }

    private bool IsShops(PieceSheet list, int piece, string ownName) => Contains(piece, ownName) || CellOf(list, piece, ownName).HasFormula;
}
