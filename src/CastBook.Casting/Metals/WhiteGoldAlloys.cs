using static CastBook.Casting.Metals.AlloyNumbers;
using static CastBook.Casting.Metals.GoldAlloys;
using static CastBook.Casting.Metals.NumberSource;

namespace CastBook.Casting.Metals;

/// <summary>
/// White golds. Published densities of 18 k white go from 14.6 to 16.9 by what whitens it, and the mixing rule has not been
/// compared with palladium in gold: where nobody printed the density of the composition, it is missing. So are all temperatures;
/// a lower carat is not a lower one: published bands for nickel whites rise from 18 to 10 k.
/// </summary>
internal static class WhiteGoldAlloys
{
    private static readonly NumberSource Study = Published("study of nickel whites");
    private static readonly NumberSource PalladiumTable = Published("table of palladium whites");

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "18k nickel white",
            OtherNames = Marks("18k", "white"),
            Composition = Composition.Of("Au 750 Cu 55 Zn 50 Ni 145"),
            Density = Gcc(14.64),
            Sources = new()
            {
                Composition = Study,
                Density = Published("trade table").But("lists of nickel whites go from 14.6 to 14.8; the composition gives 14.65"),
            },
        },
        Doubtful("18k nickel white with much nickel", "Au 750 Cu 22 Zn 55 Ni 173", Marks("18k", "white"), Published("encyclopaedia")),
        Doubtful("18k palladium white", "Au 750 Ag 150 Pd 100", Marks("18k", "white"), PalladiumTable),
        Doubtful("18k palladium white with little silver", "Au 750 Ag 50 Pd 200", Marks("18k", "white"), PalladiumTable),
        Doubtful("18k palladium white with copper", "Au 750 Ag 40 Cu 40 Pd 170", Marks("18k", "white"), Published("watchmaker's manual")),
        Doubtful("14k nickel white", "Au 583 Cu 283 Zn 48 Ni 86", Marks("14k", "white"), Study),
        Doubtful("14k palladium white", "Au 583 Ag 322 Pd 95", Marks("14k", "white"), Published("textbook table")),
        Doubtful("10k palladium white", "Au 417 Ag 474 Cu 9 Pd 100", Marks("10k", "white"), Published("textbook table")),
        Doubtful("9k nickel white", "Au 375 Cu 340 Zn 108 Ni 177", Marks("9k", "white"), Published("recipes")),
    ];
}
