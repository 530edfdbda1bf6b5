using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Floors;

/// <summary>The floor of a kiln, inside; its middle is the origin of every place on it.</summary>
/// <param name="IsRound">Whether it is round; then width and depth are both its diameter.</param>
/// <param name="Width">Inside width.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record KilnFloor(bool IsRound, Length Width, Length Depth)
{
    /// <summary>Makes a round floor.</summary>
    /// <param name="diameter">Inside diameter.</param>
    public static KilnFloor Round(Length diameter) => new(true, diameter, diameter);

    /// <summary>Makes a square or oblong floor.</summary>
    /// <param name="width">Inside width.</param>
    /// <param name="depth">Inside depth.</param>
    public static KilnFloor Square(Length width, Length depth) => new(false, width, depth);

    /// <summary>The floor of a kiln; nothing where the shop has not said how large it is.</summary>
    /// <param name="kiln">The kiln; a diameter alone, or the shape of a round one, makes it round.</param>
    public static KilnFloor? Of(Kiln kiln)
    {
        ArgumentNullException.ThrowIfNull(kiln);
        var isRound = kiln.Shape is { } shape ? shape == KilnShape.Round : kiln.InsideDiameter is not null;
        if (isRound)
        {
            return kiln.InsideDiameter is { } diameter ? Round(diameter) : null;
        }

        // One side alone of a square floor is enough.
        return (kiln.InsideWidth ?? kiln.InsideDepth, kiln.InsideDepth ?? kiln.InsideWidth) is ({ } width, { } depth)
            ? Square(width, depth)
            : null;
    }
}
