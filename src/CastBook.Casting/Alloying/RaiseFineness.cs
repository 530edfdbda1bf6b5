using CastBook.Casting.Metals;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>How much of a finer metal brings an alloy up to a higher fineness.</summary>
/// <remarks>
/// <para><b>Formula.</b> added = m × (F(to) − F(from)) / (F(with) − F(to)).</para>
/// <para><b>Symbols.</b> m: the alloy at hand; F: share by mass of the precious metal; F(with): that of the metal added, which is
/// one for fine metal.</para>
/// <para><b>Valid for</b> any fineness below that of the metal added. Says nothing of colour, and makes no allowance for what is
/// lost in the melt.</para>
/// <para><b>Source.</b> What is not precious stays the same; the rule and worked examples are printed in karat tables of several
/// suppliers, compared in the tests.</para>
/// </remarks>
public static class RaiseFineness
{
    /// <param name="metal">The alloy at hand; zero or more.</param>
    /// <param name="from">Its fineness; zero or more.</param>
    /// <param name="to">The fineness wanted; not below <paramref name="from"/>.</param>
    /// <param name="with">The fineness of the metal to add; more than <paramref name="to"/>, and at most one.</param>
    /// <returns>The metal to add, in the unit of <paramref name="metal"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside these limits.</exception>
    public static Mass Compute(Mass metal, Ratio from, Ratio to, Ratio with)
    {
        Require.NotNegative(metal);
        Require.Between(from, Ratio.Zero, to);
        Require.Between(with, to, Fineness.Fine);
        Require.Positive(with.DecimalFractions - to.DecimalFractions, nameof(with));

        return metal * ((to.DecimalFractions - from.DecimalFractions) / (with.DecimalFractions - to.DecimalFractions));
    }
}
