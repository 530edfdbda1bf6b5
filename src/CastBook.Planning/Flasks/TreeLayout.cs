using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Says where on the trunk each piece of a tree hangs: how far round, how high, and which way up.</summary>
internal static class TreeLayout
{
    /// <summary>Lays out the sectors of a tree.</summary>
    /// <param name="sectors">Each sector's pieces from the button up; every row has its shapes.</param>
    /// <param name="size">The flask size.</param>
    public static IReadOnlyList<TreeColumn> Of(IReadOnlyList<IReadOnlyList<(TreePiece Piece, int Count)>> sectors, UsableSize size)
    {
        var widths = sectors.Select(s => s.Max(p => p.Piece.Shapes![size.Index].Theta)).ToList();

        // What is left of the turn is shared out between the sectors, so that the tree hangs evenly round its trunk.
        var between = sectors.Count == 0 ? 0 : (PieceShape.Turn - widths.Sum()) / (double)sectors.Count;
        var columns = new List<TreeColumn>(sectors.Count);
        var from = sectors.Count == 0 ? 0 : -widths[0] / 2.0;
        for (var i = 0; i < sectors.Count; i++)
        {
            columns.Add(new TreeColumn([.. sectors[i].Select(p => new PieceShare(p.Piece.Id, p.Count))])
            {
                Middle = Turns(from + (widths[i] / 2.0)),
                Width = Turns(widths[i]),
                Places = Places(sectors[i], size),
            });
            from += widths[i] + between;
        }

        return columns;
    }

    private static List<HungPiece> Places(IReadOnlyList<(TreePiece Piece, int Count)> pieces, UsableSize size)
    {
        var places = new List<HungPiece>();
        var below = 0;
        foreach (var (piece, count) in pieces)
        {
            var shape = piece.Shapes![size.Index];
            for (var i = 0; i < count; i++)
            {
                // The gate stands in the middle of the length of trunk that the piece takes.
                places.Add(shape.Hang(piece.Metal.Piece, Length.FromMillimeters((below + (shape.Pitch / 2.0)) / 2)));
                below += shape.Pitch;
            }
        }

        return places;
    }

    private static Angle Turns(double units) => Angle.FromDegrees(units * 360 / PieceShape.Turn);
}
