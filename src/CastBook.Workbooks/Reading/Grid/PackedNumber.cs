namespace CastBook.Workbooks.Reading.Grid;

/// <summary>A short decimal number in four bytes: as <c>12.45</c> is written, so it is held, as 1245 hundredths.</summary>
/// <remarks>The quotient of two whole numbers that a double holds exactly is the double nearest to the decimal: nothing is lost.</remarks>
internal static class PackedNumber
{
    private const int ExponentBits = 4;
    private const int MostDecimals = (1 << ExponentBits) - 1;
    private const int MostMantissa = int.MaxValue >> ExponentBits;

    private static readonly double[] Powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>Packs a number as written; false where it is too long, or written in any other way than digits with a point.</summary>
    /// <param name="text">The number.</param>
    /// <param name="packed">The number packed.</param>
    public static bool TryPack(ReadOnlySpan<byte> text, out int packed)
    {
        packed = 0;
        var at = text.Length > 0 && text[0] == (byte)'-' ? 1 : 0;
        var (mantissa, decimals, hasPoint, digits) = (0, 0, false, 0);
        for (var i = at; i < text.Length; i++)
        {
            var digit = text[i] - '0';
            if ((uint)digit <= 9 && mantissa <= (MostMantissa - digit) / 10)
            {
                mantissa = (mantissa * 10) + digit;
                decimals += hasPoint ? 1 : 0;
                digits++;
            }
            else if (text[i] == (byte)'.' && !hasPoint)
            {
                hasPoint = true;
            }
            else
            {
                return false;
            }
        }

        // Minus zero is a number of its own; it takes the long way.
        if (digits == 0 || decimals > MostDecimals || (at == 1 && mantissa == 0))
        {
            return false;
        }

        packed = ((at == 1 ? -mantissa : mantissa) << ExponentBits) | decimals;
        return true;
    }

    /// <summary>The number.</summary>
    /// <param name="packed">As packed.</param>
    public static double Unpack(int packed) => (packed >> ExponentBits) / Powers[packed & MostDecimals];
}
