namespace CastBook.Planning.Flasks;

/// <summary>Builds one tree: sectors round the trunk, and shares of it for pieces of which only a number per tree is known.</summary>
internal sealed class TreeBuilder(UsableSize size, double roomMl)
{
    private readonly List<TreeSector> sectors = [];
    private readonly List<TreeSector> byTheta = [];
    private readonly List<(TreePiece Piece, int Count)> content = [];
    private int usedTheta;
    private double usedShares;
    private int sharedTheta;
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

    /// <summary>Whether a piece may find room; a full tree is asked by every row that is left and must say no quickly.</summary>
    /// <param name="piece">The row.</param>
    public bool MayTake(TreePiece piece)
    {
        if (piece.MetalMl > freeMl)
        {
            return false;
        }

        if (piece.Shapes is null)
        {
            return true;
        }

        ref readonly var shape = ref piece.Shapes[size.Index];
        return shape.Fits && (longestFree >= shape.Pitch || FreeTheta >= shape.Theta);
    }

    /// <summary>Hangs as many pieces as fit, up to a number, and says how many.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="wanted">How many at most.</param>
    public int Hang(TreePiece piece, int wanted)
    {
        if (!MayTake(piece) || !piece.FitsIn(size))
        {
            return 0;
        }

        var most = Math.Min(wanted, ByMetal(piece));

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
        sharedTheta = (int)Math.Ceiling((usedShares * PieceShape.Turn) - 1e-6);
        return count;
    }

    private int HangBySector(TreePiece piece, PieceShape shape, int most)
    {
        var left = HangBeside(piece, shape, most);
        left = Widen(piece, shape, left);
        if (left < most)
        {
            longestFree = 0;
            foreach (var sector in sectors)
            {
                longestFree = Math.Max(longestFree, sector.Free);
            }
        }

        return most - left;
    }

    private int HangBeside(TreePiece piece, PieceShape shape, int left)
    {
        // Narrowest first; loops and not queries, because every row asks every tree.
        for (var i = 0; i < byTheta.Count && left > 0; i++)
        {
            if (byTheta[i].Theta >= shape.Theta && byTheta[i].Free >= shape.Pitch)
            {
                left -= Hang(byTheta[i], piece, shape, left);
            }
        }

        while (left > 0 && FreeTheta >= shape.Theta)
        {
            var sector = new TreeSector(size.Rod);
            var count = Hang(sector, piece, shape, left);
            sectors.Add(sector);
            Sort(sector);
            usedTheta += shape.Theta;
            left -= count;
        }

        return left;
    }

    private void Sort(TreeSector sector)
    {
        byTheta.Remove(sector);
        var at = byTheta.FindIndex(s => s.Theta > sector.Theta);
        byTheta.Insert(at < 0 ? byTheta.Count : at, sector);
    }

    // Last, narrower sectors with room above are widened as far as the turn allows.
    private int Widen(TreePiece piece, PieceShape shape, int left)
    {
        if (left == 0)
        {
            return 0;
        }

        for (var i = byTheta.Count - 1; i >= 0 && left > 0; i--)
        {
            var sector = byTheta[i];
            var more = shape.Theta - sector.Theta;
            if (more <= 0 || sector.Free < shape.Pitch)
            {
                continue;
            }

            if (more > FreeTheta)
            {
                break;
            }

            var count = Hang(sector, piece, shape, left);
            if (count > 0)
            {
                usedTheta += more;
                left -= count;
                Sort(sector);
            }
        }

        return left;
    }

    private int FreeTheta => PieceShape.Turn - usedTheta - sharedTheta;

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
