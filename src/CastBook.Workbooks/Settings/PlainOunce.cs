using System.Globalization;
using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Settings;

/// <summary>What is said of <c>oz</c> on the shop's sheets: nobody sells powder in troy ounces, and nobody knows of metal.</summary>
internal static class PlainOunce
{
    /// <summary>The finding for a field of a shop sheet.</summary>
    /// <param name="field">The field.</param>
    public static FindingKind Of(string field) =>
        field is ShopField.Powder or ShopField.InStock or ShopField.CubeMass ? Catalogue.ShopOunceOfPowder : Catalogue.ShopPlainOunce;

    /// <summary>What was read, in grams.</summary>
    /// <param name="grams">The grams.</param>
    public static string Said(double grams) => string.Create(CultureInfo.InvariantCulture, $"{grams:#,0.##} g");
}
