namespace CastBook.Casting.Heat;

/// <summary>The complementary error function, which heat follows that goes into a body from one face.</summary>
/// <remarks>
/// <para><b>Formula.</b> erfc x = 1 − 2/√π Σ (−1)ⁿ x²ⁿ⁺¹ / (n! (2n + 1)) below 2; from there on
/// erfc x = e^(−x²) / √π × 1 / (x + ½ / (x + 1 / (x + 1½ / (x + …)))).</para>
/// <para><b>Symbols.</b> x: the argument, zero or more.</para>
/// <para><b>Valid for</b> x of zero or more, to some 1e-13.</para>
/// <para><b>Source.</b> Its Taylor series and Laplace's continued fraction.</para>
/// </remarks>
internal static class ErrorFunction
{
    private const double FewTerms = 2;
    private const int Terms = 60;

    /// <summary>What is left of one.</summary>
    public static double Complement(double x)
    {
        if (x >= FewTerms)
        {
            var fraction = x;
            for (var n = Terms; n > 0; n--)
            {
                fraction = x + (n / 2.0 / fraction);
            }

            return Math.Exp(-x * x) / (Math.Sqrt(Math.PI) * fraction);
        }

        var (sum, power) = (0.0, x);
        for (var n = 0; n < Terms; n++)
        {
            sum += power / ((2 * n) + 1);
            power *= -x * x / (n + 1);
        }

        return 1 - (2 / Math.Sqrt(Math.PI) * sum);
    }
}
