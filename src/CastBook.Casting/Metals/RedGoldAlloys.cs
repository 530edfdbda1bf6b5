using static CastBook.Casting.Metals.AlloyNumbers;
using static CastBook.Casting.Metals.GoldAlloys;
using static CastBook.Casting.Metals.NumberSource;

namespace CastBook.Casting.Metals;

/// <summary>Rose, pink and red golds. What one shop calls rose, another calls red: a colour alone names none of them.</summary>
internal static class RedGoldAlloys
{
    private static readonly NumberSource ColourStandard = Published("usual composition of the colour standard");
    private static readonly NumberSource Recipes = Published("recipes");

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "22k red without silver",
            OtherNames = Reds("22k"),
            Composition = Composition.Of("Au 916.7 Cu 83.3"),
            Density = Gcc(17.48),
            Sources = new()
            {
                Composition = Published("coin standard"),
                Density = Published("measurement").But("the composition gives 17.62; what was measured is used"),
            },
        },
        ByRuleOf("18k pink 4N", "Au 750 Ag 90 Cu 160", Reds("18k", "18k 4N"), ColourStandard),
        ByRuleOf("18k red 5N", "Au 750 Ag 45 Cu 205", Reds("18k", "18k 5N"), ColourStandard, MixingRule.But("a retailer's list prints 15.1, a trade table 15.18")),
        ByRuleOf("18k rose with silver", "Au 750 Ag 50 Cu 200", Reds("18k"), Published("watchmakers' notes")),
        ByRuleOf("18k rose with a little silver", "Au 750 Ag 27.5 Cu 222.5", Reds("18k"), Recipes),
        ByRuleOf("18k red without silver", "Au 750 Cu 250", Reds("18k"), Recipes),
        new()
        {
            Name = "18k red with zinc",
            OtherNames = Reds("18k"),
            Composition = Composition.Of("Au 750 Ag 15 Cu 230 Zn 5"),
            Density = Gcc(14.7),
            Solidus = Celsius(905),
            Liquidus = Celsius(920),
            Sources = new()
            {
                Composition = Published("supplier table"),
                Density = Published("supplier table").But("the composition gives 15.01; weigh a casting of it"),
                Melting = Published("supplier table"),
            },
        },
        ByRuleOf("14k soft pink", "Au 585 Ag 195 Cu 220", Reds("14k"), Recipes),
        ByRuleOf("14k rich red", "Au 585 Ag 90 Cu 325", Reds("14k"), Recipes, MixingRule.But("a retailer's list prints 13.1, a trade table 13.26")),
        ByRuleOf("14k rose with a little silver", "Au 583 Ag 21 Cu 396", Reds("14k"), Published("textbook table")),
        ByRuleOf("10k rose with a little silver", "Au 417 Ag 28 Cu 555", Reds("10k"), Published("textbook table"), MixingRule.But("a trade table prints 11.59 for 10 k red")),
        ByRuleOf("9k soft pink", "Au 375 Ag 200 Cu 425", Reds("9k"), Recipes),
        ByRuleOf("9k rich red", "Au 375 Ag 75 Cu 550", Reds("9k"), Recipes),
    ];
}
