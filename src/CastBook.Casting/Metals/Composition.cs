using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace CastBook.Casting.Metals;

/// <summary>What an alloy is made of, in parts per thousand by mass.</summary>
public sealed class Composition
{
    /// <summary>How far the parts may add up from 1000: published sheets round each part by itself.</summary>
    public const double SumTolerance = 5;

    private const string Separators = " \t\r\n\u00A0,;/";

    private Composition(IReadOnlyList<(string Symbol, double PerMille)> parts) => Parts = parts;

    /// <summary>The parts as written, in the order written; none of them is zero.</summary>
    public IReadOnlyList<(string Symbol, double PerMille)> Parts { get; }

    /// <summary>The share of one element.</summary>
    /// <param name="symbol">A chemical symbol; capitals and small letters are the same.</param>
    /// <returns>Parts per thousand as written; zero when the element takes no part.</returns>
    public double PerMille(string symbol)
    {
        foreach (var part in Parts)
        {
            if (string.Equals(part.Symbol, symbol, StringComparison.OrdinalIgnoreCase))
            {
                return part.PerMille;
            }
        }

        return 0;
    }

    /// <summary>Whether half of it or more is platinum and palladium.</summary>
    public bool IsOfPlatinumMetals => PerMille("Pt") + PerMille("Pd") >= 500;

    /// <summary>The elements of one hazard that take part, in the order written.</summary>
    /// <param name="hazard">The hazard.</param>
    public IReadOnlyList<Element> With(ElementHazard hazard)
    {
        var found = new List<Element>();
        foreach (var (symbol, _) in Parts)
        {
            if (Elements.TryGet(symbol, out var element) && element.Hazard == hazard)
            {
                found.Add(element);
            }
        }

        return found;
    }

    /// <summary>Whether it is another one, within what published sheets make of it by rounding: each part by <see cref="SumTolerance"/> at most.</summary>
    /// <param name="other">The other composition.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is missing.</exception>
    public bool IsLike(Composition other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Parts.Concat(other.Parts).All(part => Math.Abs(PerMille(part.Symbol) - other.PerMille(part.Symbol)) <= SumTolerance);
    }

    /// <summary>The composition as it would be typed, such as <c>Au 583 Ag 104 Cu 313</c>.</summary>
    /// <returns>Text that <see cref="TryParse"/> reads back.</returns>
    public override string ToString() =>
        string.Join(' ', Parts.Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Symbol} {part.PerMille:0.######}")));

    /// <summary>
    /// Reads a composition such as <c>Au 583 Ag 104 Cu 313</c>. Blanks, commas followed by a blank, semicolons
    /// and slashes part the entries; a decimal point is a point.
    /// </summary>
    /// <param name="text">The text of a cell.</param>
    /// <param name="composition">The composition, or missing when the text is refused.</param>
    /// <param name="why">Why it is refused; missing when it is read.</param>
    /// <returns>
    /// True when every symbol is known and stands once, no part is negative, and the parts add up to
    /// 1000 within <see cref="SumTolerance"/>.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is missing.</exception>
    public static bool TryParse(
        string text,
        [NotNullWhen(true)] out Composition? composition,
        [NotNullWhen(false)] out CompositionFault? why)
    {
        ArgumentNullException.ThrowIfNull(text);

        composition = null;
        var parts = new List<(string Symbol, double PerMille)>();
        why = ReadParts(text, parts) ?? CheckSum(parts);
        if (why is not null)
        {
            return false;
        }

        parts.RemoveAll(part => part.PerMille == 0);
        composition = new Composition(parts);
        return true;
    }

    /// <summary>A composition written in this program's own tables.</summary>
    /// <param name="text">As for <see cref="TryParse"/>.</param>
    /// <returns>The composition.</returns>
    /// <exception cref="ArgumentException">The text is refused.</exception>
    internal static Composition Of(string text) =>
        TryParse(text, out var composition, out var why) ? composition : throw new ArgumentException($"{why}", nameof(text));

    private static CompositionFault? ReadParts(string text, List<(string Symbol, double PerMille)> parts)
    {
        var rest = text.AsSpan();
        while (!(rest = rest.TrimStart(Separators)).IsEmpty)
        {
            var symbol = Take(ref rest, char.IsLetter).ToString();
            rest = rest.TrimStart();
            var number = Take(ref rest, c => !char.IsWhiteSpace(c) && !char.IsLetter(c) && c is not (';' or '/')).TrimEnd(',').ToString();

            if (symbol.Length == 0)
            {
                return new(CompositionFaultKind.NumberWithoutElement, number);
            }

            if (AddPart(symbol, number, parts) is { } why)
            {
                return why;
            }
        }

        return parts.Count == 0 ? new(CompositionFaultKind.Empty) : null;
    }

    private static CompositionFault? AddPart(string symbol, string number, List<(string Symbol, double PerMille)> parts)
    {
        if (!Elements.TryGet(symbol, out var element))
        {
            return new(CompositionFaultKind.UnknownSymbol, symbol);
        }

        if (parts.Exists(part => part.Symbol == element.Symbol))
        {
            return new(CompositionFaultKind.ElementTwice, element.Symbol);
        }

        // Float style on purpose: it refuses "53,3", which a style with thousands would read as 533.
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var perMille) || !double.IsFinite(perMille))
        {
            return new(CompositionFaultKind.NoNumber, element.Symbol);
        }

        if (perMille < 0)
        {
            return new(CompositionFaultKind.BelowZero, element.Symbol);
        }

        parts.Add((element.Symbol, perMille));
        return null;
    }

    private static CompositionFault? CheckSum(List<(string Symbol, double PerMille)> parts)
    {
        var sum = parts.Sum(part => part.PerMille);
        if (Math.Abs(sum - 1000) <= SumTolerance)
        {
            return null;
        }

        var isPercent = Math.Abs(sum - 100) <= SumTolerance / 10;
        return new(isPercent ? CompositionFaultKind.SumOfPercent : CompositionFaultKind.WrongSum, sum.ToString("0.###", CultureInfo.InvariantCulture));
    }

    private static ReadOnlySpan<char> Take(ref ReadOnlySpan<char> rest, Func<char, bool> belongs)
    {
        var length = 0;
        while (length < rest.Length && belongs(rest[length]))
        {
            length++;
        }

        var taken = rest[..length];
        rest = rest[length..];
        return taken;
    }
}
