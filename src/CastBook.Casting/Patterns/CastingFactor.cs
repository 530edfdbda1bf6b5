using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Patterns;

/// <summary>How much of the metal that was reckoned a shop's castings really weigh, learnt from castings that were weighed.</summary>
/// <remarks>
/// <para><b>Formula.</b> f = Σ m(weighed) / Σ m(reckoned).</para>
/// <para><b>Symbols.</b> m(weighed): castings without gates; m(reckoned): the metal of the same pieces by <see cref="MetalForPattern"/>.</para>
/// <para><b>Valid for</b> one alloy and one pattern material, three castings or more, a factor between 0.90 and 1.10, and
/// no casting more than 5 % from it. Shrinkage makes about 0.97 of it and a density that is not quite the shop's own some
/// percent more; what lies farther off is a slip in a weight or a density.</para>
/// <para><b>Source.</b> Shrinkage near 1 % of length: MetalForPattern. The limits: memory of what densities of one material differ by.</para>
/// </remarks>
public sealed record CastingFactor
{
    /// <summary>So many castings are wanted at least.</summary>
    public const int LeastCastings = 3;

    private const double Least = 0.90;
    private const double Most = 1.10;
    private const double MostApart = 0.05;

    private CastingFactor(Ratio factor, Ratio lowest, Ratio highest, int castings) => (Factor, Lowest, Highest, Castings) = (factor, lowest, highest, castings);

    /// <summary>Of what was reckoned, so much was weighed.</summary>
    public Ratio Factor { get; }

    /// <summary>The same of the casting that weighs least of what was reckoned.</summary>
    public Ratio Lowest { get; }

    /// <summary>The same of the casting that weighs most of what was reckoned.</summary>
    public Ratio Highest { get; }

    /// <summary>How many castings it was learnt from.</summary>
    public int Castings { get; }

    /// <summary>Whether there are castings enough.</summary>
    public bool IsEnough => Castings >= LeastCastings;

    /// <summary>Whether the castings agree with one another and lie near enough to what was reckoned.</summary>
    public bool IsSound =>
        Factor.DecimalFractions is >= Least and <= Most
        && Lowest.DecimalFractions >= Factor.DecimalFractions * (1 - MostApart)
        && Highest.DecimalFractions <= Factor.DecimalFractions * (1 + MostApart);

    /// <summary>Learns from castings.</summary>
    /// <param name="castings">What was reckoned for each casting and what it weighed, one at least; each more than zero.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentException">There is no casting.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass is not more than zero.</exception>
    public static CastingFactor Compute(IReadOnlyList<(Mass Reckoned, Mass Weighed)> castings)
    {
        ArgumentNullException.ThrowIfNull(castings);
        if (castings.Count == 0)
        {
            throw new ArgumentException("Nothing can be learnt from no casting.", nameof(castings));
        }

        var (reckoned, weighed, lowest, highest) = (0.0, 0.0, double.PositiveInfinity, 0.0);
        foreach (var casting in castings)
        {
            Require.Positive(casting.Reckoned);
            Require.Positive(casting.Weighed);
            reckoned += casting.Reckoned.Grams;
            weighed += casting.Weighed.Grams;
            lowest = Math.Min(lowest, casting.Weighed / casting.Reckoned);
            highest = Math.Max(highest, casting.Weighed / casting.Reckoned);
        }

        return new(Fraction(weighed / reckoned), Fraction(lowest), Fraction(highest), castings.Count);
    }

    private static Ratio Fraction(double value) => Ratio.FromDecimalFractions(value);
}
