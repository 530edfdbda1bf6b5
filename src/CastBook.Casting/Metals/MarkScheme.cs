using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>The fineness marks of a country or a standard, and how much an alloy may fall short of them.</summary>
/// <remarks>
/// <para><b>Formula.</b> The mark is the highest whose fineness, less the tolerance, is not above that of the alloy.</para>
/// <para><b>Valid for</b> metal without solder. Two precious metals in one piece, and pieces too light to need a mark, are not
/// looked at.</para>
/// <para><b>Source.</b> ISO 9202 as published by an authority that follows it; its list for silver, platinum and palladium as the
/// convention on the control of articles of precious metals publishes it of the United Kingdom. The United States by the National Gold
/// and Silver Stamping Act and 16 CFR 23; the American tolerance for silver is memory.</para>
/// </remarks>
public sealed class MarkScheme
{
    private const double Dust = 1e-9;

    private readonly (string Symbol, string Mark, double PerMille)[] marks;

    private MarkScheme(params (string Symbol, string Mark, double PerMille)[] marks) => this.marks = marks;

    /// <summary>Marks by ISO 9202: no tolerance, and nothing between 375 and 585. The United Kingdom has the same, and 958 for silver.</summary>
    public static MarkScheme Iso { get; } = new(
        [.. Thousandths("Au", 375, 585, 750, 916, 990, 999), .. Thousandths("Ag", 800, 925, 999), .. Thousandths("Pt", 850, 900, 950, 999), .. Thousandths("Pd", 500, 950, 999)]);

    /// <summary>Marks of the United States: carats, with three thousandths allowed, four for silver.</summary>
    public static MarkScheme UnitedStates { get; } = new(
        ("Au", "9K", Carats(9)), ("Au", "10K", Carats(10)), ("Au", "14K", Carats(14)), ("Au", "18K", Carats(18)), ("Au", "22K", Carats(22)),
        ("Ag", "COIN", 900 - 4), ("Ag", "STERLING", 925 - 4), ("Pt", "950", 950));

    /// <summary>The mark that an alloy may bear.</summary>
    /// <param name="symbol">The precious metal.</param>
    /// <param name="fineness">Its share in the alloy.</param>
    /// <returns>The highest mark; missing when the alloy is below all of them.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="symbol"/> is missing.</exception>
    public string? MarkFor(string symbol, Ratio fineness)
    {
        ArgumentNullException.ThrowIfNull(symbol);

        string? best = null;
        foreach (var mark in marks)
        {
            if (mark.Symbol == symbol && fineness.PartsPerThousand + Dust >= mark.PerMille)
            {
                best = mark.Mark;   // they stand in rising order
            }
        }

        return best;
    }

    private static double Carats(double carats) => Fineness.FromCarats(carats).PartsPerThousand - 3;

    private static IEnumerable<(string Symbol, string Mark, double PerMille)> Thousandths(string symbol, params int[] perMille) =>
        perMille.Select(least => (symbol, least.ToString(System.Globalization.CultureInfo.InvariantCulture), (double)least));
}
