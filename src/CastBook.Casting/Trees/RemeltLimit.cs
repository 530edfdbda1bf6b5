using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The most of a charge that may be metal melted before.</summary>
/// <remarks>
/// <para><b>Formula.</b> m(re-melt) = m − m × F, where m × F is taken up to the next step of the scale.</para>
/// <para><b>Symbols.</b> m: the charge; F: the least share of fresh metal.</para>
/// <para><b>Valid for</b> clean re-melt of the same alloy. Fresh metal makes up for the zinc and deoxidant that every melt loses,
/// and thins what every melt picks up. Where every melt keeps to F, its metal was melted 1 / F times in the mean, twice where half is
/// fresh, however often it goes round: that is why nobody is asked how often a button was melted.</para>
/// <para><b>Source.</b> Suppliers' casting advice, half fresh at least; compared in the tests.</para>
/// </remarks>
public static class RemeltLimit
{
    /// <summary>The least share of fresh metal that a shop starts from: 50 %. Published supplier advice.</summary>
    public static Ratio UsualFreshAtLeast { get; } = Ratio.FromPercent(50);

    /// <param name="charge">The charge; zero or more.</param>
    /// <param name="freshAtLeast">The least share of fresh metal; from none to all.</param>
    /// <param name="step">Step of the scale; more than zero.</param>
    /// <returns>The most re-melt, in the unit of <paramref name="step"/>; never below zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside these limits.</exception>
    public static Mass Compute(Mass charge, Ratio freshAtLeast, Mass step)
    {
        Require.NotNegative(charge);
        Require.Between(freshAtLeast, Ratio.Zero, Ratio.FromDecimalFractions(1));
        Require.Positive(step);

        var fresh = ScaleStep.Up(charge * freshAtLeast.DecimalFractions, step);
        return fresh >= charge ? Mass.Zero : charge - fresh;
    }
}
