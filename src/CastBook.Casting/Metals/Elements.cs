using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>The elements that take part in jewellery alloys, with density and melting point.</summary>
/// <remarks>
/// <para><b>Valid for</b> solids at 20 to 25 °C. Tables differ from one another by up to 0.5 % in density.</para>
/// <para><b>Source.</b> Published element tables for density; the fixed points of the temperature scale of
/// 1990 (ITS-90) for the melting points of Ag, Au, Cu, Zn, Sn, Al and In. Each row says which.</para>
/// </remarks>
public static partial class Elements
{
    /// <summary>All elements known here, in no special order.</summary>
    public static IReadOnlyList<Element> All { get; } =
    [
        Of("Ag", "silver", 10.49, 961.78),       // published table; ITS-90
        Of("Au", "gold", 19.32, 1064.18),        // published table (others print 19.30); ITS-90
        Of("Cu", "copper", 8.96, 1084.62),       // published table; ITS-90
        Of("Zn", "zinc", 7.134, 419.527, ElementHazard.Fume),      // published table; ITS-90
        Of("Pd", "palladium", 12.02, 1554.8),    // published review of the platinum metals (1552 there); memory
        Of("Pt", "platinum", 21.45, 1768.2),     // published review of the platinum metals (1768 there); memory
        Of("Ru", "ruthenium", 12.45, 2310),      // published review of the platinum metals; same
        Of("Ir", "iridium", 22.56, 2443),        // memory (the review prints the older 22.65); review
        Of("Ni", "nickel", 8.90, 1455),          // published table; memory
        Of("Co", "cobalt", 8.86, 1495),          // published table; memory
        Of("Sn", "tin", 7.287, 231.928),         // memory, white tin (tables print 7.265 to 7.31); ITS-90
        Of("Ge", "germanium", 5.3234, 938.25),   // published table; memory
        Of("Si", "silicon", 2.3296, 1414),       // published table; memory
        Of("Mn", "manganese", 7.43, 1246),       // memory; memory
        Of("Fe", "iron", 7.874, 1538),           // memory; memory
        Of("Al", "aluminium", 2.70, 660.323),    // memory; ITS-90
        Of("In", "indium", 7.31, 156.5985),      // memory; ITS-90
        Of("Ga", "gallium", 5.91, 29.7646),      // memory; ITS-90

        // Known so that an alloy with them can be refused by name.
        Of("Cd", "cadmium", 8.65, 321.07, ElementHazard.Poison),       // memory; memory
        Of("Pb", "lead", 11.34, 327.46, ElementHazard.Poison),         // memory; memory
        Of("Be", "beryllium", 1.85, 1287, ElementHazard.Poison),       // memory; memory
    ];

    private static readonly Dictionary<string, Element> BySymbol =
        All.ToDictionary(element => element.Symbol, StringComparer.OrdinalIgnoreCase);

    /// <summary>Finds an element by its symbol; capitals and small letters are the same.</summary>
    /// <param name="symbol">A chemical symbol, such as <c>Ag</c>.</param>
    /// <param name="element">The element, or missing when it is not known here.</param>
    /// <returns>True when it is known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="symbol"/> is missing.</exception>
    public static bool TryGet(string symbol, [NotNullWhen(true)] out Element? element)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        return BySymbol.TryGetValue(symbol, out element);
    }

    /// <summary>The elements that stand beside a number in a text, by symbol or by name, also where the text is no composition.</summary>
    /// <param name="text">Any text, such as <c>Cu 85 %, Pb 15 %</c> or <c>5 lead</c>.</param>
    /// <returns>Each once, in the order written.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is missing.</exception>
    public static IReadOnlyList<Element> BesideNumbers(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. WordBesideNumber().Matches(text).SelectMany(word => All.Where(element => IsCalled(element, word.Value))).Distinct()];
    }

    // A symbol begins with a capital: "to be 5" is no beryllium.
    private static bool IsCalled(Element element, string word) =>
        string.Equals(element.Name, word, StringComparison.OrdinalIgnoreCase)
        || (char.IsUpper(word[0]) && string.Equals(element.Symbol, word, StringComparison.OrdinalIgnoreCase));

    [GeneratedRegex(@"\p{L}+(?=[\s:=%]*\d)|(?<=\d[\s:=%]*)\p{L}+")]
    private static partial Regex WordBesideNumber();

    private static Element Of(string symbol, string name, double gramsPerCubicCentimeter, double degreesCelsius, ElementHazard hazard = ElementHazard.None) =>
        new(symbol, name, Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimeter), Temperature.FromDegreesCelsius(degreesCelsius), hazard);
}
