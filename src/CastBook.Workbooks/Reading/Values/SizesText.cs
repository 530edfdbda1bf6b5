using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Sizes in one cell: <c>20 × 10 × 3</c>, <c>20x10x3 mm</c>, <c>1" x 1/2"</c>.</summary>
internal static class SizesText
{
    private const int Most = 3;

    // More rings of one size stand under the quantity.
    private const int MostRings = 9;

    private static readonly string[] Signs = ["×", "x", "X", "*", " by "];

    /// <summary>Whether a text means several sizes: a number, a sign between, a number. One alone may be the size of a finger.</summary>
    /// <param name="text">The text.</param>
    public static bool IsSeveral(string text) =>
        text.Split(Signs, StringSplitOptions.TrimEntries) is { Length: > 1 } parts && BeginsNumber(parts[0]) && parts[1..].Any(BeginsNumber);

    /// <summary>How many rings of which size a text may mean, such as two of 54 by <c>2x54</c>; null where it can only be the sizes of a piece.</summary>
    /// <param name="text">The text.</param>
    /// <param name="column">What the column settles about the signs in numbers.</param>
    /// <remarks>
    /// <para><b>Valid for</b> the numbers of North American sizes, and for sizes by circumference in millimetres.</para>
    /// <para><b>Source.</b> The ranges of common size gauges, 3 to 16 and 41 to 76 mm: common practice.</para>
    /// </remarks>
    public static (int Count, double Size)? Rings(string text, NumberSigns column)
    {
        var parts = text.Split(Signs, StringSplitOptions.TrimEntries);
        var numbers = parts.Length == 2 ? Array.ConvertAll(parts, part => NumberText.Read(part, column)) : [];
        if (numbers.Length == 0 || Array.Exists(numbers, n => n is not { Outcome: NumberOutcome.Read, Unit: null }))
        {
            return null;
        }

        var (count, size) = (numbers[0].Value, numbers[1].Value);
        return count is >= 1 and <= MostRings && count == Math.Floor(count) && (size is >= 3 and <= 16 || IsCircumference(size)) ? ((int)count, size) : null;
    }

    /// <summary>Whether a number can be the size of a ring by its circumference, in millimetres.</summary>
    /// <param name="size">The number.</param>
    public static bool IsCircumference(double size) => size is >= 41 and <= 76;

    // 12, .75, ¾; and "Ø 22", which is no size of a ring, although nobody can say of what it is the diameter.
    private static bool BeginsNumber(string part) => IsNumber(part.TrimStart('Ø', 'ø', '⌀', ' '));

    private static bool IsNumber(string part) => part.Length > 0
        && (char.IsAsciiDigit(part[0]) || Fraction.IsIn(part.AsSpan(0, 1)) || (part[0] is '.' or ',' && part.Length > 1 && char.IsAsciiDigit(part[1])));

    /// <summary>The sizes in millimetres, two or three, and whether a unit stands with them; null where the text says no such thing.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">The unit of its column; missing means millimetres. A unit in the cell wins, and one behind the last size is that of all.</param>
    /// <param name="column">What the column settles about the signs in numbers.</param>
    public static (IReadOnlyList<double> Millimetres, bool HasUnit)? Parse(string text, CellUnit? unit, NumberSigns column)
    {
        var parts = text.Split(Signs, StringSplitOptions.TrimEntries);
        if (parts.Length is < 2 or > Most)
        {
            return null;
        }

        var numbers = Array.ConvertAll(parts, part => NumberText.Read(part, column));
        if (Array.Exists(numbers, n => n.Outcome != NumberOutcome.Read || n.Value <= 0 || n.Unit is { Dimension: not Dimension.Length }))
        {
            return null;
        }

        var last = numbers[^1].Unit ?? unit;
        return (Array.ConvertAll(numbers, n => (n.Unit ?? last)?.ToBase(n.Value) ?? n.Value), last is not null);
    }
}
