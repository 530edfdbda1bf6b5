using System.Globalization;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>What a column's texts use as the decimal sign.</summary>
internal enum DecimalSign
{
    /// <summary>No text of the column settles it.</summary>
    Unknown,

    /// <summary>A point.</summary>
    Point,

    /// <summary>A comma.</summary>
    Comma,
}

/// <summary>What came of reading a text as a number.</summary>
internal enum NumberOutcome
{
    /// <summary>It is a number.</summary>
    Read,

    /// <summary>It is none.</summary>
    NotANumber,

    /// <summary>It may be one of two numbers: <c>1,234</c> alone is 1.234 or 1234.</summary>
    Undecided,
}

/// <summary>A number typed as text, with what stands around it.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit behind it; missing where none is.</param>
/// <param name="UsedComma">Whether a comma was read as the decimal sign.</param>
internal readonly record struct NumberText(NumberOutcome Outcome, double Value, CellUnit? Unit, bool UsedComma)
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    private static NumberText Nothing => new(NumberOutcome.NotANumber, 0, null, false);

    /// <summary>Reads a text such as <c>12.4</c>, <c>12,4</c>, <c>12.4 g</c> or <c>1.234,5</c>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="columnSign">What the rest of the column uses.</param>
    public static NumberText Read(string text, DecimalSign columnSign)
    {
        var typed = WithoutBlanksInside(text);
        var end = NumberEnd(typed);
        CellUnit? unit = null;
        if (end < typed.Length)
        {
            if (end == 0 || !CellUnit.TryParse(typed.AsSpan(end), out unit))
            {
                return Nothing;
            }
        }

        return Number(typed[..end].TrimEnd(), columnSign) with { Unit = unit };
    }

    /// <summary>What a text settles about the decimal sign, if anything: <c>2,85</c> does, <c>1,234</c> does not.</summary>
    public static DecimalSign SignOf(string text)
    {
        var typed = WithoutBlanksInside(text);
        var number = typed.AsSpan(0, NumberEnd(typed)).TrimEnd();
        var (comma, point) = (number.LastIndexOf(','), number.LastIndexOf('.'));
        if (comma >= 0 && point >= 0)
        {
            return comma > point ? DecimalSign.Comma : DecimalSign.Point;
        }

        var sign = Math.Max(comma, point);
        if (sign < 0 || number.Length - sign - 1 == 3 || number.Count(number[sign]) > 1)
        {
            return DecimalSign.Unknown;
        }

        return comma >= 0 ? DecimalSign.Comma : DecimalSign.Point;
    }

    private static NumberText Number(string number, DecimalSign columnSign)
    {
        var commas = number.AsSpan().Count(',');
        var points = number.AsSpan().Count('.');
        if (commas == 0 && points <= 1)
        {
            var groupOrDecimal = points == 1 && columnSign == DecimalSign.Comma && HasThreeAfter(number, '.');
            return groupOrDecimal ? Nothing with { Outcome = NumberOutcome.Undecided } : Parse(number, false);
        }

        if (commas == 1 && points == 0)
        {
            return HasThreeAfter(number, ',') && columnSign != DecimalSign.Comma
                ? Nothing with { Outcome = NumberOutcome.Undecided }
                : Parse(number.Replace(',', '.'), true);
        }

        return Grouped(number, number.LastIndexOf(',') > number.LastIndexOf('.') ? ',' : '.', commas, points);
    }

    // Both signs stand in it, or one of them more than once: the last kind is the decimal sign, the other parts thousands.
    private static NumberText Grouped(string number, char last, int commas, int points)
    {
        var group = last == ',' ? '.' : ',';
        if (commas == 0 || points == 0)
        {
            return IsGrouped(number, last) ? Parse(number.Replace(last.ToString(), "", StringComparison.Ordinal), false) : Nothing;
        }

        var at = number.LastIndexOf(last);
        var whole = number[..at];
        return !whole.Contains(last, StringComparison.Ordinal) && IsGrouped(whole, group)
            ? Parse(whole.Replace(group.ToString(), "", StringComparison.Ordinal) + "." + number[(at + 1)..], last == ',')
            : Nothing;
    }

    private static bool IsGrouped(string number, char group)
    {
        var parts = number.TrimStart('-', '+').Split(group);
        return parts[0].Length is >= 1 and <= 3 && parts.Skip(1).All(p => p.Length == 3) && parts.All(p => p.All(char.IsAsciiDigit));
    }

    private static bool HasThreeAfter(string number, char sign) => number.Length - number.IndexOf(sign, StringComparison.Ordinal) - 1 == 3;

    private static NumberText Parse(string number, bool usedComma) =>
        double.TryParse(number, Plain, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? new NumberText(NumberOutcome.Read, value, null, usedComma)
            : Nothing;

    // Blanks between digits part thousands in many countries; the blank before a unit is harmless either way.
    private static string WithoutBlanksInside(string text)
    {
        var plain = text.Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace('\u2009', ' ').Replace('\u2212', '-').Trim();
        for (var at = plain.IndexOf(' ', StringComparison.Ordinal); at > 0; at = plain.IndexOf(' ', at + 1))
        {
            var next = plain.AsSpan(at + 1);
            var digits = 0;
            while (digits < next.Length && char.IsAsciiDigit(next[digits]))
            {
                digits++;
            }

            if (char.IsAsciiDigit(plain[at - 1]) && digits == 3)
            {
                plain = plain.Remove(at, 1);
            }
        }

        return plain;
    }

    private static int NumberEnd(string typed)
    {
        var end = 0;
        while (end < typed.Length && (char.IsAsciiDigit(typed[end]) || typed[end] is '.' or ',' || (end == 0 && typed[end] is '-' or '+')))
        {
            end++;
        }

        // An exponent, as programs write very small numbers.
        if (end > 0 && end + 1 < typed.Length && typed[end] is 'e' or 'E')
        {
            var digits = end + (typed[end + 1] is '-' or '+' ? 2 : 1);
            var last = digits;
            while (last < typed.Length && char.IsAsciiDigit(typed[last]))
            {
                last++;
            }

            end = last > digits ? last : end;
        }

        return end;
    }
}
