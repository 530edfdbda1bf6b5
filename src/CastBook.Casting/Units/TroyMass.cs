using UnitsNet;

namespace CastBook.Casting.Units;

/// <summary>The masses of the trade that UnitsNet does not have: grain, pennyweight, troy ounce, carat.</summary>
/// <remarks>
/// <para><b>Formula.</b> 1 gr = 64.79891 mg; 1 dwt = 24 gr; 1 ozt = 480 gr; 1 ct = 200 mg.</para>
/// <para><b>Valid for</b> any finite number. The troy ounce is not the ounce of the post office: it is
/// 9.7 % heavier.</para>
/// <para><b>Source.</b> NIST Handbook 44, Appendix C, "Units of Mass"; all four are exact.</para>
/// </remarks>
public static class TroyMass
{
    private const double GramsPerGrain = 64.79891e-3;               // exact, by definition
    private const double GramsPerPennyweight = 24 * GramsPerGrain;  // exact, derived
    private const double GramsPerTroyOunce = 480 * GramsPerGrain;   // exact, derived
    private const double GramsPerCarat = 0.2;                       // exact, metric carat

    /// <summary>A mass given in grains.</summary>
    /// <param name="grains">Any finite number of grains.</param>
    /// <returns>The mass, in grams.</returns>
    /// <exception cref="ArgumentException"><paramref name="grains"/> is not finite.</exception>
    public static Mass FromGrains(double grains) => Mass.FromGrams(grains * GramsPerGrain);

    /// <summary>A mass given in pennyweights.</summary>
    /// <param name="pennyweights">Any finite number of pennyweights.</param>
    /// <returns>The mass, in grams.</returns>
    /// <exception cref="ArgumentException"><paramref name="pennyweights"/> is not finite.</exception>
    public static Mass FromPennyweights(double pennyweights) => Mass.FromGrams(pennyweights * GramsPerPennyweight);

    /// <summary>A mass given in troy ounces.</summary>
    /// <param name="troyOunces">Any finite number of troy ounces.</param>
    /// <returns>The mass, in grams.</returns>
    /// <exception cref="ArgumentException"><paramref name="troyOunces"/> is not finite.</exception>
    public static Mass FromTroyOunces(double troyOunces) => Mass.FromGrams(troyOunces * GramsPerTroyOunce);

    /// <summary>A mass given in carats of weight, not of fineness.</summary>
    /// <param name="carats">Any finite number of metric carats.</param>
    /// <returns>The mass, in grams.</returns>
    /// <exception cref="ArgumentException"><paramref name="carats"/> is not finite.</exception>
    public static Mass FromCarats(double carats) => Mass.FromGrams(carats * GramsPerCarat);

    /// <summary>The mass in grains.</summary>
    /// <param name="mass">Any mass.</param>
    /// <returns>The number of grains.</returns>
    public static double Grains(this Mass mass) => mass.Grams / GramsPerGrain;

    /// <summary>The mass in pennyweights.</summary>
    /// <param name="mass">Any mass.</param>
    /// <returns>The number of pennyweights.</returns>
    public static double Pennyweights(this Mass mass) => mass.Grams / GramsPerPennyweight;

    /// <summary>The mass in troy ounces.</summary>
    /// <param name="mass">Any mass.</param>
    /// <returns>The number of troy ounces.</returns>
    public static double TroyOunces(this Mass mass) => mass.Grams / GramsPerTroyOunce;

    /// <summary>The mass in carats of weight.</summary>
    /// <param name="mass">Any mass.</param>
    /// <returns>The number of metric carats.</returns>
    public static double Carats(this Mass mass) => mass.Grams / GramsPerCarat;
}
