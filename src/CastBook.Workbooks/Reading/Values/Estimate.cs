using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Texts that tell of a number without saying it: <c>ca. 12</c>, <c>12-14</c>, <c>12 ± 1</c>, <c>&lt; 3</c>. They are asked for, never guessed.</summary>
/// <param name="What">What it is, as a sentence says it: <c>an estimate</c>.</param>
/// <param name="Example">What could be typed instead: <c>12 or 14</c>.</param>
internal readonly record struct Estimate(string What, string Example)
{
    private static readonly string[] About =
    [
        "~", "≈", "∼", "approximately", "approx.", "approx", "about", "around", "circa", "ca.", "ca", "c.", "roughly", "ungefähr", "etwa", "environ", "env.",
        "aproximadamente", "aprox.", "aprox", "unos", "unas", "cerca de", "cerca di", "cerca", "quasi", "est.",
    ];

    private static readonly string[] Limits =
    [
        "<=", ">=", "<", ">", "≤", "≥", "max.", "max", "maximum", "min.", "min", "minimum", "up to", "at least", "at most", "under", "over", "less than", "more than",
        "bis", "mind.", "mindestens", "höchstens", "unter", "über", "jusqu'à", "moins de", "plus de", "hasta", "menos de", "más de", "fino a", "meno di", "più di",
        "até", "mais de",
    ];

    private static readonly string[] Tolerances = ["±", "+/-", "+-"];

    private static readonly string[] Ranges = ["–", "—", "...", "..", "…", " to ", " bis ", " or ", " oder ", " ou ", " à ", " a ", " o ", " até ", "-"];

    /// <summary>What a text that is no number tells; null where it tells of none.</summary>
    /// <param name="text">The text, on one line.</param>
    public static Estimate? Of(string text)
    {
        if (Between(text, Tolerances) is var (value, _))
        {
            return new Estimate(NumberFaultWords.Tolerance, value);
        }

        if (After(text, About) is { } about)
        {
            return new Estimate(NumberFaultWords.Estimate, (Between(about, Ranges) is var (low, _) ? low : null) ?? about);
        }

        if (After(text, Limits) is { } limit)
        {
            return new Estimate(NumberFaultWords.Limit, limit);
        }

        if (Between(text, Ranges) is var (from, to))
        {
            return new Estimate(NumberFaultWords.Range, NumberFaultWords.Either(from, to));
        }

        var bare = text.TrimEnd('?', '+', '~', ' ');
        return bare.Length < text.Length && IsNumber(bare) ? new Estimate(text.Contains('+', StringComparison.Ordinal) ? NumberFaultWords.Limit : NumberFaultWords.Estimate, bare) : null;
    }

    private static string? After(string text, string[] starts)
    {
        foreach (var start in starts)
        {
            if (text.StartsWith(start, StringComparison.OrdinalIgnoreCase)
                && text[start.Length..].TrimStart() is var rest && (IsNumber(rest) || Between(rest, Ranges) is not null))
            {
                return rest;
            }
        }

        return null;
    }

    private static (string From, string To)? Between(string text, string[] marks)
    {
        foreach (var mark in marks)
        {
            var at = text.IndexOf(mark, StringComparison.OrdinalIgnoreCase);
            if (at > 0 && text[..at].Trim() is var from && text[(at + mark.Length)..].Trim() is var to && IsNumber(from) && IsNumber(to))
            {
                return (from, to);
            }
        }

        return null;
    }

    private static bool IsNumber(string text) =>
        NumberText.Read(text, NumberSigns.None).Outcome != NumberOutcome.NotANumber || NumberText.ReadCount(text, NumberSigns.None).Outcome != NumberOutcome.NotANumber;
}
