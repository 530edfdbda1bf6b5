using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>The share of precious metal in an alloy.</summary>
/// <remarks>
/// <para><b>Formula.</b> F = carats / 24.</para>
/// <para><b>Symbols.</b> F: share by mass.</para>
/// <para><b>Valid for</b> 0 to 24 carats. The mark for a carat number may be finer than the number: 585 is above 14/24 = 583⅓.</para>
/// <para><b>Source.</b> Definition of the carat of fineness; ISO 9202 for shares in parts per thousand.</para>
/// </remarks>
public static class Fineness
{
    private const double FineCarats = 24;   // exact, by definition

    /// <summary>Metal that is nothing but itself.</summary>
    public static Ratio Fine { get; } = Ratio.FromDecimalFractions(1);

    /// <summary>The fineness of a number of carats.</summary>
    /// <param name="carats">0 to 24.</param>
    /// <returns>The share by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="carats"/> is outside these limits.</exception>
    public static Ratio FromCarats(double carats)
    {
        Require.NotNegative(carats);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(carats, FineCarats);

        return Ratio.FromDecimalFractions(carats / FineCarats);
    }

    /// <summary>The share of one element in a composition, whose parts need not add up to 1000 exactly.</summary>
    /// <param name="composition">What the alloy is made of.</param>
    /// <param name="symbol">The chemical symbol of the precious metal.</param>
    /// <returns>The share by mass; zero when the element takes no part.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static Ratio Of(Composition composition, string symbol)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(symbol);

        return Ratio.FromPartsPerThousand(1000 * composition.PerMille(symbol) / composition.Parts.Sum(part => part.PerMille));
    }
}
