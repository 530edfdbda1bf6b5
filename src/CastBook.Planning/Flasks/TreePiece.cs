using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Metals;

namespace CastBook.Planning.Flasks;

/// <summary>A row as the planning of trees sees it.</summary>
internal sealed class TreePiece
{
    /// <summary>The row.</summary>
    public required PieceMetal Metal { get; init; }

    /// <summary>How many are to be hung.</summary>
    public required int Quantity { get; init; }

    /// <summary>Metal of one piece with its gates, in millilitres.</summary>
    public required double MetalMl { get; init; }

    /// <summary>The coldest band it can be cast in.</summary>
    public required SectionBand Coldest { get; init; }

    /// <summary>The hottest band it can be cast in.</summary>
    public required SectionBand Hottest { get; init; }

    /// <summary>What it takes on a tree of each usable size; nothing where only a number per tree is known.</summary>
    public required PieceShape[]? Shapes { get; init; }

    /// <summary>How many fit a tree of each usable size, 0 for none; only where sizes are not known.</summary>
    public required int[] PerTree { get; init; }

    /// <summary>The row's id.</summary>
    public int Id => Metal.Piece.Id;

    /// <summary>The row's alloy.</summary>
    public KnownAlloy Alloy => Metal.Alloy.Known!;

    /// <summary>Whether stones are set in it.</summary>
    public bool StonesIn => Metal.Piece.StonesIn;

    /// <summary>Wax or resin; what is not known counts as resin, the longer burnout.</summary>
    public PatternKind Kind => Metal.Material.Kind ?? PatternKind.Resin;

    /// <summary>Whether it fits a tree of a size, metal apart.</summary>
    /// <param name="size">The size.</param>
    public bool FitsIn(UsableSize size) => Shapes is null ? PerTree[size.Index] > 0 : Shapes[size.Index].Fits;
}
