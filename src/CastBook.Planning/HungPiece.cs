using UnitsNet;

namespace CastBook.Planning;

/// <summary>One piece where it hangs on its tree.</summary>
/// <param name="PieceId">The row.</param>
/// <param name="Height">Where its gate meets the trunk, above where the first gate may stand.</param>
/// <param name="Gate">Length of its gate.</param>
public sealed record HungPiece(int PieceId, Length Height, Length Gate)
{
    /// <summary>Angle between the trunk and its gate.</summary>
    public required Angle Tilt { get; init; }

    /// <summary>Whether it is a ring that stands in the plane of the trunk.</summary>
    public required bool IsRing { get; init; }

    /// <summary>Its size along the gate, outwards.</summary>
    public required Length Along { get; init; }

    /// <summary>Its size round the trunk.</summary>
    public required Length Around { get; init; }

    /// <summary>Its size in the plane of the trunk, across the gate.</summary>
    public required Length Deep { get; init; }

    /// <summary>Whether it stands on its edge: its width lies in the plane of the trunk, and its thickness round it.</summary>
    public bool OnEdge { get; init; }
}
