using CastBook.Casting.Patterns;
using CastBook.Planning.Metals;

namespace CastBook.Planning.Flasks;

/// <summary>A planned flask and its tree.</summary>
/// <param name="Alloy">Its metal.</param>
/// <param name="Size">Its size.</param>
/// <param name="Content">What hangs in it, in the order of the list.</param>
internal sealed record FilledFlask(KnownAlloy Alloy, UsableSize Size, IReadOnlyList<(TreePiece Piece, int Count)> Content)
{
    /// <summary>Its sectors, each from the button up; pieces of which only a number per tree is known are in none.</summary>
    public required IReadOnlyList<IReadOnlyList<(TreePiece Piece, int Count)>> Sectors { get; init; }

    /// <summary>What limits it.</summary>
    public required Lazy<FlaskLimit> Limit { get; init; }

    /// <summary>The letter that the shop wants for it.</summary>
    public string? Letter { get; init; }

    /// <summary>Resin where there is any, or anything that is not known to be wax.</summary>
    public PatternKind Kind => Content.Any(c => c.Piece.Kind == PatternKind.Resin) ? PatternKind.Resin : PatternKind.Wax;

    /// <summary>Whether stones are in it.</summary>
    public bool StonesIn => Content.Any(c => c.Piece.StonesIn);
}
