using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>A number typed as text, with what stands around it.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Value">The number; of a quantity, in pieces.</param>
/// <param name="Unit">The unit behind it; missing where none is.</param>
/// <param name="Assumed">What was taken for granted.</param>
internal readonly record struct NumberText(NumberOutcome Outcome, double Value, CellUnit? Unit = null, NumberAssumptions Assumed = NumberAssumptions.None)
{
    // Longer than any number with its unit.
    private const int Longest = 64;

    private static NumberText Nothing => new(NumberOutcome.NotANumber, 0);

    /// <summary>Reads a text such as <c>12.4</c>, <c>12,4 g</c>, <c>1.234,5</c> or <c>1 1/2"</c>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="column">What the column settles about its signs.</param>
    public static NumberText Read(ReadOnlySpan<char> text, NumberSigns column) => Read(text, column, counted: false);

    /// <summary>Reads a quantity such as <c>3</c>, <c>3 pcs</c>, <c>×4</c> or <c>2 pr</c>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="column">What the column settles about its signs.</param>
    public static NumberText ReadCount(ReadOnlySpan<char> text, NumberSigns column) => Read(text, column, counted: true);

    /// <summary>What a text settles about the signs of its column: <c>2,85</c> does, <c>1,234</c> does not.</summary>
    /// <param name="text">The text as typed.</param>
    public static NumberSigns SignsOf(ReadOnlySpan<char> text)
    {
        Span<char> buffer = stackalloc char[Longest];
        var typed = Plain(text, buffer);
        var number = LeadingNumber.Read(typed, NumberSigns.None);

        // 2.5.2026 and 3,5/7 are no numbers, and settle nothing.
        return IsTail(typed[number.End..]) ? number.Settles : NumberSigns.None;
    }

    private static NumberText Read(ReadOnlySpan<char> text, NumberSigns column, bool counted)
    {
        Span<char> buffer = stackalloc char[Longest];
        ReadOnlySpan<char> typed = Plain(text, buffer);
        if (counted && typed.Length > 1 && typed[0] is 'x' or 'X' or '×')
        {
            typed = typed[1..].TrimStart();
        }

        if (Fraction.IsIn(typed) && Fraction.TryRead(typed, out var fraction, out var end))
        {
            return WithTail(new NumberText(NumberOutcome.Read, fraction), typed[end..].Trim(), counted);
        }

        var number = LeadingNumber.Read(typed, column);
        return number.End == 0
            ? Nothing
            : WithTail(new NumberText(number.Outcome, number.Value, null, number.Assumed), typed[number.End..].Trim(), counted);
    }

    private static NumberText WithTail(NumberText number, ReadOnlySpan<char> tail, bool counted)
    {
        if (tail.Length == 0)
        {
            return number;
        }

        if (counted)
        {
            return CountWord.TryParse(tail, out var times)
                ? number with { Value = number.Value * times, Assumed = number.Assumed | CountWord.Assumed(times) }
                : Nothing;
        }

        return CellUnit.TryParse(tail, out var unit) ? number with { Unit = unit }
            : number.Outcome == NumberOutcome.Read && CompoundMeasure.TryRead(number.Value, tail, out var value, out unit) ? number with { Value = value, Unit = unit }
            : Nothing;
    }

    private static bool IsTail(ReadOnlySpan<char> tail) =>
        tail.IsWhiteSpace() || CellUnit.TryParse(tail, out _) || CountWord.TryParse(tail, out _);

    // The many blanks, minus signs and apostrophes of typesetters become the plain ones. What is longer than the buffer is no number.
    private static Span<char> Plain(ReadOnlySpan<char> text, Span<char> buffer)
    {
        text = text.Trim();
        if (text.Length > buffer.Length)
        {
            return [];
        }

        var length = 0;
        foreach (var c in text)
        {
            if (!IsInvisible(c))
            {
                buffer[length++] = c switch
                {
                    '\u00A0' or '\u202F' or '\u2009' or '\u2007' or '\t' or '\r' or '\n' => ' ',
                    '\u2212' or '\u2010' or '\u2011' => '-',
                    '’' or '‘' or '´' or '`' or '\u02B9' => '\'',
                    _ => c,
                };
            }
        }

        return buffer[..length].Trim(' ');
    }

    private static bool IsInvisible(char c) => c is '\u200B' or '\u200E' or '\u200F' or '\u2060' or '\uFEFF' or '\u00AD';
}
