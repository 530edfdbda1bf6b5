namespace CastBook.Planning.Flasks;

/// <summary>Builds one tree: sectors round the trunk, and shares of it for pieces of which only a number per tree is known.</summary>
internal sealed class TreeBuilder(UsableSize size, double roomMl)
{
    private readonly List<TreeSector> sectors = [];
    private readonly List<(TreePiece Piece, int Count)> content = [];
    private int usedTheta;
    private double usedShares;
    private int longestFree;
    private double freeMl = roomMl * (1 + PieceShape.Dust);

    /// <summary>The flask size the tree stands in.</summary>
    public UsableSize Size => size;

    /// <summary>What hangs on it, in the order it was hung.</summary>
    public IReadOnlyList<(TreePiece Piece, int Count)> Content => content;

    /// <summary>Its sectors; none for pieces of which only a number per tree is known.</summary>
    public IReadOnlyList<TreeSector> Sectors => sectors;

    /// <summary>Metal of pieces and gates that may still be added, in millilitres.</summary>
    public double FreeMl => freeMl;

    /// <summary>Hangs as many pieces as fit, up to a number, and says how many.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="wanted">How many at most.</param>
    public int Hang(TreePiece piece, int wanted)
    {
        var most = Math.Min(wanted, ByMetal(piece));
        if (most <= 0 || !piece.FitsIn(size))
        {
            return 0;
        }

        var hung = piece.Shapes is null ? HangByShare(piece, most) : HangBySector(piece, piece.Shapes[size.Index], most);
        if (hung > 0)
        {
            freeMl -= hung * piece.MetalMl;
            var at = content.FindIndex(c => c.Piece == piece);
            if (at < 0)
            {
                content.Add((piece, hung));
            }
            else
            {
                content[at] = (piece, content[at].Count + hung);
            }
        }

        return hung;
    }

    private int ByMetal(TreePiece piece) =>
        piece.MetalMl <= 0 ? int.MaxValue : (int)Math.Clamp(Math.Floor(freeMl / piece.MetalMl), 0, int.MaxValue);

    private int HangByShare(TreePiece piece, int most)
    {
        var perTree = piece.PerTree[size.Index];
        var free = 1 - usedShares - ((double)usedTheta / PieceShape.Turn);
        var count = Math.Min(most, (int)Math.Floor((free * perTree) + 1e-6));
        if (count <= 0)
        {
            return 0;
        }

        usedShares += (double)count / perTree;
        return count;
    }

    private int HangBySector(TreePiece piece, PieceShape shape, int most)
    {
        // A full tree is asked by every row that is left; it must say no quickly.
        if (FreeTheta < shape.Theta && longestFree < shape.Pitch)
        {
            return 0;
        }

        var left = HangBeside(piece, shape, most);
        left = Widen(piece, shape, left);
        longestFree = sectors.Max(s => s.Free);
        return most - left;
    }

    private int HangBeside(TreePiece piece, PieceShape shape, int left)
    {
        foreach (var sector in sectors.Where(s => s.Theta >= shape.Theta && s.Free >= shape.Pitch).OrderBy(s => s.Theta))
        {
            left -= Hang(sector, piece, shape, left);
            if (left == 0)
            {
                return 0;
            }
        }

        while (left > 0 && FreeTheta >= shape.Theta)
        {
            var sector = new TreeSector(size.Rod);
            var count = Hang(sector, piece, shape, left);
            sectors.Add(sector);
            usedTheta += shape.Theta;
            left -= count;
        }

        return left;
    }

    // Last, narrower sectors with room above are widened as far as the turn allows.
    private int Widen(TreePiece piece, PieceShape shape, int left)
    {
        if (left == 0)
        {
            return 0;
        }

        foreach (var sector in sectors.Where(s => s.Theta < shape.Theta && s.Free >= shape.Pitch).OrderByDescending(s => s.Theta))
        {
            var more = shape.Theta - sector.Theta;
            if (left == 0 || more > FreeTheta)
            {
                break;
            }

            var count = Hang(sector, piece, shape, left);
            usedTheta += count > 0 ? more : 0;
            left -= count;
        }

        return left;
    }

    private int FreeTheta => PieceShape.Turn - usedTheta - (int)Math.Ceiling((usedShares * PieceShape.Turn) - 1e-6);

    private static int Hang(TreeSector sector, TreePiece piece, PieceShape shape, int wanted)
    {
        var count = Math.Min(wanted, sector.Room(shape));
        if (count > 0)
        {
            sector.Hang(piece, shape, count);
        }

        return count;
    }
}
