using static CastBook.Casting.Metals.AlloyNumbers;

namespace CastBook.Casting.Metals;

/// <summary>
/// Platinum and palladium. Melting ranges are known only from memory, and are therefore missing; what matters
/// most is known: gypsum-bonded investment cannot hold them.
/// </summary>
internal static class PlatinumAlloys
{
    private static readonly string[] PlatinumMarks = ["platinum 950", "platinum", "950"];

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "platinum 950 ruthenium",
            OtherNames = ["platinum 950 ruthenium 50", "platinum ruthenium", .. PlatinumMarks],
            Composition = Composition.Of("Pt 950 Ru 50"),   // exact, by name
            Density = Gcc(20.7),                            // mixing rule, reliable here; the trade's tables agree from memory
            NeedsHighTemperatureInvestment = true,
        },
        new()
        {
            Name = "platinum 950 iridium",
            OtherNames = ["platinum 950 iridium 50", "platinum iridium", .. PlatinumMarks],
            Composition = Composition.Of("Pt 950 Ir 50"),   // exact, by name
            Density = Gcc(21.5),                            // mixing rule, reliable here; the trade's tables agree from memory
            NeedsHighTemperatureInvestment = true,
        },
        new()
        {
            Name = "platinum 950 cobalt",
            OtherNames = ["platinum 950 cobalt 50", "platinum cobalt", .. PlatinumMarks],
            Composition = Composition.Of("Pt 950 Co 50"),   // exact, by name
            Density = Gcc(20.8),                            // published supplier list; the mixing rule is 3.7 % low
            NeedsHighTemperatureInvestment = true,
        },
        new()
        {
            Name = "palladium 950",
            OtherNames = ["palladium", "950"],
            // No composition and no density: ruthenium, gallium and copper are all in use, 5 % apart.
            NeedsHighTemperatureInvestment = true,
        },
    ];
}
