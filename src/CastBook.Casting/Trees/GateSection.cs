using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The cross-section of a piece's gates as a share of the section that they feed.</summary>
/// <remarks>
/// <para><b>Formula.</b> s = n × d² / a².</para>
/// <para><b>Symbols.</b> n: number of gates; d: their diameter; a: the heaviest section, taken as round.</para>
/// <para><b>Valid for</b> shares of 70 to 150 %: a thinner gate freezes before the piece is fed, a thicker one
/// draws metal out of it. A flat section is larger than a round one of its thickness, so that a low share is
/// the less certain of the two.</para>
/// <para><b>Source.</b> A published article on the design of sprue systems: 70 to 150 % of the section at the gate.</para>
/// </remarks>
public static class GateSection
{
    /// <summary>The least share: 70 %. Published.</summary>
    public static Ratio Least { get; } = Ratio.FromPercent(70);

    /// <summary>The most: 150 %. Published.</summary>
    public static Ratio Most { get; } = Ratio.FromPercent(150);

    /// <summary>Computes the share.</summary>
    /// <param name="gates">How many gates feed the section; zero or more.</param>
    /// <param name="diameter">Their diameter; zero or more.</param>
    /// <param name="section">The heaviest section; more than zero.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static Ratio Compute(int gates, Length diameter, Length section)
    {
        Require.NotNegative(gates);
        Require.NotNegative(diameter);
        Require.Positive(section);

        var one = diameter / section;
        return Ratio.FromDecimalFractions(gates * one * one);
    }
}
