using CastBook.Casting.Metals;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>
/// An alloy of a known composition out of the metals in stock: by lowering, by raising with fine metal or with a richer alloy,
/// or from fine metals alone.
/// </summary>
/// <remarks>
/// <para><b>Formula.</b> Of each metal in stock, in the order given: the least of what there is and, for each of its elements,
/// what is still needed of that element / its share. What is then still needed is to be added as fine metal.</para>
/// <para><b>Symbols.</b> Needed of an element: the mass wanted × its share, less what went in with the metals before.</para>
/// <para><b>Valid for</b> clean metal whose composition is known. The order decides what is used up first; alloys go before fine
/// metals, or there may be no room for them. A metal with an element that the alloy wanted lacks is not used at all. Makes no
/// allowance for what is lost in the melt, which is most of all zinc.</para>
/// <para><b>Source.</b> Each element stays the same; worked examples from published recipes are compared in the tests.</para>
/// </remarks>
public static class MakeAlloy
{
    // Sums of shares carry about 1e-16 of dust; a part in a thousand million is far below what any scale shows.
    private const double Dust = 1e-9;

    /// <param name="wanted">The composition to reach.</param>
    /// <param name="total">How much of it; zero or more.</param>
    /// <param name="stock">The metals at hand, the first to be used up first.</param>
    /// <returns>The recipe; all its masses together are <paramref name="total"/>.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass is negative.</exception>
    public static CrucibleRecipe Compute(Composition wanted, Mass total, IReadOnlyList<MetalInStock> stock)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(stock);
        Require.NotNegative(total);

        var needGrams = Shares(wanted);
        foreach (var (symbol, _) in wanted.Parts)
        {
            needGrams[symbol] *= total.Grams;
        }

        var fromStock = new Mass[stock.Count];
        for (var i = 0; i < fromStock.Length; i++)
        {
            Require.NotNegative(stock[i].InStock);
            fromStock[i] = Mass.FromGrams(TakeGrams(stock[i], needGrams));
        }

        return new CrucibleRecipe(
            fromStock,
            [.. wanted.Parts
                .Where(part => needGrams[part.Symbol] > Dust * total.Grams)
                .Select(part => new FinePart(part.Symbol, Mass.FromGrams(needGrams[part.Symbol])))]);
    }

    private static double TakeGrams(MetalInStock metal, Dictionary<string, double> needGrams)
    {
        var shares = Shares(metal.Composition);
        var grams = metal.InStock.Grams;
        foreach (var (symbol, share) in shares)
        {
            grams = Math.Min(grams, needGrams.GetValueOrDefault(symbol) / share);
        }

        foreach (var (symbol, share) in shares)
        {
            if (needGrams.TryGetValue(symbol, out var need))
            {
                needGrams[symbol] = Math.Max(0, need - (grams * share));
            }
        }

        return grams;
    }

    // Published compositions may add up to a little less or more than 1000; shares add up to one.
    private static Dictionary<string, double> Shares(Composition composition)
    {
        var sum = composition.Parts.Sum(part => part.PerMille);
        return composition.Parts.ToDictionary(part => part.Symbol, part => part.PerMille / sum);
    }
}
