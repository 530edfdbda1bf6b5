using CastBook.Casting.Patterns;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>The powder and the water of a mix.</summary>
/// <remarks>
/// <para><b>Formula.</b> m(powder) = V / (1/ρ(powder) + w/ρ(water)), up to the next step of the scale;
/// m(water) = w × m(powder).</para>
/// <para><b>Symbols.</b> V: slurry to make; w: water to powder by mass; ρ(powder): the grains, not the heap;
/// ρ(water): 1 g/ml.</para>
/// <para><b>Valid for</b> the ratios of <see cref="WaterRange"/> and the densities of <see cref="PowderDensityRange"/>; within them
/// the maker's data sheet wins. The water is taken from the rounded powder, so that rounding never makes a mix thinner or thicker.</para>
/// <para><b>Source.</b> Volumes add up. Water: common practice, and a published table of 38, 39 and 40 for
/// large, medium and fine castings. Powder density: between those of the published components.</para>
/// </remarks>
/// <param name="Powder">Powder to weigh out.</param>
/// <param name="Water">Water to measure; 1 ml weighs 1 g.</param>
public readonly record struct PowderAndWater(Mass Powder, Volume Water)
{
    private const double WaterGramsPerMilliliter = 1.0;     // within 0.3 % from 0 to 24 °C

    /// <summary>Density of the grains of a gypsum and silica powder: 2.6 g/cm³; mixes lie between 2.33 and 2.76.</summary>
    public static Density UsualPowderDensity { get; } = Density.FromGramsPerCubicCentimeter(2.6);

    /// <summary>Between these lie the grains of any casting powder: 2.0 to 3.2 g/cm³. What is lighter is the heap, with its air.</summary>
    /// <remarks>Silica and gypsum and its fired forms are printed from 2.3 to 3.0 g/cm³; a little room on either side.</remarks>
    public static (Density Least, Density Most) PowderDensityRange { get; } =
        (Density.FromGramsPerCubicCentimeter(2.0), Density.FromGramsPerCubicCentimeter(3.2));

    /// <summary>Parts of water to 100 parts of powder, by mass, that a powder can take.</summary>
    /// <remarks>Gypsum-bonded: 37 to 42 is printed, 30 to 50 believed. High temperature: memory of data sheets, whose liquid is not all water.</remarks>
    /// <param name="kind">The binder.</param>
    /// <returns>The least and the most.</returns>
    public static (double Least, double Most) WaterRange(InvestmentKind kind) => kind == InvestmentKind.Gypsum ? (30, 50) : (15, 50);

    /// <summary>Usual parts of water to 100 parts of powder: 40 for wax, 38 for resin. Common practice.</summary>
    /// <param name="kind">Wax or resin.</param>
    /// <returns>Parts of water by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a known kind.</exception>
    public static double UsualWaterPer100(PatternKind kind) => kind switch
    {
        PatternKind.Wax => 40,
        PatternKind.Resin => 38,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "The kind must be wax or resin."),
    };

    /// <summary>Computes powder and water for a volume of slurry.</summary>
    /// <param name="fill">Slurry to make, with its waste; zero or more.</param>
    /// <param name="waterPer100">Parts of water to 100 parts of powder, by mass; more than zero.</param>
    /// <param name="powderDensity">Density of the grains; more than zero.</param>
    /// <param name="powderStep">Step of the scale; more than zero.</param>
    /// <returns>The powder, rounded up, and its water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="fill"/> is negative, or another argument is zero or negative.
    /// </exception>
    public static PowderAndWater Compute(Volume fill, double waterPer100, Density powderDensity, Mass powderStep)
    {
        Require.NotNegative(fill);
        Require.Positive(waterPer100);
        Require.Positive(powderDensity);
        Require.Positive(powderStep);

        var ratio = waterPer100 / 100;
        var millilitersPerGram = (1 / powderDensity.GramsPerCubicCentimeter) + (ratio / WaterGramsPerMilliliter);
        var powder = ScaleStep.Up(Mass.FromGrams(fill.Milliliters / millilitersPerGram), powderStep);

        return new PowderAndWater(powder, Volume.FromMilliliters(powder.Grams * ratio / WaterGramsPerMilliliter));
    }
}
