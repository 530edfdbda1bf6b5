using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The metal to weigh out for one flask.</summary>
/// <remarks>
/// <para><b>Formula.</b> m = (m(pieces) + m(tree) + m(button)) × (1 + loss), up to the next step of the
/// scale.</para>
/// <para><b>Symbols.</b> m(tree): trunk and gates; loss: the share of the melt that stays in the crucible
/// or burns.</para>
/// <para><b>Valid for</b> one alloy. Dust of the arithmetic, below a part in a thousand million, does not
/// make another step.</para>
/// <para><b>Source.</b> Conservation of mass; loss and rounding up are common practice.</para>
/// </remarks>
public static class Charge
{
    /// <summary>The loss that a shop starts from: 1 %. Common practice.</summary>
    public static Ratio UsualLoss { get; } = Ratio.FromPercent(1);

    /// <summary>Computes the charge.</summary>
    /// <param name="pieces">Metal of the pieces; zero or more.</param>
    /// <param name="tree">Metal of trunk and gates; zero or more.</param>
    /// <param name="button">Metal of the button; zero or more.</param>
    /// <param name="meltLoss">Share of the melt that is lost; zero or more.</param>
    /// <param name="step">Step of the scale; more than zero.</param>
    /// <returns>The charge, a whole number of steps, in the unit of <paramref name="step"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A mass or the loss is negative, or the step is zero or negative.
    /// </exception>
    public static Mass Compute(Mass pieces, Mass tree, Mass button, Ratio meltLoss, Mass step)
    {
        Require.NotNegative(pieces);
        Require.NotNegative(tree);
        Require.NotNegative(button);
        Require.NotNegative(meltLoss);
        Require.Positive(step);

        return ScaleStep.Up((pieces + tree + button) * (1 + meltLoss.DecimalFractions), step);
    }
}
