using static CastBook.Casting.Metals.AlloyNumbers;
using static CastBook.Casting.Metals.NumberSource;

namespace CastBook.Casting.Metals;

/// <summary>
/// Bronzes and brasses. All numbers are those of published data sheets for the standard designation, but where their sources say
/// otherwise; the mixing rule would be up to 6 % low here.
/// </summary>
internal static class CopperAlloys
{
    private static readonly AlloySources DataSheet = new()
    {
        Composition = Published("data sheet"),
        Density = Published("data sheet"),
        Melting = Published("data sheet"),
    };

    public static IReadOnlyList<Alloy> All { get; } =
    [
        // Printed in °F for most; the composition of the first adds up to 998.
        Sheet("tin bronze C90300", "Cu 875 Sn 83 Zn 40", 8.80, 854, 1000, "tin bronze", "C90300", "C903", "bronze"),
        Sheet("gunmetal CuSn10Zn2", "Cu 880 Sn 100 Zn 20", 8.72, 850, 1000, "gunmetal", "CuSn10Zn2", "bronze CuSn10Zn2", "C90500", "C905", "Rotguss", "Rg10", "tin bronze", "bronze"),
        new()
        {
            Name = "bronze CuSn10",
            OtherNames = ["CuSn10", "CuSn10-C", "CC480K", "tin bronze CuSn10", "bronze 90/10", "tin bronze", "bronze"],
            Composition = Composition.Of("Cu 900 Sn 100"),
            Density = Gcc(8.77),
            Sources = new()
            {
                Composition = Exact,
                Density = Published("data sheet of C90700, which cross references name as its like").But("sheets of bronzes with 10 to 11.5 % tin print 8.6 to 8.8 g/cm³, and the mixing rule gives 8.76"),
                // Melting ranges are printed for alloys with more tin only, whose solidus and liquidus are lower.
            },
        },
        Sheet("tin bronze CuSn12Ni2", "Cu 860 Sn 120 Ni 20", 8.7, 870, 1000, "CuSn12Ni2", "bronze CuSn12Ni2", "CC484K", "tin bronze", "bronze"),
        Sheet("silicon bronze C87300", "Cu 949 Si 40 Mn 11", 8.36, 821, 971, "silicon bronze", "C87300", "C873", "bronze"),
        Sheet("silicon bronze C65500", "Cu 970 Si 30", 8.53, 970, 1025, "silicon bronze", "C65500", "C655", "bronze"),
        Sheet("silicon brass C87500", "Cu 820 Zn 140 Si 40", 8.28, 821, 917, "silicon brass", "C87500", "C875", "brass"),
        Sheet("aluminium bronze C95400", "Cu 850 Al 110 Fe 40", 7.45, 1027, 1038, "aluminium bronze", "C95400", "C954", "bronze"),
        Sheet("aluminium bronze C95500", "Cu 810 Al 110 Fe 40 Ni 40", 7.53, 1038, 1054, "aluminium bronze", "C95500", "C955", "bronze"),
        Sheet("brass 85/15", "Cu 850 Zn 150", 8.75, 988, 1027, "CuZn15", "brass CuZn15", "C23000", "C230", "brass"),
        Sheet("brass 70/30", "Cu 700 Zn 300", 8.53, 916, 954, "CuZn30", "brass CuZn30", "C26000", "C260", "cartridge brass", "brass"),
        Sheet("casting brass C85300", "Cu 700 Zn 300", 8.53, 916, 943, "C85300", "C853", "brass"),
    ];

    private static Alloy Sheet(string name, string parts, double gramsPerCubicCentimeter, double solidusCelsius, double liquidusCelsius, params string[] otherNames) => new()
    {
        Name = name,
        OtherNames = otherNames,
        Composition = Composition.Of(parts),
        Density = Gcc(gramsPerCubicCentimeter),
        Solidus = Celsius(solidusCelsius),
        Liquidus = Celsius(liquidusCelsius),
        Sources = DataSheet,
    };
}
