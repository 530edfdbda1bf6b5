using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>What room a flask takes on the floor of a kiln.</summary>
internal static class KilnRoom
{
    // Usual sheet of a flask, 3 mm; sizes are inside ones.
    private static readonly Length Walls = Length.FromMillimeters(6);

    // Hot air must reach every mould. Common practice.
    private static readonly Length UsualGap = Length.FromMillimeters(20);

    /// <summary>The least gap between two flasks, and to the wall.</summary>
    /// <param name="settings">The shop's settings.</param>
    public static Length GapOf(Settings settings) => settings.GapInKiln ?? UsualGap;

    /// <summary>The outside diameter of a flask.</summary>
    /// <param name="size">Its size.</param>
    public static Length Outside(FlaskSize size) => (size.InsideDiameter ?? Length.Zero) + Walls;
}
