using CastBook.Planning.Metals;

namespace CastBook.Planning.Flasks;

/// <summary>A flask that is under way: nothing in it is moved.</summary>
/// <param name="Letter">Its letter.</param>
/// <param name="State">How far it has come.</param>
/// <param name="Line">Its line of the Trees sheet.</param>
/// <param name="Pieces">What hangs in it, in the order of the list.</param>
internal sealed record BuiltTree(
    string Letter, FlaskState State, TreeInHand Line, IReadOnlyList<(PieceMetal Metal, int Count)> Pieces)
{
    /// <summary>Its size; nothing where it is not known.</summary>
    public UsableSize? Size { get; init; }

    /// <summary>Its alloy; nothing where its pieces do not agree on a known one.</summary>
    public KnownAlloy? Alloy { get; init; }

    /// <summary>Whether enough is known of it to work out its numbers.</summary>
    public bool IsKnown => Size is not null && Alloy?.Density is not null && Pieces.Count > 0 && Pieces.All(p => p.Metal.VolumeEach is not null);
}
