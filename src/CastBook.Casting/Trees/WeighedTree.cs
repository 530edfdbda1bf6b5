using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Trees;

/// <summary>The space that a built and weighed tree leaves for the metal.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = m(wax)/ρ(wax) + (m(tree) − m(wax))/ρ(pattern).</para>
/// <para><b>Symbols.</b> m(tree): the tree without its base; m(wax): trunk, gates and whatever else of it is
/// sprue wax; ρ(pattern): the material of the patterns.</para>
/// <para><b>Valid for</b> patterns of one material on a wax trunk. The shares are taken apart because one
/// density for all is a short pour or a wasteful one: 40 g of resin on 15 g of wax takes 524 g of sterling,
/// but 495 g if all were resin and 600 g if all were wax.</para>
/// <para><b>Source.</b> The definition of density: BIPM, <i>The International System of Units (SI)</i>,
/// 9th ed., 2019, Table 5.</para>
/// </remarks>
public static class WeighedTree
{
    /// <summary>Computes the volume of the weighed tree.</summary>
    /// <param name="treeMass">Patterns, gates and trunk, without the base; zero or more.</param>
    /// <param name="wax">Sprue wax in it; zero or more, and no more than <paramref name="treeMass"/>.</param>
    /// <param name="waxDensity">Density of the sprue wax; more than zero.</param>
    /// <param name="patternDensity">Density of the patterns' material; more than zero.</param>
    /// <returns>The volume that the metal fills, without the button.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A mass is negative, there is more wax than tree, or a density is zero or negative.
    /// </exception>
    public static Volume MetalVolume(Mass treeMass, Mass wax, Density waxDensity, Density patternDensity)
    {
        Require.NotNegative(treeMass);
        Require.NotNegative(wax);
        Require.Positive(waxDensity);
        Require.Positive(patternDensity);
        if (wax > treeMass)
        {
            throw new ArgumentOutOfRangeException(nameof(wax), wax, "The wax cannot weigh more than the whole tree.");
        }

        return (wax / waxDensity) + ((treeMass - wax) / patternDensity);
    }
}
