using CastBook.Casting.Pouring;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>A flask size with everything known that a tree needs.</summary>
/// <param name="Size">The shop's row.</param>
/// <param name="Index">Its place among the usable sizes.</param>
/// <param name="Inside">Inside volume.</param>
/// <param name="Trunk">Volume of the trunk.</param>
internal sealed record UsableSize(FlaskSize Size, int Index, Volume Inside, Volume Trunk)
{
    /// <summary>Half the trunk's diameter, in millimetres.</summary>
    public required double TrunkRadiusMm { get; init; }

    /// <summary>How it is cast.</summary>
    public required CastingMethod Method { get; init; }

    /// <summary>How far from the middle a piece may reach, in millimetres.</summary>
    public required double ReachMm { get; init; }

    /// <summary>Length of trunk that pieces may hang on, in millimetres.</summary>
    public required double RodMm { get; init; }

    /// <summary>What the flask keeps free to the wall, in millimetres.</summary>
    public required double WallMm { get; init; }

    /// <summary>What the flask keeps free above the tree.</summary>
    public Length Above => (Size.Height ?? Length.Zero) - (Size.BaseHeight ?? Length.Zero) - Length.FromMillimeters(RodMm);

    /// <summary>Length of trunk in half millimetres, rounded down.</summary>
    public int Rod => (int)Math.Floor((RodMm * 2) + PieceShape.Dust);

    /// <summary>How many the shop owns.</summary>
    public int Owned => Size.Owned ?? 0;
}
