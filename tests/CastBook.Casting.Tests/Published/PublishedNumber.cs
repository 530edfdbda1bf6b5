using System.Globalization;

namespace CastBook.Casting.Tests.Published;

/// <summary>A number as printed. It is known to half its last digit, so the text sets the tolerance.</summary>
public readonly record struct PublishedNumber(double Value, double Tolerance)
{
    // Lets a value that is exactly half a digit away pass in spite of binary fractions.
    private const double Dust = 1 + 1e-9;

    public static PublishedNumber Parse(string printed)
    {
        var digits = printed.Replace(" ", string.Empty, StringComparison.Ordinal);
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : digits.Length - point - 1;
        var value = double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture);

        return new PublishedNumber(value, 0.5 * Math.Pow(10, -decimals) * Dust);
    }
}
