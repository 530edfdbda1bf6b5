using static CastBook.Casting.Metals.AlloyNumbers;

namespace CastBook.Casting.Metals;

/// <summary>
/// Bronzes and brasses. Compositions, densities and melting ranges are those of published data sheets for the
/// standard designation; the mixing rule would be up to 4 % low here.
/// </summary>
internal static class CopperAlloys
{
    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "tin bronze C90300",
            OtherNames = ["tin bronze", "C90300", "C903", "bronze"],
            Composition = Composition.Of("Cu 875 Sn 83 Zn 40"),     // published, nominal; adds up to 998
            Density = Gcc(8.80),                                    // published, 0.318 lb/in³
            Solidus = Celsius(854),                                 // published, 1570 °F
            Liquidus = Celsius(1000),                               // published, 1832 °F
        },
        new()
        {
            Name = "gunmetal CuSn10Zn2",
            OtherNames = ["gunmetal", "CuSn10Zn2", "bronze CuSn10Zn2", "C90500", "C905", "tin bronze", "bronze"],
            Composition = Composition.Of("Cu 880 Sn 100 Zn 20"),    // published, nominal
            Density = Gcc(8.72),                                    // published, 0.315 lb/in³
            Solidus = Celsius(850),                                 // published
            Liquidus = Celsius(1000),                               // published
        },
        new()
        {
            Name = "silicon bronze C87300",
            OtherNames = ["silicon bronze", "C87300", "C873", "bronze"],
            Composition = Composition.Of("Cu 949 Si 40 Mn 11"),     // published, nominal
            Density = Gcc(8.36),                                    // published, 0.302 lb/in³
            Solidus = Celsius(821),                                 // published, 1510 °F
            Liquidus = Celsius(971),                                // published, 1780 °F
        },
        new()
        {
            Name = "brass 85/15",
            OtherNames = ["CuZn15", "brass CuZn15", "C23000", "C230", "brass"],
            Composition = Composition.Of("Cu 850 Zn 150"),          // published, nominal
            Density = Gcc(8.75),                                    // published, 0.316 lb/in³
            Solidus = Celsius(988),                                 // published, 1810 °F
            Liquidus = Celsius(1027),                               // published, 1880 °F
        },
        new()
        {
            Name = "brass 70/30",
            OtherNames = ["CuZn30", "brass CuZn30", "C26000", "C260", "cartridge brass", "brass"],
            Composition = Composition.Of("Cu 700 Zn 300"),          // published, nominal
            Density = Gcc(8.53),                                    // published, 0.308 lb/in³
            Solidus = Celsius(916),                                 // published, 1680 °F
            Liquidus = Celsius(954),                                // published, 1750 °F
        },
    ];
}
