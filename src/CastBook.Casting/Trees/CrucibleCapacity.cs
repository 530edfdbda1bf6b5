using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>How much metal a crucible holds.</summary>
/// <remarks>
/// <para><b>Formula.</b> V(usable) = fill × V(brim); V(brim) = m(rated) / ρ(metal of the rating).</para>
/// <para><b>Valid for</b> a crucible rated full to the brim; a maker's "1 kg" usually means gold, which is
/// 52 ml and only 537 g of sterling.</para>
/// <para><b>Source.</b> The definition of density; the fill of 80 % is common practice.</para>
/// </remarks>
public static class CrucibleCapacity
{
    /// <summary>How far a crucible is filled at most: 80 %, so that nothing is spilt. Common practice.</summary>
    public static Ratio Fill { get; } = Ratio.FromPercent(80);

    /// <summary>The volume that may be melted in a crucible.</summary>
    /// <param name="holds">Volume to the brim; zero or more.</param>
    /// <returns>The usable volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="holds"/> is negative.</exception>
    public static Volume Usable(Volume holds)
    {
        Require.NotNegative(holds);

        return holds * Fill.DecimalFractions;
    }

    /// <summary>The volume to the brim of a crucible that is rated in mass of a named metal.</summary>
    /// <param name="rated">The rating; zero or more.</param>
    /// <param name="metal">Density of the metal that the rating means; more than zero.</param>
    /// <returns>The volume to the brim.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="rated"/> is negative, or <paramref name="metal"/> is zero or negative.
    /// </exception>
    public static Volume FromRating(Mass rated, Density metal)
    {
        Require.NotNegative(rated);
        Require.Positive(metal);

        return rated / metal;
    }
}
