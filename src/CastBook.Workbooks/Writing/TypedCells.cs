using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using UnitsNet;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// Cells of computed columns in which a person typed: they are kept. A flask letter typed there is a wish for that flask, and
/// a number typed as the metal of one piece, or given by a formula there, is that metal.
/// </summary>
internal sealed class TypedCells
{
    private readonly HashSet<(int Piece, string OwnName)> cells = [];

    /// <summary>Finds them.</summary>
    /// <param name="reading">The book as read.</param>
    /// <param name="record">What CastBook wrote last; a column it knows nothing of has none.</param>
    public static TypedCells Find(BookReading reading, FillRecord record)
    {
        var typed = new TypedCells();
        foreach (var list in reading.Lists)
        {
            typed.FindIn(list, record);
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
            if (Metal(reading.ListOf(piece.Id), piece.Id) is { } each)
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
    /// <param name="lines">The rows, from which CastBook's own values follow.</param>
    public IEnumerable<Finding> Say(BookReading reading, IReadOnlyList<PieceLine> lines)
    {
        foreach (var (piece, ownName) in cells.Order().Where(c => !lines[c.Piece].IsLeftAlone))
        {
            var list = reading.ListOf(piece);
            var cell = new CellRef(list.Sheet.Name, list.RowOf(piece), list.OwnColumns[ownName]);
            var column = ComputedColumns.All.First(c => c.OwnName == ownName);
            var theirs = CellOf(list, piece, ownName);
            var isUsed = ownName == OwnName.MetalEach && Metal(list, piece) is not null;
            var ours = FillRecord.TextOf(isUsed ? CellValue.Of(CellNumbers.Grams(lines[piece].Plan.MetalWorkedOut)) : column.Show(lines[piece]));
            if (ours != FillRecord.TextOf(theirs))
            {
                var subject = Subject.Piece(piece, ownName);
                reading.Cells.Add(subject, cell);
                yield return (isUsed ? Catalogue.TypedMetalUsed : Catalogue.TypedValueKept)
                    .At(subject, column.Heading, isUsed ? FillRecord.TextOf(theirs) + " g" : FillRecord.TextOf(theirs), ours.Length == 0 ? "nothing" : isUsed ? ours + " g" : ours);
            }
        }
    }

    private void FindIn(PieceSheet list, FillRecord record)
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

    private static Mass? Metal(PieceSheet list, int piece) =>
        CellOf(list, piece, OwnName.MetalEach) is { Kind: CellKind.Number, Number: > 0 } cell ? Mass.FromGrams(cell.Number) : null;

    private bool IsShops(PieceSheet list, int piece, string ownName) => Contains(piece, ownName) || CellOf(list, piece, ownName).HasFormula;
}
