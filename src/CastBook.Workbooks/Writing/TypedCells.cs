using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Writing;

/// <summary>Cells of computed columns in which a person typed: they are kept. A flask letter typed there is a wish for that flask.</summary>
internal sealed class TypedCells
{
    private readonly HashSet<(int Piece, string OwnName)> cells = [];

    /// <summary>Finds them.</summary>
    /// <param name="reading">The book as read.</param>
    /// <param name="record">What CastBook wrote last; a column it knows nothing of has none.</param>
    public static TypedCells Find(BookReading reading, FillRecord record)
    {
        var typed = new TypedCells();
        var list = reading.Pieces;
        foreach (var (ownName, column) in list.OwnColumns.Where(c => record.Knows(c.Key) && c.Key != OwnName.Checks))
        {
            for (var piece = 0; piece < list.RowOf.Count; piece++)
            {
                var cell = list.Grid.Cell(list.RowOf[piece], column);
                if (cell is { HasFormula: false, Kind: not CellKind.Empty } and not { Text.Length: 0 } && !record.Wrote(ownName, cell))
                {
                    typed.cells.Add((piece, ownName));
                }
            }
        }

        return typed;
    }

    /// <summary>Whether there are any.</summary>
    public bool Any => cells.Count > 0;

    /// <summary>Whether a person typed into a piece's cell of a computed column.</summary>
    /// <param name="piece">The piece's id.</param>
    /// <param name="ownName">The column's hidden name.</param>
    public bool Contains(int piece, string ownName) => cells.Contains((piece, ownName));

    /// <summary>The night with typed flask letters as wishes.</summary>
    /// <param name="reading">The book as read.</param>
    public Night Wishes(BookReading reading)
    {
        var wishes = cells.Where(c => c.OwnName == OwnName.Flask)
            .ToDictionary(c => c.Piece, c => reading.Pieces.Grid.Cell(reading.Pieces.RowOf[c.Piece], reading.Pieces.OwnColumns[OwnName.Flask]).Text?.Trim().ToUpperInvariant() ?? "")
            .Where(w => w.Value.Length is 1 or 2 && w.Value.All(char.IsAsciiLetterUpper)).ToDictionary();
        return wishes.Count == 0
            ? reading.Night
            : reading.Night with
            {
                Pieces = [.. reading.Night.Pieces.Select(p => wishes.TryGetValue(p.Id, out var letter) && p.KeepInFlask is null ? p with { KeepInFlask = letter } : p)],
            };
    }

    /// <summary>What to say of them.</summary>
    /// <param name="reading">The book as read; the cells are added to its map.</param>
    /// <param name="lines">The rows, from which CastBook's own values follow.</param>
    public IEnumerable<Finding> Say(BookReading reading, IReadOnlyList<PieceLine> lines)
    {
        var list = reading.Pieces;
        foreach (var (piece, ownName) in cells.Order().Where(c => !lines[c.Piece].IsLeftAlone))
        {
            var cell = new CellRef(list.Sheet.Name, list.RowOf[piece], list.OwnColumns[ownName]);
            var column = ComputedColumns.All.First(c => c.OwnName == ownName);
            var ours = FillRecord.TextOf(column.Show(lines[piece]));
            var theirs = FillRecord.TextOf(list.Grid.Cell(cell.Row, cell.Column));
            if (ours != theirs)
            {
                var subject = Subject.Piece(piece, ownName);
                reading.Cells.Add(subject, cell);
                yield return Catalogue.TypedValueKept.At(subject, column.Heading, theirs, ours.Length == 0 ? "nothing" : ours);
            }
        }
    }
}
