using System.Globalization;
using CastBook.Casting.Units;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>A unit to buy metal in: how it is written, and an amount rounded up to what is sold.</summary>
/// <param name="Name">As a heading writes it.</param>
/// <param name="Format">Number format.</param>
/// <param name="Decimals">Decimals that are shown.</param>
/// <param name="In">An amount in the unit.</param>
internal sealed record BuyingUnits(string Name, string Format, int Decimals, Func<Mass, double> In)
{
    private const double Dust = 1e-6;

    /// <summary>The unit of a shop.</summary>
    /// <param name="unit">As its settings say.</param>
    public static BuyingUnits Of(BuyingUnit unit) => unit switch
    {
        BuyingUnit.Kilogram => new("kg", "#,##0.000", 3, m => m.Kilograms),
        BuyingUnit.TroyOunce => new("troy oz", "#,##0.00", 2, m => m.TroyOunces()),
        BuyingUnit.Pennyweight => new("dwt", "#,##0.0", 1, m => m.Pennyweights()),
        _ => new("g", "#,##0.0", 1, m => m.Grams),
    };

    /// <summary>The least that is told apart, such as <c>0.01 troy oz</c>.</summary>
    public string Step => string.Create(CultureInfo.InvariantCulture, $"{Math.Pow(10, -Decimals)} {Name}");

    /// <summary>The amount, upwards.</summary>
    /// <param name="mass">How much is missing.</param>
    public double Up(Mass mass)
    {
        var steps = Math.Pow(10, Decimals);
        return Math.Ceiling((In(mass) * steps) - Dust) / steps;
    }
}
