namespace CastBook.Planning.Flasks;

/// <summary>A sector of a tree: pieces one above the other along the trunk, longest tail nearest the button.</summary>
/// <remarks>
/// Pieces of one sector are parallel, so that only their length of trunk counts; other sectors are beyond the
/// sector's walls. With the longest tail lowest, a sector is possible if any order of it is.
/// </remarks>
internal sealed class TreeSector(int rod)
{
    private readonly List<Hung> hung = [];
    private int used;

    /// <summary>Its angle, the widest of its pieces, in 1/144 turn.</summary>
    public int Theta { get; private set; }

    /// <summary>Length of trunk that is left, in half millimetres.</summary>
    public int Free => rod - used;

    /// <summary>What hangs in it, from the button up.</summary>
    public IReadOnlyList<(TreePiece Piece, int Count)> Pieces => [.. hung.Select(h => (h.Piece, h.Count))];

    /// <summary>How many more pieces of a shape fit.</summary>
    /// <param name="shape">The shape.</param>
    public int Room(PieceShape shape)
    {
        // Height reached before the new pieces, which come after all with a longer or equal tail.
        var below = 0;
        var end = 0;
        var slack = int.MaxValue;
        foreach (var h in hung)
        {
            end += h.Count * h.Shape.Pitch;
            if (h.Shape.Tail >= shape.Tail)
            {
                below = end;
            }
            else
            {
                slack = Math.Min(slack, rod - h.Shape.Tail - end);
            }
        }

        var most = Math.Min(slack, rod - shape.Tail - below);
        return most <= 0 ? 0 : most / shape.Pitch;
    }

    /// <summary>Hangs pieces; the caller has asked for room.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="shape">Its shape on this trunk.</param>
    /// <param name="count">How many.</param>
    public void Hang(TreePiece piece, PieceShape shape, int count)
    {
        used += count * shape.Pitch;
        Theta = Math.Max(Theta, shape.Theta);
        var same = hung.FindIndex(h => h.Piece == piece);
        if (same >= 0)
        {
            hung[same] = hung[same] with { Count = hung[same].Count + count };
            return;
        }

        // Equal tails may hang either way round; the heavier then hangs nearer the button, where metal stays hot.
        var at = hung.FindIndex(h => h.Shape.Tail < shape.Tail
            || (h.Shape.Tail == shape.Tail && h.Piece.MetalMl < piece.MetalMl));
        hung.Insert(at < 0 ? hung.Count : at, new(piece, shape, count));
    }

    private readonly record struct Hung(TreePiece Piece, PieceShape Shape, int Count);
}
