using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>How much base metal brings a precious alloy down to a lower fineness.</summary>
/// <remarks>
/// <para><b>Formula.</b> added = m × (F(from) − F(to)) / F(to).</para>
/// <para><b>Symbols.</b> m: the alloy at hand; F: share by mass of the precious metal; what is added holds none of it.</para>
/// <para><b>Valid for</b> any fineness. Says nothing of colour, and makes no allowance for what is lost in the melt.</para>
/// <para><b>Source.</b> The precious metal stays the same; the rule and worked examples are printed in karat tables of several
/// suppliers, compared in the tests.</para>
/// </remarks>
public static class LowerFineness
{
    /// <param name="metal">The alloy at hand; zero or more.</param>
    /// <param name="from">Its fineness; not below <paramref name="to"/>, and at most one.</param>
    /// <param name="to">The fineness wanted; more than zero.</param>
    /// <returns>The metal to add, in the unit of <paramref name="metal"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside these limits.</exception>
    public static Mass Compute(Mass metal, Ratio from, Ratio to)
    {
        Require.NotNegative(metal);
        Require.Positive(to.DecimalFractions, nameof(to));
        Require.Between(from, to, FineMetal.Fineness);

        return metal * ((from.DecimalFractions - to.DecimalFractions) / to.DecimalFractions);
    }
}
