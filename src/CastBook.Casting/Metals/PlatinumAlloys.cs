using static CastBook.Casting.Metals.AlloyNumbers;
using static CastBook.Casting.Metals.NumberSource;

namespace CastBook.Casting.Metals;

/// <summary>
/// Platinum and palladium. Melting ranges of the alloys are known only from memory, and are therefore missing; what matters
/// most is known: gypsum-bonded investment cannot hold them.
/// </summary>
internal static class PlatinumAlloys
{
    private static readonly NumberSource Review = Published("review of the platinum metals");

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "platinum 999",
            OtherNames = ["fine platinum", "platinum"],
            Composition = Composition.Of("Pt 1000"),
            Density = Gcc(21.45),
            Solidus = Celsius(1768),
            Liquidus = Celsius(1768),
            NeedsHighTemperatureInvestment = true,
            Sources = new() { Composition = Exact, Density = Review, Melting = Review },
        },
        Hot("platinum 950 ruthenium", "Pt 950 Ru 50", "platinum 950 ruthenium 50", "platinum ruthenium", "platinum 950", "platinum", "950"),
        Hot("platinum 950 iridium", "Pt 950 Ir 50", "platinum 950 iridium 50", "platinum iridium", "platinum 950", "platinum", "950"),
        new()
        {
            Name = "platinum 950 cobalt",
            OtherNames = ["platinum 950 cobalt 50", "platinum cobalt", "platinum 950", "platinum", "950"],
            Composition = Composition.Of("Pt 950 Co 50"),
            Density = Gcc(20.8),
            NeedsHighTemperatureInvestment = true,
            Sources = new() { Composition = Exact, Density = Published("supplier table").But("the composition gives 20.03, and is known to be low with cobalt") },
        },
        Hot("platinum 950 palladium", "Pt 950 Pd 50", "platinum 950 palladium 50", "platinum palladium", "platinum 950", "platinum", "950"),
        new()
        {
            Name = "platinum 900 iridium",
            OtherNames = ["platinum 900 iridium 100", "platinum 900", "platinum iridium", "platinum", "900"],
            Composition = Composition.Of("Pt 900 Ir 100"),
            Density = Gcc(21.54),
            NeedsHighTemperatureInvestment = true,
            Sources = new() { Composition = Exact, Density = Published("supplier table").But("the composition gives 21.56") },
        },
        new()
        {
            Name = "palladium 999",
            OtherNames = ["fine palladium", "palladium"],
            Composition = Composition.Of("Pd 1000"),
            Density = Gcc(12.02),
            Solidus = Celsius(1552),
            Liquidus = Celsius(1552),
            NeedsHighTemperatureInvestment = true,
            Sources = new() { Composition = Exact, Density = Review, Melting = Review.But("newer tables have 1554.8 °C, from memory") },
        },
        Hot("palladium 950 ruthenium", "Pd 950 Ru 50", "palladium 950 ruthenium 50", "palladium ruthenium", "palladium 950", "palladium", "950"),
        // Gallium and copper: the mixing rule has not been compared with them in palladium, so the density is asked for.
        Asked("palladium 950 gallium", "Pd 950 Ga 50", "palladium 950 gallium 50", "palladium 950", "palladium", "950"),
        Asked("palladium 950 copper", "Pd 950 Cu 50", "palladium 950 copper 50", "palladium 950", "palladium", "950"),
    ];

    private static Alloy Hot(string name, string parts, params string[] otherNames)
    {
        var alloy = Asked(name, parts, otherNames);
        return alloy with { Density = ByRule(alloy.Composition!), Sources = alloy.Sources with { Density = MixingRule } };
    }

    private static Alloy Asked(string name, string parts, params string[] otherNames) => new()
    {
        Name = name,
        OtherNames = otherNames,
        Composition = Composition.Of(parts),
        NeedsHighTemperatureInvestment = true,
        Sources = new() { Composition = Exact },
    };
}
