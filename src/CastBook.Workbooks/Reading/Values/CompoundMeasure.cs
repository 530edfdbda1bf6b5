using System.Buffers;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Measures in a larger and smaller units, as old scales and clocks have them: <c>1 dwt 6 gr</c>, <c>2 lb 3 oz</c>, <c>1 h 30 min</c>.</summary>
internal static class CompoundMeasure
{
    // Far above float dust, far below the difference between ounces.
    private const double Near = 1e-6;

    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789");

    /// <summary>Reads what stands behind the first number; false where it is no such measure.</summary>
    /// <param name="first">The first number.</param>
    /// <param name="tail">What stands behind it, from its unit on.</param>
    /// <param name="value">The whole, counted in the first unit: exactly, as each unit holds a whole number of the next.</param>
    /// <param name="unit">The first unit.</param>
    /// <remarks>Each part but the last must be whole, and each but the first less than one of the unit before; anything else is a slip.</remarks>
    public static bool TryRead(double first, ReadOnlySpan<char> tail, out double value, out CellUnit unit)
    {
        (value, unit) = (0, CellUnit.Gram);
        if (!TryUnit(ref tail, out var largest) || tail.Length == 0)
        {
            return false;
        }

        var (above, perLargest, total) = (largest, 1.0, first);
        var (part, wholeSoFar) = (first, true);
        while (tail.Length > 0)
        {
            wholeSoFar &= part == Math.Floor(part);
            if (!wholeSoFar || !TryNumber(ref tail, out part) || !TryUnit(ref tail, out var smaller) || smaller.Dimension != largest.Dimension)
            {
                return false;
            }

            // Beside pounds, ounces and pennyweights gr is grains, and ounces with pennyweights beside them are troy ounces.
            smaller = smaller.IsGramOrGrain ? Known("grain") : smaller;
            if (smaller.Name == "dwt")
            {
                (largest, above) = (Troy(largest), Troy(above));
            }

            var ratio = Math.Round(above.Factor / smaller.Factor);
            if (ratio < 2 || part >= ratio || Math.Abs((above.Factor / smaller.Factor) - ratio) > Near)
            {
                return false;
            }

            (above, perLargest, total) = (smaller, perLargest * ratio, (total * ratio) + part);
        }

        (value, unit) = (total / perLargest, largest);
        return largest.Name is "lb" or "oz" or "ozt" or "dwt" or "h" or "min";
    }

    private static CellUnit Troy(CellUnit unit) => unit.IsPlainOunce ? Known("ozt") : unit;

    private static CellUnit Known(string sign) => CellUnit.TryParse(sign, out var unit) ? unit : throw new InvalidOperationException($"Bug in CastBook: no unit {sign}");

    // Up to the next digit stands a unit.
    private static bool TryUnit(ref ReadOnlySpan<char> text, out CellUnit unit)
    {
        var end = text.IndexOfAny(Digits);
        var sign = end < 0 ? text : text[..end];
        text = end < 0 ? [] : text[end..];
        return CellUnit.TryParse(sign, out unit);
    }

    private static bool TryNumber(ref ReadOnlySpan<char> text, out double number)
    {
        if (!Fraction.TryRead(text, out number, out var end))
        {
            var plain = LeadingNumber.Read(text, NumberSigns.DecimalPoint);
            (number, end) = (plain.Value, plain.Outcome == NumberOutcome.Read ? plain.End : 0);
        }

        text = text[end..];
        return end > 0;
    }
}
