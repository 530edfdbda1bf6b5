using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The metal that stays in the pouring cup and feeds the tree while it shrinks.</summary>
/// <remarks>
/// <para><b>Formula.</b> V(button) = the larger of s × V and V(least).</para>
/// <para><b>Symbols.</b> V: pieces and tree; s: the shop's share; V(least): the least the cup should hold.</para>
/// <para><b>Valid for</b> any alloy: the button goes by volume, because what feeds is space, not mass. 15 g is
/// 1.45 ml of sterling but 0.97 ml of 18 k gold.</para>
/// <para><b>Source.</b> Common practice; the trade's rules run from a tenth of the metal to as much again,
/// so that share and least are the shop's settings.</para>
/// </remarks>
public static class Button
{
    /// <summary>The share that a shop starts from: 20 %. Common practice.</summary>
    public static Ratio UsualShare { get; } = Ratio.FromPercent(20);

    /// <summary>The least button that a shop starts from: 1.5 ml. Common practice.</summary>
    public static Volume UsualLeast { get; } = UnitsNet.Volume.FromMilliliters(1.5);

    /// <summary>Computes the volume of the button.</summary>
    /// <param name="piecesAndTree">Pieces, gates and trunk together; zero or more.</param>
    /// <param name="share">Share of it that the button takes; zero or more.</param>
    /// <param name="atLeast">The least button; zero or more.</param>
    /// <returns>The volume of the button.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative.</exception>
    public static Volume Volume(Volume piecesAndTree, Ratio share, Volume atLeast)
    {
        Require.NotNegative(piecesAndTree);
        Require.NotNegative(share);
        Require.NotNegative(atLeast);

        return UnitsNet.UnitMath.Max(piecesAndTree * share.DecimalFractions, atLeast);
    }
}
