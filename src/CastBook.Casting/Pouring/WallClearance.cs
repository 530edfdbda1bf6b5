using UnitsNet;

namespace CastBook.Casting.Pouring;

/// <summary>The investment that must stand between the pieces and the flask's wall.</summary>
/// <remarks>
/// <para><b>Source.</b> Common practice is 6 to 10 mm, and published rules ask for a quarter to half an inch. 8 mm
/// is the middle: 6 mm leaves no room for a pattern that leans, and 10 mm costs a small flask a ring of
/// pieces. The flask's own row wins.</para>
/// </remarks>
public static class WallClearance
{
    /// <summary>The clearance that a flask gets when its row says nothing: 8 mm.</summary>
    public static Length Usual { get; } = Length.FromMillimeters(8);

    /// <summary>The least that is common practice: 6 mm.</summary>
    public static Length Least { get; } = Length.FromMillimeters(6);
}
