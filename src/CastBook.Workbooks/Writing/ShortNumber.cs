using System.Globalization;

namespace CastBook.Workbooks.Writing;

/// <summary>Writes numbers of three decimals at most, as nearly all that is written are, much faster than the runtime writes any number.</summary>
internal static class ShortNumber
{
    /// <summary>How many characters it writes at most.</summary>
    public const int MostLength = 24;

    // So large that three decimals more are still whole numbers that a double holds.
    private const double MostWhole = 1e9;

    /// <summary>Writes the shortest digits that read back as the number, as the runtime would write them.</summary>
    /// <param name="number">The number.</param>
    /// <param name="to">Where to; as long as <see cref="MostLength"/>.</param>
    /// <returns>How many characters were written; 0, and nothing written, where the number is not so short.</returns>
    public static int Write(double number, Span<byte> to)
    {
        // The quotient of two whole numbers that a double holds exactly is the double nearest to the decimal.
        var thousandths = Math.Round(number * 1000);
        if (Math.Abs(number) >= MostWhole || thousandths / 1000 != number || thousandths == 0)
        {
            return 0;
        }

        var at = 0;
        if (number < 0)
        {
            to[at++] = (byte)'-';
        }

        var (whole, rest) = Math.DivRem((long)Math.Abs(thousandths), 1000);
        whole.TryFormat(to[at..], out var digits, default, CultureInfo.InvariantCulture);
        at += digits;
        if (rest == 0)
        {
            return at;
        }

        Span<byte> decimals = [(byte)'.', (byte)('0' + (rest / 100)), (byte)('0' + (rest / 10 % 10)), (byte)('0' + (rest % 10))];
        decimals = decimals.TrimEnd((byte)'0');
        decimals.CopyTo(to[at..]);
        return at + decimals.Length;
    }
}
