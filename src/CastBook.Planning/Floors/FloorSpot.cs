using UnitsNet;

namespace CastBook.Planning.Floors;

/// <summary>Where a flask stands, from the middle of the kiln's floor.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Away from the door.</param>
public readonly record struct FloorSpot(Length X, Length Y);
