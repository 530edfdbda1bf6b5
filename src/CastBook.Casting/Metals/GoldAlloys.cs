using static CastBook.Casting.Metals.AlloyNumbers;
using static CastBook.Casting.Metals.NumberSource;

namespace CastBook.Casting.Metals;

/// <summary>
/// Yellow and green golds. Melting ranges of most carat golds are known only from memory, and are therefore missing: a pour
/// depends on them.
/// </summary>
internal static class GoldAlloys
{
    private static readonly NumberSource ColourStandard = Published("usual composition of the colour standard");
    private static readonly NumberSource Recipes = Published("recipes");
    private static readonly NumberSource Yellow18 = MixingRule.But("published lists go from 15.2 to 15.9, without the composition");

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "fine gold",
            OtherNames = ["999", "fine yellow gold", "yellow gold", "gold"],
            Composition = Composition.Of("Au 1000"),
            Density = Gcc(19.32),
            Solidus = Celsius(1064.18),
            Liquidus = Celsius(1064.18),    // a fixed point of ITS-90
            Sources = new()
            {
                Composition = Exact,
                Density = Published("element table").But("others print 19.30; the denser errs towards a full pour"),
                Melting = Exact,
            },
        },
        ByRuleOf("22k light yellow", "Au 917 Ag 55 Cu 28", Marks("22k", "yellow"), Memory),
        ByRuleOf("22k deep yellow", "Au 917 Ag 32 Cu 51", Marks("22k", "yellow"), Memory),
        Doubtful("22k yellow with zinc", "Au 916.7 Ag 50 Cu 20 Zn 13.3", Marks("22k", "yellow"), Published("supplier table")),

        ByRuleOf("18k yellow 2N", "Au 750 Ag 160 Cu 90", Marks("18k", "yellow", "18k 2N", "18k pale yellow"), ColourStandard, Yellow18),
        ByRuleOf("18k yellow 3N", "Au 750 Ag 125 Cu 125", Marks("18k", "yellow", "18k 3N"), ColourStandard.But("an old published recipe book has the same"), Yellow18),
        ByRuleOf("14k yellow 0N", "Au 585 Ag 340 Cu 75", Marks("14k", "yellow", "14k 0N", "14k green yellow"), ColourStandard),
        ByRuleOf("14k yellow 1N", "Au 585 Ag 260 Cu 155", Marks("14k", "yellow", "14k 1N", "14k pale yellow"), ColourStandard),
        ByRuleOf("14k yellow with silver", "Au 585 Ag 300 Cu 115", Marks("14k", "yellow"), Memory),
        new()
        {
            Name = "14k yellow with zinc",
            OtherNames = Marks("14k", "yellow", "14k yellow zinc"),
            // No composition: the table with the density does not print one.
            Density = Gcc(13.07),
            Sources = new() { Density = Published("trade table").But("a retailer's list prints 13.7 for 14 k yellow of another composition") },
        },
        new()
        {
            Name = "10k yellow with zinc",
            OtherNames = Marks("10k", "yellow"),
            Composition = Composition.Of("Au 417 Ag 117 Cu 408 Zn 58"),
            Density = Gcc(11.57),
            Sources = new() { Composition = Published("textbook table"), Density = Published("trade table").But("the composition gives the same") },
        },
        ByRuleOf("9k pale yellow", "Au 375 Ag 550 Cu 75", Marks("9k", "yellow"), Recipes),
        ByRuleOf("9k yellow without zinc", "Au 375 Ag 425 Cu 200", Marks("9k", "yellow"), Recipes),
        ByRuleOf("9k rich yellow", "Au 375 Ag 312.5 Cu 312.5", Marks("9k", "yellow"), Recipes),
        Doubtful("9k yellow with zinc", "Au 375 Ag 121 Cu 444 Zn 60", Marks("9k", "yellow"), Recipes),

        new()
        {
            Name = "18k green without copper",
            OtherNames = Marks("18k", "green", "18k soft green"),
            Composition = Composition.Of("Au 750 Ag 250"),
            Density = Gcc(16.03),
            Solidus = Celsius(1028),
            Liquidus = Celsius(1038),
            Sources = new()
            {
                Composition = Recipes,
                Density = Published("measurement").But("the composition gives 15.95; the denser errs towards a full pour"),
                Melting = Published("measurements of gold and silver, between two of them, ± 5 °C"),
            },
        },
        ByRuleOf("18k green with copper", "Au 750 Ag 200 Cu 50", Marks("18k", "green"), Recipes, MixingRule.But("a trade table prints 15.90 for another 18 k green")),
        ByRuleOf("14k green without copper", "Au 585 Ag 415", Marks("14k", "green"), Recipes, MixingRule.But("a trade table prints 14.20 for another 14 k green")),
    ];

    /// <summary>A gold whose density the mixing rule gives reliably.</summary>
    public static Alloy ByRuleOf(string name, string parts, IReadOnlyList<string> otherNames, NumberSource source, NumberSource? density = null)
    {
        var composition = Composition.Of(parts);
        return new()
        {
            Name = name,
            OtherNames = otherNames,
            Composition = composition,
            Density = ByRule(composition),
            Sources = new() { Composition = source, Density = density ?? MixingRule },
        };
    }

    /// <summary>An alloy whose density nobody printed and the mixing rule cannot be trusted with: it is asked for.</summary>
    public static Alloy Doubtful(string name, string parts, IReadOnlyList<string> otherNames, NumberSource source) => new()
    {
        Name = name,
        OtherNames = otherNames,
        Composition = Composition.Of(parts),
        Sources = new() { Composition = source },
    };

    /// <summary>Names that several alloys share; each of them names none of the alloys by itself.</summary>
    public static string[] Marks(string carat, string colour, params string[] more) =>
        [carat, $"{carat} {colour}", $"{colour} gold", "gold", .. more];

    /// <summary>The same for what shops call rose, pink or red; pink is another word for rose.</summary>
    public static string[] Reds(string carat, params string[] more) =>
        Marks(carat, "rose", [$"{carat} red", "red gold", .. more]);
}
