using static CastBook.Casting.Metals.AlloyNumbers;

namespace CastBook.Casting.Metals;

/// <summary>
/// Gold and its alloys, with the source and kind of every number. Melting ranges of the carat golds are known
/// only from memory, and are therefore missing.
/// </summary>
internal static class GoldAlloys
{
    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "fine gold",
            OtherNames = ["999", "fine yellow gold", "yellow gold", "gold"],
            Composition = Composition.Of("Au 1000"),    // exact
            Density = Gcc(19.32),                       // published element table
            Solidus = Celsius(1064.18),                 // exact, fixed point of ITS-90
            Liquidus = Celsius(1064.18),                // same
        },

        // Compositions of the two 22 k golds: memory of a trade body's tables. Density: mixing rule.
        ByRuleOf("22k light yellow", "Au 917 Ag 55 Cu 28", Marks("22k", "yellow")),
        ByRuleOf("22k deep yellow", "Au 917 Ag 32 Cu 51", Marks("22k", "yellow")),

        // Compositions by the published usual ones of the colour standard; 3N also in an old published recipe
        // book. Density: mixing rule; a supplier's list prints 15.4 for yellow and 15.1 for red.
        ByRuleOf("18k yellow 2N", "Au 750 Ag 160 Cu 90", Marks("18k", "yellow", "18k 2N", "18k pale yellow")),
        ByRuleOf("18k yellow 3N", "Au 750 Ag 125 Cu 125", Marks("18k", "yellow", "18k 3N")),
        ByRuleOf("18k pink 4N", "Au 750 Ag 90 Cu 160", Reds("18k", "18k 4N")),
        ByRuleOf("18k red 5N", "Au 750 Ag 45 Cu 205", Reds("18k", "18k 5N")),
        new()
        {
            Name = "18k nickel white",
            OtherNames = Marks("18k", "white"),
            Composition = Composition.Of("Au 750 Cu 55 Zn 50 Ni 145"),  // published study of nickel whites
            Density = Gcc(14.64),                                       // published trade table, 18 k white
        },
        // Composition: published table of palladium whites. Density: mixing rule.
        ByRuleOf("18k palladium white", "Au 750 Ag 150 Pd 100", Marks("18k", "white")),

        // Composition by the published usual one of the colour standard. Density: mixing rule.
        ByRuleOf("14k yellow 1N", "Au 585 Ag 260 Cu 155", Marks("14k", "yellow", "14k 1N", "14k pale yellow")),
        new()
        {
            Name = "14k yellow with zinc",
            OtherNames = Marks("14k", "yellow", "14k yellow zinc"),
            // No composition: the table with the density does not print one.
            Density = Gcc(13.07),                                       // published trade table, 14 k yellow
        },
        // Composition: published table. Density: mixing rule; a supplier's list prints 13.1, a trade table 13.26.
        ByRuleOf("14k rich red", "Au 585 Ag 90 Cu 325", Reds("14k")),
        ByRuleOf("14k soft pink", "Au 585 Ag 195 Cu 220", Reds("14k")),

        // Compositions: published recipes. Density: mixing rule, and missing where zinc makes the rule read low.
        ByRuleOf("9k yellow without zinc", "Au 375 Ag 425 Cu 200", Marks("9k", "yellow")),
        new()
        {
            Name = "9k yellow with zinc",
            OtherNames = Marks("9k", "yellow"),
            Composition = Composition.Of("Au 375 Ag 121 Cu 444 Zn 60"),
        },
    ];

    private static Alloy ByRuleOf(string name, string parts, IReadOnlyList<string> otherNames)
    {
        var composition = Composition.Of(parts);
        return new Alloy { Name = name, OtherNames = otherNames, Composition = composition, Density = ByRule(composition) };
    }

    // Colours that several alloys share; each of them names none of the alloys by itself.
    private static string[] Marks(string carat, string colour, params string[] more) =>
        [carat, $"{carat} {colour}", $"{colour} gold", "gold", .. more];

    private static string[] Reds(string carat, params string[] more) =>
        Marks(carat, "rose", [$"{carat} pink", $"{carat} red", "pink gold", "red gold", .. more]);
}
