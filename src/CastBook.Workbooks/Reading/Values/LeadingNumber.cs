using System.Globalization;

namespace CastBook.Workbooks.Reading.Values;

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

/// <summary>A number of digits, signs and perhaps an exponent, at the start of a text.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Value">The number.</param>
/// <param name="End">Where it ends in the text.</param>
/// <param name="Assumed">What was taken for granted.</param>
/// <param name="Settles">What its own form settles about the signs of its column.</param>
internal readonly record struct LeadingNumber(NumberOutcome Outcome, double Value, int End, NumberAssumptions Assumed, NumberSigns Settles)
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
    private const int Longest = 64;

    private static LeadingNumber Nothing => new(NumberOutcome.NotANumber, 0, 0, NumberAssumptions.None, NumberSigns.None);

    /// <summary>Reads the number that a text begins with.</summary>
    /// <param name="text">The text, its blanks and signs made plain.</param>
    /// <param name="column">What the column settles about its signs.</param>
    public static LeadingNumber Read(ReadOnlySpan<char> text, NumberSigns column)
    {
        var start = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0;
        var end = EndOfDigits(text, start);
        var body = text[start..end];
        if (end == start || end > Longest || !body.ContainsAnyInRange('0', '9'))
        {
            return Nothing;
        }

        var (decimals, groups) = Signs(body);
        if (groups == Unclear)
        {
            return Nothing;
        }

        var settles = NumberSigns.None;
        if (decimals == Unclear)
        {
            var sign = body[body.IndexOfAny('.', ',')];
            if (column.IsGroup(sign))
            {
                (decimals, groups) = (None, sign);
            }
            else if (column.IsDecimal(sign))
            {
                decimals = sign;
            }
            else
            {
                return Nothing with { Outcome = NumberOutcome.Undecided, End = end };
            }
        }
        else
        {
            settles = Settled(decimals, groups);
        }

        return Parse(text, end, decimals, groups, settles);
    }

    private const char None = '\0';
    private const char Unclear = '?';
    private const char Hard = '\'';

    /// <summary>Which sign marks decimals and which thousands; the first is unclear for 1,234, the second where the signs make no number.</summary>
    private static (char Decimals, char Groups) Signs(ReadOnlySpan<char> body)
    {
        var (commas, points) = (body.Count(','), body.Count('.'));
        if (body.ContainsAny('\'', ' '))
        {
            // Apostrophes and blanks mark nothing but thousands.
            var at = body.IndexOfAny(',', '.');
            var whole = at < 0 ? body : body[..at];
            return commas + points <= 1 && IsGrouped(whole, '\'', ' ') && (at < 0 || !body[at..].ContainsAny('\'', ' '))
                ? (at < 0 ? None : body[at], Hard)
                : (None, Unclear);
        }

        if (commas > 0 && points > 0)
        {
            var at = body.LastIndexOfAny(',', '.');
            var (last, group) = body[at] == ',' ? (',', '.') : ('.', ',');
            return body.Count(last) == 1 && IsGrouped(body[..at], group, group) ? (last, group) : (None, Unclear);
        }

        if (commas + points > 1)
        {
            var sign = commas > 0 ? ',' : '.';
            return IsGrouped(body, sign, sign) ? (None, sign) : (None, Unclear);
        }

        if (commas + points == 0)
        {
            return (None, None);
        }

        var single = body.IndexOfAny(',', '.');
        var mayBeGroup = body.Length - single - 1 == 3 && single is >= 1 and <= 3 && body[0] != '0';
        return (mayBeGroup ? Unclear : body[single], None);
    }

    private static NumberSigns Settled(char decimals, char groups) =>
        (decimals switch { ',' => NumberSigns.DecimalComma, '.' => NumberSigns.DecimalPoint, _ => NumberSigns.None })
        | (groups switch { ',' => NumberSigns.GroupComma, '.' => NumberSigns.GroupPoint, _ => NumberSigns.None });

    private static bool IsGrouped(ReadOnlySpan<char> whole, char mark, char orMark)
    {
        var first = whole.IndexOfAny(mark, orMark);
        if (first is < 1 or > 3 || whole[0] == '0')
        {
            return false;
        }

        for (var at = first; at < whole.Length; at += 4)
        {
            if ((whole[at] != mark && whole[at] != orMark) || at + 4 > whole.Length || whole[(at + 1)..(at + 4)].ContainsAnyExceptInRange('0', '9'))
            {
                return false;
            }
        }

        return true;
    }

    private static LeadingNumber Parse(ReadOnlySpan<char> text, int end, char decimals, char groups, NumberSigns settles)
    {
        Span<char> plain = stackalloc char[Longest];
        var length = 0;
        for (var at = 0; at < end; at++)
        {
            if (text[at] == decimals)
            {
                plain[length++] = '.';
            }
            else if (char.IsAsciiDigit(text[at]) || (at == 0 && text[at] is '-' or '+'))
            {
                plain[length++] = text[at];
            }
        }

        var exponent = EndOfExponent(text, end);
        if (exponent - end + length <= Longest)
        {
            text[end..exponent].CopyTo(plain[length..]);
            length += exponent - end;
        }

        if (!double.TryParse(plain[..length], Style, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
        {
            return Nothing;
        }

        var assumed = (decimals == ',' ? NumberAssumptions.DecimalComma : NumberAssumptions.None)
            | (groups == None ? NumberAssumptions.None : NumberAssumptions.Thousands);
        return new LeadingNumber(NumberOutcome.Read, value, exponent, assumed, settles);
    }

    // Digits and the signs between them. A blank belongs to the number only where exactly three digits follow it, as in 1 234.
    private static int EndOfDigits(ReadOnlySpan<char> text, int start)
    {
        var end = start;
        while (end < text.Length)
        {
            var c = text[end];
            var belongs = char.IsAsciiDigit(c) || c is '.' or ',' || (c is '\'' or ' ' && end > start && char.IsAsciiDigit(text[end - 1]) && DigitsAt(text, end + 1) == 3);
            if (!belongs)
            {
                break;
            }

            end++;
        }

        return end;
    }

    // An exponent, as programs write very small numbers.
    private static int EndOfExponent(ReadOnlySpan<char> text, int end)
    {
        if (end + 1 >= text.Length || text[end] is not ('e' or 'E'))
        {
            return end;
        }

        var digits = end + (text[end + 1] is '-' or '+' ? 2 : 1);
        var count = DigitsAt(text, digits);
        return count > 0 ? digits + count : end;
    }

    private static int DigitsAt(ReadOnlySpan<char> text, int from)
    {
        var at = from;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at - from;
    }
}
