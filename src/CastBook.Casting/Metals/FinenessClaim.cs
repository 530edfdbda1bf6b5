using System.Globalization;
using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>The fineness that an alloy's name promises.</summary>
/// <param name="Symbol">The precious metal.</param>
/// <param name="PerMille">The least parts per thousand that the name may stand for.</param>
/// <remarks>
/// <para><b>Valid for</b> gold named by carats or by its mark, sterling, and silver, platinum and palladium named with three
/// digits. A mark is a minimum: there is no tolerance below it.</para>
/// <para><b>Source.</b> ISO 9202 (a fineness is a least value); lists of common marks, compared in the tests.</para>
/// </remarks>
public sealed record FinenessClaim(string Symbol, double PerMille)
{
    // The marks that are not the carats over 24: 585 is above 14/24, the others are cut.
    private static readonly (string Word, double PerMille)[] Marks =
        [("8K", 333), ("9K", 375), ("10K", 416), ("14K", 585), ("15K", 625), ("18K", 750), ("20K", 833), ("21K", 875), ("22K", 916)];

    /// <summary>The fineness as a share.</summary>
    public Ratio Fineness => Ratio.FromPartsPerThousand(PerMille);

    /// <summary>What a name promises.</summary>
    /// <param name="name">A name as written.</param>
    /// <returns>The promise; missing when the name makes none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is missing.</exception>
    public static FinenessClaim? Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);

        var words = AlloyWords.Of(name);
        foreach (var mark in Marks)
        {
            if (words.Contains(mark.Word) && !words.Contains("SILVER"))
            {
                return new("Au", mark.PerMille);
            }
        }

        return words.Contains("925") ? new("Ag", 925)
            : words.Contains("SILVER") ? Numbered("Ag", words)
            : words.Contains("PLATINUM") ? Numbered("Pt", words)
            : words.Contains("PALLADIUM") ? Numbered("Pd", words)
            : null;
    }

    private static FinenessClaim? Numbered(string symbol, IReadOnlyList<string> words)
    {
        foreach (var word in words)
        {
            if (word.Length == 3 && double.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var perMille) && perMille >= 500)
            {
                return new(symbol, perMille);
            }
        }

        return null;
    }
}
